namespace SetupService.Domain.Wear.Readings;

/// <summary>What a tread's temperature is read with.</summary>
public enum Thermometer
{
    /// <summary>A needle pushed into the rubber.</summary>
    Probe,

    /// <summary>An infrared thermometer, which sees the surface.</summary>
    Infrared,
}

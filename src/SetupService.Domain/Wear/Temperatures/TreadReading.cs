using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>What was read across one tread.</summary>
/// <param name="Position">Whose tread.</param>
/// <param name="ReadC">The temperatures as read, °C.</param>
/// <param name="By">What they were read with.</param>
/// <param name="SecondsAfterLap">Time from the end of the last quick lap to the reading, s; null where it was not taken.</param>
/// <param name="WindowC">The range the tyre works in; null where it is not known.</param>
public readonly record struct TreadReading(
    WheelPosition Position, AcrossTread<double> ReadC, Thermometer By, double? SecondsAfterLap, TemperatureRange? WindowC)
{
    /// <summary>Time after the lap beyond which a tread has cooled too far to show its temperature on the lap, s; judgement, no source.</summary>
    public const double TooLateAfterS = 120;

    /// <summary>True when the reading came too late.</summary>
    public bool IsTooLate => SecondsAfterLap > TooLateAfterS;

    /// <summary>Mean of the three places, °C.</summary>
    public double MeanC => (ReadC.Outer + ReadC.Centre + ReadC.Inner) / 3;
}

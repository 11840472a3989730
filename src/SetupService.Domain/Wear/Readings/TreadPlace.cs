namespace SetupService.Domain.Wear.Readings;

/// <summary>Where across a tread; outer and inner are away from and towards the car's centre plane.</summary>
public enum TreadPlace
{
    /// <summary>The outer shoulder.</summary>
    Outer,

    /// <summary>The middle.</summary>
    Centre,

    /// <summary>The inner shoulder.</summary>
    Inner,
}

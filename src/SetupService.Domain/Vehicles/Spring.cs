namespace SetupService.Domain.Vehicles;

/// <summary>The main spring of one wheel, linear; what is not known is null.</summary>
public sealed record Spring
{
    /// <summary>Rate at the spring, N/mm.</summary>
    public double? RateNPerMm { get; init; }

    /// <summary>Spring travel by wheel travel at ride height.</summary>
    public double? MotionRatio { get; init; }

    /// <summary>Length without load, mm.</summary>
    public double? FreeLengthMm { get; init; }

    /// <summary>Length with the coils touching, mm.</summary>
    public double? SolidLengthMm { get; init; }

    /// <summary>Length at ride height, mm.</summary>
    public double? InstalledLengthMm { get; init; }

    /// <summary>How far the seats compress the spring at full droop, mm; negative = the spring is loose there.</summary>
    public double? PreloadMm { get; init; }
}

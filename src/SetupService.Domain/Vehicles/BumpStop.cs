namespace SetupService.Domain.Vehicles;

/// <summary>The bump stop of one wheel, on the damper's axis; what is not known is null.</summary>
public sealed record BumpStop
{
    /// <summary>Mean rate at the stop, N/mm.</summary>
    public double? RateNPerMm { get; init; }

    /// <summary>Force over compression, rising; empty where only a rate is known.</summary>
    public IReadOnlyList<StopForce> ForceCurve { get; init; } = [];

    /// <summary>Length without load, mm.</summary>
    public double? LengthMm { get; init; }

    /// <summary>Length when compressed as far as it goes, mm.</summary>
    public double? CompressedLengthMm { get; init; }

    /// <summary>Compression of the stop by wheel travel.</summary>
    public double? MotionRatio { get; init; }
}

/// <summary>A point of a stop's force curve.</summary>
/// <param name="CompressionMm">Compression beyond the first touch, mm, above 0.</param>
/// <param name="ForceN">Force at the stop there, N.</param>
public readonly record struct StopForce(double CompressionMm, double ForceN);

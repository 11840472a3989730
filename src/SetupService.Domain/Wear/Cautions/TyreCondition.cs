using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Cautions;

/// <summary>What is known of one tyre's state; what is not known is null.</summary>
/// <param name="Position">Which wheel it is on.</param>
public sealed record TyreCondition(WheelPosition Position)
{
    /// <summary>The least depth found at each place across the tread, mm.</summary>
    public AcrossTread<double>? LeastDepthMm { get; init; }

    /// <summary>Error of one reading, one standard deviation, mm, not negative.</summary>
    public double GaugeErrorMm { get; init; } = TreadDepths.UsualGaugeErrorMm;

    /// <summary>The depth at which the tyre is to be replaced, mm.</summary>
    public double LimitMm { get; init; } = TreadDepths.LegalLeastMm;

    /// <summary>The damage found; empty where none was.</summary>
    public IReadOnlyList<TyreDamage> Damage { get; init; } = [];

    /// <summary>Age, years.</summary>
    public double? AgeYears { get; init; }

    /// <summary>True when it may be older than that, because its code leaves the decade open.</summary>
    public bool MayBeOlder { get; init; }

    /// <summary>The least depth anywhere, mm.</summary>
    public double? ShallowestMm => LeastDepthMm is { } depth ? Math.Min(depth.Outer, Math.Min(depth.Centre, depth.Inner)) : null;
}

/// <summary>Damage that the eye finds on a tyre.</summary>
public enum TyreDamage
{
    /// <summary>Cords show through tread or sidewall.</summary>
    CordsVisible,

    /// <summary>Tread or ply comes away.</summary>
    Separation,

    /// <summary>The sidewall bulges.</summary>
    Bulge,

    /// <summary>A cut.</summary>
    Cut,

    /// <summary>The sidewall is cracked.</summary>
    CrackedSidewall,
}

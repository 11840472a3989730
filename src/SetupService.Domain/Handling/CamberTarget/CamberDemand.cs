using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>What the outer wheel of an axle is asked for.</summary>
public sealed record CamberDemand
{
    /// <summary>Which axle.</summary>
    public required CarAxle Axle { get; init; }

    /// <summary>The corners; at least one with lateral acceleration and share above nothing.</summary>
    public required IReadOnlyList<BendShare> Corners { get; init; }

    /// <summary>Inclination to the road that the mean is to have, degrees; negative = top towards the car's centre.</summary>
    public double TargetInclinationDeg { get; init; }

    /// <summary>Static cambers that the adjustment reaches, degrees; null = any.</summary>
    public (double MinimumDeg, double MaximumDeg)? Adjustable { get; init; }

    /// <summary>What the tyres are known to hold, g; null = nothing is known beyond the hardest corner.</summary>
    public double? HeldLateralG { get; init; }

    /// <summary>The hardest of the corners.</summary>
    public BendShare Hardest => Corners.MaxBy(corner => corner.Demand.LateralG);

    /// <summary>The tightest of the corners that have a share and lateral acceleration.</summary>
    public BendShare Tightest => Corners.Where(corner => corner.Share > 0 && corner.Demand.LateralG > 0).MinBy(corner => corner.Demand.RadiusM);
}

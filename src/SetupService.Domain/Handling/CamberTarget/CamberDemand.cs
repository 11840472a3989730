using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>The bends and the inclination wanted of an axle's outer wheel.</summary>
public sealed record CamberDemand
{
    /// <summary>Which axle.</summary>
    public required CarAxle Axle { get; init; }

    /// <summary>The corners; at least one with lateral acceleration and share above nothing.</summary>
    public required IReadOnlyList<BendShare> Corners { get; init; }

    /// <summary>Inclination to the road that the mean is to have, degrees; negative = top towards the car's centre.</summary>
    public double TargetInclinationDeg { get; init; }

    /// <summary>How far the axle's camber can be set; null = nobody said.</summary>
    public AngleReach? Reach { get; init; }

    /// <summary>The hardest of the corners.</summary>
    public BendShare Hardest => Corners.MaxBy(corner => corner.Demand.LateralG);

    /// <summary>The tightest of the corners that have a share and lateral acceleration.</summary>
    public BendShare Tightest => Corners.Where(corner => corner.Share > 0 && corner.Demand.LateralG > 0).MinBy(corner => corner.Demand.RadiusM);

    /// <summary>A car with both wheels of the axle set to one static camber, degrees.</summary>
    internal HandlingCar Set(HandlingCar car, double camberDeg) =>
        car.With(Axle, car.At(Axle) with { LeftCamberDeg = camberDeg, RightCamberDeg = camberDeg });
}

/// <summary>One kind of corner of a demand, with how much of it there is.</summary>
/// <param name="Demand">The turn.</param>
/// <param name="Share">How much time is spent in it beside the others; any scale, not negative.</param>
/// <param name="IsAtSpeed">True when its speed is what is known, so that its radius goes with the lateral acceleration.</param>
public readonly record struct BendShare(CorneringDemand Demand, double Share, bool IsAtSpeed = false)
{
    /// <summary>The same corner with this many times the lateral acceleration; its speed or its radius stays, whichever is known.</summary>
    public BendShare Harder(double times) => this with
    {
        Demand = Demand with { LateralG = times * Demand.LateralG, RadiusM = IsAtSpeed ? Demand.RadiusM / times : Demand.RadiusM },
    };
}

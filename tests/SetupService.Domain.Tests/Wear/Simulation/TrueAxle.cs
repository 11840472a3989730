using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>How one axle truly is.</summary>
internal sealed record TrueAxle
{
    public required CarAxle Place { get; init; }

    /// <summary>Static load of one wheel, N.</summary>
    public required double WheelLoadN { get; init; }

    public required TrueTyre Tyre { get; init; }

    public required TrueWheel Left { get; init; }

    public required TrueWheel Right { get; init; }

    public bool IsDriven { get; init; }

    /// <summary>Load that goes from the inner wheel to the outer per g, as a share of the static load.</summary>
    public double LoadTransferPerG { get; init; } = 0.6;

    /// <summary>Camber the outer wheel loses to the road per g by roll and what the links give back, degrees.</summary>
    public double RollCamberLossDegPerG { get; init; } = 1.8;

    /// <summary>Negative camber the outer wheel gains by caster and steer per g, degrees; 0 on an axle that does not steer.</summary>
    public double SteerCamberGainDegPerG { get; init; }

    /// <summary>Share of the angle between its wheels' mean direction and the car's at which the axle drags instead of finding its own way.</summary>
    public double DragShare { get; init; }

    /// <summary>Toe by which loose bushes let the wheels swing, degrees, root mean square.</summary>
    public double LooseToeDeg { get; init; }

    /// <summary>Share of the road's distance with spinning wheels.</summary>
    public double SpunRoadShare { get; init; }

    /// <summary>Share of the track's distance with spinning wheels.</summary>
    public double SpunTrackShare { get; init; }

    /// <summary>Track wear by a tread too cold or too hot against one within its window.</summary>
    public double TemperatureWear { get; init; } = 1;

    /// <summary>Tread temperature meant for the axle, °C; null = as its work makes it.</summary>
    public double? SetTreadC { get; init; }

    /// <summary>Toe of each wheel where the two share it evenly, degrees.</summary>
    public double MeanToeDeg => (Left.ToeDeg + Right.ToeDeg) / 2;

    /// <summary>How far the axle points to the left of straight on, degrees; a left wheel that toes in points to the right.</summary>
    public double ThrustDeg => (Right.ToeDeg - Left.ToeDeg) / 2;

    /// <summary>Negative camber that stands the outer tread flat in a turn, degrees.</summary>
    public double NeededNegativeCamberDeg(double lateralG) =>
        lateralG * (RollCamberLossDegPerG - SteerCamberGainDegPerG + Tyre.SideForceCamberDeg);

    public TrueWheel At(bool isLeft) => isLeft ? Left : Right;
}

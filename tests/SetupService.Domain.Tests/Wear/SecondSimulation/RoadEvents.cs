namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>One thing a car does over a share of its way.</summary>
/// <param name="Share">Share of the way.</param>
/// <param name="LateralG">Lateral acceleration, g, positive = to the left.</param>
/// <param name="LongitudinalG">Longitudinal acceleration, g, negative = braking.</param>
internal readonly record struct RoadEvent(double Share, double LateralG, double LongitudinalG)
{
    /// <summary>Slip the driver adds at the front beyond what the bend needs, rad.</summary>
    public double FrontExcessSlip { get; init; }

    /// <summary>Slip ratio of the driven wheels beyond what the drive needs.</summary>
    public double SpinRatio { get; init; }
}

/// <summary>How somebody drives, and where.</summary>
/// <param name="Eagerness">Lateral and longitudinal acceleration against a usual driver's; 1 = usual.</param>
/// <param name="LeftShare">Share of bends that of roads go left; roundabouts and ramps make it differ from a half.</param>
/// <param name="TrackLeftShare">The same on track.</param>
/// <param name="TrackG">Lateral acceleration in the track's bends, g.</param>
/// <param name="TrackBendShare">Share of a lap spent in bends.</param>
/// <param name="OverdrivesFront">Whether he steers more than the front tyres can use.</param>
/// <param name="SpinsWheels">Whether he spins the driven wheels out of bends and from rest.</param>
internal sealed record Driver(double Eagerness, double LeftShare, double TrackLeftShare, double TrackG, double TrackBendShare, bool OverdrivesFront, bool SpinsWheels)
{
    /// <summary>
    /// A way by road. The shares are judgement, no source: mostly straight, some easy bends, few hard ones, some steering at a walk.
    /// </summary>
    public RoadEvent[] Road()
    {
        var (left, right) = (LeftShare, 1 - LeftShare);
        return
        [
            new(0.71, 0, 0.015),
            new(0.12 * left, 0.12 * Eagerness, 0.01), new(0.12 * right, -0.12 * Eagerness, 0.01),
            new(0.05 * left, 0.26 * Eagerness, 0), new(0.05 * right, -0.26 * Eagerness, 0),
            new(0.010 * left, 0.42 * Eagerness, 0), new(0.010 * right, -0.42 * Eagerness, 0),
            new(0.0075, 0.08, 0.05) { FrontExcessSlip = 0.03 }, new(0.0075, -0.08, 0.05) { FrontExcessSlip = 0.03 },
            new(0.035, 0, -0.17 * Eagerness),
            new(0.05, 0, 0.14 * Eagerness) { SpinRatio = SpinsWheels ? 0.035 : 0 },
        ];
    }

    /// <summary>A lap of a track, or a run up a hill.</summary>
    public RoadEvent[] Track()
    {
        var excess = OverdrivesFront ? 0.075 : 0;
        var spin = SpinsWheels ? 0.07 : 0;
        var straight = 1 - TrackBendShare;
        return
        [
            new(straight * 0.62, 0, 0.12),
            new(straight * 0.23, 0, -0.72 * TrackG),
            new(straight * 0.15, 0, 0.25) { SpinRatio = spin / 2 },
            new(TrackBendShare * TrackLeftShare * 0.65, TrackG, 0) { FrontExcessSlip = excess },
            new(TrackBendShare * TrackLeftShare * 0.35, 0.7 * TrackG, 0.15) { SpinRatio = spin },
            new(TrackBendShare * (1 - TrackLeftShare) * 0.65, -TrackG, 0) { FrontExcessSlip = excess },
            new(TrackBendShare * (1 - TrackLeftShare) * 0.35, -0.7 * TrackG, 0.15) { SpinRatio = spin },
        ];
    }
}

using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>
/// Moves a wheel over its travel and, within each travel, over the rack. Ask <see cref="TryNext"/> for one position after the other; nothing is
/// allocated between them.
/// </summary>
public sealed class TravelSweep
{
    private readonly SweepRange _travel;
    private readonly SweepRange _rack;
    private readonly AxleInputs _axle;
    private readonly SuspensionTracker _left;
    private readonly SuspensionTracker _mirroredRight;
    private readonly double? _axisTrackMm;
    private readonly double _bumpSteerFactor;
    private int _next;

    private TravelSweep(SweepRange travel, SweepRange rack, AxleInputs axle, SuspensionTracker left, SuspensionTracker mirroredRight)
    {
        (_travel, _rack, _axle, _left, _mirroredRight) = (travel, rack, axle, left, mirroredRight);
        _axisTrackMm = 2 * (left.AtRide?.HalfTrackMm - left.AxisOffsetMm);
        _bumpSteerFactor = axle.MeasuringDiameterMm * double.DegreesToRadians(1);
    }

    /// <summary>How many positions there are.</summary>
    public long Count => (long)_travel.Count * _rack.Count;

    /// <summary>The ends of the travel from the present ride height, mm, the rack in the middle.</summary>
    public (double FromMm, double ToMm) Reach => _left.Reach;

    /// <summary>Whether steer is known at all, so that rows tell of both wheels.</summary>
    public bool TellsSteer => _left.TellsSteer;

    /// <summary>The figures every row leaves out, and why.</summary>
    public IReadOnlyList<FigureGap> Gaps => _left.Gaps(_axle);

    /// <summary>Makes a sweep; null where the suspension contradicts itself, or does not hold its wheel at the present ride height.</summary>
    /// <param name="suspension">What is known of the suspension.</param>
    /// <param name="setup">How the wheel is set; travel counts from its present ride height.</param>
    /// <param name="travel">Travels, mm.</param>
    /// <param name="rack">Rack travels, mm.</param>
    /// <param name="axle">What is known of the whole axle.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    public static TravelSweep? Start(SuspensionModel suspension, WheelSetup setup, SweepRange travel, SweepRange rack, AxleInputs axle, WorkBudget? budget = null) =>
        SuspensionTracker.Start(suspension, setup, budget) is { } left && SuspensionTracker.Start(suspension, setup, budget) is { } right
            ? new TravelSweep(travel, rack, axle, left, right)
            : null;

    /// <summary>Makes a sweep of a mechanism at its stated position; null where it does not close there, or does not hold its wheel.</summary>
    /// <param name="corner">The mechanism.</param>
    /// <param name="travel">Travels, mm.</param>
    /// <param name="rack">Rack travels, mm.</param>
    /// <param name="axle">What is known of the whole axle.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    /// <param name="rideHeightChangeMm">How much higher the body stands than at the stated position, mm; travel counts from there.</param>
    public static TravelSweep? Start(CornerMechanism corner, SweepRange travel, SweepRange rack, AxleInputs axle, WorkBudget? budget = null, double rideHeightChangeMm = 0) =>
        HardpointTracker.Start(corner, rideHeightChangeMm, budget) is { } left && HardpointTracker.Start(corner, rideHeightChangeMm, budget) is { } right
            ? new TravelSweep(travel, rack, axle, left, right)
            : null;

    /// <summary>The next position: its row where it was reached, else why it was not. False at the end.</summary>
    public bool TryNext(out SweepRow? row, out UnreachablePosition? unreachable)
    {
        row = null;
        unreachable = null;
        if (_next >= Count) return false;
        var (line, place) = Math.DivRem(_next++, _rack.Count);
        var (travelMm, rackMm) = (_travel[line], _rack[place]);
        if (!_left.TryReach(travelMm, rackMm, out var wheel))
        {
            unreachable = _left.WhyNot(travelMm, rackMm);
            return true;
        }

        row = new SweepRow(
            wheel,
            _left.TellsSteer ? Pair(wheel) : null,
            AntiFigures.Compute(wheel.ContactForwardSlope, wheel.CentreForwardSlope, _axle),
            _bumpSteerFactor * Math.Cos(double.DegreesToRadians(wheel.ToeDeg ?? 0)) * wheel.ToeGainDegPerMm);
        return true;
    }

    private SteeringPair? Pair(in SuspensionPosition left)
    {
        if (left.ToeDeg is not { } leftToeDeg) return null;
        if (left.RackMm == 0) return SteeringPair.Compute((leftToeDeg, left.ContactForwardMm), (leftToeDeg, left.ContactForwardMm), _axisTrackMm, _axle.WheelbaseMm);
        return _mirroredRight.TryReach(left.TravelMm, -left.RackMm, out var right) && right.ToeDeg is { } rightToeDeg
            ? SteeringPair.Compute((leftToeDeg, left.ContactForwardMm), (rightToeDeg, right.ContactForwardMm), _axisTrackMm, _axle.WheelbaseMm)
            : null;
    }
}

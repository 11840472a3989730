using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>
/// Walks a corner over wheel travel and, within each travel, over the rack. Ask <see cref="TryNext"/> for one position after the
/// other; nothing is allocated between them.
/// </summary>
public sealed class TravelSweep
{
    private readonly CornerMechanism _corner;
    private readonly SweepRange _travel;
    private readonly SweepRange _rack;
    private readonly AxleInputs _axle;
    private readonly PositionTracker _left;
    private readonly PositionTracker _mirroredRight;
    private readonly double? _axisTrackMm;
    private readonly double _bumpSteerFactor;
    private readonly WorkBudget? _budget;
    private int _next;

    private TravelSweep(CornerMechanism corner, SweepRange travel, SweepRange rack, AxleInputs axle, PositionTracker left, PositionTracker right, WorkBudget? budget)
    {
        _budget = budget;
        _corner = corner;
        _travel = travel;
        _rack = rack;
        _axle = axle;
        _left = left;
        _mirroredRight = right;
        Stated = WheelKinematics.Compute(corner, left.Origin);
        _axisTrackMm = 2 * (Stated.HalfTrackMm - AxisOffsetMm(corner, left.Origin));
        _bumpSteerFactor = axle.MeasuringDiameterMm * double.DegreesToRadians(1);
    }

    /// <summary>The stated position's figures.</summary>
    public WheelFigures Stated { get; }

    /// <summary>How many positions there are.</summary>
    public long Count => (long)_travel.Count * _rack.Count;

    /// <summary>Makes a sweep; null where the corner does not close at its stated position, or does not hold its wheel there.</summary>
    public static TravelSweep? Start(CornerMechanism corner, SweepRange travel, SweepRange rack, AxleInputs axle, WorkBudget? budget = null) =>
        PositionTracker.Start(corner, budget) is { } left && PositionTracker.Start(corner, budget) is { } right
            ? new TravelSweep(corner, travel, rack, axle, left, right, budget)
            : null;

    /// <summary>The next position: its row where it was reached, else why it was not. False at the end.</summary>
    public bool TryNext(out SweepRow? row, out UnreachablePosition? unreachable)
    {
        row = null;
        unreachable = null;
        if (_next >= Count) return false;
        var (line, place) = Math.DivRem(_next++, _rack.Count);
        var travelMm = _travel[line];
        var rackMm = _rack[place];
        if (!_left.TryReach(travelMm, rackMm, out var state))
        {
            unreachable = _budget is { IsSpent: true }
                ? UnreachablePosition.OfSpentWork(travelMm, rackMm, state)
                : UnreachablePosition.Of(_corner, travelMm, rackMm, state);
            return true;
        }

        var wheel = WheelKinematics.Compute(_corner, state);
        row = new SweepRow(
            wheel,
            _corner.HasRack ? Pair(wheel) : null,
            AntiFigures.Of(wheel, _axle),
            _bumpSteerFactor * Math.Cos(double.DegreesToRadians(wheel.ToeDeg)) * wheel.ToeGainDegPerMm);
        return true;
    }

    private SteeringPair? Pair(in WheelFigures left)
    {
        if (left.RackMm == 0) return SteeringPair.Of(left, left, _axisTrackMm, _axle.WheelbaseMm);
        return _mirroredRight.TryReach(left.TravelMm, -left.RackMm, out var state)
            ? SteeringPair.Of(left, WheelKinematics.Compute(_corner, state), _axisTrackMm, _axle.WheelbaseMm)
            : null;
    }

    /// <summary>From the steering axis at the ground outboard to the contact centre, mm.</summary>
    private static double? AxisOffsetMm(CornerMechanism corner, in SuspensionPose state)
    {
        var contact = WheelKinematics.Wheel(corner, state).Contact(corner.Setting.LoadedRadiusMm);
        return contact.Y - WheelKinematics.Axis(corner, state)?.AtHeight(contact.Z).Y;
    }
}

using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>Follows a wheel on its hardpoints.</summary>
internal sealed class HardpointTracker : SuspensionTracker
{
    private readonly CornerMechanism _corner;
    private readonly WorkBudget? _budget;
    private readonly double _rideTravelMm;
    private readonly SuspensionPose _stated;
    private readonly SuspensionPose _ride;
    private SuspensionPose _reached;
    private SuspensionPose _asked;

    private HardpointTracker(CornerMechanism corner, in SuspensionPose stated, double rideTravelMm, in SuspensionPose ride, WorkBudget? budget)
    {
        (_corner, _stated, _rideTravelMm, _ride, _reached, _asked, _budget) = (corner, stated, rideTravelMm, ride, ride, ride, budget);
    }

    /// <inheritdoc />
    public override SuspensionPosition? AtRide => SuspensionPosition.From(WheelKinematics.Compute(_corner, _ride), _rideTravelMm);

    /// <inheritdoc />
    public override bool TellsSteer => _corner.HasRack;

    /// <inheritdoc />
    public override double? AxisOffsetMm
    {
        get
        {
            var contact = WheelKinematics.Wheel(_corner, _ride).Contact(_corner.Setting.LoadedRadiusMm);
            return contact.Y - WheelKinematics.Axis(_corner, _ride)?.AtHeight(contact.Z).Y;
        }
    }

    /// <inheritdoc />
    public override (double FromMm, double ToMm) Reach
    {
        get
        {
            var (fromMm, toMm) = ReachableTravel.Of(_corner);
            return (fromMm - _rideTravelMm, toMm - _rideTravelMm);
        }
    }

    /// <summary>Starts at a ride height so much higher than the stated one, mm; null where the corner does not close there or does not hold its wheel.</summary>
    public static HardpointTracker? Start(CornerMechanism corner, double rideHeightChangeMm, WorkBudget? budget)
    {
        if (!PoseContinuation.TryStart(corner, out var stated)) return null;
        var last = stated;
        return PoseContinuation.TryReach(corner, stated, -rideHeightChangeMm, 0, ref last, out var ride, budget)
            ? new HardpointTracker(corner, stated, -rideHeightChangeMm, ride, budget)
            : null;
    }

    /// <inheritdoc />
    public override bool TryReach(double travelMm, double rackMm, out SuspensionPosition position)
    {
        if (!PoseContinuation.TryReach(_corner, _stated, _rideTravelMm + travelMm, rackMm, ref _reached, out _asked, _budget))
        {
            position = default;
            return false;
        }

        position = SuspensionPosition.From(WheelKinematics.Compute(_corner, _asked), _rideTravelMm);
        return true;
    }

    /// <inheritdoc />
    public override UnreachablePosition WhyNot(double travelMm, double rackMm)
    {
        var missed = _budget is { IsSpent: true }
            ? UnreachablePosition.OfSpentWork(_rideTravelMm + travelMm, rackMm, _asked)
            : UnreachablePosition.Of(_corner, _rideTravelMm + travelMm, rackMm, _asked);
        return missed with { TravelMm = travelMm, LastTravelMm = missed.LastTravelMm - _rideTravelMm };
    }

    /// <inheritdoc />
    public override IReadOnlyList<FigureGap> Gaps(in AxleInputs axle) => SweepGaps.Of(_corner, axle);
}

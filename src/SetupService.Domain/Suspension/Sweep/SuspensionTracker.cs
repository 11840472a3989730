using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>
/// Follows one wheel from position to position and tells what its suspension knows there. Keeps the last position, so it is not safe for several
/// threads; nothing is allocated between positions.
/// </summary>
public abstract class SuspensionTracker
{
    private protected SuspensionTracker()
    {
    }

    /// <summary>The wheel at the present ride height, the rack in the middle; null where what is known of it does not reach that height.</summary>
    public abstract SuspensionPosition? AtRide { get; }

    /// <summary>Whether steer is known at all, so that both wheels of the axle can be told of together.</summary>
    public abstract bool TellsSteer { get; }

    /// <summary>Distance from the steering axis at the ground outboard to the contact at ride height, mm; null where it is not known.</summary>
    public virtual double? AxisOffsetMm => null;

    /// <summary>The ends of the travel from the present ride height, mm, the rack in the middle.</summary>
    public abstract (double FromMm, double ToMm) Reach { get; }

    /// <summary>Starts at the present ride height; null where the suspension contradicts itself, does not hold its wheel or does not reach it.</summary>
    /// <param name="suspension">What is known of the suspension.</param>
    /// <param name="setup">How the wheel is set.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    public static SuspensionTracker? Start(SuspensionModel suspension, WheelSetup setup, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(suspension);
        ArgumentNullException.ThrowIfNull(setup);
        return suspension switch
        {
            _ when suspension.Contradictions.Count > 0 => null,
            HardpointSuspension points => HardpointTracker.Start(points.Mechanism(setup), setup.RideHeightChangeMm, budget),
            MeasuredSuspension { Corner: { } corner } => new TabulatedTracker(corner, setup, budget),
            _ => null,
        };
    }

    /// <summary>Goes to a wheel travel from the present ride height and a rack travel, mm.</summary>
    /// <returns>False where it cannot be there, or nothing is known of it there; <see cref="WhyNot"/> then tells why.</returns>
    public abstract bool TryReach(double travelMm, double rackMm, out SuspensionPosition position);

    /// <summary>Why the position last asked for was not reached.</summary>
    public abstract UnreachablePosition WhyNot(double travelMm, double rackMm);

    /// <summary>The figures left out at every position, and why.</summary>
    /// <param name="axle">What is known of the whole axle.</param>
    public abstract IReadOnlyList<FigureGap> Gaps(in AxleInputs axle);
}

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
            var (fromMm, toMm) = ReachableTravel.Find(_corner);
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
            ? UnreachablePosition.ForSpentWork(_rideTravelMm + travelMm, rackMm, _asked)
            : UnreachablePosition.From(_corner, _rideTravelMm + travelMm, rackMm, _asked);
        return missed with { TravelMm = travelMm, LastTravelMm = missed.LastTravelMm - _rideTravelMm };
    }

    /// <inheritdoc />
    public override IReadOnlyList<FigureGap> Gaps(in AxleInputs axle) => SweepGaps.Find(_corner, axle);
}

/// <summary>Follows a wheel by readings: camber and toe over travel, the steering axis at the height it was read, nothing over the rack.</summary>
internal sealed class TabulatedTracker(MeasuredCorner corner, WheelSetup setup, WorkBudget? budget) : SuspensionTracker
{
    private readonly double _rideTravelMm = -setup.RideHeightChangeMm;
    private readonly double? _halfTrackMm = setup.TrackMm > 0 ? setup.TrackMm / 2 : null;

    // Toe is set after it was read, so its curve keeps its shape and goes through what is stated.
    private readonly double _toeShiftDeg = setup.ToeDeg - corner.ToeDegAt(0) ?? 0;

    /// <inheritdoc />
    public override SuspensionPosition? AtRide => TryReach(0, 0, out var position) ? position : null;

    /// <inheritdoc />
    public override bool TellsSteer => corner.ToeGap is null || setup.ToeDeg is not null;

    /// <inheritdoc />
    public override (double FromMm, double ToMm) Reach =>
        (corner.FirstMm - MeasuredSuspension.ExtensionMm - _rideTravelMm, corner.LastMm + MeasuredSuspension.ExtensionMm - _rideTravelMm);

    /// <inheritdoc />
    public override bool TryReach(double travelMm, double rackMm, out SuspensionPosition position)
    {
        position = default;
        var atMm = _rideTravelMm + travelMm;
        if ((budget is not null && !budget.TrySpend()) || rackMm != 0 || corner.CamberAt(atMm) is not { } camber) return false;
        var toe = corner.ToeAt(atMm);
        var toeDeg = toe is { } read ? read.AngleDeg with { Value = read.AngleDeg.Value + _toeShiftDeg } : StatedToe(atMm);
        position = new()
        {
            TravelMm = travelMm,
            RackMm = 0,
            CamberDeg = camber.AngleDeg.Value,
            CamberErrorDeg = camber.AngleDeg.StandardError,
            ToeDeg = toeDeg?.Value,
            ToeErrorDeg = toeDeg?.StandardError,
            CasterDeg = atMm == 0 ? corner.CasterDeg?.Value : null,
            SteeringAxisInclinationDeg = atMm == 0 ? corner.SteeringAxisInclinationDeg?.Value : null,
            HalfTrackMm = _halfTrackMm,
            CamberGainDegPerMm = camber.SlopeDegPerMm.Value,
            ToeGainDegPerMm = toe?.SlopeDegPerMm.Value,
        };
        return true;
    }

    /// <inheritdoc />
    public override UnreachablePosition WhyNot(double travelMm, double rackMm)
    {
        var reason = budget is { IsSpent: true } ? UnreachableReason.WorkSpent : rackMm != 0 ? UnreachableReason.RackNotRead : UnreachableReason.BeyondReadings;
        var (fromMm, toMm) = Reach;
        return new(travelMm, rackMm, reason, default, Math.Clamp(travelMm, fromMm, toMm), 0)
        {
            BeyondMm = reason == UnreachableReason.BeyondReadings ? Math.Max(fromMm - travelMm, travelMm - toMm) : 0,
            ReadFromMm = corner.FirstMm - _rideTravelMm,
            ReadToMm = corner.LastMm - _rideTravelMm,
        };
    }

    /// <inheritdoc />
    public override IReadOnlyList<FigureGap> Gaps(in AxleInputs axle) => TabulatedGaps.Find(corner, _halfTrackMm is not null);

    private Estimate? StatedToe(double atMm) => atMm == 0 && setup.ToeDeg is { } stated ? new Estimate(stated, 0) : null;
}

using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Suspension;

/// <summary>A suspension known by its hardpoints: every figure follows, exactly as far as the points are exact.</summary>
public sealed class HardpointSuspension : SuspensionModel
{
    // Differences closer than this, mm, drown in what the solver leaves open.
    private const double LeastStepMm = 1e-3;

    private readonly Lazy<IReadOnlyList<Contradiction>> _contradictions;
    private KnownMotion? _known;
    private KnownMotion? _knownBefore;
    private CornerMechanism? _mechanism;

    internal HardpointSuspension(Hardpoints points, double pointErrorMm = 0)
    {
        (Points, PointErrorMm) = (points, pointErrorMm);
        _contradictions = new(() => Suspension.Points.Contradictions.Find(points), LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>The points of the left corner at the stated position.</summary>
    public Hardpoints Points { get; }

    /// <summary>Standard deviation of each coordinate, mm; 0 where the points are exact.</summary>
    public override double PointErrorMm { get; }

    /// <inheritdoc />
    public override IEnumerable<(SuspensionModel More, SuspensionModel Less)> Moved() => PointErrorMm > 0
        ? MovedPoints.List(Points).Select(coordinate => ((SuspensionModel)new HardpointSuspension(coordinate(StepMm)), (SuspensionModel)new HardpointSuspension(coordinate(-StepMm))))
        : [];

    /// <inheritdoc />
    public override double Deviation(double withMore, double withLess) => (withMore - withLess) * PointErrorMm / (2 * StepMm);

    private double StepMm => Math.Max(LeastStepMm, PointErrorMm);

    /// <inheritdoc />
    public override SuspensionLayout? Layout => Points switch
    {
        MacPhersonStrut => SuspensionLayout.MacPhersonStrut,
        DoubleWishbone => SuspensionLayout.DoubleWishbone,
        FiveLink => SuspensionLayout.FiveLink,
        TwistBeam => SuspensionLayout.TwistBeam,
        _ => SuspensionLayout.SemiTrailingArm,
    };

    /// <inheritdoc />
    public override SuspensionFigures Tells => SuspensionFigures.CamberOverTravel | SuspensionFigures.RollCentre
        | SuspensionFigures.SteeringAxis | SuspensionFigures.SteeringLinkage | SuspensionFigures.Track
        | (Points.Spring is not null || Points is MacPhersonStrut ? SuspensionFigures.SpringMotionRatio : SuspensionFigures.None);

    /// <inheritdoc />
    public override IReadOnlyList<Contradiction> Contradictions => _contradictions.Value;

    /// <inheritdoc />
    public override bool HasTwoMotions => Points is TwistBeam;

    /// <inheritdoc />
    public override bool HasTieRod => Points.HasTieRod;

    /// <inheritdoc />
    public override IReadOnlyList<Assumption> Assumptions(string axle, WheelSetup setup) => SuspensionAssumptions.Find(Points, axle, setup, AtStated(setup));

    /// <inheritdoc />
    public override RideHeightGap WhyNotAtRide(WheelSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        return setup.RideHeightChangeMm == 0 || AtStated(setup) is null
            ? new(SuspensionGapKind.DoesNotHold, "the points leave the wheel a free movement at the stated position; one part's line runs through the axis the others leave it.", "/suspension/points")
            : new(SuspensionGapKind.TravelNotReached, "with the body so much higher or lower the suspension's parts do not meet.", "/rideHeightChangeMm");
    }

    /// <inheritdoc />
    public override double? ScrubRadiusMm(WheelSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var corner = Mechanism(setup);
        return PoseContinuation.TryStart(corner, out var pose) && (setup.RideHeightChangeMm == 0 || PoseContinuation.TryMove(corner, -setup.RideHeightChangeMm, 0, ref pose))
            ? WheelKinematics.Compute(corner, pose).ScrubRadiusMm
            : null;
    }

    /// <inheritdoc />
    public override SuspensionModel WithWheelMoved(double outboardMm, WheelSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        return new HardpointSuspension(Points with { WheelCentre = Points.WheelCentre + (outboardMm * WheelPlane.SpinOf(setup.CamberDeg ?? 0, setup.ToeDeg ?? 0)) }, PointErrorMm);
    }

    /// <inheritdoc />
    public override StatedFigures? AtStated(WheelSetup setup)
    {
        var corner = Mechanism(setup);
        if (!PoseContinuation.TryStart(corner, out var pose)) return null;
        var figures = WheelKinematics.Compute(corner, pose);
        return new StatedFigures
        {
            CasterDeg = figures.CasterDeg,
            SteeringAxisInclinationDeg = figures.SteeringAxisInclinationDeg,
            SpringMotionRatio = figures.SpringMotionRatio,
            DamperMotionRatio = figures.DamperMotionRatio,
            RollCentreHeightMm = figures.RollCentreHeightMm,
            HalfTrackMm = figures.HalfTrackMm,
        };
    }

    /// <inheritdoc />
    public override WheelMotion? MotionOf(WheelSetup setup)
    {
        // A car asks for the same motion again and again: its ride, its stops and its turns each by themselves, both wheels of an axle set alike, before and after a change.
        if (_known is { } known && known.Setup == setup) return known.Motion;
        if (_knownBefore is { } before && before.Setup == setup) return before.Motion;
        var motion = HardpointMotion.From(Mechanism(setup), setup);
        (_knownBefore, _known) = (_known, new(setup, motion));
        return motion;
    }

    /// <inheritdoc />
    public override WheelPath PathOver(WheelSetup setup, double fromMm, double toMm, WorkBudget? budget = null)
    {
        if (Contradictions.Count > 0)
        {
            var first = Contradictions[0];
            return Unknown(setup, new(SuspensionGapKind.Contradicts, ["/suspension/points/" + first.Member]) { Member = first.Member });
        }

        var corner = Mechanism(setup);
        if (!PoseContinuation.TryStart(corner, out var pose))
            return Unknown(setup, new(SuspensionGapKind.DoesNotHold, ["/suspension/points"]));
        var places = new List<WheelPathPoint>();
        var statedY = pose.Pose.Centre.Y;
        var statedCamberDeg = WheelKinematics.Wheel(corner, pose).CamberDeg;
        SuspensionGap? gap = null;
        foreach (var travelMm in PathTravels.Between(fromMm, toMm))
        {
            if (!PoseContinuation.TryMove(corner, travelMm, 0, ref pose, budget))
            {
                gap = budget is { IsSpent: true } ? new(SuspensionGapKind.WorkSpent, []) : new(SuspensionGapKind.TravelNotReached, ["/suspension/points"]) { ReachedMm = pose.TravelMm };
                break;
            }

            var wheel = WheelKinematics.Wheel(corner, pose);
            places.Add(new(travelMm, wheel.CamberDeg, pose.Pose.Centre.Y - statedY));
        }

        return new() { Points = places, StatedCamberDeg = statedCamberDeg, Gap = gap };
    }

    /// <inheritdoc />
    public override CornerMechanism Mechanism(WheelSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        var (camberDeg, toeDeg) = (setup.CamberDeg ?? 0, setup.ToeDeg ?? 0);
        if (_mechanism is { Setting: var known } mechanism && known.CamberDeg == camberDeg && known.ToeDeg == toeDeg && known.LoadedRadiusMm == setup.LoadedRadiusMm && known.Motion == setup.Motion) return mechanism;
        return _mechanism = MechanismBuilder.Build(new CornerSetting
        {
            Suspension = Points,
            CamberDeg = camberDeg,
            ToeDeg = toeDeg,
            LoadedRadiusMm = setup.LoadedRadiusMm,
            Motion = setup.Motion,
        });
    }

    /// <summary>A motion asked for; written whole, so that several threads may ask.</summary>
    private sealed record KnownMotion(WheelSetup Setup, WheelMotion? Motion);

    private static WheelPath Unknown(WheelSetup setup, SuspensionGap gap) =>
        new() { Points = [], StatedCamberDeg = setup.CamberDeg ?? 0, Gap = gap, SidewaysGap = gap };
}

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
    public override IReadOnlyList<Assumption> Assumptions(string axle, WheelSetup setup) => SuspensionAssumptions.Find(Points, axle, setup);

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

/// <summary>A wheel moved by the hardpoints of its suspension, exactly.</summary>
internal sealed class HardpointMotion : WheelMotion
{
    // Half-width of the difference, mm: of the third order it leaves a share of some 1e-13.
    private const double BendStepMm = 0.05;

    // Who is refused a position here tries one nearer: no sense in creeping up to a dead point for each of them.
    private const double ShortestShare = 1.0 / 64;

    private readonly CornerMechanism _corner;
    private readonly double _rideTravelMm;
    private readonly double _motionRatio;
    private readonly double _damperMotionRatio;
    private readonly double _addedCasterDeg;
    private readonly SuspensionPose _origin;
    private readonly double _rideContactHeightMm;
    private readonly double _rideSpringLengthMm;

    private HardpointMotion(CornerMechanism corner, WheelSetup setup, SuspensionPose origin, in WheelFigures atRide)
    {
        _corner = corner;
        _origin = origin;
        _rideTravelMm = -setup.RideHeightChangeMm;
        _motionRatio = setup.SpringMotionRatio;
        _damperMotionRatio = setup.DamperMotionRatio;
        _addedCasterDeg = setup.AddedCasterDeg;
        _rideContactHeightMm = atRide.ContactHeightMm;
        _rideSpringLengthMm = atRide.SpringLengthMm ?? 0;
    }

    /// <inheritdoc />
    public override SuspensionPose Origin => _origin;

    /// <summary>Makes the motion; null where the points do not close at ride height.</summary>
    public static HardpointMotion? From(CornerMechanism corner, WheelSetup setup)
    {
        if (!PoseContinuation.TryStart(corner, out var pose)) return null;
        return setup.RideHeightChangeMm == 0 || PoseContinuation.TryMove(corner, -setup.RideHeightChangeMm, 0, ref pose)
            ? new HardpointMotion(corner, setup, pose, WheelKinematics.Compute(corner, pose))
            : null;
    }

    /// <inheritdoc />
    public override bool TryAt(double travelMm, double steer, ref SuspensionPose pose, out WheelPose wheel, WorkBudget? budget = null)
    {
        var rackMm = _corner.HasRack ? steer : 0;
        if (!PoseContinuation.TryMove(_corner, _rideTravelMm + travelMm, rackMm, ref pose, budget, ShortestShare))
        {
            wheel = default;
            return false;
        }

        wheel = Read(pose, travelMm, steer);
        return true;
    }

    /// <inheritdoc />
    public override double? SpringRatioPerTravel(in SuspensionPose pose)
    {
        if (_corner.Spring is not { } spring) return 0;
        if (!PoseSolver.TryBend(_corner, pose, out var bend)) return null;
        return (Ratio(pose, BendStepMm) - Ratio(pose, -BendStepMm)) / (2 * BendStepMm);

        // So near, the place is known to second order and the movement to first, which is all a slope asks for.
        double Ratio(in SuspensionPose at, double mm)
        {
            var moved = at.Pose.MovedBy((mm * at.PerTravel.Velocity) + (0.5 * mm * mm * bend.Velocity), (mm * at.PerTravel.Spin) + (0.5 * mm * mm * bend.Spin));
            return spring.At(moved, moved.Turn.ToMatrix(), new UprightMotion(at.PerTravel.Velocity + (mm * bend.Velocity), at.PerTravel.Spin + (mm * bend.Spin))).MotionRatio;
        }
    }

    /// <inheritdoc />
    internal override WheelMotion Near(double travelMm, double steer, in SuspensionPose pose) => NearbyMotion.Create(this, travelMm, steer, pose);

    // What WheelKinematics computes, without the figures that no equilibrium asks for.
    private WheelPose Read(in SuspensionPose pose, double travelMm, double steer)
    {
        var turn = pose.Pose.Turn.ToMatrix();
        var plane = new WheelPlane(pose.Pose.Centre, turn.Apply(_corner.Stated.Spin));
        var contact = plane.Contact(_corner.Setting.LoadedRadiusMm);
        var byTravel = pose.PerTravel.At(contact - plane.Centre);
        var spinByTravel = pose.PerTravel.RateOf(plane.Spin);
        var spinBySteer = pose.PerRack.RateOf(plane.Spin);
        var bySteer = pose.PerRack.Velocity + plane.ContactChange(_corner.Setting.LoadedRadiusMm, spinBySteer);
        var spring = _corner.Spring?.At(pose.Pose, turn, pose.PerTravel);
        var damper = ReferenceEquals(_corner.Damper, _corner.Spring) ? spring : _corner.Damper?.At(pose.Pose, turn, pose.PerTravel);
        return new WheelPose
        {
            CamberDeg = plane.CamberDeg + AddedCasterCamberDeg(pose, plane),
            CamberPerTravel = plane.CamberChangeDeg(spinByTravel),
            CamberPerSteer = plane.CamberChangeDeg(spinBySteer),
            HeadingDeg = _corner.HasRack ? plane.SteerDeg : plane.SteerDeg + steer,
            HeadingPerTravel = -plane.ToeChangeDeg(spinByTravel),
            HeadingPerSteer = _corner.HasRack ? -plane.ToeChangeDeg(spinBySteer) : 1,
            ContactRiseMm = contact.Z - _rideContactHeightMm,
            HalfTrackMm = contact.Y,
            OutboardSlope = Math.Abs(byTravel.Z) > WheelKinematics.LeastRise ? byTravel.Y / byTravel.Z : 0,
            RisePerTravel = byTravel.Z,
            ContactForwardPerTravel = byTravel.X,
            CentreForwardPerTravel = pose.PerTravel.Velocity.X,
            RisePerSteer = bySteer.Z,
            OutboardPerSteer = bySteer.Y,
            SpringMotionRatio = spring?.MotionRatio ?? _motionRatio,
            SpringTravelMm = spring is { } sprung ? _rideSpringLengthMm - sprung.LengthMm : _motionRatio * travelMm,
            SpringTravelPerSteer = _corner.HasRack && _corner.Spring is { } line ? line.At(pose.Pose, turn, pose.PerRack).MotionRatio : 0,
            DamperMotionRatio = damper?.MotionRatio ?? _damperMotionRatio,
            HoldsInRoll = false,
        };
    }

    /// <summary>What a steering axis with more caster would add at the same heading: exact rotation about both, the points left where they are.</summary>
    private double AddedCasterCamberDeg(in SuspensionPose pose, in WheelPlane plane)
    {
        if (_addedCasterDeg == 0 || WheelKinematics.Axis(_corner, pose) is not { } axis) return 0;
        var inclinationDeg = axis.SteeringAxisInclinationDeg;
        var steerDeg = plane.SteerDeg + _corner.Setting.ToeDeg;
        return Turned(axis.CasterDeg + _addedCasterDeg) - Turned(axis.CasterDeg);

        double Turned(double caster) => SteerSweep.Create(new SteeredWheel
        {
            CasterDeg = caster,
            SteeringAxisInclinationDeg = inclinationDeg,
            CamberDeg = _corner.Setting.CamberDeg,
            ToeDeg = 0,
        }).At(steerDeg)?.CamberDeg ?? _corner.Setting.CamberDeg;
    }
}

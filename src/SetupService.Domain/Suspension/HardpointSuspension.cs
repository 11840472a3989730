using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension;

/// <summary>A suspension known by its hardpoints: every figure follows, exactly as far as the points are exact.</summary>
public sealed class HardpointSuspension : SuspensionModel
{
    private readonly Lazy<IReadOnlyList<Contradiction>> _contradictions;

    internal HardpointSuspension(Hardpoints points)
    {
        Points = points;
        _contradictions = new(() => Suspension.Points.Contradictions.Find(points), LazyThreadSafetyMode.PublicationOnly);
    }

    /// <summary>The points of the left corner at the stated position.</summary>
    public Hardpoints Points { get; }

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
    public override SuspensionFigures Tells => SuspensionFigures.CamberOverTravel | SuspensionFigures.RollCentre | SuspensionFigures.SpringMotionRatio
        | SuspensionFigures.SteeringAxis | SuspensionFigures.SteeringLinkage | SuspensionFigures.Track;

    /// <inheritdoc />
    public override IReadOnlyList<Contradiction> Contradictions => _contradictions.Value;

    /// <inheritdoc />
    public override bool HasTwoMotions => Points is TwistBeam;

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
    public override WheelMotion? MotionOf(WheelSetup setup) => HardpointMotion.From(Mechanism(setup), setup);

    /// <inheritdoc />
    public override WheelPath PathOver(WheelSetup setup, double fromMm, double toMm, WorkBudget? budget = null)
    {
        if (Contradictions.Count > 0)
        {
            var first = Contradictions[0];
            return Unknown(setup, new(SuspensionGapKind.Contradicts, first.Message, ["/suspension/points/" + first.Member]) { Member = first.Member });
        }

        var corner = Mechanism(setup);
        if (!PoseContinuation.TryStart(corner, out var pose))
            return Unknown(setup, new(SuspensionGapKind.DoesNotHold, "the points do not hold the wheel where they are stated", ["/suspension/points"]));
        var places = new List<WheelPathPoint>();
        var statedY = pose.Pose.Centre.Y;
        var statedCamberDeg = WheelKinematics.Wheel(corner, pose).CamberDeg;
        SuspensionGap? gap = null;
        foreach (var travelMm in PathTravels.Between(fromMm, toMm))
        {
            if (!PoseContinuation.TryMove(corner, travelMm, 0, ref pose, budget))
            {
                gap = budget is { IsSpent: true } ? new(SuspensionGapKind.WorkSpent, "the work allowed was spent", []) : TravelNotReached(travelMm, pose.TravelMm);
                break;
            }

            var wheel = WheelKinematics.Wheel(corner, pose);
            places.Add(new(travelMm, wheel.CamberDeg, wheel.ToeDeg, pose.Pose.Centre.Y - statedY));
        }

        return new() { Points = places, StatedCamberDeg = statedCamberDeg, Gap = gap };
    }

    /// <summary>The corner as five constraints, set so.</summary>
    public CornerMechanism Mechanism(WheelSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        return MechanismBuilder.Build(new CornerSetting
        {
            Suspension = Points,
            CamberDeg = setup.CamberDeg ?? 0,
            ToeDeg = setup.ToeDeg ?? 0,
            LoadedRadiusMm = setup.LoadedRadiusMm,
            Motion = setup.Motion,
        });
    }

    private static SuspensionGap TravelNotReached(double travelMm, double reachedMm) => new(
        SuspensionGapKind.TravelNotReached,
        Prose.Write(UnitSystem.Metric, $"the parts stop short of {travelMm:mm} of travel: they close up to {reachedMm:mm}"),
        ["/suspension/points"])
    {
        ReachedMm = reachedMm,
    };

    private static WheelPath Unknown(WheelSetup setup, SuspensionGap gap) =>
        new() { Points = [], StatedCamberDeg = setup.CamberDeg ?? 0, Gap = gap, SidewaysGap = gap, ToeGap = gap };
}

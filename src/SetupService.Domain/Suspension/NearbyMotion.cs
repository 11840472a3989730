using System.Runtime.CompilerServices;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension;

/// <summary>
/// A wheel's motion about one position to second order in travel and steer, for what asks the same neighbourhood again and again; further off the motion itself is asked.
/// </summary>
internal sealed class NearbyMotion : WheelMotion
{
    // Half-width of the differences, mm of travel and of rack: of the third order they leave a share of some 1e-7 of the slopes.
    private const double StepMm = 0.1;

    // As far as the third order, some (15/300)³ of the geometry's own lengths, shows in no figure.
    private const double FurthestMm = 15;

    private readonly WheelMotion _motion;
    private readonly double _travelMm;
    private readonly double _steer;
    private readonly Figures _here;
    private readonly Figures _perTravel;
    private readonly Figures _perSteer;
    private readonly Figures _travelBend;
    private readonly Figures _steerBend;
    private readonly Figures _twist;

    private NearbyMotion(WheelMotion motion, double travelMm, double steer, ReadOnlySpan<WheelPose> poses)
    {
        (_motion, _travelMm, _steer) = (motion, travelMm, steer);
        Figures here = new(poses[0]), bump = new(poses[1]), droop = new(poses[2]), left = new(poses[3]), right = new(poses[4]), both = new(poses[5]);
        for (var i = 0; i < Figures.Count; i++)
        {
            _here[i] = here[i];
            _perTravel[i] = (bump[i] - droop[i]) / (2 * StepMm);
            _perSteer[i] = (left[i] - right[i]) / (2 * StepMm);
            _travelBend[i] = (bump[i] - (2 * here[i]) + droop[i]) / (2 * StepMm * StepMm);
            _steerBend[i] = (left[i] - (2 * here[i]) + right[i]) / (2 * StepMm * StepMm);
            _twist[i] = (both[i] - bump[i] - left[i] + here[i]) / (StepMm * StepMm);
        }
    }

    /// <inheritdoc />
    public override SuspensionPose Origin => _motion.Origin;

    /// <summary>The motion about a position; the motion itself where the wheel cannot be a step beside it.</summary>
    /// <param name="motion">The motion; its wheel follows its suspension in roll.</param>
    /// <param name="travelMm">Wheel travel, mm.</param>
    /// <param name="steer">Steer, in its unit.</param>
    /// <param name="pose">The pose there.</param>
    public static WheelMotion Create(WheelMotion motion, double travelMm, double steer, in SuspensionPose pose)
    {
        Span<WheelPose> poses = stackalloc WheelPose[6];
        for (var i = 0; i < poses.Length; i++)
        {
            var (bump, left) = i switch { 1 => (1, 0), 2 => (-1, 0), 3 => (0, 1), 4 => (0, -1), 5 => (1, 1), _ => (0, 0) };
            var from = pose;
            if (!motion.TryAt(travelMm + (bump * StepMm), steer + (left * StepMm), ref from, out poses[i])) return motion;
        }

        return new NearbyMotion(motion, travelMm, steer, poses);
    }

    /// <inheritdoc />
    public override bool TryAt(double travelMm, double steer, ref SuspensionPose pose, out WheelPose wheel, WorkBudget? budget = null)
    {
        var (bump, left) = (travelMm - _travelMm, steer - _steer);
        if (!(Math.Abs(bump) <= FurthestMm && Math.Abs(left) <= FurthestMm)) return _motion.TryAt(travelMm, steer, ref pose, out wheel, budget);
        wheel = default;
        if (budget is not null && !budget.TrySpend()) return false;
        var figures = _here;
        for (var i = 0; i < Figures.Count; i++)
            figures[i] += (bump * (_perTravel[i] + (bump * _travelBend[i]) + (left * _twist[i]))) + (left * (_perSteer[i] + (left * _steerBend[i])));
        wheel = figures.ToPose();
        return true;
    }

    /// <inheritdoc />
    public override double? SpringRatioPerTravel(in SuspensionPose pose) => _motion.SpringRatioPerTravel(pose);

    [InlineArray(Count)]
    private struct Figures
    {
        public const int Count = 18;

        private double _first;

        public Figures(in WheelPose pose)
        {
            (this[0], this[1], this[2]) = (pose.CamberDeg, pose.CamberPerTravel, pose.CamberPerSteer);
            (this[3], this[4], this[5]) = (pose.HeadingDeg, pose.HeadingPerTravel, pose.HeadingPerSteer);
            (this[6], this[7], this[8]) = (pose.ContactRiseMm, pose.HalfTrackMm, pose.OutboardSlope);
            (this[9], this[10], this[11]) = (pose.RisePerTravel, pose.RisePerSteer, pose.OutboardPerSteer);
            (this[12], this[13], this[14]) = (pose.ContactForwardPerTravel, pose.CentreForwardPerTravel, pose.SpringMotionRatio);
            (this[15], this[16], this[17]) = (pose.SpringTravelMm, pose.SpringTravelPerSteer, pose.DamperMotionRatio);
        }

        public readonly WheelPose ToPose() => new()
        {
            CamberDeg = this[0],
            CamberPerTravel = this[1],
            CamberPerSteer = this[2],
            HeadingDeg = this[3],
            HeadingPerTravel = this[4],
            HeadingPerSteer = this[5],
            ContactRiseMm = this[6],
            HalfTrackMm = this[7],
            OutboardSlope = this[8],
            RisePerTravel = this[9],
            RisePerSteer = this[10],
            OutboardPerSteer = this[11],
            ContactForwardPerTravel = this[12],
            CentreForwardPerTravel = this[13],
            SpringMotionRatio = this[14],
            SpringTravelMm = this[15],
            SpringTravelPerSteer = this[16],
            DamperMotionRatio = this[17],
            HoldsInRoll = false,
        };
    }
}

using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension.Corners;

/// <summary>
/// Measures on a pose what the parts of a suspension are to keep: links their length, a strut its top mount on its axis, an arm its
/// pivots. From pose and points alone, and with the quaternion applied directly: another way than the solver's.
/// </summary>
internal static class HeldParts
{
    /// <summary>The most by which any part is not kept, mm.</summary>
    public static double WorstMm(CornerSetting setting, in SuspensionPose state)
    {
        var worst = Math.Abs(state.Pose.Centre.Z - setting.Suspension.WheelCentre.Z - state.TravelMm);
        foreach (var gapMm in Gaps(setting, state)) worst = Math.Max(worst, Math.Abs(gapMm));

        // A quaternion that is not of length 1 would stretch the upright.
        var turn = state.Pose.Turn;
        return Math.Max(worst, 1000 * Math.Abs((turn.W * turn.W) + (turn.X * turn.X) + (turn.Y * turn.Y) + (turn.Z * turn.Z) - 1));
    }

    /// <summary>Where a point of the upright that is stated at a place is now, mm.</summary>
    public static Vector3 PlaceOf(CornerSetting setting, in UprightPose pose, in Vector3 stated) =>
        pose.Centre + Turned(pose.Turn, stated - setting.Suspension.WheelCentre);

    /// <summary>A direction of the upright, turned with it.</summary>
    public static Vector3 Turned(in Rotation turn, in Vector3 vector)
    {
        var part = new Vector3(turn.X, turn.Y, turn.Z);
        var twice = 2 * part.Cross(vector);
        return vector + (turn.W * twice) + part.Cross(twice);
    }

    private static List<double> Gaps(CornerSetting setting, SuspensionPose state)
    {
        var rack = state.RackMm * Vector3.Left;
        switch (setting.Suspension)
        {
            case MacPhersonStrut strut:
                var onAxis = Place(strut.StrutLower);
                return [.. Arm(strut.LowerArm), Rod(strut.TieRod, rack), OffLine(strut.StrutTop, onAxis, Turned(state.Pose.Turn, strut.StrutAxis))];
            case DoubleWishbone wishbone:
                return [.. Arm(wishbone.LowerArm), .. Arm(wishbone.UpperArm), Rod(wishbone.TieRod, rack)];
            case FiveLink links:
                return [.. links.Links.Select((link, i) => Rod(link, i == 4 ? rack : default))];
            case TrailingArm arm:
                return Pivots(arm.Inner, arm.Outer, arm.ArmInner, arm.ArmOuter);
            case TwistBeam beam when setting.Motion == AxleMotion.Parallel:
                return Pivots(beam.PivotLeft, beam.PivotLeft + Vector3.Left, beam.PivotLeft, beam.PivotLeft + Vector3.Left);
            case TwistBeam beam:
                return Pivots(beam.BeamShearCentre, beam.PivotLeft, beam.BeamShearCentre, beam.PivotLeft);
            default:
                throw new InvalidOperationException("No parts are known of this kind.");
        }

        Vector3 Place(Vector3 stated) => PlaceOf(setting, state.Pose, stated);

        double Rod(Link link, Vector3 moved) => (Place(link.Outer) - link.Inner - moved).Length - link.LengthMm;

        double[] Arm(ControlArm arm)
        {
            var joint = Place(arm.Joint);
            return [(joint - arm.Front).Length - (arm.Seat - arm.Front).Length, (joint - arm.Rear).Length - (arm.Seat - arm.Rear).Length];
        }

        List<double> Pivots(Vector3 inner, Vector3 outer, Vector3 armInner, Vector3 armOuter) =>
            [(Place(armInner) - inner).Length, OffLine(Place(armOuter), inner, (outer - inner).Unit())];
    }

    private static double OffLine(in Vector3 point, in Vector3 onLine, in Vector3 direction) => (point - onLine).Cross(direction).Length;
}

using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Tests.Suspension.Corners;

/// <summary>How far two states of a corner lie apart: mm of the wheel centre, degrees of the upright's turn, and what they change by per mm.</summary>
internal static class StateGap
{
    /// <summary>The largest of all, in mm or degrees, and those per mm.</summary>
    public static double Between(in SuspensionPose a, in SuspensionPose b) => Largest(
        Size(a.Pose.Centre - b.Pose.Centre),
        TurnDeg(a.Pose.Turn, b.Pose.Turn),
        Between(a.PerTravel, b.PerTravel),
        Between(a.PerRack, b.PerRack));

    private static double Between(in UprightMotion a, in UprightMotion b) =>
        Largest(Size(a.Velocity - b.Velocity), double.RadiansToDegrees(Size(a.Spin - b.Spin)));

    // The vector part of one quaternion by the other's conjugate is the sine of half the angle between them.
    private static double TurnDeg(in Rotation a, in Rotation b)
    {
        var (p, q) = (new Vector3(a.X, a.Y, a.Z), new Vector3(b.X, b.Y, b.Z));
        return double.RadiansToDegrees(2 * Size((b.W * p) - (a.W * q) - p.Cross(q)));
    }

    private static double Size(in Vector3 vector) => Largest(Math.Abs(vector.X), Math.Abs(vector.Y), Math.Abs(vector.Z));

    private static double Largest(params ReadOnlySpan<double> sizes)
    {
        // Written so that what is not a number is not small.
        var largest = 0.0;
        foreach (var size in sizes) largest = size <= largest ? largest : size;
        return largest;
    }
}

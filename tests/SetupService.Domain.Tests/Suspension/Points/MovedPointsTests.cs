using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Tests.Suspension.Corners;

namespace SetupService.Domain.Tests.Suspension.Points;

/// <summary>The coordinates in which a suspension's points may be wrong.</summary>
public sealed class MovedPointsTests
{
    // Of a beam the shear centre lies in the centre plane by definition: its y cannot be wrong.
    [Fact]
    public void Each_coordinate_of_each_point_is_moved_once_and_alone() =>
        Gen.Select(PlausibleCorners.Any.Select(setting => setting.Suspension), Gen.Double[0.1, 2]).Sample((suspension, byMm) =>
        {
            var before = Coordinates(suspension);
            var moved = new List<int>();
            foreach (var move in MovedPoints.List(suspension))
            {
                var suspended = move(byMm);
                var after = Coordinates(suspended);
                int[] changed = [.. Enumerable.Range(0, before.Length).Where(i => Math.Abs(after[i] - before[i]) > byMm / 2)];
                moved.Add(Assert.Single(changed));
                Assert.Equal(byMm, after[changed[0]] - before[changed[0]], 1e-9);
                foreach (var link in Links(suspended)) Assert.Equal((link.Outer - link.Inner).Length, link.LengthMm, 1e-9);
            }

            int[] held = suspension is TwistBeam ? [7] : [];
            Assert.Equal(Enumerable.Range(0, before.Length).Except(held), moved.Order());
        });

    private static double[] Coordinates(Hardpoints suspension) => [.. Points(suspension).SelectMany(point => new[] { point.X, point.Y, point.Z })];

    private static IEnumerable<Vector3> Points(Hardpoints suspension)
    {
        Vector3[] own = suspension switch
        {
            MacPhersonStrut strut => [strut.LowerArm.Front, strut.LowerArm.Rear, strut.LowerArm.Joint, strut.StrutTop, strut.StrutLower],
            DoubleWishbone wishbone => [wishbone.LowerArm.Front, wishbone.LowerArm.Rear, wishbone.LowerArm.Joint, wishbone.UpperArm.Front, wishbone.UpperArm.Rear, wishbone.UpperArm.Joint],
            TrailingArm arm => [arm.Inner, arm.Outer],
            TwistBeam beam => [beam.PivotLeft, beam.BeamShearCentre],
            _ => [],
        };
        return [suspension.WheelCentre, .. own, .. Links(suspension).SelectMany(link => new[] { link.Inner, link.Outer }), .. Ends(suspension.Spring), .. Ends(suspension.Damper)];
    }

    private static Link[] Links(Hardpoints suspension) => suspension switch
    {
        MacPhersonStrut strut => [strut.TieRod],
        DoubleWishbone wishbone => [wishbone.TieRod],
        FiveLink five => [.. five.Links],
        _ => [],
    };

    private static Vector3[] Ends(SpringLine? line) => line is null ? [] : [line.Chassis, line.Moving];
}

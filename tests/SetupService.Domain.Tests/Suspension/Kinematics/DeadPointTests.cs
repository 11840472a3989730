using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

/// <summary>
/// Wishbones with no sense in their points, which close again, assembled another way, a little past the dead point of the way they are
/// drawn. Where that is was found by the second working (Oracle/geometry_reach.py), which follows the curve of poses by arc length.
/// </summary>
public sealed class DeadPointTests
{
    private static readonly (double LastTravelMm, Vector3[] Points)[] Cases =
    [
        (65.65061130377687, [new(-44, 313, 12), new(-68, 574, 188), new(29, 771, 158), new(170, 409, 637), new(-107, 581, 494), new(-21, 704, 331), new(-10, 446, 328), new(-314, 821, 163)]),
        (-19.53345866847646, [new(257, 297, 319), new(-345, 562, 174), new(-5, 892, 216), new(242, 537, 403), new(-238, 507, 472), new(125, 714, 361), new(-21, 279, 63), new(-6, 881, 154)]),
        (-28.912753638363533, [new(2, 222, 359), new(-259, 460, 342), new(-8, 776, 301), new(26, 454, 387), new(-309, 363, 636), new(-108, 565, 491), new(-152, 520, 280), new(-225, 878, 158)]),
        (38.199225248368336, [new(255, 469, 164), new(-190, 415, 158), new(-69, 762, 171), new(223, 595, 454), new(69, 594, 418), new(154, 495, 293), new(63, 400, 74), new(-51, 729, 40)]),
    ];

    public static TheoryData<int> Numbers() => [.. Enumerable.Range(0, Cases.Length)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_step_does_not_lead_past_a_dead_point_onto_another_assembly(int number)
    {
        var (lastTravelMm, corner) = (Cases[number].LastTravelMm, Corner(Cases[number].Points));
        foreach (var travelMm in (double[])[100, 60, 30, 5, 1, 0.1])
        {
            var beyondMm = lastTravelMm + (Math.Sign(lastTravelMm) * travelMm);
            Assert.False(TryReach(corner, beyondMm, out var last), $"travel {beyondMm} is reached");
            Assert.Equal(lastTravelMm, last.TravelMm, 0.01);
        }

        Assert.True(TryReach(corner, lastTravelMm - (Math.Sign(lastTravelMm) * 0.01), out _));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Long_steps_and_short_ones_lead_to_the_same_positions(int number)
    {
        var (endMm, corner) = (0.999 * Cases[number].LastTravelMm, Corner(Cases[number].Points));
        Assert.True(PoseContinuation.TryStart(corner, out var inShort));
        for (var i = 1; i <= 300; i++) Assert.True(PoseContinuation.TryMove(corner, endMm * i / 300, 0, ref inShort));
        Assert.True(PoseContinuation.TryStart(corner, out var inLong));
        Assert.True(PoseContinuation.TryMove(corner, endMm, 0, ref inLong));

        Assert.Equal(inShort.Pose.Centre.Y, inLong.Pose.Centre.Y, 1e-6);
        Assert.Equal(WheelKinematics.Wheel(corner, inShort).CamberDeg, WheelKinematics.Wheel(corner, inLong).CamberDeg, 1e-6);
    }

    private static bool TryReach(CornerMechanism corner, double travelMm, out SuspensionPose reached)
    {
        Assert.True(PoseContinuation.TryStart(corner, out var stated));
        var last = stated;
        return PoseContinuation.TryReach(corner, stated, travelMm, 0, ref last, out reached);
    }

    private static CornerMechanism Corner(Vector3[] points) => MechanismBuilder.Build(new CornerSetting
    {
        Suspension = new DoubleWishbone
        {
            LowerArm = new(points[0], points[1], points[2]),
            UpperArm = new(points[3], points[4], points[5]),
            TieRod = new(points[6], points[7]),
            WheelCentre = new(0, 1000, 310),
        },
        CamberDeg = -1,
        ToeDeg = 0,
        LoadedRadiusMm = 310,
    });
}

using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Tests.Suspension.Steering;

public sealed class SteeringAxisContradictionsTests
{
    private static readonly Vector3 Lower = new(8, 716, 178);
    private static readonly Vector3 Upper = new(-67, 561, 843);
    private static readonly Vector3 Centre = new(0, 751, 305);

    [Fact]
    public void Plausible_points_have_none() => Assert.Empty(SteeringAxisContradictions.Find(Lower, Upper, Centre));

    [Fact]
    public void One_point_has_no_axis() => Only("upper", "0.4 mm", SteeringAxisContradictions.Find(Lower, Lower + new Vector3(0, 0, 0.4), Centre));

    [Fact]
    public void An_axis_upside_down_says_by_how_much() => Only("upper", "665.0 mm below", SteeringAxisContradictions.Find(Upper, Lower, Centre));

    [Fact]
    public void A_level_axis_is_refused() => Only("upper", "0.4 mm above", SteeringAxisContradictions.Find(Lower, new(8, 600, 178.4), Centre));

    [Fact]
    public void A_wheel_inboard_of_the_joint_says_by_how_much() => Only("wheelCentre", "16.0 mm", SteeringAxisContradictions.Find(Lower, Upper, Centre with { Y = 700 }));

    [Fact]
    public void Both_are_told_at_once() => Assert.Equal(2, SteeringAxisContradictions.Find(Upper, Lower, Centre with { Y = 500 }).Count);

    private static void Only(string member, string figure, IReadOnlyList<SetupService.Domain.Suspension.Points.Contradiction> found)
    {
        var one = Assert.Single(found);
        Assert.Equal(member, one.Member);
        Assert.Contains(figure, one.Message, StringComparison.Ordinal);
    }
}

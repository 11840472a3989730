using CsCheck;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Tests.Geometry.Alignment;

public sealed class AlignmentFiguresTests
{
    private static readonly Gen<double> Toe = Gen.Double[-3, 3];

    // Worked by hand from the definitions: headings are −toe on the left and toe on the right.
    [Fact]
    public void A_worked_example_is_reproduced()
    {
        var figures = new AlignmentFigures(
            new(
                new() { CamberDeg = -0.7, CasterDeg = 6.4, ToeDeg = 0.1, SteeringAxisInclinationDeg = 13 },
                new() { CamberDeg = -1, CasterDeg = 6.1, ToeDeg = 0.3, SteeringAxisInclinationDeg = 13.2 }),
            new(new() { CamberDeg = -1.5, ToeDeg = 0.05 }, new() { CamberDeg = -1.4, ToeDeg = 0.25 }));

        Assert.Equal(0.4, figures.Front.TotalToeDeg!.Value, 1e-12);
        Assert.Equal(0.3, figures.Rear.TotalToeDeg!.Value, 1e-12);
        Assert.Equal(0.1, figures.Front.HeadingDeg!.Value, 1e-12);
        Assert.Equal(0.1, figures.ThrustAngleDeg!.Value, 1e-12);
        Assert.Equal(0, figures.SteerAheadDeg!.Value, 1e-12);
        Assert.Equal(0.2, figures.FrontLeftToeToThrustLineDeg!.Value, 1e-12);
        Assert.Equal(0.2, figures.FrontRightToeToThrustLineDeg!.Value, 1e-12);
        Assert.Equal(0.3, figures.Front.CrossCamberDeg!.Value, 1e-12);
        Assert.Equal(0.3, figures.Front.CrossCasterDeg!.Value, 1e-12);
        Assert.Equal(-0.2, figures.Front.CrossInclinationDeg!.Value, 1e-12);
        Assert.Equal(0.1, figures.Front.CrossIncludedAngleDeg!.Value, 1e-12);
        Assert.Equal(12.3, figures.Front.Left.IncludedAngleDeg!.Value, 1e-12);
        Assert.Equal(-0.1, figures.Rear.CrossCamberDeg!.Value, 1e-12);
    }

    // Against the wheels as vectors: the mean heading of two spin axes that both point to the left.
    [Fact]
    public void The_thrust_line_is_where_both_rear_wheels_head_on_average() =>
        Gen.Select(Toe, Toe, Toe, Toe).Sample((frontLeft, frontRight, rearLeft, rearRight) =>
        {
            var figures = Of(frontLeft, frontRight, rearLeft, rearRight);
            var thrust = Heading(WheelPlane.SpinOf(0, rearLeft)) + Heading(-WheelPlane.SpinOf(0, rearRight).Mirrored);

            Assert.Equal(thrust / 2, figures.ThrustAngleDeg!.Value, 1e-12);
        });

    [Fact]
    public void The_mirrored_car_points_the_other_way() =>
        Gen.Select(Toe, Toe, Toe, Toe).Sample((frontLeft, frontRight, rearLeft, rearRight) =>
        {
            var figures = Of(frontLeft, frontRight, rearLeft, rearRight);
            var mirrored = Of(frontRight, frontLeft, rearRight, rearLeft);

            Assert.Equal(-figures.ThrustAngleDeg!.Value, mirrored.ThrustAngleDeg!.Value, 1e-12);
            Assert.Equal(-figures.SteerAheadDeg!.Value, mirrored.SteerAheadDeg!.Value, 1e-12);
            Assert.Equal(figures.FrontLeftToeToThrustLineDeg!.Value, mirrored.FrontRightToeToThrustLineDeg!.Value, 1e-12);
            Assert.Equal(figures.Front.TotalToeDeg!.Value, mirrored.Front.TotalToeDeg!.Value, 1e-12);
        });

    [Fact]
    public void Against_the_thrust_line_total_toe_stays_and_its_halves_tell_the_steer_ahead() =>
        Gen.Select(Toe, Toe, Toe, Toe).Sample((frontLeft, frontRight, rearLeft, rearRight) =>
        {
            var figures = Of(frontLeft, frontRight, rearLeft, rearRight);
            var (left, right) = (figures.FrontLeftToeToThrustLineDeg!.Value, figures.FrontRightToeToThrustLineDeg!.Value);

            Assert.Equal(figures.Front.TotalToeDeg!.Value, left + right, 1e-12);
            Assert.Equal(figures.SteerAheadDeg!.Value, (right - left) / 2, 1e-12);
        });

    [Fact]
    public void What_a_missing_reading_leaves_open_is_null_and_the_rest_is_there()
    {
        var figures = new AlignmentFigures(new(new() { ToeDeg = 0.1, CamberDeg = -1 }, new() { ToeDeg = 0.2 }), default);

        Assert.Equal(0.3, figures.Front.TotalToeDeg!.Value, 1e-12);
        Assert.Equal(0.05, figures.Front.HeadingDeg!.Value, 1e-12);
        Assert.Null(figures.Front.CrossCamberDeg);
        Assert.Null(figures.Front.Left.IncludedAngleDeg);
        Assert.Null(figures.Front.Hint);
        Assert.Null(figures.ThrustAngleDeg);
        Assert.Null(figures.SteerAheadDeg);
        Assert.Null(figures.FrontLeftToeToThrustLineDeg);
    }

    // By hand: 15.1 mm over a track of 1510 mm is 1 : 100, whose angle is 0.573°.
    [Fact]
    public void Setback_is_positive_with_the_right_wheel_further_back()
    {
        Assert.Equal(0.573, AlignmentFigures.SetbackAngleDeg(15.1, 1510), 5e-4);
        Assert.Equal(-0.573, AlignmentFigures.SetbackAngleDeg(-15.1, 1510), 5e-4);
    }

    private static AlignmentFigures Of(double frontLeft, double frontRight, double rearLeft, double rearRight) => new(
        new(new() { ToeDeg = frontLeft }, new() { ToeDeg = frontRight }),
        new(new() { ToeDeg = rearLeft }, new() { ToeDeg = rearRight }));

    private static double Heading(in Vector3 leftward) => double.RadiansToDegrees(Math.Atan2(-leftward.X, leftward.Y));
}

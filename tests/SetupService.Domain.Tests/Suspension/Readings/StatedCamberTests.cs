using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Tests.Suspension.Readings;

public sealed class StatedCamberTests
{
    private static readonly CornerReadings Read = new() { Travel = [new(-60, 0.3), new(-30, -0.3), new(30, -1.45), new(60, -2.1)] };

    [Fact]
    public void A_camber_stated_beside_the_readings_is_one_reading_more()
    {
        var beside = MeasuredCornerTests.Corner(Read with { StatedCamberDeg = -0.95 });
        var among = MeasuredCornerTests.Corner(Read with { Travel = [.. Read.Travel, new(0, -0.95)] });

        Assert.False(beside.StatedCamber!.Value.IsContradiction);
        Assert.Equal(among.CamberAt(30), beside.CamberAt(30));
        Assert.Equal(among.CamberAt(-75), beside.CamberAt(-75));
    }

    [Fact]
    public void Further_away_than_three_errors_it_contradicts_and_the_readings_keep_the_curve()
    {
        var alone = MeasuredCornerTests.Corner(Read);
        var at = alone.CamberAt(0)!.Value.AngleDeg;
        var three = 3 * Math.Sqrt((at.StandardError * at.StandardError) + 0.01);
        var near = MeasuredCornerTests.Corner(Read with { StatedCamberDeg = at.Value + (0.99 * three) });
        var far = MeasuredCornerTests.Corner(Read with { StatedCamberDeg = at.Value - (1.01 * three) });

        Assert.False(near.StatedCamber!.Value.IsContradiction);
        Assert.True(far.StatedCamber!.Value.IsContradiction);
        Assert.Equal(-1.01 * three, far.StatedCamber.Value.DifferenceDeg, 1e-9);
        Assert.Equal(at, far.StatedCamber.Value.ReadDeg);
        Assert.Equal(alone.CamberAt(0), far.CamberAt(0));
        Assert.Null(alone.StatedCamber);
    }

    [Fact]
    public void A_camber_typed_with_the_wrong_sign_contradicts() =>
        Assert.True(MeasuredCornerTests.Corner(Read with { StatedCamberDeg = 0.9 }).StatedCamber!.Value.IsContradiction);

    // 0.004° of rounding is no contradiction; the reading that is there is not doubled.
    [Fact]
    public void Without_a_gauge_error_the_same_angle_twice_agrees()
    {
        var corner = MeasuredCornerTests.Corner(new() { Travel = [new(-30, 0), new(0, -0.804), new(30, -1.5)], GaugeErrorDeg = 0, StatedCamberDeg = -0.8 });

        Assert.False(corner.StatedCamber!.Value.IsContradiction);
        Assert.Equal(-0.804, corner.CamberDegAt(0)!.Value, 1e-9);
    }

    [Fact]
    public void Stated_camber_makes_two_heights_of_one() =>
        Assert.Equal(-0.8, MeasuredCornerTests.Corner(new() { Travel = [new(30, -1.5), new(30, -1.45)], StatedCamberDeg = -0.8 }).CamberDegAt(0)!.Value, 1e-6);
}

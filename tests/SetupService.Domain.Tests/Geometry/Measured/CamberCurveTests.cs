using CsCheck;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Tests.Geometry.Measured;

public sealed class CamberCurveTests
{
    [Fact]
    public void It_is_straight_between_readings_and_goes_on_by_its_end_slope()
    {
        var curve = CamberCurve.From([(40, -2), (0, -1), (-40, -0.5)])!;

        Assert.Equal(-1.5, curve.AtDeg(20), 12);
        Assert.Equal(-2.25, curve.AtDeg(50), 12);
        Assert.Equal(-0.375, curve.AtDeg(-50), 12);
        Assert.True(curve.Reaches(60));
        Assert.False(curve.Reaches(60.1));
    }

    [Fact]
    public void One_height_is_no_curve()
    {
        Assert.Null(CamberCurve.From([(0, -1)]));
        Assert.Null(CamberCurve.From([(0, -1), (0.4, -1.2), (0.9, -1.1)]));
        Assert.Null(CamberCurve.From([]));
    }

    // An independent reading of the same curve: the greatest of many samples on the way there.
    [Fact]
    public void Extremes_are_the_greatest_of_many_samples() =>
        Gen.Select(Gen.Double[-3, 3].Array[6], Gen.Double[0, 70]).Sample((cambers, travel) =>
        {
            var curve = CamberCurve.From(cambers.Select((camber, i) => (-25.0 + (i * 20), camber)))!;
            var samples = Enumerable.Range(0, 2001).Select(i => curve.AtDeg(travel * i / 2000) - curve.AtDeg(0)).ToArray();
            var (inboard, outboard) = curve.ExtremesDeg(travel)!.Value;
            return inboard >= -samples.Min() - 1e-9 && outboard >= samples.Max() - 1e-9
                && inboard <= -samples.Min() + 0.02 && outboard <= samples.Max() + 0.02;
        });
}

using CsCheck;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Tests.Oracle;

namespace SetupService.Domain.Tests.Suspension.Readings;

public sealed class TravelCurveTests
{
    // Curves of both curvatures and of none, from corners the second working of the geometry agrees on.
    private static readonly string[] Corners = ["ST1", "macPhersonStrut 4", "DW1", "doubleWishbone 5", "fiveLink 8", "semiTrailingArm 2"];

    // A strut whose camber flattens: −0.6 − 0.0103 z + 8.4e-5 z², read every 25 mm to 0.01°; −0.04° per 10 mm between 25 and 50 mm.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.05)]
    [InlineData(0)]
    public void A_slope_that_flattens_at_the_end_is_kept(double gaugeErrorDeg)
    {
        double[] heightsMm = [-50, -25, 0, 25, 50];
        var curve = TravelCurve.ForCamber(heightsMm.Select(mm => (mm, Math.Round(-0.6 - (0.0103 * mm) + (8.4e-5 * mm * mm), 2))), gaugeErrorDeg)!;

        Assert.Equal(-0.04, (curve.ValueDegAt(50)!.Value - curve.ValueDegAt(25)!.Value) / 2.5, 0.008);
        Assert.Equal(-0.0019, curve.At(50)!.Value.SlopeDegPerMm.Value, 0.0008);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(9)]
    public void Nine_ranges_of_ten_hold_the_true_camber_inside_the_readings_and_twenty_millimetres_beyond(int heightCount)
    {
        const int Trials = 2_000;
        var random = new Random(20261129);
        var travelsMm = Enumerable.Range(-16, 33).Select(i => 5.0 * i).ToArray();
        var truths = Corners.Select(corner => Truth(corner, wheel => wheel.CamberDeg)).ToArray();
        double[] heightsMm = [.. Enumerable.Range(0, heightCount).Select(i => -60 + (120.0 * i / (heightCount - 1)))];
        var held = new double[travelsMm.Length];
        var widest = 0.0;
        for (var trial = 0; trial < Trials; trial++)
        {
            var truth = truths[trial % truths.Length];
            var curve = TravelCurve.ForCamber([.. heightsMm.Select(mm => (mm, truth[mm] + (0.1 * Chance.Normal(random))))], 0.1)!;
            for (var i = 0; i < travelsMm.Length; i++)
            {
                var range = curve.At(travelsMm[i])!.Value.AngleDeg.Ninety;
                if (range.Lower <= truth[travelsMm[i]] && truth[travelsMm[i]] <= range.Upper) held[i] += 1.0 / Trials;
                widest = Math.Max(widest, (range.Upper - range.Lower) / 2);
            }
        }

        var inside = held.Where((_, i) => Math.Abs(travelsMm[i]) <= 60).ToArray();
        Assert.InRange(inside.Average(), 0.88, 0.95);
        Assert.InRange(held.Min(), 0.86, 1);
        Assert.InRange(widest, 0.2, 0.5);
    }

    // Toe of corners that steer, half the noise: the same demands.
    [Theory]
    [InlineData(5)]
    [InlineData(9)]
    public void Nine_ranges_of_ten_hold_the_true_toe_and_its_change(int heightCount)
    {
        const int Trials = 2_000;
        var random = new Random(20261129);
        var travelsMm = Enumerable.Range(-16, 33).Select(i => 5.0 * i).ToArray();
        var truths = Corners.Select(corner => Truth(corner, wheel => wheel.ToeDeg)).ToArray();
        double[] heightsMm = [.. Enumerable.Range(0, heightCount).Select(i => -60 + (120.0 * i / (heightCount - 1)))];
        var (held, slopeHeld) = (new double[travelsMm.Length], new double[travelsMm.Length]);
        for (var trial = 0; trial < Trials; trial++)
        {
            var truth = truths[trial % truths.Length];
            var curve = TravelCurve.ForToe([.. heightsMm.Select(mm => (mm, truth[mm] + (0.05 * Chance.Normal(random))))], 0.05)!;
            for (var i = 0; i < travelsMm.Length; i++)
            {
                var at = curve.At(travelsMm[i])!.Value;
                var (angle, slope) = (at.AngleDeg.Ninety, at.SlopeDegPerMm.Ninety);
                var trueSlope = (truth[travelsMm[i] + 1] - truth[travelsMm[i] - 1]) / 2;
                if (angle.Lower <= truth[travelsMm[i]] && truth[travelsMm[i]] <= angle.Upper) held[i] += 1.0 / Trials;
                if (slope.Lower <= trueSlope && trueSlope <= slope.Upper) slopeHeld[i] += 1.0 / Trials;
            }
        }

        Assert.InRange(held.Where((_, i) => Math.Abs(travelsMm[i]) <= 60).Average(), 0.88, 0.95);
        Assert.InRange(held.Min(), 0.86, 1);
        Assert.InRange(slopeHeld.Min(), 0.86, 1);
    }

    [Fact]
    public void Straight_readings_go_straight_on_for_twenty_millimetres_with_growing_ranges()
    {
        var curve = TravelCurve.ForCamber([(40, -2), (0, -1), (-40, 0)], 0.1)!;

        Assert.Equal(-2.375, curve.ValueDegAt(55)!.Value, 1e-6);
        Assert.True(curve.Reaches(60) && curve.Reaches(-60) && curve.Holds(40));
        Assert.False(curve.Reaches(60.1) || curve.Holds(40.1));
        Assert.Null(curve.At(60.1));
        Assert.Null(curve.ValueDegAt(-60.1));
        Assert.True(curve.At(41)!.Value.IsExtended);
        Assert.False(curve.At(40)!.Value.IsExtended);
        var errorsDeg = Enumerable.Range(0, 5).Select(i => curve.At(40 + (5 * i))!.Value.AngleDeg.StandardError).ToArray();
        Assert.Equal(errorsDeg.Order(), errorsDeg);
        Assert.True(errorsDeg[4] > 1.5 * errorsDeg[0]);
    }

    [Fact]
    public void One_height_is_no_curve()
    {
        Assert.Null(TravelCurve.ForCamber([(0, -1)], 0.1));
        Assert.Null(TravelCurve.ForCamber([(0, -1), (0.4, -1.2), (0.9, -1.1)], 0.1));
        Assert.Null(TravelCurve.ForCamber([], 0.1));
        Assert.Null(TravelCurve.ForCamber([(0, -1), (30, double.NaN)], 0.1));
    }

    // What a reading's own errors allow, and no more; a wheel may turn within the millimetre.
    [Theory]
    [InlineData(0.1, 0, 0.49, true)]
    [InlineData(0.1, 0, 0.51, false)]
    [InlineData(0, 0, 0, true)]
    [InlineData(0, 0, 0.01, false)]
    [InlineData(0, 0.9, 0.08, true)]
    [InlineData(0, 0.9, 0.2, false)]
    [InlineData(0, 1, 0.2, true)]
    public void Readings_at_one_height_agree_within_the_gauges_error(double gaugeErrorDeg, double apartMm, double apartDeg, bool expected) =>
        Assert.Equal(expected, TravelCurve.AreConsistent([(30, -2), (0, -1), (apartMm, -1 - apartDeg)], gaugeErrorDeg));

    [Fact]
    public void Asking_costs_no_memory()
    {
        var curve = TravelCurve.ForCamber(Enumerable.Range(-10, 21).Select(i => (i * 8.0, -1 - (i * 0.2) + (i * i * 0.01))), 0.1)!;
        curve.At(3);
        curve.ValueDegAt(3);

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = -90; i <= 90; i++)
        {
            curve.At(i);
            curve.ValueDegAt(i);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    // Camber or toe every 5 mm, and 1 mm either side, by the service's own solver.
    private static Dictionary<double, double> Truth(string corner, Func<WheelFigures, double> angle)
    {
        var mechanism = MechanismBuilder.Build(OracleCorner.Setting(GeometryCases.Named("corners", corner).GetProperty("request")));
        var truth = new Dictionary<double, double>();
        foreach (var sign in (double[])[1, -1])
        {
            Assert.True(PoseContinuation.TryStart(mechanism, out var state));
            for (var mm = 0; mm <= 81; mm++)
            {
                Assert.True(PoseContinuation.TryMove(mechanism, sign * mm, 0, ref state));
                truth[sign * mm] = angle(WheelKinematics.Compute(mechanism, state));
            }
        }

        return truth;
    }
}

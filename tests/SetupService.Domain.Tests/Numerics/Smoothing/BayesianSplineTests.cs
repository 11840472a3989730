using CsCheck;
using SetupService.Domain.Numerics.Smoothing;

namespace SetupService.Domain.Tests.Numerics.Smoothing;

public sealed class BayesianSplineTests
{
    private static readonly SmoothnessPrior Prior = new(4e-4, 1e-9);

    private static readonly Gen<double[]> Places = Gen.Double[2, 30].Array[2, 12].Select(
        gaps => gaps.Select((_, i) => gaps[..(i + 1)].Sum() - 60).ToArray());

    private static readonly Gen<(double[] Places, double[] Values)> Readings = Places.SelectMany(places =>
        Gen.Double[-3, 3].Array[places.Length].Select(values => (places, values)));

    [Fact]
    public void Readings_without_error_are_passed() =>
        Readings.Sample(readings =>
        {
            var spline = Fit(readings.Places, readings.Values, 0);
            for (var i = 0; i < readings.Places.Length; i++)
            {
                var at = spline.At(readings.Places[i]);
                Assert.Equal(readings.Values[i], at.Value, 1e-9);
                Assert.InRange(at.ValueStandardDeviation, 0, 1e-9);
            }
        });

    // Whatever is read, however wild and however good the gauge.
    [Fact]
    public void No_reading_is_left_further_away_than_two_and_a_half_errors() =>
        Gen.Select(Readings, Gen.Double[-3, 0.3]).Sample((readings, logError) =>
        {
            var error = Math.Pow(10, logError);
            var spline = Fit(readings.Places, readings.Values, error);
            for (var i = 0; i < readings.Places.Length; i++)
            {
                Assert.InRange(Math.Abs(readings.Values[i] - spline.ValueAt(readings.Places[i])), 0, (2.5 * error) + 1e-9);
            }
        });

    [Fact]
    public void A_single_bad_reading_among_sixty_is_neither_left_nor_followed_all_over()
    {
        double[] places = [.. Enumerable.Range(0, 60).Select(i => -60.0 + (2 * i))];
        double[] good = [.. places.Select(place => -1 - (0.02 * place))];
        double[] bad = [.. good];
        bad[30] += 0.4;
        var (straight, bent) = (Fit(places, good, 0.1), Fit(places, bad, 0.1));

        Assert.InRange(bad[30] - bent.ValueAt(places[30]), 0, 0.25);
        Assert.Equal(straight.ValueAt(-40), bent.ValueAt(-40), 0.03);
        Assert.Equal(straight.ValueAt(40), bent.ValueAt(40), 0.03);
    }

    [Fact]
    public void Mirrored_places_give_the_mirrored_curve() =>
        Gen.Select(Readings, Gen.Double[0, 0.3], Gen.Double[-80, 80]).Sample((readings, error, place) =>
        {
            var (there, back) = (Fit(readings.Places, readings.Values, error).At(place), Fit([.. readings.Places.Select(one => -one)], readings.Values, error).At(-place));
            Near(there.Value, back.Value);
            Near(there.ValueStandardDeviation, back.ValueStandardDeviation);
            Near(there.Slope, -back.Slope);
        });

    [Fact]
    public void A_constant_added_to_all_readings_is_added_to_the_curve() =>
        Gen.Select(Readings, Gen.Double[0, 0.3], Gen.Double[-10, 10], Gen.Double[-80, 80]).Sample((readings, error, constant, place) =>
        {
            var (plain, shifted) = (Fit(readings.Places, readings.Values, error).At(place), Fit(readings.Places, [.. readings.Values.Select(value => value + constant)], error).At(place));
            Near(plain.Value + constant, shifted.Value);
            Near(plain.ValueStandardDeviation, shifted.ValueStandardDeviation);
        });

    [Fact]
    public void Moved_places_move_the_curve() =>
        Gen.Select(Readings, Gen.Double[0, 0.3], Gen.Double[-100, 100], Gen.Double[-80, 80]).Sample((readings, error, way, place) =>
        {
            var (plain, moved) = (Fit(readings.Places, readings.Values, error).At(place), Fit([.. readings.Places.Select(one => one + way)], readings.Values, error).At(place + way));
            Near(plain.Value, moved.Value);
            Near(plain.ValueStandardDeviation, moved.ValueStandardDeviation);
        });

    [Fact]
    public void Values_errors_and_prior_scaled_alike_scale_the_curve() =>
        Gen.Select(Readings, Gen.Double[0.05, 0.3], Gen.Double[0.1, 10], Gen.Double[-80, 80]).Sample((readings, error, factor, place) =>
        {
            var plain = Fit(readings.Places, readings.Values, error).At(place);
            var prior = new SmoothnessPrior(Prior.CurvatureStandardDeviation * factor, Prior.CurvatureDrift * factor * factor);
            var scaled = BayesianSpline.Fit(readings.Places, [.. readings.Values.Select(value => value * factor)], error * factor, prior)!.At(place);
            Near(factor * plain.Value, scaled.Value);
            Near(factor * plain.ValueStandardDeviation, scaled.ValueStandardDeviation);
        });

    [Fact]
    public void The_order_of_readings_does_not_matter() =>
        Gen.Select(Readings, Gen.Double[0, 0.3], Gen.Double[-80, 80], Gen.Int[0, 1000]).Sample((readings, error, place, seed) =>
        {
            var order = Enumerable.Range(0, readings.Places.Length).ToArray();
            new Random(seed).Shuffle(order);
            var (plain, shuffled) = (Fit(readings.Places, readings.Values, error).At(place), Fit([.. order.Select(i => readings.Places[i])], [.. order.Select(i => readings.Values[i])], error).At(place));
            Assert.Equal(plain, shuffled);
        });

    [Fact]
    public void Better_gauges_never_leave_more_open_where_the_readings_are_straight() =>
        Gen.Select(Places, Gen.Double[0.02, 0.2], Gen.Double[1.1, 4], Gen.Double[-80, 80]).Sample((places, error, factor, place) =>
        {
            double[] values = [.. places.Select(one => 1 - (0.02 * one))];
            Assert.InRange(Fit(places, values, error).At(place).ValueStandardDeviation, 0, Fit(places, values, error * factor).At(place).ValueStandardDeviation);
        });

    [Fact]
    public void Straight_readings_give_the_straight_line() =>
        Gen.Select(Places, Gen.Double[-3, 3], Gen.Double[-0.1, 0.1], Gen.Double[0, 0.3], Gen.Double[-90, 90]).Sample((places, level, slope, error, place) =>
        {
            var at = Fit(places, [.. places.Select(one => level + (slope * one))], error).At(place);
            Near(level + (slope * place), at.Value);
            Near(slope, at.Slope);
        });

    // Near-duplicates, hundreds of readings, errors great and small: numbers, and no negative deviation.
    [Fact]
    public void Anything_finite_gives_finite_answers() =>
        Gen.Select(
            Gen.Select(Gen.OneOf(Gen.Double[-500, 500], Gen.Double[0, 1], Gen.Int[-3, 3].Select(i => i * 1e-6)), Gen.Double[-15, 15]).Array[2, 200],
            Gen.OneOf(Gen.Const(0.0), Gen.Double[1e-6, 1e-3], Gen.Double[0.001, 2]),
            Gen.Double[-600, 600]).Sample((readings, error, place) =>
            {
                if (BayesianSpline.Fit([.. readings.Select(one => one.Item1)], [.. readings.Select(one => one.Item2)], error, Prior) is not { } spline) return;
                foreach (var asked in (double[])[place, spline.First, spline.Last, readings[0].Item1, (spline.First + spline.Last) / 2])
                {
                    var at = spline.At(asked);
                    Assert.True(double.IsFinite(at.Value) && double.IsFinite(at.Slope));
                    Assert.True(double.IsFinite(at.ValueStandardDeviation) && at.ValueStandardDeviation >= 0);
                    Assert.True(double.IsFinite(at.SlopeStandardDeviation) && at.SlopeStandardDeviation >= 0);
                }
            });

    [Fact]
    public void The_slope_is_the_values_derivative() =>
        Gen.Select(Readings, Gen.Double[0, 0.3], Gen.Double[-80, 80]).Sample((readings, error, place) =>
        {
            var spline = Fit(readings.Places, readings.Values, error);
            const double Step = 1e-3;
            Assert.Equal((spline.ValueAt(place + Step) - spline.ValueAt(place - Step)) / (2 * Step), spline.At(place).Slope, 1e-5);
        });

    [Fact]
    public void What_makes_no_curve_is_none()
    {
        Assert.Null(BayesianSpline.Fit([0], [1], 0.1, Prior));
        Assert.Null(BayesianSpline.Fit([0, 0], [1, 2], 0.1, Prior));
        Assert.Null(BayesianSpline.Fit([0, double.NaN], [1, 2], 0.1, Prior));
        Assert.Null(BayesianSpline.Fit([0, 1], [1, double.PositiveInfinity], 0.1, Prior));
        Assert.Null(BayesianSpline.Fit([0, 1], [1, 2], -0.1, Prior));
        Assert.Null(BayesianSpline.Fit([0, 1], [1, 2], double.NaN, Prior));
        Assert.Null(BayesianSpline.Fit([0, 1], [1, 2], 0.1, new(0, 1e-9)));
        Assert.Null(BayesianSpline.Fit([0, 1], [1, 2], 0.1, new(4e-4, double.NaN)));
    }

    private static BayesianSpline Fit(double[] places, double[] values, double error) => BayesianSpline.Fit(places, values, error, Prior)!;

    private static void Near(double wanted, double actual) => Assert.Equal(wanted, actual, 1e-5 * Math.Max(1, Math.Abs(wanted)));
}

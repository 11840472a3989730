using CsCheck;
using SetupService.Domain.Numerics.Smoothing;
using SetupService.Domain.Tests.TestData;

namespace SetupService.Domain.Tests.Numerics;

public sealed class SmoothingSplineTests
{
    private static readonly Gen<double[]> Places = Gen.Double[2, 30].Array[5, 14].Select(
        gaps => gaps.Select((_, i) => gaps[..(i + 1)].Sum()).ToArray());

    private static readonly Gen<(double[] Places, double[] Values, double[] Errors)> Readings = Places.SelectMany(places => Gen.Select(
        Gen.Double[-5, 5].Array[places.Length], Gen.Double[0.05, 0.4].Array[places.Length], (values, errors) => (places, values, errors)));

    // By hand: the natural spline through (0, 0), (1, 1), (2, 0) is 1.5 x − 0.5 x³ up to the middle.
    [Fact]
    public void Errors_next_to_nothing_give_the_natural_spline_through_all_readings()
    {
        var spline = SmoothingSpline.Fit([0, 1, 2], [0, 1, 0], [1e-9, 1e-9, 1e-9])!;

        Assert.Equal(0.6875, spline.ValueAt(0.5), 1e-8);
        Assert.Equal(0.6875, spline.ValueAt(1.5), 1e-8);
        Assert.Equal(1.5 - (1.5 * 0.25), spline.SlopeAt(0.5), 1e-8);
        Assert.Equal(1.5, spline.SlopeAt(0), 1e-8);
        Assert.Equal(6, spline.Roughness, 1e-6);
        Assert.False(spline.IsStraight);
    }

    // Worked with SciPy's smoothing spline, its smoothing found by bisection.
    [Fact]
    public void A_general_purpose_library_finds_the_same_curve_with_the_same_errors()
    {
        var rows = CsvTable.Rows("smoothing-spline.csv");
        var read = rows.Where(row => row.NumberOrNull("reading") is not null).ToArray();
        var spline = SmoothingSpline.Fit(
            [.. read.Select(row => row.Number("place"))], [.. read.Select(row => row.Number("reading"))], [.. read.Select(row => row.Number("error"))])!;

        Assert.Equal(11, read.Length);
        Assert.All(rows, row =>
        {
            Assert.Equal(row.Number("value"), spline.ValueAt(row.Number("place")), 1e-9);
            Assert.Equal(row.Number("slope"), spline.SlopeAt(row.Number("place")), 1e-10);
            Assert.Equal(row.Number("standard_error"), spline.StandardErrorAt(row.Number("place")), 1e-9);
            Assert.Equal(row.Number("slope_standard_error"), spline.SlopeStandardErrorAt(row.Number("place")), 1e-10);
        });
    }

    [Fact]
    public void Straight_readings_stay_straight() =>
        Gen.Select(Places, Gen.Double[-3, 3], Gen.Double[-0.1, 0.1]).Sample((places, start, slope) =>
        {
            double[] values = [.. places.Select(place => start + (slope * place))];
            var spline = SmoothingSpline.Fit(places, values, Same(0.1, places.Length))!;

            Assert.True(spline.IsStraight);
            foreach (var place in (double[])[-40, places[0], 17.3, places[^1], 400])
            {
                Assert.Equal(start + (slope * place), spline.ValueAt(place), 1e-9);
                Assert.Equal(slope, spline.SlopeAt(place), 1e-10);
            }
        });

    // The closed formulas of weighted straight-line regression, as every textbook has them.
    [Fact]
    public void Where_a_line_explains_the_readings_it_is_the_regression_line_with_its_errors() =>
        Readings.Sample(readings =>
        {
            double[] errors = [.. readings.Errors.Select(error => 100 * error)];
            var spline = SmoothingSpline.Fit(readings.Places, readings.Values, errors)!;
            double[] weights = [.. errors.Select(error => 1 / (error * error))];
            var sum = weights.Sum();
            var meanPlace = weights.Zip(readings.Places, (w, x) => w * x).Sum() / sum;
            var meanValue = weights.Zip(readings.Values, (w, y) => w * y).Sum() / sum;
            var spread = weights.Zip(readings.Places, (w, x) => w * (x - meanPlace) * (x - meanPlace)).Sum();
            var slope = Enumerable.Range(0, weights.Length).Sum(i => weights[i] * (readings.Places[i] - meanPlace) * readings.Values[i]) / spread;

            Assert.True(spline.IsStraight);
            foreach (var place in (double[])[-30, readings.Places[0], 25, 300])
            {
                Assert.Equal(meanValue + (slope * (place - meanPlace)), spline.ValueAt(place), 1e-8);
                Assert.Equal(Math.Sqrt((1 / sum) + ((place - meanPlace) * (place - meanPlace) / spread)), spline.StandardErrorAt(place), 1e-8);
                Assert.Equal(1 / Math.Sqrt(spread), spline.SlopeStandardErrorAt(place), 1e-9);
            }
        });

    [Fact]
    public void What_a_line_cannot_explain_is_smoothed_until_the_residuals_are_as_large_as_errors_leave_at_the_least() =>
        Readings.Sample(readings =>
        {
            var spline = SmoothingSpline.Fit(readings.Places, readings.Values, readings.Errors)!;
            var sum = Enumerable.Range(0, readings.Places.Length).Sum(i =>
                Math.Pow((readings.Values[i] - spline.ValueAt(readings.Places[i])) / readings.Errors[i], 2));

            Assert.Equal(spline.SumOfSquares, sum, 1e-6);
            if (spline.IsStraight) Assert.InRange(sum, 0, Least(readings.Places.Length) + 1e-6);
            else Assert.Equal(Least(readings.Places.Length), sum, 1e-6);
        });

    // Any other values at the knots that explain the readings as well bend more; the least a curve through them can bend is
    // the natural spline's.
    [Fact]
    public void No_other_curve_within_the_errors_bends_less() =>
        Gen.Select(Readings, Gen.Double[-1, 1].Array[14], Gen.Double[0.001, 0.5]).Sample((readings, direction, size) =>
        {
            var spline = SmoothingSpline.Fit(readings.Places, readings.Values, readings.Errors)!;
            var count = readings.Places.Length;
            double[] other = [.. Enumerable.Range(0, count).Select(i => spline.ValueAt(readings.Places[i]) + (size * direction[i]))];

            // Drawn back towards the readings until the residuals are allowed again.
            double Sum() => Enumerable.Range(0, count).Sum(i => Math.Pow((readings.Values[i] - other[i]) / readings.Errors[i], 2));
            var pull = Math.Sqrt(Least(count) / Sum());
            if (pull < 1) other = [.. other.Select((value, i) => readings.Values[i] + (pull * (value - readings.Values[i])))];
            Assert.InRange(Sum(), 0, Least(count) * (1 + 1e-9));

            var through = SmoothingSpline.Fit(readings.Places, other, Same(1e-11, count))!;
            Assert.InRange(spline.Roughness, 0, (through.Roughness * (1 + 1e-6)) + 1e-9);
        });

    [Fact]
    public void Beyond_the_ends_it_goes_on_straight_and_value_and_slope_have_no_step() =>
        Readings.Sample(readings =>
        {
            var spline = SmoothingSpline.Fit(readings.Places, readings.Values, readings.Errors)!;

            Assert.Equal(spline.ValueAt(spline.Last) + (7 * spline.SlopeAt(spline.Last)), spline.ValueAt(spline.Last + 7), 1e-9);
            Assert.Equal(spline.ValueAt(spline.First) - (7 * spline.SlopeAt(spline.First)), spline.ValueAt(spline.First - 7), 1e-9);
            foreach (var place in readings.Places)
            {
                Assert.Equal(spline.ValueAt(place - 1e-9), spline.ValueAt(place + 1e-9), 1e-7);
                Assert.Equal(spline.SlopeAt(place - 1e-9), spline.SlopeAt(place + 1e-9), 1e-7);
                Assert.Equal((spline.ValueAt(place + 1.001) - spline.ValueAt(place + 0.999)) / 0.002, spline.SlopeAt(place + 1), 1e-5);
            }
        });

    [Fact]
    public void Readings_at_one_place_count_as_their_weighted_mean_and_in_any_order() =>
        Readings.Sample(readings =>
        {
            // Two readings with errors √2 s each are one with s.
            double[] places = [.. readings.Places.Reverse(), .. readings.Places];
            double[] values = [.. readings.Values.Reverse().Select(value => value + 0.3), .. readings.Values.Select(value => value - 0.3)];
            double[] errors = [.. readings.Errors.Reverse().Select(error => error * Math.Sqrt(2)), .. readings.Errors.Select(error => error * Math.Sqrt(2))];
            var merged = SmoothingSpline.Fit(places, values, errors)!;
            var single = SmoothingSpline.Fit(readings.Places, readings.Values, readings.Errors)!;

            Assert.Equal(single.KnotCount, merged.KnotCount);
            Assert.Equal(single.ValueAt(21), merged.ValueAt(21), 1e-7);
            Assert.Equal(single.StandardErrorAt(21), merged.StandardErrorAt(21), 1e-7);
        });

    [Fact]
    public void Places_within_a_given_distance_are_one()
    {
        var spline = SmoothingSpline.Fit([0, 0.4, 10, 20, 20.9], [1, 2, 3, 4, 4], Same(0.01, 5), 1)!;

        Assert.Equal(3, spline.KnotCount);
        Assert.Equal((0.2, 20.45), (spline.First, spline.Last));
        Assert.Equal(1.5, spline.ValueAt(0.2), 0.02);
    }

    [Fact]
    public void Fewer_than_two_places_or_what_is_no_number_is_no_curve()
    {
        Assert.Null(SmoothingSpline.Fit([], [], []));
        Assert.Null(SmoothingSpline.Fit([1], [1], [1]));
        Assert.Null(SmoothingSpline.Fit([1, 1], [1, 2], [1, 1]));
        Assert.Null(SmoothingSpline.Fit([0, 0.9], [1, 2], [1, 1], 1));
        Assert.Null(SmoothingSpline.Fit([0, 1], [1, double.NaN], [1, 1]));
        Assert.Null(SmoothingSpline.Fit([0, double.PositiveInfinity], [1, 2], [1, 1]));
        Assert.Null(SmoothingSpline.Fit([0, 1], [1, 2], [1, 0]));
        Assert.NotNull(SmoothingSpline.Fit([0, 1], [1, 2], [1, 1]));
    }

    // Lower end of the range of sums that errors leave (Reinsch 1967, from memory).
    private static double Least(int count) => count - Math.Sqrt(2.0 * count);

    private static double[] Same(double error, int count) => [.. Enumerable.Repeat(error, count)];
}

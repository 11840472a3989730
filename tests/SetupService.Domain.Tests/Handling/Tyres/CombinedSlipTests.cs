using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Tests.TestData;

namespace SetupService.Domain.Tests.Handling.Tyres;

/// <summary>
/// Side force beside a longitudinal one: the friction ellipse against its ends, and against the weighting functions of the published sets (Pacejka, Tyre and Vehicle
/// Dynamics, eqs 4.E50 to 4.E67), which are worked a second time here and held to published points.
/// </summary>
public sealed class CombinedSlipTests
{
    private static readonly AxleTyre Tyre = new(TyreTypicals.Set, 4000, 0.99);

    [Fact]
    public void Without_longitudinal_force_the_side_force_is_the_pure_one_and_with_all_of_it_next_to_none_is_left()
    {
        Assert.Equal(1, PassengerTyre.SideShare(0, 2));
        Assert.Equal(PassengerTyre.LeastBeside, PassengerTyre.SideShare(1, 2));
        Assert.Equal(PassengerTyre.LeastBeside, PassengerTyre.SideShare(double.PositiveInfinity, 2));
        Assert.Equal(0.8, PassengerTyre.SideShare(0.6, 2), 1e-15);
        Assert.Equal(0.6, PassengerTyre.SideShare(0.8, 2), 1e-15);
    }

    // The set's own longitudinal peak: 1.21 at nominal load, PDX2 −0.037 for each nominal load more.
    [Theory]
    [InlineData(2000, (1.21 + (0.5 * 0.037)) * 2000)]
    [InlineData(4000, 1.21 * 4000)]
    [InlineData(6000, (1.21 - (0.5 * 0.037)) * 6000)]
    public void Longitudinal_peak_is_the_published_sets(double loadN, double peakN) => Assert.Equal(peakN, PassengerTyre.LongitudinalPeakN(loadN, Tyre), 1e-9 * peakN);

    [Fact]
    public void A_lifted_tyre_holds_nothing() => Assert.Equal(0, PassengerTyre.LongitudinalPeakN(-10, Tyre));

    [Fact]
    public void The_peak_falls_by_the_share_and_the_cornering_stiffness_stays()
    {
        var pure = PassengerTyre.At(4000, 0, Tyre);
        var beside = pure.WithPeak(PassengerTyre.SideShare(0.6, 2));
        pure.ForceN(0, out var slope);
        beside.ForceN(0, out var besideSlope);

        Assert.Equal(0.8 * pure.PeakN, beside.PeakN, 1e-9);
        Assert.Equal(slope, besideSlope, 1e-9);
    }

    // What this rule keeps and the sets' own weighting functions lose: at constant longitudinal force up to 0.9 of its peak no more than a sixth of the stiffness.
    [Fact]
    public void The_published_set_keeps_most_of_its_cornering_stiffness_too()
    {
        var most = Enumerable.Range(1, 300).Max(i => WeightedSet.Symmetric.Pure(4000, i * 0.001, 0).Along);
        var kappa = Enumerable.Range(1, 300).Select(i => i * 0.001).First(k => WeightedSet.Symmetric.Pure(4000, k, 0).Along >= 0.9 * most);

        var kept = WeightedSet.Symmetric.Combined(4000, kappa, 0.1).Side / WeightedSet.Symmetric.Combined(4000, 0, 0.1).Side;

        Assert.InRange(kept, 0.83, 1);
    }

    [Fact]
    public void The_second_working_of_the_weighting_functions_meets_the_published_points() =>
        Assert.All(CsvTable.Rows("tyre-combined-slip.csv"), row =>
        {
            var (load, kappa, slip) = (row.Number("load_N"), row.Number("kappa"), row.Number("slip_angle_deg"));
            var (pure, combined) = (WeightedSet.Published.Pure(load, kappa, slip), WeightedSet.Published.Combined(load, kappa, slip));
            Assert.Equal(row.Number("Fx0_N"), pure.Along, 1e-3);
            Assert.Equal(row.Number("Fy0_N"), pure.Side, 1e-3);
            Assert.Equal(row.Number("Fx_N"), combined.Along, 1e-3);
            Assert.Equal(row.Number("Fy_N"), combined.Side, 1e-3);
        });

    [Theory]
    [InlineData(0.4)]
    [InlineData(0.6)]
    [InlineData(0.8)]
    public void The_weighting_functions_leave_of_the_published_set_about_what_the_ellipse_leaves(double used)
    {
        var (along, side) = (0.0, 0.0);
        var kept = 0.0;
        for (var pass = 0; pass < 2; pass++)
        {
            for (var i = 0; i <= 150; i++)
            {
                for (var j = 0; j <= 200; j++)
                {
                    var (x, y) = WeightedSet.Symmetric.Combined(4000, -0.002 * i, 0.1 * j);
                    if (pass == 0) (along, side) = (Math.Max(along, Math.Abs(x)), Math.Max(side, Math.Abs(y)));
                    else if (Math.Abs(x) >= used * along) kept = Math.Max(kept, Math.Abs(y) / side);
                }
            }
        }

        var row = CsvTable.Rows("tyre-combined-envelope.csv").Single(one => one["set"] == "A" && one.Number("load_over_nominal") == 1 && one["direction"] == "braking" && one.Number("longitudinal_share") == used);
        Assert.Equal(row.Number("side_share"), kept, 0.015);
        Assert.Equal(PassengerTyre.SideShare(used, TyreTypicals.CombinedExponent.Value), kept, 0.04);
    }

    [Fact]
    public void The_ellipse_is_off_by_what_the_method_page_says()
    {
        var rows = CsvTable.Rows("tyre-combined-envelope.csv");
        Assert.All(rows, row => Assert.InRange(row.Number("side_share") - PassengerTyre.SideShare(row.Number("longitudinal_share"), 2), -0.09, 0.18));
        Assert.All(rows.Where(row => row["set"] != "C" && row.Number("load_over_nominal") == 1 && row.Number("longitudinal_share") <= 0.6), row =>
            Assert.InRange(row.Number("side_share") - PassengerTyre.SideShare(row.Number("longitudinal_share"), 2), -0.021, 0.021));
    }

    // The range of the exponent: what the four sets have at 0.8 of the peak and nominal load.
    [Fact]
    public void The_exponents_range_spans_the_four_sets()
    {
        var rows = CsvTable.Rows("tyre-combined-envelope.csv").Where(row => row.Number("longitudinal_share") == 0.8 && row.Number("load_over_nominal") == 1).ToList();
        Assert.Equal(4, rows.DistinctBy(row => row["set"]).Count());
        Assert.All(rows, row => Assert.InRange(row.Number("side_share"), PassengerTyre.SideShare(0.8, TyreTypicals.CombinedExponent.Lower), PassengerTyre.SideShare(0.8, TyreTypicals.CombinedExponent.Upper)));
    }

    /// <summary>The published set with its combined slip, straight from the book's equations, camber left out.</summary>
    private sealed class WeightedSet(bool isSymmetric)
    {
        public static readonly WeightedSet Published = new(false);
        public static readonly WeightedSet Symmetric = new(true);

        public (double Along, double Side) Pure(double loadN, double kappa, double slipDeg) => (Along(loadN, kappa), Side(loadN, Math.Tan(double.DegreesToRadians(slipDeg))));

        public (double Along, double Side) Combined(double loadN, double kappa, double slipDeg)
        {
            var (more, tan) = ((loadN / 4000) - 1, Math.Tan(double.DegreesToRadians(slipDeg)));
            var alongKept = Weight(12.35 * Math.Cos(Math.Atan(-10.77 * kappa)), 1.092, tan, Shift(0.007));
            var sideKept = Weight(6.461 * Math.Cos(Math.Atan(4.196 * (tan - Shift(-0.015)))), 1.081, kappa, Shift(0.009));
            var byKappa = Shift(1) * (-0.99 + (0.145 * more)) * loadN * (0.053 - (0.073 * more)) * Math.Cos(Math.Atan(35.44 * tan)) * Math.Sin(1.9 * Math.Atan(-10.71 * kappa));
            return (alongKept * Along(loadN, kappa), (sideKept * Side(loadN, tan)) + byKappa);
        }

        private static double Weight(double b, double c, double slip, double shift) => Math.Cos(c * Math.Atan(b * (slip + shift))) / Math.Cos(c * Math.Atan(b * shift));

        private double Shift(double value) => isSymmetric ? 0 : value;

        private double Along(double loadN, double kappa)
        {
            var more = (loadN / 4000) - 1;
            var peak = loadN * (1.21 - (0.037 * more));
            var at = loadN * (21.51 - (0.163 * more)) * Math.Exp(0.245 * more) / (1.685 * peak) * (kappa + Shift(-0.002 + (0.002 * more)));
            var bend = 0.344 + (0.095 * more) - (0.02 * more * more);
            return peak * Math.Sin(1.685 * Math.Atan(at - (bend * (at - Math.Atan(at)))));
        }

        private double Side(double loadN, double tan)
        {
            var more = (loadN / 4000) - 1;
            var peak = loadN * (-0.99 + (0.145 * more));
            var slip = tan + Shift(0.003 - (0.001 * more));
            var at = -14.95 * 4000 * Math.Sin(2 * Math.Atan(loadN / (2.13 * 4000))) / (1.193 * peak) * slip;
            var bend = (-1.003 - (0.537 * more)) * (1 + (Shift(0.083) * Math.Sign(slip)));
            return (peak * Math.Sin(1.193 * Math.Atan(at - (bend * (at - Math.Atan(at)))))) + Shift(loadN * (0.045 - (0.024 * more)));
        }
    }
}

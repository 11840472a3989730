using CsCheck;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Tests.TestData;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Tests.Handling.Tyres;

/// <summary>
/// The tyre against figures worked in a separate program from published coefficients: set A is Pacejka, Tyre and Vehicle Dynamics, Appendix 3, Table A3.1
/// (205/60R15 91V, quoted alike by three copies), B the same size in a later edition, C and D a 235/60R16 and a 185/80R14 of public model files.
/// </summary>
public sealed class PassengerTyreTests
{
    // The peaks of the table were sought to 20° of slip.
    private const double FurthestDeg = 20;

    private static readonly AxleTyre Published = new(TyreTypicals.Set, PassengerTyre.NominalLoadN, PassengerTyre.Friction);

    [Fact]
    public void Peak_slip_there_cornering_stiffness_and_camber_thrust_are_those_of_the_published_set() =>
        Assert.All(CsvTable.Rows("tyre-load-scaling.csv").Where(row => row["set"] == "A"), row =>
        {
            var loadN = row.Number("load_N");
            var curve = PassengerTyre.At(loadN, 0, Published);
            var peak = Enumerable.Range(0, (int)(100 * FurthestDeg)).Select(i => (Slip: i / 100.0, Force: curve.ForceN(i / 100.0))).MaxBy(one => one.Force);

            Assert.Equal(row.Number("peak_N"), peak.Force, 0.06);
            Assert.Equal(row.Number("slip_at_peak_deg"), peak.Slip, 0.06);
            Assert.Equal(row.Number("K_N_per_deg"), PassengerTyre.StiffnessNPerDeg(loadN, Published), 0.06);

            // The thrust shifts the curve; its height by the best lean is ours, so it is compared by the slope at no slip.
            var thrust = (PassengerTyre.At(loadN, 0.01, Published).ForceN(0) - PassengerTyre.At(loadN, -0.01, Published).ForceN(0)) / 0.02;
            Assert.Equal(row.Number("Kgamma_N_per_deg"), thrust, 0.1);
        });

    [Theory]
    [InlineData(1, 797.4)]
    [InlineData(2, 1557.4)]
    [InlineData(4, 2781.1)]
    [InlineData(6, 3472.5)]
    [InlineData(8, 3780.6)]
    [InlineData(10, 3903.5)]
    [InlineData(12, 3947.9)]
    public void Side_force_over_slip_is_that_of_the_published_set_at_nominal_load(double slipDeg, double forceN) =>
        Assert.Equal(forceN, PassengerTyre.At(4000, 0, Published).ForceN(slipDeg), 0.06);

    // The similarity method of the same book, ch. 4: F(α, N) = µN/µ0N0 F0(α_eq), tan α_eq = K/K0 µ0N0/(µN) tan α; at most 2.9 % of the peak off to twice nominal load.
    [Theory]
    [InlineData(0.5, 0.016)]
    [InlineData(1.5, 0.016)]
    [InlineData(2, 0.029)]
    public void Other_loads_follow_the_published_similarity(double loads, double most)
    {
        var (nominal, other) = (PassengerTyre.At(4000, 0, Published), PassengerTyre.At(4000 * loads, 0, Published));
        var force = other.PeakN / nominal.PeakN;
        var slip = PassengerTyre.StiffnessNPerDeg(4000 * loads, Published) / PassengerTyre.StiffnessNPerDeg(4000, Published) / force;

        Assert.All(Enumerable.Range(0, 201).Select(i => i * 0.1), slipDeg =>
        {
            var equivalentDeg = double.RadiansToDegrees(Math.Atan(slip * Math.Tan(double.DegreesToRadians(slipDeg))));
            Assert.InRange(Math.Abs((force * nominal.ForceN(equivalentDeg)) - other.ForceN(slipDeg)) / other.PeakN, 0, most);
        });
    }

    [Fact]
    public void A_tyre_of_another_size_is_the_same_tyre_at_another_load() =>
        Gen.Select(Gen.Double[0.5, 2], Gen.Double[100, 9000], Gen.Double[-6, 6], Gen.Double[-15, 15]).Sample((size, loadN, leanDeg, slipDeg) =>
        {
            var (forceN, slopeN) = (PassengerTyre.At(loadN, leanDeg, Published).ForceN(slipDeg, out var slope), slope);
            var larger = PassengerTyre.At(size * loadN, leanDeg, Published with { SizeLoadN = size * 4000 });
            Assert.Equal(size * forceN, larger.ForceN(slipDeg, out var largerSlope), 1e-8 * size * loadN);
            Assert.Equal(size * slopeN, largerSlope, 1e-8 * size * loadN);
        });

    // Common practice, no source: under the same load a wider tyre grips and steers better.
    [Fact]
    public void Under_the_same_load_a_larger_tyre_has_more_peak_and_more_stiffness() =>
        Gen.Select(Gen.Double[1500, 6500], Gen.Double[1.02, 1.4]).Sample((loadN, larger) =>
        {
            var wide = Published with { SizeLoadN = larger * 4000 };
            Assert.True(PassengerTyre.At(loadN, 0, wide).PeakN > PassengerTyre.At(loadN, 0, Published).PeakN);
            Assert.True(PassengerTyre.StiffnessNPerDeg(loadN, wide) > PassengerTyre.StiffnessNPerDeg(loadN, Published));
        });

    [Fact]
    public void Friction_falls_with_load_between_the_least_and_the_most_sensitive_published_set() =>
        Assert.All(CsvTable.Rows("tyre-load-scaling.csv").GroupBy(row => row.Number("load_over_nominal")), rows =>
        {
            var friction = PassengerTyre.At(4000 * rows.Key, 0, Published).PeakN / (4000 * rows.Key * PassengerTyre.Friction);
            Assert.InRange(friction, rows.Min(row => row.Number("mu_over_mu_nominal")) - 1e-4, rows.Max(row => row.Number("mu_over_mu_nominal")) + 1e-4);
        });

    // Sets B, C and D to 2° either side; A rises to both sides, which is the fit and not a tyre.
    [Fact]
    public void Near_upright_the_peak_changes_with_lean_as_published_sets_have_it() =>
        Assert.All(CsvTable.Rows("tyre-camber-peak.csv").Where(row => row["set"] != "A" && Math.Abs(row.Number("lean_deg")) is > 0 and <= 2).GroupBy(row => row.Number("lean_deg")), rows =>
        {
            var ours = PassengerTyre.PeakByLean(rows.Key, 1, TyreTypicals.Set);
            Assert.InRange(ours, rows.Min(row => row.Number("peak_over_upright")) - 0.008, rows.Max(row => row.Number("peak_over_upright")) + 0.002);
        });

    [Fact]
    public void The_peak_has_a_best_lean_falls_to_both_sides_and_has_no_cusp()
    {
        var set = TyreTypicals.Set;
        Gen.Select(Gen.Double[0.3, 2.5], Gen.Double[0.01, 12]).Sample((loads, awayDeg) =>
        {
            var best = PassengerTyre.PeakByLean(set.BestLeanDeg, loads, set);
            Assert.True(PassengerTyre.PeakByLean(set.BestLeanDeg + awayDeg, loads, set) < best);
            Assert.True(PassengerTyre.PeakByLean(set.BestLeanDeg - awayDeg, loads, set) < best);
            Assert.InRange(PassengerTyre.PeakByLean(-4 * awayDeg, loads, set), 0.01, 1);
        });
        foreach (var kink in new[] { 0, 2 * set.BestLeanDeg })
        {
            var (left, right) = (Slope(kink, -1e-6), Slope(kink, 1e-6));
            Assert.Equal(left, right, 1e-6);
        }

        double Slope(double at, double step) => (PassengerTyre.PeakByLean(at + step, 1.3, set) - PassengerTyre.PeakByLean(at, 1.3, set)) / step;
    }

    [Fact]
    public void Slope_and_bend_told_are_the_changes_of_force_and_slope()
    {
        var curve = PassengerTyre.At(4300, 1.5, Published with { StiffnessFactor = 1.2 });
        foreach (var slip in new[] { -3.0, 0, 2, 7, 12, 25 })
        {
            curve.ForceN(slip, out var slope, out var bend);
            var (aboveN, belowN) = (curve.ForceN(slip + 1e-4, out var above), curve.ForceN(slip - 1e-4, out var below));
            Assert.Equal((aboveN - belowN) / 2e-4, slope, 1e-4);
            Assert.Equal((above - below) / 2e-4, bend, 1e-4);
        }
    }

    [Fact]
    public void A_curve_whose_peak_is_scaled_is_that_of_the_tyre_with_that_friction()
    {
        var (scaled, made) = (PassengerTyre.At(4300, 0, Published).WithPeak(1.4), PassengerTyre.At(4300, 0, Published with { Friction = 1.4 * PassengerTyre.Friction }));

        foreach (var slip in new[] { -3.0, 0, 2, 7, 12 }) Assert.Equal(made.ForceN(slip), scaled.ForceN(slip), 1e-9);
        Assert.Equal(made.PeakN, scaled.PeakN, 1e-9);
    }

    [Fact]
    public void A_lifted_wheel_gives_nothing() => Assert.Equal(0, PassengerTyre.At(0, 3, Published).ForceN(5));

    // The set's friction at no load: 0.99 + 0.145 = 1.135.
    [Theory]
    [InlineData(0.5, 0.5675)]
    [InlineData(-100, 0)]
    public void A_tyre_grips_by_any_load(double loadN, double mostN) => Assert.Equal(mostN, PassengerTyre.At(loadN, 0, Published).PeakN, 1e-4);

    [Fact]
    public void A_given_cornering_stiffness_is_met_at_the_static_load()
    {
        var curve = PassengerTyre.At(3400, 0, Published.WithStiffness(1250, 3400));

        curve.ForceN(0, out var slope);

        Assert.Equal(1250, slope, 1e-9);
        Assert.Equal(PassengerTyre.At(3400, 0, Published).PeakN, curve.PeakN, 1e-9);
    }

    [Fact]
    public void The_peak_of_a_pair_is_where_its_force_rises_no_more()
    {
        TyrePair pair = new(PassengerTyre.At(6100, -2, Published), PassengerTyre.At(900, 3, Published), 0.2, -0.2);
        var slip = 3.0;

        var peak = pair.PeakN(ref slip);

        var most = Enumerable.Range(0, 4000).Max(i => pair.ForceN(0.01 * i, out _));
        Assert.Equal(most, peak, 0.01);
        Assert.True(peak >= most);
    }

    [Fact]
    public void The_slip_found_gives_the_force_asked()
    {
        TyrePair pair = new(PassengerTyre.At(5000, -1, Published), PassengerTyre.At(2000, 1, Published), 0.1, -0.3);
        foreach (var force in new[] { -500.0, 0, 2500, 5500 })
            Assert.Equal(force, pair.ForceN(pair.SlipFor(force, 15)!.Value.SlipDeg, out _), 1e-6);
        Assert.Null(pair.SlipFor(9000, 5));
    }

    // The nominal loads of three published sets, two of them not used for the rule.
    [Theory]
    [InlineData("205/60R15 91V", 4000, 0.02)]
    [InlineData("235/60R16 100H", 4850, 0.1)]
    [InlineData("185/80R14 91S", 3800, 0.1)]
    public void Nominal_load_of_a_size_is_about_what_published_sets_have(string marking, double nominalN, double share) =>
        Assert.InRange(TyreTypicals.NominalLoadN(Read(marking)).Value, (1 - share) * nominalN, (1 + share) * nominalN);

    // Standard-load indices of these sizes: from memory.
    [Theory]
    [InlineData("155/65R14", 75)]
    [InlineData("195/50R15", 82)]
    [InlineData("205/55R16", 91)]
    [InlineData("225/45R17", 91)]
    [InlineData("235/45R17", 94)]
    [InlineData("275/40R17", 98)]
    [InlineData("225/40R18", 88)]
    [InlineData("255/35R19", 92)]
    [InlineData("235/65R17", 104)]
    public void Nominal_load_is_two_thirds_of_the_standard_load(string size, int loadIndex) =>
        Assert.Equal(0.663, TyreTypicals.NominalLoadN(Read(size)).Value / (LoadIndexTable.CapacityKg(loadIndex)!.Value * HandlingCar.StandardGravity), 0.03);

    [Fact]
    public void Extra_load_has_no_part_in_the_nominal_load() =>
        Assert.Equal(TyreTypicals.NominalLoadN(Read("225/45R17 91W")).Value, TyreTypicals.NominalLoadN(Read("225/45R17 94W XL")).Value);

    private static TyreMarking Read(string marking) => TyreMarkingReader.Read(marking).Value!;
}

using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Tests.Oracle;

namespace SetupService.Domain.Tests.Suspension.Readings;

/// <summary>A strut's caster with its mount moved rearward, from readings with the mount moved inboard, against struts solved from points.</summary>
public sealed class TopMountModelErrorTests
{
    // Read without error, so that nothing but the model is in the range: struts of many shapes, mount moved up to 20 mm.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_models_own_error_holds_nine_true_changes_of_ten(bool resetToe)
    {
        var (held, asked, worst) = (0, 0, 0.0);
        foreach (var stated in Struts())
        {
            var fit = Fit(stated, resetToe, 1e-4, null);
            foreach (var mm in (double[])[-20, -10, 10, 20])
            {
                var changeDeg = Caster(stated, mm, resetToe) - stated.CasterDeg!.Value;
                var told = fit.CasterChangeDeg(mm, new(stated.CasterDeg.Value, 0))!.Value;
                if (told.Ninety.Lower <= changeDeg && changeDeg <= told.Ninety.Upper) held++;
                asked++;
                worst = Math.Max(worst, Math.Abs((told.Value / changeDeg) - 1));
            }
        }

        Assert.True(asked >= 40);
        Assert.InRange((double)held / asked, 0.9, 1);
        Assert.InRange(worst, 0.02, 0.12);
    }

    // Chance of a fixed seed: readings of a gauge good to 0.1°, 15 mm either way; the mount then moved 10 mm rearward.
    [Fact]
    public void With_a_gauges_error_nine_ranges_of_ten_or_more_hold_the_true_change()
    {
        var random = new Random(20261129);
        var (held, asked) = (0, 0);
        foreach (var stated in Struts())
        {
            var changeDeg = Caster(stated, 10, true) - stated.CasterDeg!.Value;
            for (var trial = 0; trial < 200; trial++)
            {
                if (Fit(stated, true, 0.1, random).CasterChangeDeg(10, new(stated.CasterDeg.Value, 0)) is not { } told) continue;
                if (told.Ninety.Lower <= changeDeg && changeDeg <= told.Ninety.Upper) held++;
                asked++;
            }
        }

        Assert.True(asked >= 2_000);
        Assert.InRange((double)held / asked, 0.9, 0.995);
    }

    private static IEnumerable<AdjustedCorner> Struts() => GeometryCases.All("corners")
        .Where(one => one.GetProperty("name").GetString()!.StartsWith("macPhersonStrut", StringComparison.Ordinal) || one.GetProperty("name").GetString() is "ST1" or "negative scrub")
        .Select(one => AdjustedCorner.AsStated(OracleCorner.Setting(one.GetProperty("request")))!)
        .Where(corner => corner.Mechanism.Setting.Suspension is MacPhersonStrut);

    private static double Caster(AdjustedCorner stated, double rearwardMm, bool resetToe) =>
        stated.With([new(Adjuster.StrutTopRearward, rearwardMm)], resetToe)!.CasterDeg!.Value;

    private static TopMountFit Fit(AdjustedCorner stated, bool resetToe, double gaugeErrorDeg, Random? random)
    {
        TopMountReading[] readings = [.. ((double[])[-15, -15, 0, 15, 15]).Select(mm => new TopMountReading(
            mm, (mm == 0 ? stated.CamberDeg : stated.With([new(Adjuster.StrutTopInboard, mm)], resetToe)!.CamberDeg) + (random is null ? 0 : gaugeErrorDeg * Chance.Normal(random))))];
        return TopMountFit.From(readings, new(stated.Figures.SteeringAxisInclinationDeg!.Value, 0), gaugeErrorDeg)!.Value;
    }
}

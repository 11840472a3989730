using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Checks;

namespace SetupService.Domain.Tests.Fitment.Checks;

/// <summary>The arch covers what stands inside its lip; outside, local law decides, up to the widest limit that was read.</summary>
public sealed class CoverCheckTests
{
    // The present fitting keeps the gap it was measured with, so the gap is what is left inside the lip. 30 mm: Regeling voertuigen 5.2.48 (4).
    [Theory]
    [InlineData(18, CheckStatus.Pass)]
    [InlineData(0, CheckStatus.Pass)]
    [InlineData(-0.01, CheckStatus.Caution)]
    [InlineData(-CoverCheck.WidestAllowedPokeMm, CheckStatus.Caution)]
    [InlineData(-CoverCheck.WidestAllowedPokeMm - 0.01, CheckStatus.Fail)]
    public void Cover_is_judged_at_the_lip_and_at_the_widest_limit(double insideMm, CheckStatus expected)
    {
        var axle = DemoCar.Axle();
        var car = DemoCar.Front(axle with { Clearance = axle.Clearance with { OutboardMm = insideMm } });

        var cover = DemoCar.Check(car, DemoCar.Fitting())[CheckId.ArchCover];

        Assert.Equal(insideMm, cover.Value);
        Assert.Equal(expected, cover.Status);
    }

    // Rounded to 0.1 mm a hundredth would read 0.0 mm outside: it is said in words.
    [Theory]
    [InlineData(-0.01, "just outside the lip")]
    [InlineData(-0.049, "just outside the lip")]
    [InlineData(-0.06, "stands 0.1 mm outside the lip")]
    [InlineData(18, "stays 18 mm inside the lip")]
    public void How_far_it_stands_out_is_said_in_words(double insideMm, string words)
    {
        var axle = DemoCar.Axle();
        var car = DemoCar.Front(axle with { Clearance = axle.Clearance with { OutboardMm = insideMm } });
        var cover = DemoCar.Check(car, DemoCar.Fitting())[CheckId.ArchCover];

        Assert.Equal(0, cover.Limit);
        Assert.Contains(words, CheckWords.Explanation(car, DemoCar.Fitting(), CheckId.ArchCover, cover, UnitSystem.Metric), StringComparison.Ordinal);
    }
}

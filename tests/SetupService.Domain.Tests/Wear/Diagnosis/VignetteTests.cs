using SetupService.Domain.Tests.Wear.Vignettes;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>Cases guidance gives a cause for, each with its source beside it: that cause comes first.</summary>
public sealed class VignetteTests
{
    private const double Share = 0.9;

    // Those with a published source and those of common practice are held apart, so that neither carries the other.
    [Theory]
    [InlineData(true, 29)]
    [InlineData(false, 52)]
    public void The_cause_guidance_names_comes_first_in_nine_of_ten(bool isPublished, int count)
    {
        WearVignette[] vignettes = [.. WearVignettes.All.Where(vignette => IsPublished(vignette) == isPublished)];
        string[] missed = [.. vignettes.Where(vignette => !IsFirst(vignette)).Select(vignette => vignette.Name)];

        Assert.Equal(count, vignettes.Length);
        Assert.True(missed.Length <= (1 - Share) * count, string.Join('\n', missed));
    }

    [Fact]
    public void It_is_never_unlikely()
    {
        Assert.All(WearVignettes.All.Where(vignette => vignette.Axle is not null), vignette =>
            Assert.True(WearDiagnosis.Compute(vignette.Case).Probability(vignette.Expected, vignette.Axle!.Value) > 0.1, vignette.Name));
    }

    private static bool IsPublished(WearVignette vignette) => !vignette.Source.Contains("no source", StringComparison.Ordinal);

    private static bool IsFirst(WearVignette vignette)
    {
        var first = WearDiagnosis.Compute(vignette.Case).Causes[0];
        return first.Cause == vignette.Expected && (vignette.Axle is null || first.Axle == vignette.Axle);
    }
}

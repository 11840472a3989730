using SetupService.Domain.Tests.Wear.Vignettes;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>Cases guidance gives a cause for, each with its source beside it: that cause comes first.</summary>
public sealed class VignetteTests
{
    private const int Fewest = 40;
    private const double Share = 0.9;

    [Fact]
    public void The_cause_guidance_names_comes_first_in_nine_of_ten()
    {
        string[] missed = [.. WearVignettes.All.Where(vignette => !IsFirst(vignette)).Select(vignette => vignette.Name)];

        Assert.True(WearVignettes.All.Count >= Fewest);
        Assert.True(missed.Length <= (1 - Share) * WearVignettes.All.Count, string.Join('\n', missed));
    }

    [Fact]
    public void It_is_never_unlikely()
    {
        Assert.All(WearVignettes.All.Where(vignette => vignette.Axle is not null), vignette =>
            Assert.True(WearDiagnosis.Compute(vignette.Case).Probability(vignette.Expected, vignette.Axle!.Value) > 0.1, vignette.Name));
    }

    private static bool IsFirst(WearVignette vignette)
    {
        var first = WearDiagnosis.Compute(vignette.Case).Causes[0];
        return first.Cause == vignette.Expected && (vignette.Axle is null || first.Axle == vignette.Axle);
    }
}

using SetupService.Domain.Tests.Wear.Vignettes;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear;

/// <summary>The vignettes themselves: enough of them, of every cause, possible as told, and true to the definition of the cause they name.</summary>
public sealed class WearVignettesTests
{
    [Fact]
    public void There_are_enough_of_every_cause_each_with_a_name_and_a_source()
    {
        Assert.True(WearVignettes.All.Count >= 48);
        Assert.Equal(WearVignettes.All.Count, WearVignettes.All.Select(one => one.Name).Distinct().Count());
        Assert.All(WearVignettes.All, one => Assert.NotEmpty(one.Source));
        foreach (var cause in Enum.GetValues<WearCause>())
        {
            Assert.True(WearVignettes.All.Count(one => one.Expected == cause) >= 3, $"{cause}");
        }
    }

    [Fact]
    public void Each_is_possible_as_told_and_reads_the_axle_it_names()
    {
        foreach (var one in WearVignettes.All)
        {
            var tyres = one.Case.Tyres;
            Assert.Equal(tyres.Count, tyres.Select(tyre => tyre.Position).Distinct().Count());
            Assert.Contains(tyres, tyre => one.Axle is null || tyre.Axle == one.Axle);
            foreach (var zone in tyres.SelectMany(tyre => tyre.Zones))
                Assert.InRange(zone.DepthMm, TreadDepths.LegalLeastMm, Told.NewMm);
        }

        Assert.Contains(WearVignettes.All, one => one.Case.Tyres.Any(tyre => tyre.Zones.Count > 0));
    }

    [Fact]
    public void Angles_pressures_temperatures_and_rims_told_agree_with_the_cause_named()
    {
        // A story need not tell the figure that would show its cause; of each cause some story does.
        Dictionary<WearCause, int> told = [];
        foreach (var one in WearVignettes.All.Where(one => one.Axle is not null))
        {
            var axle = one.Case.Vehicle.At(one.Axle!.Value);
            var tyres = one.Case.Tyres.Where(tyre => tyre.Axle == one.Axle).ToList();
            var toes = new[] { axle.Left.ToeDeg, axle.Right.ToeDeg }.OfType<double>().ToList();
            var offs = tyres.Select(tyre => tyre.Pressure.OffShare).OfType<double>().ToList();
            switch (one.Expected)
            {
                case WearCause.ToeIn:
                    Assert.DoesNotContain(toes, toe => toe <= 0.15);
                    Tell(one.Expected, toes.Count);
                    break;
                case WearCause.ToeOut:
                    Assert.DoesNotContain(toes, toe => toe >= -0.15);
                    Tell(one.Expected, toes.Count);
                    break;
                case WearCause.UnderInflation:
                    Assert.True(offs.Count == 0 || offs.Min() <= -0.1, one.Name);
                    Tell(one.Expected, offs.Count);
                    break;
                case WearCause.OverInflation:
                    Assert.True(offs.Count == 0 || offs.Max() >= 0.1, one.Name);
                    Tell(one.Expected, offs.Count);
                    break;
                case WearCause.RimWidthMismatch:
                    Assert.False(axle.Tyre!.Marking.PermittedRimWidth.Includes(axle.Wheel!.RimWidthIn), one.Name);
                    break;
                case WearCause.BelowTemperatureWindow:
                    Assert.All(tyres, tyre => Assert.True(tyre.TemperatureC!.Value.Centre < tyre.TemperatureWindowC!.Value.FromC, one.Name));
                    break;
                default:
                    // Where the cause is another, what is told of toe and air is right.
                    Assert.DoesNotContain(offs, off => Math.Abs(off) > 0.05);
                    Tell(WearCause.Normal, offs.Count);
                    break;
            }
        }

        foreach (var cause in (WearCause[])[WearCause.ToeIn, WearCause.ToeOut, WearCause.UnderInflation, WearCause.OverInflation, WearCause.Normal])
            Assert.True(told.GetValueOrDefault(cause) > 0, $"no story tells a figure of {cause}");

        void Tell(WearCause cause, int count) => told[cause] = told.GetValueOrDefault(cause) + count;
    }
}

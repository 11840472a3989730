using CsCheck;
using SetupService.Domain.Planning;

namespace SetupService.Domain.Tests.Planning;

/// <summary>What is answered of all packages, and which are looked at beside the recommended one: by the definitions on the method page.</summary>
public sealed class PlanResultTests
{
    private static readonly OfferedPart[] Parts = [.. Enumerable.Range(0, 12).Select(i => new OfferedPart { Id = $"p{i}", Kind = PartKind.AntiRollBar, ChangeNumber = i })];

    private static readonly Gen<PackageFigures> AnyFigures = Gen.Select(
        Gen.Double[0.9, 1.2], Gen.Double[0, 3], Gen.Double[1.2, 2.0], Gen.Double[0.1, 0.9], Gen.Double[-1, 3], Gen.Int[0, 3], Gen.Double[1, 2],
        (limitG, leanDeg, hz, damping, noise, dry, shoulder) => Figures(limitG, leanDeg, hz, damping, noise, dry, shoulder));

    // Cost rises with every part, so that many are worth choosing between.
    private static readonly Gen<JudgedPackage[]> AnyPackages = Gen.Select(Gen.Double[10, 2000], AnyFigures).Array[14, 60]
        .Select(rows => rows.Select((row, i) => Package((ulong)i, i == 0 ? 0 : row.Item1, row.Item2)).ToArray());

    [Fact]
    public void The_best_of_every_figure_is_answered()
    {
        AnyPackages.Sample(packages =>
        {
            var result = Compose(packages);
            Func<JudgedPackage, double>[] figures =
            [
                one => one.Package.Cost.Total, one => -one.Figures.LimitG!.Value, one => one.Figures.OffFlatDeg, one => one.Figures.RideFrequencyHz, one => one.Figures.OffDampingRange,
                one => one.Figures.NoiseSteps!.Value, one => one.Figures.DryBias, one => one.Figures.InnerShoulderWearRatio!.Value, one => -result.Choice.Delivered(one.Figures, 0.5),
            ];
            Assert.InRange(result.Packages.Count, 1, PlanResult.MostAnswered);
            foreach (var figure in figures) Assert.Equal(result.Front.Min(figure), result.Packages.Where(result.Front.Contains).Min(figure), 1e-12);
            Assert.Equal(result.Front.Count, result.FurtherCount + result.Packages.Count(result.Front.Contains));
        }, iter: 200);
    }

    // The cheapest that delivers enough is recommended: what sets enough, and what is cheaper and nearly delivers it, could change that. Ones that are dearer and deliver more could not.
    [Fact]
    public void What_could_take_the_place_of_the_recommended_is_looked_at()
    {
        AnyPackages.Sample(packages =>
        {
            var result = Compose(packages);
            var (best, others) = (result.Recommended!, packages.Where(one => one != result.Recommended).ToArray());
            double Delivers(JudgedPackage one) => result.Choice.Delivered(one.Figures, 0.5);

            Assert.Equal(Math.Min(OrderCertainty.MostRivals, others.Length), result.Rivals.Count);
            Assert.Contains(result.Rivals, one => Delivers(one) == others.Max(Delivers));
            if (best.Package.Count > 0) Assert.Contains(result.Rivals, one => one.Package.Count == 0);
            var cheaper = others.Where(one => one.Package.Count > 0 && one.Package.Cost.Total < best.Package.Cost.Total).ToArray();
            if (cheaper.Length > 0) Assert.Contains(result.Rivals, one => one.Package.Count > 0 && Delivers(one) == cheaper.Max(Delivers));
            JudgedPackage[] looked = [best, .. result.Rivals];
            Assert.Equal(0, result.Choice.Recommended([.. looked.Select(one => result.Choice.Contend(one, 0.5))]));
        }, iter: 200);
    }

    // With what the wear model leaves open of each, and first steps some share: among those looked at the recommended one is recommended as it is among all.
    [Fact]
    public void Among_those_looked_at_the_choice_is_that_among_all()
    {
        Gen.Select(AnyPackages, Gen.Double[0, 0.3].Array[61], Gen.Double[0, 0.3].Array[61], Gen.Int[0, 4].Array[61]).Sample((packages, common, own, step) =>
        {
            JudgedPackage[] unsure = [.. packages.Select((one, i) => one with
            {
                Evaluated = one.Evaluated with
                {
                    Figures = one.Figures with { TreadLifeFactor = 1 + ((i % 7) / 10.0), TreadLifeEffects = one.Package.Count == 0 ? [] : [common[i], own[i] / 3] },
                    FirstStep = step[i] == 0 || one.Package.Count == 0 ? null : Figures(1 + (step[i] / 20.0), 1, 1.4, 0.4, 0, 0, 1.2) with { TreadLifeFactor = 1 },
                },
            })];
            var result = Compose(unsure, givenLife: 1);
            JudgedPackage[] looked = [result.Recommended!, .. result.Rivals];

            Assert.Equal(0, result.Choice.Recommended([.. looked.Select(one => result.Choice.Contend(one, 0.5))]));
        }, iter: 500);
    }

    private static PlanResult Compose(JudgedPackage[] packages, double? givenLife = null) => PlanResult.Compose(
        new() { Given = null!, Bends = [], Scale = default, Use = new(10_000, 10, 10, 10), Goals = [new(PlanGoal.Grip, 1), new(PlanGoal.Wear, 1), new(PlanGoal.Comfort, 1), new(PlanGoal.Noise, 1), new(PlanGoal.Wet, 1)], Limits = new() },
        Parts, Figures(1, 2, 1.4, 0.4, 0, 0, 1.2) with { TreadLifeFactor = givenLife }, packages);

    private static JudgedPackage Package(ulong parts, double cost, PackageFigures figures) => new(new(parts, new(cost, 0, 0, 0, cost)), new(null, [], figures), null);

    private static PackageFigures Figures(double limitG, double leanDeg, double hz, double damping, double noise, int dry, double shoulder)
    {
        var axle = new AxleFigures
        {
            LimitG = limitG,
            MeanInclinationDeg = leanDeg,
            OffFlatDeg = leanDeg,
            CamberDeg = -1,
            RideFrequencyHz = hz,
            DampingRatio = damping,
            WheelRateNPerMm = 25,
            BumpLeftMm = 60,
            HeightMm = 0,
            InnerShoulderWearRatio = shoulder,
            DryBias = dry,
            RimWidthIn = 7.5,
        };
        return new() { LimitG = limitG, HardestLimitG = limitG, MarginG = 0.02, Front = axle, Rear = axle, TreadLifeFactor = null, NoiseSteps = noise };
    }
}

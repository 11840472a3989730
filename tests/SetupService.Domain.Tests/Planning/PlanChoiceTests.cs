using CsCheck;
using SetupService.Domain.Planning;

namespace SetupService.Domain.Tests.Planning;

/// <summary>Which package is recommended: worked by hand from the definition on the method page.</summary>
public sealed class PlanChoiceTests
{
    [Fact]
    public void What_is_delivered_is_the_weighted_share_of_the_furthest()
    {
        var given = Figures(1.00, 2.0, 1.4);
        var (some, most) = (Figures(1.03, 1.0, 1.4), Figures(1.06, 0.5, 1.75));
        var choice = PlanChoice.Create([new(PlanGoal.Grip, 1), new(PlanGoal.Wear, 2), new(PlanGoal.Comfort, 1)], given, [given, some, most]);

        // Half the grip, two thirds of the lean taken out, nothing of the ride lost; at a track share of 0.6: (0.6 × 0.5 + 2 × 2/3 + 0.4 × 0) / 3.
        Assert.Equal(((0.6 * 0.5) + (2 * 2 / 3.0)) / 3, choice.Delivered(some, 0.6), 1e-12);
        Assert.Equal((0.6 + 2 - 0.4) / 3, choice.Delivered(most, 0.6), 1e-12);
        Assert.Equal([0.5, 2 / 3.0, 0.0], choice.Shares(some).Select(one => Math.Round(one!.Value, 12)).ToArray(), new Nearly());
    }

    [Theory]
    [InlineData(new[] { 0.0, 100, 300 }, new[] { 0.2, 0.85, 1.0 }, 1)]
    [InlineData(new[] { 0.0, 100, 300 }, new[] { 0.85, 0.9, 1.0 }, 0)]
    [InlineData(new[] { 0.0, 100, 300 }, new[] { 0.0, -0.2, 0.04 }, 0)]
    [InlineData(new[] { 0.0, 100, 300 }, new[] { 0.3, 0.45, 0.49 }, 0)]
    [InlineData(new[] { 0.0, 100, 300 }, new[] { 0.1, 0.29, 0.35 }, 0)]
    [InlineData(new[] { 0.0, 100, 100 }, new[] { 0.0, 0.9, 1.0 }, 2)]
    public void The_cheapest_that_delivers_most_of_it_is_recommended(double[] costs, double[] delivered, int wanted)
    {
        var choice = PlanChoice.Create([new(PlanGoal.Grip, 1)], Figures(1, 0, 1), [Figures(1.1, 0, 1)]);

        Assert.Equal(wanted, choice.Recommended([.. costs.Select((cost, i) => new Contender(cost, delivered[i], cost > 0 ? 1 : 0))]));
    }

    // Nothing delivers 0.1, the cheaper one 0.6, the dearer one all: as if all were known the dearer one alone is enough (80 %). What one standard error of the wear model's two unknowns does to
    // what they deliver; 1.645 of those are its 90 %, so 0.243 hides the 0.4 between the two, 0.304 the 0.5 between the cheaper one and nothing, 0.547 the 0.9 between the dearer one and nothing.
    [Theory]
    [InlineData(0.00, 0.00, 0.00, 2)]
    [InlineData(0.24, 0.00, 0.00, 2)]
    [InlineData(0.25, 0.00, 0.00, 1)]
    [InlineData(0.00, 0.00, 0.25, 1)]
    [InlineData(0.30, 0.30, 0.00, 2)]
    [InlineData(0.30, 0.04, 0.00, 1)]
    [InlineData(0.50, 0.35, 0.00, 2)]
    [InlineData(0.54, 0.40, 0.00, 2)]
    [InlineData(0.55, 0.40, 0.00, 0)]
    [InlineData(0.40, 0.35, 0.30, 2)]
    public void Money_is_not_spent_on_a_gain_within_the_wear_models_own_error(double dearer, double cheaper, double dearersOwn, int wanted)
    {
        var choice = PlanChoice.Create([new(PlanGoal.Wear, 1)], Figures(1, 2, 1), [Figures(1, 0.5, 1)]);

        Assert.Equal(wanted, choice.Recommended([new(0, 0.1, 0), new(100, 0.6, 1) { Unknown = [cheaper] }, new(400, 1, 1) { Unknown = [dearer, dearersOwn] }]));
    }

    // The whole of the dearer one is not known to be better than nothing (0.55 hides 0.9), but its first step is: 0.6 of which 0.3 hides less than that.
    [Theory]
    [InlineData(0.30, 1)]
    [InlineData(0.31, 0)]
    public void What_the_first_step_surely_gives_is_worth_its_money(double unknown, int wanted)
    {
        var choice = PlanChoice.Create([new(PlanGoal.Wear, 1)], Figures(1, 2, 1), [Figures(1, 0.5, 1)]);

        Assert.Equal(wanted, choice.Recommended([new(0, 0.1, 0), new(400, 1, 1) { Unknown = [0.55], First = new(0.6, [unknown]) }]));
    }

    // Both set the camber as far as one dares at once; the dearer one could go on, to a whole of 1. Below 60 % of that the cheaper one is no way to it, nor is it where its first step is another car or louder.
    [Theory]
    [InlineData(0.7, true, 1.1, 0.0, 1)]
    [InlineData(0.7, false, 1.1, 0.0, 2)]
    [InlineData(0.59, true, 1.1, 0.0, 2)]
    [InlineData(0.7, true, 1.11, 0.0, 2)]
    [InlineData(0.7, true, 1.1, 1.0, 2)]
    public void The_cheaper_way_to_the_same_first_step_is_gone_first(double delivered, bool goesOn, double holdsG, double noise, int wanted)
    {
        var choice = PlanChoice.Create([new(PlanGoal.Wear, 1)], Figures(1, 2, 1), [Figures(1, 0.5, 1)]);

        Assert.Equal(wanted, choice.Recommended(
        [
            new(0, 0.1, 0) { AtFirst = Figures(1, 2, 1) },
            new(130, delivered, 1) { AtFirst = Figures(1.1, 1, 1) with { NoiseSteps = noise } },
            new(600, 1, 1) { AtFirst = Figures(holdsG, 1, 1), First = goesOn ? new(0.7, []) : null },
        ]));
    }

    // The mounts give way to the bolts, whose first step is theirs; springs with the bolts, dearer than the mounts and no better, do so all the more.
    [Fact]
    public void What_is_no_better_than_one_that_gives_way_gives_way_too()
    {
        var choice = PlanChoice.Create([new(PlanGoal.Wear, 1)], Figures(1, 2, 1), [Figures(1, 0.5, 1)]);
        var first = Figures(1.1, 1, 1);

        Assert.Equal(1, choice.Recommended(
        [
            new(0, 0, 0) { AtFirst = Figures(1, 2, 1) },
            new(130, 0.6, 1) { AtFirst = first },
            new(600, 0.9, 1) { AtFirst = first, First = new(0.6, []) },
            new(765, 0.85, 2) { AtFirst = Figures(1.2, 1, 1.1) },
        ]));
    }

    // A longer list of which the cheaper ones were asked before is answered as if it were asked at once.
    [Fact]
    public void What_was_found_of_the_cheaper_ones_holds_for_a_longer_list()
    {
        var choice = PlanChoice.Create([new(PlanGoal.Wear, 1)], Figures(1, 2, 1), [Figures(1, 0.5, 1)]);
        Gen.Select(Gen.Double[-0.2, 1], Gen.Double[0, 0.3], (delivered, unknown) => (delivered, unknown)).Array[1, 12].Sample(drawn =>
        {
            Contender[] contenders = [.. drawn.Select((one, i) => new Contender(i, i == 0 ? 0 : one.delivered, i == 0 ? 0 : 1) { Unknown = i == 0 ? [] : [one.unknown] })];
            var preferred = new int?[contenders.Length];
            for (var end = 1; end <= contenders.Length; end++)
                Assert.Equal(choice.Recommended(contenders.AsSpan(0, end)), choice.Recommended(contenders.AsSpan(0, end), preferred.AsSpan(0, end)));
        });
    }

    [Fact]
    public void A_goal_no_package_moves_noticeably_counts_nothing()
    {
        var given = Figures(1.0, 1.0, 1.4);
        var choice = PlanChoice.Create([new(PlanGoal.Grip, 1), new(PlanGoal.Wear, 1)], given, [Figures(1.005, 0.5, 1.4)]);

        Assert.Null(choice.Shares(given)[0]);
        Assert.Equal(1, choice.Delivered(Figures(1.005, 0.5, 1.4), 1), 1e-12);
    }

    // Rubber is as now; by the page a solid joint is two steps, 3 dB on the label one, the hardest joint and the loudest tyre together.
    [Theory]
    [InlineData(PartJoint.Rubber, null, 0.0)]
    [InlineData(PartJoint.Firm, null, 1.0)]
    [InlineData(PartJoint.Solid, 74.0, 3.0)]
    [InlineData(PartJoint.Rubber, 69.5, -0.5)]
    public void Noise_is_the_hardest_joint_and_the_loudest_tyre(PartJoint joint, double? tyreDb, double wanted)
    {
        OfferedPart[] parts =
        [
            new() { Id = "mounts", Kind = PartKind.TopMount, Joint = joint, ChangeNumber = 0 },
            new() { Id = "bushes", Kind = PartKind.Bush, Joint = PartJoint.Rubber },
            new() { Id = "springs", Kind = PartKind.Spring, ChangeNumber = 1 },
            new() { Id = "tyres", Kind = PartKind.Tyre, NoiseDb = tyreDb, ChangeNumber = tyreDb is null ? -1 : 2 },
        ];

        Assert.Equal(wanted, PackageNoise.From(parts, new(0b1111, default), 71).Steps!.Value, 1e-12);
        Assert.Equal(tyreDb is null ? [] : [3], PackageNoise.From(parts, new(0b1111, default), null).Untold);
        Assert.Null(PackageNoise.From([parts[0] with { Joint = null }], new(1, default), 71).Steps);
    }

    [Fact]
    public void A_louder_package_takes_from_what_is_delivered_as_the_road_has_a_share()
    {
        var given = Figures(1.0, 1.0, 1.4);
        var (quiet, loud) = (Figures(1.1, 1.0, 1.4), Figures(1.1, 1.0, 1.4) with { NoiseSteps = 2 });
        var choice = PlanChoice.Create([new(PlanGoal.Grip, 1), new(PlanGoal.Noise, 1)], given, [given, quiet, loud]);

        // All of the grip at a track share of 0.6, and all of the noise at the road's 0.4.
        Assert.Equal(0.6, choice.Delivered(quiet, 0.6), 1e-12);
        Assert.Equal(0.6 - 0.4, choice.Delivered(loud, 0.6), 1e-12);
    }

    private static PackageFigures Figures(double limitG, double leanDeg, double frequencyHz)
    {
        var axle = new AxleFigures
        {
            LimitG = limitG,
            MeanInclinationDeg = leanDeg,
            OffFlatDeg = leanDeg,
            CamberDeg = -1,
            RideFrequencyHz = frequencyHz,
            DampingRatio = 0.4,
            WheelRateNPerMm = 27,
            BumpLeftMm = 60,
            HeightMm = 0,
            InnerShoulderWearRatio = 1.2,
            DryBias = 0,
            RimWidthIn = 7.5,
        };
        return new() { LimitG = limitG, HardestLimitG = limitG, MarginG = 0, Front = axle, Rear = axle, TreadLifeFactor = null };
    }

    private sealed class Nearly : IEqualityComparer<double>
    {
        public bool Equals(double one, double other) => Math.Abs(one - other) < 1e-9;

        public int GetHashCode(double one) => 0;
    }
}

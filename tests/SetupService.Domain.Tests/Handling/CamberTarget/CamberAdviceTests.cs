using CsCheck;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.CamberTarget;

/// <summary>The first step: never too large, never against either answer, never where the adjuster does not reach, and an end to it. The sizes are common practice, no source.</summary>
public sealed class CamberAdviceTests
{
    private static readonly Gen<CamberCase> Cases =
        from axle in Gen.Enum<CarAxle>()
        from set in Gen.Double[-6, 0.7]
        from flat in Gen.Select(Gen.Double[-7, 1], Gen.Double[0.05, 2], Gen.Double[0.05, 2])
        from beyond in Gen.Select(Gen.Int[0, 12], Gen.Int[1, 8], Gen.Int[1, 4])
        from reach in Gen.OneOf(Gen.Const((AngleReach?)null), Gen.Const((AngleReach?)AngleReach.None), Gen.Select(Gen.Double[-6, 1], Gen.Double[0, 4], (low, width) => (AngleReach?)AngleReach.Between(low, low + width)))
        from layout in Gen.OneOf(Gen.Const((SuspensionLayout?)null), Gen.Enum<SuspensionLayout>().Select(one => (SuspensionLayout?)one))
        let best = (Math.Round(flat.Item1 * 2) / 2) - (beyond.Item1 / 2.0)
        select new CamberCase
        {
            Axle = axle,
            SetDeg = set,
            Flat = new(flat.Item1, flat.Item1 - flat.Item2, flat.Item1 + flat.Item3, 90),
            Best = new(best, best - (beyond.Item2 / 2.0), best + (beyond.Item3 / 2.0), 90),
            Reach = reach,
            Layout = layout,
        };

    [Fact]
    public void The_step_is_one_a_careful_person_would_dare_and_lies_between_what_is_set_and_what_both_answers_want() =>
        Cases.Sample(one =>
        {
            var advice = CamberAdvice.Create(one);
            var step = advice.StepDeg!.Value;

            Assert.InRange(Math.Abs(step), 0, 1.5 + 1e-9);
            Assert.Equal(one.SetDeg + step, advice.CamberDeg!.Value, 1e-9);
            if (step == 0) return;
            Assert.Equal(Math.Sign(step), Math.Sign(one.Flat.Value - one.SetDeg));
            Assert.Equal(Math.Sign(step), Math.Sign(one.Best.Value - one.SetDeg));
            Assert.True(Math.Abs(step) <= Math.Min(Math.Abs(one.Flat.Value - one.SetDeg), Math.Abs(one.Best.Value - one.SetDeg)) + 1e-3);
            Assert.True(step > 0 || advice.CamberDeg >= CamberAdvice.MostOnRoadDeg - 1e-3, $"{advice}");
            if (one.Reach is { } reach) Assert.InRange(advice.CamberDeg!.Value, reach.FromDeg - 1e-3, reach.ToDeg + 1e-3);
            if (one.SetDeg >= one.Flat.Lower && one.SetDeg <= one.Flat.Upper) Assert.True(Math.Abs(step) <= 0.5 + 1e-9);
        }, iter: 20_000);

    [Theory]
    [InlineData(0.75)]
    [InlineData(2.0)]
    public void Of_wheels_said_to_lean_out_it_is_asked_first_which_way_they_lean(double setDeg)
    {
        var advice = CamberAdvice.Create(Case(setDeg, (-2.2, -2.9, -1.5), (-5, -9, -3)));

        Assert.Equal((null, null), (advice.CamberDeg, advice.StepDeg));
        Assert.StartsWith("Look first which way the front wheels lean", advice.Text, StringComparison.Ordinal);
        Assert.Contains("If they do lean out: set the front camber to ", advice.Text, StringComparison.Ordinal);
        Assert.InRange(advice.Text.Split(". ").Length, 2, 5);
    }

    // What is set comes of smoothed readings, −0.707° where −0.7° was read: the step goes to the adjuster's end all the same, as the wear diagnosis of that car tells it.
    [Theory]
    [InlineData(-0.7)]
    [InlineData(-0.7069)]
    [InlineData(-0.69)]
    public void A_step_that_the_adjuster_ends_goes_to_its_end(double setDeg)
    {
        var advice = CamberAdvice.Create(new()
        {
            Axle = CarAxle.Front,
            SetDeg = setDeg,
            Flat = new(-4.5, -5.3, -3.6, 90),
            Best = new(-7, -12, -5, 90),
            Reach = AngleReach.Between(-1.3, -0.2),
        });

        Assert.StartsWith("Set the front camber to −1.3°, 0.6° more negative than now.", advice.Text, StringComparison.Ordinal);
        Assert.Equal(-1.3, advice.CamberDeg!.Value, 0.011);
    }

    // The step reaches the adjuster's end: there is no next one with it, and what more needs is told.
    [Fact]
    public void At_the_adjusters_end_no_next_step_is_spoken_of()
    {
        var one = Case(-0.5, (-4.3, -5.7, -2.8), (-6, -11, -3.5)) with { Reach = AngleReach.Between(-1.2, 0) };
        var last = CamberAdvice.Create(one);
        var first = CamberAdvice.Create(one with { Reach = AngleReach.Between(-2.5, 0) });

        Assert.Equal(-1.2, last.CamberDeg!.Value, 1e-9);
        Assert.DoesNotContain("next step", last.Text, StringComparison.Ordinal);
        Assert.Contains("There the adjuster ends.", last.Text, StringComparison.Ordinal);
        Assert.Contains("more needs another adjuster, less roll", last.Text, StringComparison.Ordinal);
        Assert.Contains("Before the next step", first.Text, StringComparison.Ordinal);
        Assert.Contains("The adjuster ends at −2.5°", first.Text, StringComparison.Ordinal);
    }

    // Many axles have no camber to set: where nobody said, the fitter looks for an adjuster before anything is booked.
    [Fact]
    public void Where_nobody_said_how_far_it_can_be_set_that_is_told()
    {
        var one = Case(-0.5, (-3.3, -4.0, -2.6), (-6, -11, -3.5));

        Assert.Contains("How far this axle can be set was not said", CamberAdvice.Create(one with { Reach = null }).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("not said", CamberAdvice.Create(one with { Reach = AngleReach.Between(-4, 0) }).Text, StringComparison.Ordinal);
        Assert.Contains("how far this axle can be set was not said", CamberAdvice.Create(one with { Flat = new(-4.4, -4.8, -4.0, 90), Reach = null }).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Followed_step_by_step_it_ends() =>
        Cases.Sample(one =>
        {
            for (var steps = 0; ; steps++)
            {
                Assert.True(steps < 20, $"{one}");
                var advice = CamberAdvice.Create(one);
                if (advice.StepDeg == 0) break;
                one = one with { SetDeg = advice.CamberDeg!.Value };
            }

            Assert.StartsWith("Leave the ", CamberAdvice.Create(one).Text, StringComparison.Ordinal);
        }, iter: 5_000);

    [Fact]
    public void It_says_what_its_numbers_say_in_at_most_five_sentences() =>
        Cases.Sample(one =>
        {
            var advice = CamberAdvice.Create(one);

            Assert.InRange(advice.Text.Split(". ").Length, 2, 5);
            Assert.EndsWith(".", advice.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("  ", advice.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("-", advice.Text.Replace("stub-axle", "", StringComparison.Ordinal), StringComparison.Ordinal);
            Assert.Contains(CamberAdvice.Deg(advice.CamberDeg!.Value), advice.Verdict, StringComparison.Ordinal);
            Assert.Equal(advice.StepDeg == 0, advice.Verdict.StartsWith("Leave", StringComparison.Ordinal));
            if (advice.StepDeg != 0) Assert.Contains(advice.StepDeg < 0 ? "more negative" : "less negative", advice.Verdict, StringComparison.Ordinal);
            if (advice.StepDeg != 0) Assert.Contains("toe", advice.Text, StringComparison.Ordinal);
        }, iter: 5_000);

    [Fact]
    public void A_range_that_includes_what_is_set_is_said_and_the_tyres_are_read_first()
    {
        var advice = CamberAdvice.Create(Case(-0.7, (-2.2, -3.9, -0.5), (-5, -9, -3)));

        Assert.Equal(-0.5, advice.StepDeg!.Value, 1e-9);
        Assert.StartsWith("Read the front tyres first", advice.Text, StringComparison.Ordinal);
        Assert.Contains("includes the −0.7° set now", advice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Within_half_a_degree_it_is_left_whatever_else()
    {
        var advice = CamberAdvice.Create(Case(-2.6, (-2.9, -3.2, -2.5), (-5.5, -9, -3.5)));

        Assert.Equal(0, advice.StepDeg);
        Assert.Contains("Its range includes what is set", advice.Text, StringComparison.Ordinal);
    }

    // The two answers pull different ways: past flat, short of most grip.
    [Fact]
    public void Between_both_answers_it_is_left()
    {
        var advice = CamberAdvice.Create(Case(-3.2, (-2.2, -2.6, -1.8), (-5, -9, -3)));

        Assert.Equal(0, advice.StepDeg);
        Assert.Contains("between", advice.Text, StringComparison.Ordinal);
        Assert.Contains("The range of most grip includes what is set", advice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_much_is_taken_back_in_steps_too()
    {
        var advice = CamberAdvice.Create(Case(-3.4, (-0.4, -0.7, -0.1), (-1.5, -2.5, -0.5)));

        Assert.Equal(1.5, advice.StepDeg!.Value, 1e-9);
        Assert.Contains("the inner shoulder is more worn or hotter than the outer one", advice.Text, StringComparison.Ordinal);
    }

    // −3.5° is the most a road car is set to: common practice, no source.
    [Fact]
    public void The_road_ends_it()
    {
        var first = CamberAdvice.Create(Case(-2.6, (-4.4, -4.8, -4.0), (-7, -11, -5)));
        var last = CamberAdvice.Create(Case(-3.5, (-4.4, -4.8, -4.0), (-7, -11, -5)));

        Assert.Equal(-3.5, first.CamberDeg!.Value, 1e-9);
        Assert.Contains("On the road stop at −3.5°", first.Text, StringComparison.Ordinal);
        Assert.Equal(0, last.StepDeg);
        Assert.Contains("inner shoulder", last.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SuspensionLayout.TwistBeam, "tapered shims between beam and stub axle")]
    [InlineData(SuspensionLayout.SemiTrailingArm, "eccentric bushes")]
    [InlineData(SuspensionLayout.MacPhersonStrut, "adjustable top mounts")]
    [InlineData(SuspensionLayout.DoubleWishbone, "eccentric bolts of an arm")]
    [InlineData(SuspensionLayout.FiveLink, "upper link")]
    public void Where_it_cannot_be_set_the_part_that_would_allow_it_is_named(SuspensionLayout layout, string part)
    {
        var advice = CamberAdvice.Create(Case(-1.2, (-2.2, -2.6, -1.8), (-5, -9, -3)) with { Axle = CarAxle.Rear, Layout = layout, Reach = AngleReach.None });

        Assert.Equal(0, advice.StepDeg);
        Assert.Contains(part, advice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_adjuster_that_ends_short_is_used_to_its_end_and_then_said_to_be_there()
    {
        var one = Case(-1.2, (-3.2, -3.6, -2.8), (-6, -10, -4)) with { Reach = AngleReach.Between(-2, 0) };
        var first = CamberAdvice.Create(one);
        var last = CamberAdvice.Create(one with { SetDeg = -2 });

        Assert.Equal(-2, first.CamberDeg!.Value, 1e-9);
        Assert.Contains("There the adjuster ends", first.Text, StringComparison.Ordinal);
        Assert.Equal(0, last.StepDeg);
        Assert.Contains("the adjuster goes no further", last.Text, StringComparison.Ordinal);
    }

    // Camber is read, and smoothed, to some hundredths: less than a tenth past an end is at it.
    [Theory]
    [InlineData(-1.95, "the adjuster goes no further")]
    [InlineData(-2.02, "the adjuster goes no further")]
    [InlineData(-2.3, "so measure both again")]
    public void A_camber_read_just_past_the_adjusters_end_is_at_it(double setDeg, string said)
    {
        var advice = CamberAdvice.Create(Case(setDeg, (-3.2, -3.6, -2.8), (-6, -10, -4)) with { Reach = AngleReach.Between(-2, 0) });

        Assert.Equal(0, advice.StepDeg);
        Assert.Contains(said, advice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_nobody_measured_is_measured_first()
    {
        var advice = CamberAdvice.Create(Case(-0.5, (-3.2, -3.6, -2.8), (-6, -10, -4)) with { IsSetMeasured = false });

        Assert.Null(advice.CamberDeg);
        Assert.Null(advice.StepDeg);
        Assert.StartsWith("Measure the front camber first", advice.Text, StringComparison.Ordinal);
    }

    private static CamberCase Case(double setDeg, (double Value, double Lower, double Upper) flat, (double Value, double Lower, double Upper) best) => new()
    {
        Axle = CarAxle.Front,
        SetDeg = setDeg,
        Flat = new(flat.Value, flat.Lower, flat.Upper, 90),
        Best = new(best.Value, best.Lower, best.Upper, 90),
    };
}

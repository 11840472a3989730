using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Words;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Fitment;

/// <summary>What a shop reads out of a check.</summary>
public sealed class SummaryWordsTests
{
    [Fact]
    public void A_fitment_that_passes_says_how_much_room_is_left_and_to_try_by_hand() => Assert.Equal(
        "Fits, with 12 mm inboard and 5.6 mm to the arch lip. Turn the wheel by hand over full travel and lock before driving.",
        Summary(DemoCar.Front(), DemoCar.Fitting(widthIn: 8, offsetMm: 40)));

    [Fact]
    public void A_wheel_that_does_not_go_on_says_so_first()
    {
        var wrong = DemoCar.Fitting();
        var text = Summary(DemoCar.Front(), wrong with { Wheel = wrong.Wheel with { BoltCircle = new(4, 100) } });

        Assert.Equal("Does not fit. The wheel does not go on and must not be forced on: it has 4 holes on 100 mm, the hub has 5 holes on 108 mm.", text);
    }

    [Fact]
    public void What_is_tight_is_named_with_its_place()
    {
        var text = Summary(DemoCar.Front(), DemoCar.Fitting(offsetMm: 50));

        Assert.StartsWith("Fits, with 4.3 mm inboard and 18 mm to the arch lip, but look at this first. It is tight inboard: 2.4 mm in the worst case.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_car_nobody_measured_is_not_known_to_fit() =>
        Assert.StartsWith("Not known to fit yet.", Summary(FitmentContext.Prepare(new Vehicle(), CarAxle.Front, new CheckSettings()), DemoCar.Fitting()), StringComparison.Ordinal);

    [Fact]
    public void It_never_has_more_than_five_sentences_nor_contradicts_the_verdict() =>
        Gen.Select(Gen.Double[-20, 80], Gen.Int[0, 3].Select(i => new[] { 6.0, 7.5, 9.0, 10.5 }[i]), Gen.Double[0, 30], Gen.Int[0, 3].Select(i => new[] { "225/45R17 91W", "205/50R17 89H", "255/40R18 99Y", "195/45R17 81H M+S" }[i]), Gen.Bool, Gen.Bool).Sample((offsetMm, widthIn, gapMm, marking, hasGaps, isUs) =>
        {
            var clearance = hasGaps ? DemoCar.Axle().Clearance with { InboardMm = gapMm, RadialMm = gapMm } : new Clearance();
            var car = DemoCar.Front(DemoCar.Axle() with { Clearance = clearance });
            var candidate = DemoCar.Fitting(widthIn, offsetMm, marking);
            var sheet = DemoCar.Check(car, candidate);
            var text = SummaryWords.Write(car, candidate, sheet, isUs ? UnitSystem.Us : UnitSystem.Metric);

            Assert.InRange(text.Split(". ").Length, 1, 5);
            Assert.Equal(sheet.Verdict is CheckStatus.Pass or CheckStatus.Caution, text.StartsWith("Fits", StringComparison.Ordinal));
            Assert.Equal(sheet.Verdict == CheckStatus.Fail, text.StartsWith("Does not fit.", StringComparison.Ordinal));
            if (isUs) Assert.DoesNotContain(" mm", text, StringComparison.Ordinal);
        });

    private static string Summary(FitmentContext car, in Fitting candidate) => SummaryWords.Write(car, candidate, DemoCar.Check(car, candidate), UnitSystem.Metric);
}

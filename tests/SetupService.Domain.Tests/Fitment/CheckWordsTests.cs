using CsCheck;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

namespace SetupService.Domain.Tests.Fitment;

public sealed class CheckWordsTests
{
    [Theory]
    [InlineData(UnitSystem.Metric, "14 mm")]
    [InlineData(UnitSystem.Us, "0.55 in")]
    public void An_explanation_quotes_the_numbers_of_its_case(UnitSystem units, string gap)
    {
        var car = DemoCar.Front();
        var candidate = DemoCar.Fitting(offsetMm: 48);
        var result = DemoCar.Check(car, candidate)[CheckId.InboardClearance];

        Assert.Contains(gap, CheckWords.Explanation(car, candidate, CheckId.InboardClearance, result, units), StringComparison.Ordinal);
    }

    // An explanation made of fixed words would not change with its case; each of these changes one input by
    // more than the rounding of texts and demands another sentence.
    [Fact]
    public void Changing_an_input_changes_the_text() =>
        Gen.Select(Gen.Double[20, 50], Gen.Double[1, 10]).Sample((offset, change) =>
        {
            var car = DemoCar.Front();
            var before = Explain(car, offset, CheckId.InboardClearance) + Explain(car, offset, CheckId.OutboardClearance);
            var after = Explain(car, offset + change, CheckId.InboardClearance) + Explain(car, offset + change, CheckId.OutboardClearance);
            return before != after;
        });

    [Fact]
    public void Every_check_has_words_for_every_case_it_can_meet()
    {
        foreach (var car in new[] { DemoCar.Front(), FitmentContext.Prepare(new Domain.Vehicles.Vehicle(), Domain.Vehicles.CarAxle.Front, new CheckSettings()) })
        {
            foreach (var marking in new[] { "225/45R17 91W", "225/45ZR17", "215/65R16C 109/107T", "195/45R17 81H M+S", "31x10.50R15LT 109Q", "225/45ZR17 (94Y)" })
            {
                foreach (var bare in new[] { false, true })
                {
                    var candidate = DemoCar.Fitting(marking: marking, spacerMm: 20);
                    if (bare) candidate = candidate with { Wheel = new() { RimDiameterIn = 15, RimWidthIn = 9, OffsetMm = 20 } };
                    var sheet = DemoCar.Check(car, candidate);
                    for (var id = CheckId.InboardClearance; id <= CheckId.ArchCover; id++)
                    {
                        var result = sheet[id];
                        var text = CheckWords.Explanation(car, candidate, id, result, UnitSystem.Metric);
                        Assert.True(text.Length > 20 && text.EndsWith('.'), $"{id}: {text}");
                        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                        Assert.NotEmpty(CheckWords.Basis(candidate, id));
                    }
                }
            }
        }
    }

    // A W tyre has no published addition for speed, so that none of its pressure is for it.
    [Fact]
    public void Pressure_for_speed_is_told_only_where_there_is_some()
    {
        var car = DemoCar.Front();
        var candidate = DemoCar.Fitting() with { Tyre = DemoCar.Tyre(pressureKpa: 160) };
        var sheet = DemoCar.Check(car, candidate);

        var texts = Enumerable.Range((int)CheckId.InboardClearance, CheckId.ArchCover - CheckId.InboardClearance + 1).Select(id => (CheckId)id)
            .Select(id => CheckWords.Explanation(car, candidate, id, sheet[id], UnitSystem.Metric)).ToList();

        Assert.Contains(texts, text => text.Contains("cold would carry it.", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, text => text.Contains(" 0 kPa of that", StringComparison.Ordinal));
    }

    // Up to 160 km/h no addition is asked for; above, it is unknown for a W tyre and told so, and known for an H tyre (30 kPa at 210).
    [Theory]
    [InlineData("225/45R17 91W", 160, false)]
    [InlineData("225/45R17 91W", 161, true)]
    [InlineData("225/45R17 91H", 200, false)]
    public void A_missing_addition_for_speed_is_an_assumption_only_above_160(string marking, double topSpeedKmh, bool isTold)
    {
        var car = FitmentContext.Prepare(DemoCar.Vehicle() with { TopSpeedKmh = topSpeedKmh }, Domain.Vehicles.CarAxle.Front, new CheckSettings());

        var isThere = FitmentAssumptions.ForCheck(car, DemoCar.Fitting(marking: marking)).Any(one => one.Text == "no addition for sustained speed");

        Assert.Equal(isTold, isThere);
    }

    [Theory]
    [InlineData("225/45R17 91W")]
    [InlineData("205/55R16 91V")]
    [InlineData("235/60R22 91V")]
    [InlineData("455/100R26 120Y")]
    public void The_rims_of_a_tyre_are_said_to_be_recalled_or_to_follow_a_pattern(string marking)
    {
        var candidate = DemoCar.Fitting(marking: marking);

        var reasons = FitmentAssumptions.ForCheck(DemoCar.Front(), candidate).Where(one => one.Text?.StartsWith("rims from", StringComparison.Ordinal) == true && one.Input.StartsWith("/candidate", StringComparison.Ordinal));

        Assert.All(reasons, one => Assert.EndsWith(
            candidate.Tyre.Marking.PermittedRimWidth.IsListed ? "these are recalled for the size." : "these follow from a pattern over sizes.", one.Reason, StringComparison.Ordinal));
    }

    private static string Explain(FitmentContext car, double offsetMm, CheckId id)
    {
        var candidate = DemoCar.Fitting(offsetMm: offsetMm);
        return CheckWords.Explanation(car, candidate, id, DemoCar.Check(car, candidate)[id], UnitSystem.Metric);
    }
}

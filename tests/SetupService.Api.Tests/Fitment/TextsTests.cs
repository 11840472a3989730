using System.Globalization;
using CsCheck;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>The sentences of a check quote the numbers of its own case.</summary>
public sealed class TextsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    /// <summary>A number of the request, the check that depends on it, and two ends between which any change of 1 % shows.</summary>
    public static TheoryData<string, string, double, double> Dependencies() => new()
    {
        { "/candidate/wheel/offsetMm", "inboardClearance", 20, 60 },
        { "/candidate/wheel/offsetMm", "outboardClearance", 20, 60 },
        { "/candidate/wheel/offsetMm", "fullLockClearance", 20, 60 },
        { "/candidate/wheel/offsetMm", "archCover", 10, 60 },
        { "/candidate/wheel/spacerMm", "outboardClearance", 5, 40 },
        { "/candidate/wheel/rimWidthIn", "rimWidth", 5, 12 },
        { "/vehicle/front/clearance/inboardMm", "inboardClearance", 15, 60 },
        { "/vehicle/front/clearance/outboardMm", "outboardClearance", 15, 60 },
        { "/vehicle/front/clearance/radialMm", "radialClearance", 15, 60 },
        { "/vehicle/front/clearance/inboardAtFullLockMm", "fullLockClearance", 15, 60 },
        { "/vehicle/front/clearance/springSeatMm", "springSeatClearance", 15, 60 },
        { "/vehicle/front/clearance/uncertaintyMm", "inboardClearance", 10, 40 },
        { "/tolerances/minimumMarginMm", "inboardClearance", 15, 50 },
        { "/camberChange/changeDeg", "inboardClearance", 4, 10 },
        { "/candidate/tyre/pressureKpa", "loadCapacity", 180, 280 },
        { "/vehicle/front/maximumAxleLoadKg", "loadCapacity", 700, 1100 },
        { "/vehicle/front/maximumAxleLoadKg", "wheelLoadRating", 700, 2000 },
        { "/candidate/wheel/loadRatingKg", "wheelLoadRating", 300, 900 },
        { "/vehicle/topSpeedKmh", "speedRating", 100, 400 },
        { "/candidate/wheel/centreBoreMm", "centreBore", 50, 90 },
        { "/candidate/wheel/padThicknessMm", "fastener", 10, 20 },
        { "/vehicle/front/hub/fastenerLengthMm", "fastener", 20, 60 },
    };

    [Theory]
    [MemberData(nameof(Dependencies))]
    public async Task A_changed_input_changes_the_explanation_of_the_checks_that_depend_on_it(string place, string check, double from, double to) =>
        await Gen.Select(Gen.Double[from, to], Gen.Double[from, to]).Where((one, other) => Math.Abs(one - other) > 0.025 * to).SampleAsync(
            async (one, other) => Assert.NotEqual(await Explanation(place, one, check), await Explanation(place, other, check)),
            iter: 20);

    [Fact]
    public async Task A_clearance_quotes_the_gap_that_was_measured() =>
        await Gen.Int[-200, 800].Select(tenths => tenths / 10.0).SampleAsync(
            async gapMm => Assert.Contains(
                string.Create(CultureInfo.InvariantCulture, $" {gapMm:0.#} mm").Replace('-', '\u2212'),
                await Explanation("/vehicle/front/clearance/outboardMm", gapMm, "outboardClearance"),
                StringComparison.Ordinal),
            iter: 30);

    // 1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 mi = 1.609344 km exactly (international yard and pound agreement of 1959);
    // 1 psi = 1 lbf/in² = 6.894757 kPa.
    [Theory]
    [InlineData("inboardClearance", 25.4, " in")]
    [InlineData("wheelLoadRating", 0.45359237, " lb")]
    [InlineData("speedRating", 1.609344, " mph")]
    public async Task Us_units_reach_the_texts_and_leave_the_numbers(string check, double size, string unit)
    {
        var body = Requests.Check().ToJsonString();
        var metric = (await fixture.Client.AnswerOf(Calls.Check + "?units=metric", body)).CheckOf(check);
        var us = (await fixture.Client.AnswerOf(Calls.Check + "?units=us", body)).CheckOf(check);

        var text = us.GetProperty("valueText").GetString()!;
        var shown = double.Parse(text[..^unit.Length], CultureInfo.InvariantCulture);
        Assert.EndsWith(unit, text, StringComparison.Ordinal);
        Assert.True(Math.Abs(shown - (metric.GetProperty("value").GetDouble() / size)) < 0.51, text);
        Assert.DoesNotContain(" mm", us.GetProperty("explanation").GetString(), StringComparison.Ordinal);
        foreach (var number in new[] { "value", "limit", "unit", "nominalMm", "probableMm", "worstCaseMm" })
            Assert.Equal(metric.GetProperty(number).ToString(), us.GetProperty(number).ToString());
    }

    private async Task<string> Explanation(string place, double value, string check)
    {
        var body = Requests.Check().With(place, value);
        return (await fixture.Client.AnswerOf(Calls.Check, body)).CheckOf(check).GetProperty("explanation").GetString()!;
    }
}

using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>Cases worked out by hand, asked for over HTTP.</summary>
public sealed class KnownAnswersTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // One tyre, one rim width: only the offset moves the edges. Inset as ISO 3911:2004 (JIS D 4102:2007) defines it.
    [Fact]
    public async Task Ten_less_offset_moves_both_edges_ten_outboard()
    {
        var answer = await fixture.Client.AnswerOf(Calls.Comparison, Comparison(7.5, 35, "225/45R17 91W"));

        Near(10, answer, "outboardChangeMm");
        Near(-10, answer, "inboardChangeMm");
        Near(20, answer, "trackChangeMm");
        Near(10, answer, "scrubRadiusChangeMm");
        Near(0, answer, "overallDiameterChangeMm");
        Near(100, answer.GetProperty("speedometer"), "trueKmh");
    }

    // 17 is 432 mm; 2 × 101 and 2 × 97 mm of section height (a lecture note's D = d + 2H; H rounded from memory): 634 and 626 mm.
    // The axis leans 13.1° in and the ground comes 4 mm nearer: the scrub radius grows by 4 · tan 13.1°.
    [Fact]
    public async Task A_lower_tyre_lowers_the_car_and_shortens_the_gearing()
    {
        var body = Comparison(7.5, 45, "215/45R17 91W").With("/steeringAxisInclinationDeg", 13.1).With("/indicatedKmh", 80);
        var answer = await fixture.Client.AnswerOf(Calls.Comparison, body);

        Near(-8, answer, "overallDiameterChangeMm");
        Near(-100.0 * 8 / 634, answer, "overallDiameterChangePct");
        Near(-4, answer, "rideHeightChangeMm");
        Near(-100.0 * 8 / 634, answer, "gearingChangePct");
        Near(80.0 * 626 / 634, answer.GetProperty("speedometer"), "trueKmh");
        Near(4 * Math.Tan(13.1 * Math.PI / 180), answer, "scrubRadiusChangeMm");
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("massChangeKg").ValueKind);
    }

    [Fact]
    public async Task Without_an_inclination_a_change_of_diameter_leaves_the_scrub_radius_unknown()
    {
        var answer = await fixture.Client.AnswerOf(Calls.Comparison, Comparison(7.5, 45, "215/45R17 91W"));

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("scrubRadiusChangeMm").ValueKind);
    }

    // Half an inch of rim widens the section by 0.4 · 12.7 mm (the standard's rule, from memory), half of it to each side;
    // five less offset carries both edges 5 mm outboard. Least margin 3 mm: common practice, no source.
    [Fact]
    public async Task Room_is_the_measured_gap_less_what_the_candidate_takes()
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().Without("/camberChange"));

        var inboard = answer.CheckOf("inboardClearance");
        var outboard = answer.CheckOf("outboardClearance");
        Near(14 + 5 - (0.2 * 12.7), inboard, "nominalMm", 0.051);
        Near(18 - 5 - (0.2 * 12.7), outboard, "nominalMm", 0.051);
        Near(3, inboard, "limit");
        Assert.Equal("mm", inboard.GetProperty("unit").GetString());
        foreach (var room in new[] { inboard, outboard, answer.CheckOf("radialClearance"), answer.CheckOf("fullLockClearance") })
        {
            Assert.True(room.GetProperty("nominalMm").GetDouble() > room.GetProperty("probableMm").GetDouble());
            Assert.True(room.GetProperty("probableMm").GetDouble() > room.GetProperty("worstCaseMm").GetDouble());
            Near(room.GetProperty("worstCaseMm").GetDouble(), room, "value");
        }
    }

    // Load index 91 is 615 kg (French order of 24 October 1994, Annex I); at 230 of 250 kPa (230/250)^0.8 of it (the
    // standard's formula, as domain tests hold it against printed tables); half of the axle's 870 kg has to be carried.
    [Fact]
    public async Task The_tyre_is_held_to_half_the_axle_at_its_pressure()
    {
        var body = Requests.Check().With("/candidate/tyre/marking", "225/45R17 91W").With("/candidate/tyre/pressureKpa", 230);

        var load = (await fixture.Client.AnswerOf(Calls.Check, body)).CheckOf("loadCapacity");

        Near(615 * Math.Pow(230.0 / 250, 0.8), load, "value", 0.05);
        Near(435, load, "limit");
        Assert.Equal("pass", load.GetProperty("status").GetString());
    }

    [Theory]
    [InlineData("/candidate/wheel/rimDiameterIn", 18.0, "rimDiameter")]
    [InlineData("/candidate/wheel/rimWidthIn", 10.0, "rimWidth")]
    [InlineData("/candidate/wheel/offsetMm", 70.0, "inboardClearance")]
    [InlineData("/candidate/wheel/offsetMm", 10.0, "outboardClearance")]
    [InlineData("/candidate/wheel/centreBoreMm", 60.1, "centreBore")]
    [InlineData("/candidate/wheel/loadRatingKg", 434.9, "wheelLoadRating")]
    [InlineData("/candidate/wheel/spacerMm", 2.0, "fastener")]
    [InlineData("/candidate/tyre/pressureKpa", 150.0, "loadCapacity")]
    [InlineData("/vehicle/topSpeedKmh", 271.0, "speedRating")]
    [InlineData("/vehicle/front/minimumLoadIndex", 95.0, "loadCapacity")]
    public async Task A_number_that_does_not_fit_fails_its_check_and_the_verdict(string place, double value, string check)
    {
        // A whole number where one is needed.
        JsonNode number = value % 1 == 0 ? JsonValue.Create((int)value) : JsonValue.Create(value);
        var answer = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().With(place, number));

        Assert.Equal("fail", answer.CheckOf(check).GetProperty("status").GetString());
        Assert.Equal("fail", answer.GetProperty("verdict").GetString());
    }

    [Theory]
    [InlineData("/candidate/wheel/boltCircle", "5x112", "boltCircle")]
    [InlineData("/candidate/wheel/boltCircle", "4x108", "boltCircle")]
    [InlineData("/candidate/wheel/fastenerSeat", "ball13", "fastener")]
    [InlineData("/candidate/tyre/marking", "225/45R17 94H", "speedRating")]
    public async Task A_word_that_does_not_fit_fails_its_check(string place, string word, string check)
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().With(place, word));

        Assert.Equal("fail", answer.CheckOf(check).GetProperty("status").GetString());
    }

    [Theory]
    [InlineData("114.3", "5x114.3")]
    [InlineData("114,3", "5x114.3")]
    public async Task A_bolt_circle_reads_as_people_write_it(string typed, string shown)
    {
        var circle = (await fixture.Client.AnswerOf(Calls.Check, Requests.Check().With("/candidate/wheel/boltCircle", "5x" + typed))).CheckOf("boltCircle");

        Assert.Equal(shown, circle.GetProperty("valueText").GetString());
        Assert.Equal("5x108", circle.GetProperty("limitText").GetString());
    }

    [Fact]
    public async Task The_rear_axle_has_no_check_at_lock()
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().With("/axle", "rear"));

        Assert.DoesNotContain("fullLockClearance", answer.GetProperty("checks").EnumerateArray().Select(check => check.GetProperty("id").GetString()));
    }

    // The stations of caliper and barrel count outboard from hub and mounting face; a spacer carries the barrel outboard.
    // The barrel narrows outboard by 1 mm in 10, the caliper reaches 165 mm at the hub face: 180 − 165, and 0.5 mm more
    // radius over the same place of the caliper with 5 mm of spacer; square to a slope of 1 in 10 that is 10/√101 of it.
    [Theory]
    [InlineData(0, 15.0)]
    [InlineData(5, 15.5)]
    public async Task A_spacer_carries_the_barrel_outboard_over_the_caliper(int spacerMm, double expectedMm)
    {
        var body = Requests.Check()
            .With("/candidate/wheel/spacerMm", spacerMm)
            .With("/candidate/wheel/innerProfile", JsonNode.Parse("""[{ "fromMountingFaceMm": -50, "radiusMm": 185 }, { "fromMountingFaceMm": 50, "radiusMm": 175 }]"""))
            .With("/vehicle/front/hub/caliperProfile", JsonNode.Parse("""[{ "fromHubFaceMm": -10, "radiusMm": 160 }, { "fromHubFaceMm": 0, "radiusMm": 165 }]"""));

        Near(expectedMm * 10 / Math.Sqrt(101), (await fixture.Client.AnswerOf(Calls.Check, body)).CheckOf("brakeClearance"), "nominalMm");
    }

    private static JsonObject Comparison(double rimWidthIn, double offsetMm, string marking) => Requests.Object(
        $$"""
        { "current": { "wheel": { "rimDiameterIn": 17, "rimWidthIn": 7.5, "offsetMm": 45 }, "tyre": { "marking": "225/45R17 91W" } },
          "candidate": { "wheel": { "rimDiameterIn": 17, "rimWidthIn": {{rimWidthIn}}, "offsetMm": {{offsetMm}} }, "tyre": { "marking": "{{marking}}" } } }
        """);

    private static void Near(double expected, JsonElement owner, string member, double within = 1e-6) =>
        Assert.True(
            Math.Abs(expected - owner.GetProperty(member).GetDouble()) <= within,
            $"{member} is {owner.GetProperty(member)}, wanted {expected}: {owner}");
}

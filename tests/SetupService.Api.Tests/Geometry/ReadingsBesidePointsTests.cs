using System.Text.Json;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>A gauge read beside points that say otherwise, and what points of a twist beam say of roll.</summary>
public sealed class ReadingsBesidePointsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // The points of the wishbone corner put caster elsewhere; the gauge already reads what is wanted.
    [Fact]
    public async Task Caster_that_the_gauge_reads_as_wanted_is_left()
    {
        var body = GeometryRequests.AdjustedFor(GeometryRequests.Wishbone, null, 5, """{ "adjuster": "upperJointForward" }""").With("/vehicle/front/alignment/casterDeg", 5.0);

        var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body);

        GeometryCalls.Near(0, answer.AmountOf("upperJointForward"), 1e-6, "nothing to move");
        GeometryCalls.Near(5, answer.Number("before", "casterDeg"), 1e-9, "as read");
        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("reason").GetString()!.Contains("where 5.00° is stated", StringComparison.Ordinal));
    }

    [Fact]
    public async Task From_a_reading_the_points_tell_the_change_alone()
    {
        var without = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.Adjusted(GeometryRequests.Wishbone, """{ "adjuster": "upperJointForward", "amountMm": 4 }"""));
        var with = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.Adjusted(GeometryRequests.Wishbone, """{ "adjuster": "upperJointForward", "amountMm": 4 }""").With("/vehicle/front/alignment/casterDeg", 5.0));

        GeometryCalls.Near(without.Number("change", "casterDeg"), with.Number("change", "casterDeg"), 1e-8, "change");
        GeometryCalls.Near(5 + without.Number("change", "casterDeg"), with.Number("after", "casterDeg"), 1e-8, "after");
    }

    // Both wheels moving alike turn about a line across the car, whose contact path would put a roll centre at the ground, where none is.
    [Fact]
    public async Task A_twist_beam_has_a_roll_centre_in_roll_alone()
    {
        var alike = await Rows("parallel");
        var opposite = await Rows("opposite");

        Assert.All(alike.GetProperty("rows").EnumerateArray(), row => Assert.Equal((JsonValueKind.Null, JsonValueKind.Null), (row.GetProperty("rollCentreHeightMm").ValueKind, row.GetProperty("camberGainPerRoll").ValueKind)));
        Assert.Contains(alike.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "rollCentreHeightMm" && one.GetProperty("reason").GetString()!.Contains("motion opposite", StringComparison.Ordinal));
        Assert.All(opposite.GetProperty("rows").EnumerateArray(), row => Assert.True(row.Number("rollCentreHeightMm") > 50));

        async Task<JsonElement> Rows(string motion) => await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep("twistBeam", -20, 20, 20).With("/motion", motion));
    }
}

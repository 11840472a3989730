using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Amounts in the adjuster's own unit, each adjuster once, and a tie rod that is either set or reset.</summary>
public sealed class AdjusterAmountTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    public static TheoryData<string, string[]> Amounts() => new()
    {
        { """{ "adjuster": "rideHeight" }""", ["/adjustments/0/amountMm required"] },
        { """{ "adjuster": "rideHeight", "amountDeg": 1 }""", ["/adjustments/0/amountMm required", "/adjustments/0/amountDeg inconsistent"] },
        { """{ "adjuster": "rideHeight", "amountMm": 1, "amountDeg": 1 }""", ["/adjustments/0/amountDeg inconsistent"] },
        { """{ "adjuster": "hubShimToe" }""", ["/adjustments/0/amountDeg required"] },
        { """{ "adjuster": "hubShimToe", "amountMm": 1 }""", ["/adjustments/0/amountDeg required", "/adjustments/0/amountMm inconsistent"] },
        { """{ "adjuster": "hubShimCamber", "amountMm": 1, "amountDeg": 1 }""", ["/adjustments/0/amountMm inconsistent"] },
        { """{ "adjuster": "rideHeight", "amountMm": 1, "rangeMm": {} }""", ["/adjustments/0/rangeMm unknownMember"] },
    };

    public static TheoryData<string, string[]> Rooms() => new()
    {
        { """{ "adjuster": "rideHeight", "rangeDeg": { "from": -1, "to": 1 } }""", ["/adjusters/0/rangeDeg inconsistent"] },
        { """{ "adjuster": "rideHeight", "rangeDeg": { "from": -1, "to": 1 }, "rangeMm": { "from": 0, "to": 1 } }""", ["/adjusters/0/rangeDeg inconsistent"] },
        { """{ "adjuster": "hubShimCamber", "rangeMm": { "from": 0, "to": 1 } }""", ["/adjusters/0/rangeMm inconsistent"] },
        { """{ "adjuster": "rideHeight", "amountMm": 1 }""", ["/adjusters/0/amountMm unknownMember"] },
    };

    [Theory]
    [MemberData(nameof(Amounts))]
    public async Task An_amount_is_needed_in_the_adjuster_s_unit(string adjustment, string[] faults) =>
        Assert.Equal(faults, await FaultsOf(GeometryRequests.Adjusted(GeometryRequests.Strut, adjustment)));

    [Theory]
    [MemberData(nameof(Rooms))]
    public async Task Limits_are_in_the_adjuster_s_unit(string room, string[] faults) =>
        Assert.Equal(faults, await FaultsOf(GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, room)));

    /// <summary>The fifth link is the tie rod or toe link: two names of one length.</summary>
    public static TheoryData<string, string, string, bool> Pairs() => new()
    {
        { GeometryRequests.Strut, """{ "adjuster": "rideHeight", "amountMm": 1 }""", """{ "adjuster": "rideHeight", "amountMm": 1 }""", true },
        { GeometryRequests.Strut, """{ "adjuster": "strutTopInboard", "amountMm": 1 }""", """{ "adjuster": "strutTopRearward", "amountMm": 1 }""", false },
        { GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "link": 2, "amountMm": 1 }""", """{ "adjuster": "linkLength", "link": 2, "amountMm": -1 }""", true },
        { GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "link": 2, "amountMm": 1 }""", """{ "adjuster": "linkLength", "link": 3, "amountMm": 1 }""", false },
        { GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "link": 5, "amountMm": 1 }""", """{ "adjuster": "tieRodLength", "amountMm": 1 }""", true },
        { GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "link": 4, "amountMm": 1 }""", """{ "adjuster": "tieRodLength", "amountMm": 1 }""", false },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public async Task An_adjuster_is_named_once(string kind, string first, string second, bool isTwice)
    {
        var body = GeometryRequests.Adjusted(kind, first, second);
        if (isTwice)
            Assert.Equal(["/adjustments/1 inconsistent"], await FaultsOf(body));
        else
            await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body);
    }

    [Theory]
    [InlineData(GeometryRequests.Strut, """{ "adjuster": "tieRodLength", "amountMm": 1 }""", "/adjustments/0 inconsistent")]
    [InlineData(GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "link": 5, "amountMm": 1 }""", "/adjustments/0 inconsistent")]
    [InlineData(GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "link": 1, "amountMm": 1 }""", null)]
    [InlineData(GeometryRequests.Arm, GeometryRequests.Lowered, "/resetToe inconsistent")]
    [InlineData(GeometryRequests.Beam, GeometryRequests.Lowered, "/resetToe inconsistent")]
    [InlineData(GeometryRequests.Wishbone, GeometryRequests.Lowered, null)]
    public async Task Toe_is_reset_by_a_tie_rod_that_nothing_else_sets(string kind, string adjustment, string? fault)
    {
        var body = GeometryRequests.Adjusted(kind, adjustment).With("/resetToe", true);
        if (fault is null)
        {
            var answer = await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body);
            GeometryCalls.Near(0, answer.Number("change", "toeDeg"), 1e-6, "toe");
            Assert.NotEqual(0, answer.Number("tieRodChangeMm"));
            return;
        }

        Assert.Equal([fault], await FaultsOf(body));
        await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body.With("/resetToe", false));
    }

    private async Task<string[]> FaultsOf(JsonObject body) => (await fixture.Client.RefusalOf(GeometryCalls.Adjustment, body.ToJsonString())).FaultsOf();
}

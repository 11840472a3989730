using System.Text.Json.Nodes;
using SetupService.Api.Http.Contract;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Which adjuster goes with which kind, which more it needs, and how many there may be.</summary>
public sealed class AdjusterTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    /// <summary>What a workshop can adjust at each kind: common practice, no source.</summary>
    public static TheoryData<string, string[]> HasWhat() => new()
    {
        { GeometryRequests.Strut, ["strutTopInboard", "strutTopRearward", "knuckleEccentric", "lowerJointOutboard", "lowerJointForward", "lowerJointSpacer", "tieRodLength", "rackHeight", "hubShimCamber", "hubShimToe", "rideHeight"] },
        { GeometryRequests.Wishbone, ["lowerJointOutboard", "lowerJointForward", "upperJointOutboard", "upperJointForward", "lowerJointSpacer", "tieRodLength", "rackHeight", "hubShimCamber", "hubShimToe", "rideHeight"] },
        { GeometryRequests.FiveLink, ["linkLength", "tieRodLength", "rackHeight", "hubShimCamber", "hubShimToe", "rideHeight"] },
        { GeometryRequests.Arm, ["outerPivotUp", "outerPivotForward", "hubShimCamber", "hubShimToe", "rideHeight"] },
        { GeometryRequests.Beam, ["hubShimCamber", "hubShimToe", "rideHeight"] },
    };

    [Theory]
    [MemberData(nameof(HasWhat))]
    public async Task A_kind_has_its_adjusters_and_no_others(string kind, string[] has)
    {
        Assert.All(has, word => Assert.Contains(word, EnumNames<Adjuster>.List));
        foreach (var word in EnumNames<Adjuster>.List)
        {
            var given = GeometryRequests.Adjusted(kind, Sound(word).ToJsonString());
            var wanted = GeometryRequests.AdjustedFor(kind, -2, null, Room(word).ToJsonString());
            if (has.Contains(word))
            {
                await fixture.Client.AnswerOf(GeometryCalls.Adjustment, given);
                if (word == "hubShimToe")
                    await fixture.Client.NotComputableOf(GeometryCalls.Adjustment, wanted.ToJsonString()); // It turns no camber.
                else
                    await fixture.Client.AnswerOf(GeometryCalls.Adjustment, wanted);
                continue;
            }

            var fault = (await fixture.Client.RefusalOf(GeometryCalls.Adjustment, given.ToJsonString())).OnlyFault();
            Assert.Equal(("/adjustments/0/adjuster", "inconsistent"), (fault.GetProperty("pointer").GetString(), fault.GetProperty("code").GetString()));
            Assert.Equal($"this kind of suspension has no {word}; it has: {string.Join(", ", has)}.", fault.Message());
            Assert.Equal(["/adjusters/0/adjuster inconsistent"], await FaultsOf(wanted));
        }
    }

    public static TheoryData<string, string, string[]> Incomplete() => new()
    {
        { GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "amountMm": 1 }""", ["/link required"] },
        { GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "amountMm": 1, "link": 0 }""", ["/link outOfRange"] },
        { GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "amountMm": 1, "link": 6 }""", ["/link outOfRange"] },
        { GeometryRequests.FiveLink, """{ "adjuster": "linkLength", "amountMm": 1, "link": 1.5 }""", ["/link wrongType"] },
        { GeometryRequests.FiveLink, """{ "adjuster": "tieRodLength", "amountMm": 1, "link": 5 }""", ["/link inconsistent"] },
        { GeometryRequests.Strut, """{ "adjuster": "knuckleEccentric", "amountMm": 1 }""", ["/boltSpacingMm required"] },
        { GeometryRequests.Strut, """{ "adjuster": "rideHeight", "amountMm": 1, "boltSpacingMm": 58 }""", ["/boltSpacingMm inconsistent"] },
        { GeometryRequests.Strut, """{ "adjuster": "rideHeight", "amountMm": 1, "pivot": { "xMm": 0, "yMm": 0, "zMm": 0 } }""", ["/pivot inconsistent"] },
        { GeometryRequests.Strut, """{ "adjuster": "knuckleEccentric", "amountMm": 29.1, "boltSpacingMm": 58 }""", [" inconsistent"] },
        { GeometryRequests.Strut, """{ "adjuster": "knuckleEccentric", "amountMm": -100, "boltSpacingMm": 199 }""", [" inconsistent"] },
        { GeometryRequests.Strut, """{ "adjuster": "strutTopInbord", "amountMm": 5 }""", ["/adjuster unknownWord"] },
        { GeometryRequests.Strut, """{ "adjuster": "hubShim", "amountDeg": 1, "link": 2, "boltSpacingMm": 58 }""", ["/adjuster unknownWord"] },
        { GeometryRequests.Strut, """{ "amountDeg": 1 }""", ["/adjuster required"] },
    };

    [Theory]
    [MemberData(nameof(Incomplete))]
    public async Task What_an_adjuster_needs_more_is_asked_for_and_nothing_else_is(string kind, string adjustment, string[] faults) =>
        Assert.Equal(faults.Select(fault => "/adjustments/0" + fault), await FaultsOf(GeometryRequests.Adjusted(kind, adjustment)));

    [Theory]
    [InlineData("""{ "adjuster": "knuckleEccentric", "amountMm": 29, "boltSpacingMm": 58 }""")]
    [InlineData("""{ "adjuster": "knuckleEccentric", "amountMm": -5, "boltSpacingMm": 10 }""")]
    public async Task Half_the_distance_of_the_bolts_is_the_largest_throw(string adjustment) =>
        await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.Adjusted(GeometryRequests.Strut, adjustment));

    // A least throw near the largest must leave a room, not an empty one.
    [Fact]
    public async Task A_least_throw_near_the_largest_leaves_a_room()
    {
        var body = GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, """{ "adjuster": "knuckleEccentric", "boltSpacingMm": 58, "rangeMm": { "from": 28.9, "to": 29 } }""");

        Assert.Equal(28.9, (await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body)).GetProperty("adjustments")[0].Number("amountMm"));
    }

    [Theory]
    [InlineData(0, "/adjusters tooFew")]
    [InlineData(1, null)]
    [InlineData(4, null)]
    [InlineData(5, "/adjusters tooMany")]
    public async Task One_to_four_adjusters_are_looked_through(int count, string? fault) =>
        await Check(GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, [.. Words(count).Select(word => Room(word).ToJsonString())]), fault);

    [Theory]
    [InlineData(0, "/adjustments tooFew")]
    [InlineData(10, null)]
    [InlineData(11, "/adjustments tooMany")]
    public async Task Up_to_ten_adjustments_are_made_together(int count, string? fault) =>
        await Check(GeometryRequests.Adjusted(GeometryRequests.Strut, [.. Words(count).Select(word => Sound(word).ToJsonString())]), fault);

    private static string[] Words(int count) =>
        [.. ((string[])HasWhat().First()[1])[..count]];

    private static JsonObject Sound(string word)
    {
        var adjustment = Named(word);
        adjustment[word.StartsWith("hubShim", StringComparison.Ordinal) ? "amountDeg" : "amountMm"] = 0.5;
        return adjustment;
    }

    private static JsonObject Room(string word)
    {
        var room = Named(word);
        var isShim = word.StartsWith("hubShim", StringComparison.Ordinal);
        room[isShim ? "rangeDeg" : "rangeMm"] = new JsonObject { ["from"] = isShim ? -5 : word == "knuckleEccentric" ? -29 : -100, ["to"] = 0.5 };
        return room;
    }

    private static JsonObject Named(string word) => word switch
    {
        "linkLength" => new JsonObject { ["adjuster"] = word, ["link"] = 2 },
        "knuckleEccentric" => new JsonObject { ["adjuster"] = word, ["boltSpacingMm"] = 58 },
        _ => new JsonObject { ["adjuster"] = word },
    };

    private async Task Check(JsonObject body, string? fault)
    {
        if (fault is null)
            await fixture.Client.AnswerOf(GeometryCalls.Adjustment, body);
        else
            Assert.Equal([fault], await FaultsOf(body));
    }

    private async Task<string[]> FaultsOf(JsonObject body) => (await fixture.Client.RefusalOf(GeometryCalls.Adjustment, body.ToJsonString())).FaultsOf();
}

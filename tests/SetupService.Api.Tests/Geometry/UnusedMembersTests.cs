using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Members that mean nothing with the points given are taken, and said not to be used.</summary>
public sealed class UnusedMembersTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    public static TheoryData<string, string, JsonNode> Unused() => new()
    {
        { GeometryCalls.Sweep, "/vehicle/front/alignment/casterDeg", 4 },
        { GeometryCalls.Sweep, "/vehicle/front/alignment/steeringAxisInclinationDeg", 12 },
        { GeometryCalls.Sweep, "/motion", "opposite" },
        { GeometryCalls.Adjustment, "/vehicle/front/alignment/steeringAxisInclinationDeg", 12 },
        { GeometryCalls.Adjustment, "/motion", "parallel" },
    };

    [Theory]
    [InlineData(GeometryCalls.Adjustment, "/ranges")]
    [InlineData(GeometryCalls.Sweep, "/rows/0/ranges")]
    public async Task An_error_of_the_points_gives_ranges_and_no_reason_why_there_are_none(string path, string place)
    {
        var given = await fixture.Client.AnswerOf(path, GeometryRequests.Of(path).With("/vehicle/front/suspension/points/pointErrorMm", JsonValue.Create(1)));

        var ranges = place.Split('/', StringSplitOptions.RemoveEmptyEntries).Aggregate(JsonNode.Parse(given.ToString())!, (node, name) => int.TryParse(name, out var index) ? node[index]! : node[name]!);
        Assert.True((double)ranges["camberDeg"]!["lower"]! <= (double)ranges["camberDeg"]!["upper"]!);
        Assert.True((double)ranges["casterDeg"]!["lower"]! < (double)ranges["casterDeg"]!["upper"]!);
        Assert.DoesNotContain(given.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "ranges");
    }

    [Theory]
    [MemberData(nameof(Unused))]
    public async Task A_member_that_changes_nothing_is_among_the_assumptions(string path, string place, JsonNode value)
    {
        var plain = await fixture.Client.AnswerOf(path, GeometryRequests.Of(path));
        var given = await fixture.Client.AnswerOf(path, GeometryRequests.Of(path).With(place, value.DeepClone()));

        Assert.DoesNotContain(place, Inputs(plain));
        Assert.Contains(place, Inputs(given));
        var changed = JsonObject.Create(given)!;
        changed.Remove("assumptions");
        var unchanged = JsonObject.Create(plain)!;
        unchanged.Remove("assumptions");
        Assert.True(JsonNode.DeepEquals(changed, unchanged), $"{place} changes the answer");
    }

    // A twist beam does use its motion.
    [Fact]
    public async Task A_twist_beam_tells_its_motions_apart()
    {
        var parallel = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Beam).With("/motion", "parallel"));
        var opposite = await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Beam).With("/motion", "opposite"));

        Assert.DoesNotContain("/motion", Inputs(parallel).Concat(Inputs(opposite)));
        Assert.NotEqual(parallel.GetProperty("rows")[0].Number("camberDeg"), opposite.GetProperty("rows")[0].Number("camberDeg"));
        Assert.Contains("/motion", Inputs(await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(GeometryRequests.Beam))));
    }

    private static IEnumerable<string?> Inputs(System.Text.Json.JsonElement answer) =>
        answer.GetProperty("assumptions").EnumerateArray().Select(one => one.GetProperty("input").GetString());
}

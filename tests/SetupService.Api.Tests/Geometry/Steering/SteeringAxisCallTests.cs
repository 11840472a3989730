using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry.Steering;

public sealed class SteeringAxisCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Two invented corners, a double wishbone and a strut, worked by two methods of another making (derived; no published corner with
    // its figures could be read); printed to 1e-7.
    [Theory]
    [InlineData("[10, 715, 180]", "[-18, 690, 480]", "[0, 760, 310]", 310, -0.5, 0.05, 5.3321589, 4.7636417, 32.6828118, 26.8250689, 55.8333333, -2.1333333, 0.0023608, 762.705225, 0.0118039)]
    [InlineData("[5, 720, 175]", "[-35, 565, 840]", "[0, 750, 305]", 305, -0.75, 0, 3.4422153, 13.1204032, -6.7910566, 15.5247441, 60.3007519, -2.8195489, 0, 753.9923266, 0.0261301)]
    public async Task The_reference_corners_are_reproduced(
        string lower, string upper, string centre, double radiusMm, double camberDeg, double toeDeg, double casterDeg, double inclinationDeg,
        double scrubMm, double trailMm, double spindleMm, double centreTrailMm, double contactX, double contactY, double contactZ)
    {
        var body = new JsonObject
        {
            ["lower"] = Point(lower),
            ["upper"] = Point(upper),
            ["wheelCentre"] = Point(centre),
            ["loadedRadiusMm"] = radiusMm,
            ["camberDeg"] = camberDeg,
            ["toeDeg"] = toeDeg,
        };

        var answer = await fixture.Client.AnswerOf(SteeringRequests.AxisPath, body);

        double Of(string name) => answer.GetProperty(name).GetDouble();
        Assert.Equal(casterDeg, Of("casterDeg"), 1e-7);
        Assert.Equal(inclinationDeg, Of("steeringAxisInclinationDeg"), 1e-7);
        Assert.Equal(inclinationDeg + camberDeg, Of("includedAngleDeg"), 1e-7);
        Assert.Equal(scrubMm, Of("scrubRadiusMm"), 1e-6);
        Assert.Equal(trailMm, Of("mechanicalTrailMm"), 1e-6);
        Assert.Equal(spindleMm, Of("spindleOffsetMm"), 1e-6);
        Assert.Equal(centreTrailMm, Of("wheelCentreTrailMm"), 1e-6);
        var contact = answer.GetProperty("contactCentre");
        Assert.Equal(contactX, contact.GetProperty("xMm").GetDouble(), 1e-6);
        Assert.Equal(contactY, contact.GetProperty("yMm").GetDouble(), 1e-6);
        Assert.Equal(contactZ, contact.GetProperty("zMm").GetDouble(), 1e-6);
    }

    public static TheoryData<string, double, string, string> Contradictory() => new()
    {
        { "/upper/zMm", 178, "/upper inconsistent", "0.0 mm above" },
        { "/upper/zMm", 100, "/upper inconsistent", "78.0 mm below" },
        { "/wheelCentre/yMm", 700, "/wheelCentre inconsistent", "16.0 mm" },
        { "/wheelCentre/yMm", 716, "/wheelCentre inconsistent", "0.0 mm" },
    };

    [Theory]
    [MemberData(nameof(Contradictory))]
    public async Task Points_that_contradict_each_other_are_refused_by_name(string place, double value, string fault, string figure)
    {
        var problem = await fixture.Client.RefusalOf(SteeringRequests.AxisPath, SteeringRequests.Axis().With(place, value).ToJsonString());

        Assert.Equal([fault], problem.FaultsOf());
        Assert.Contains(figure, problem.GetProperty("errors")[0].GetProperty("message").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_point_given_twice_has_no_axis()
    {
        var body = SteeringRequests.Axis();
        body["upper"] = body["lower"]!.DeepClone();

        Assert.Equal(["/upper inconsistent"], (await fixture.Client.RefusalOf(SteeringRequests.AxisPath, body.ToJsonString())).FaultsOf());
    }

    [Fact]
    public async Task Contradictions_come_together_and_with_other_faults()
    {
        var body = SteeringRequests.Axis().With("/upper/zMm", 0).With("/wheelCentre/yMm", 0).With("/toeDeg", 6);

        var faults = (await fixture.Client.RefusalOf(SteeringRequests.AxisPath, body.ToJsonString())).FaultsOf();

        Assert.Equal(["/toeDeg outOfRange", "/upper inconsistent", "/wheelCentre inconsistent"], faults.Order(StringComparer.Ordinal));
    }

    // A coordinate that could not be read stands at 0 while the rules look; nothing may be made of that.
    [Theory]
    [InlineData("/upper/zMm")]
    [InlineData("/wheelCentre/yMm")]
    public async Task A_point_with_a_fault_of_its_own_contradicts_nothing(string place)
    {
        foreach (var raw in new[] { "null", "\"843\"", "9e9" })
        {
            var fault = Assert.Single((await fixture.Client.RefusalOf(SteeringRequests.AxisPath, SteeringRequests.Axis().WithRaw(place, raw))).FaultsOf());
            Assert.StartsWith(place + " ", fault, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_strange_axis_is_answered_with_a_caution()
    {
        var usual = await fixture.Client.AnswerOf(SteeringRequests.AxisPath, SteeringRequests.Axis());
        var strange = await fixture.Client.AnswerOf(SteeringRequests.AxisPath, SteeringRequests.Axis().With("/upper/zMm", 280));

        Assert.Equal(["pointsAsGiven"], Codes(usual));
        Assert.Equal(["unusualAxis", "pointsAsGiven"], Codes(strange));
    }

    private static string[] Codes(System.Text.Json.JsonElement answer) =>
        [.. answer.GetProperty("cautions").EnumerateArray().Select(caution => caution.GetProperty("code").GetString()!)];

    private static JsonObject Point(string numbers)
    {
        var list = JsonNode.Parse(numbers)!.AsArray();
        return new JsonObject { ["xMm"] = list[0]!.DeepClone(), ["yMm"] = list[1]!.DeepClone(), ["zMm"] = list[2]!.DeepClone() };
    }
}

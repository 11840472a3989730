using System.Text.Json.Nodes;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>Bodies whose values contradict each other are refused by name, never averaged or believed.</summary>
public sealed class ContradictionTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData(-5, false)]
    [InlineData(-1.4, true)]
    public async Task Two_cambers_at_one_height_are_one_gauges_scatter_or_a_contradiction(double second, bool isTaken)
    {
        var readings = $$"""[{ "travelMm": 0, "camberDeg": -1 }, { "travelMm": 0.5, "camberDeg": {{second.ToString(System.Globalization.CultureInfo.InvariantCulture)}} }, { "travelMm": 60, "camberDeg": -3 }]""";
        var body = Requests.Check().With("/vehicle/front/suspension", JsonNode.Parse($$"""{ "kind": "measured", "readings": {{readings}} }""")!);

        if (isTaken)
        {
            await fixture.Client.AnswerOf(Calls.Check, body);
            return;
        }

        var problem = await fixture.Client.RefusalOf(Calls.Check, body.ToJsonString());
        Assert.Equal(["/vehicle/front/suspension inconsistent"], problem.FaultsOf());
    }

    [Fact]
    public async Task A_wheel_cannot_be_wider_inside_than_its_own_rim()
    {
        var body = Requests.Check().With("/candidate/wheel/innerProfile", JsonNode.Parse("""[{ "fromMountingFaceMm": 0, "radiusMm": 330 }]""")!);

        var problem = await fixture.Client.RefusalOf(Calls.Check, body.ToJsonString());

        Assert.Equal(["/candidate/wheel/innerProfile inconsistent"], problem.FaultsOf());
    }
}

using System.Text.Json.Nodes;
using System.Xml.Linq;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry.Steering;

public sealed class SteerSweepPictureTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task It_shows_both_wheels_and_the_approximation_in_five_panels()
    {
        var picture = await Picture(SteeringRequests.Sweep());
        var texts = Texts(picture);

        Assert.Equal(["panel-1", "panel-2", "panel-3", "panel-4", "panel-5"], Panels(picture));
        Assert.Contains("left wheel", texts);
        Assert.Contains("right wheel", texts);
        Assert.Contains("approximation", texts);
        Assert.Contains(texts, text => text.Contains("caster 6.40°", StringComparison.Ordinal));
        Assert.DoesNotContain("<script", picture.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_the_wheels_place_on_its_axis_it_shows_camber_alone() =>
        Assert.Equal(["panel-1", "panel-2"], Panels(await Picture(SteeringRequests.Sweep().Without("/spindleOffsetMm"))));

    [Fact]
    public async Task Its_lengths_are_in_inches_where_asked_for()
    {
        var us = Texts(await Picture(SteeringRequests.Sweep(), "?units=us"));

        Assert.Contains("scrub radius, in", us);
        Assert.DoesNotContain(us, text => text.EndsWith(" mm", StringComparison.Ordinal));
        Assert.Contains("scrub radius, mm", Texts(await Picture(SteeringRequests.Sweep())));
    }

    [Fact]
    public async Task A_heading_out_of_reach_is_named()
    {
        var body = SteeringRequests.Sweep().With("/casterDeg", 20).With("/steeringAxisInclinationDeg", 40).With("/camberDeg", 15)
            .With("/steerDeg/to", 60).With("/side", "left");

        Assert.Contains("Not reached", string.Join(' ', Texts(await Picture(body))), StringComparison.Ordinal);
    }

    private async Task<XElement> Picture(JsonObject body, string query = "")
    {
        using var response = await fixture.Client.PostAsync(SteeringRequests.SweepPath + "/chart" + query, body.ToJsonString());
        return XElement.Parse(await Calls.Text(response));
    }

    private static string[] Texts(XElement picture) => [.. picture.Descendants().Where(one => one.Name.LocalName == "text").Select(one => one.Value)];

    private static string[] Panels(XElement picture) =>
        [.. picture.Descendants().Select(one => one.Attribute("id")?.Value).OfType<string>().Where(id => id.StartsWith("panel-", StringComparison.Ordinal))];
}

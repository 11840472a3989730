using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>What the car's own adjusters reach is bought from nobody; common practice, no source.</summary>
public sealed class OwnReachStoriesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // Bolts from −2.4° and mounts from −3.2° on a car whose own adjuster reaches −3.2°: neither is proposed, nor credited with what the car sets by itself.
    [Fact]
    public async Task A_part_that_reaches_no_further_than_the_cars_own_adjuster_is_not_proposed()
    {
        var body = Demo();
        body["vehicle"]!["front"]!["adjustable"]!["camberDeg"]!["from"] = -3.2;
        body["parts"]!.AsArray().First(part => part!["id"]!.GetValue<string>() == "springs")!["requires"] = new JsonArray("eccentric-bolts");
        var answer = await fixture.Client.AnswerOf(PlansPath, body);

        foreach (var part in (string[])["eccentric-bolts", "top-mounts"])
        {
            Assert.Contains(answer.GetProperty("rejected").EnumerateArray(), one => Ids(one).SequenceEqual([part]) && one.GetProperty("code").GetString() == "changesNothing");
            Assert.DoesNotContain(answer.GetProperty("packages").EnumerateArray(), one => Ids(one).Contains(part) && !Ids(one).Contains("springs"));
        }

        // Springs that cannot be fitted without the bolts are set as far as the car's own adjuster goes.
        Assert.All(answer.GetProperty("packages").EnumerateArray().Where(one => Ids(one).Contains("springs")), one =>
            Assert.InRange(one.GetProperty("settings").EnumerateArray().Single(setting => setting.GetProperty("axle").GetString() == "front").Number("camberDeg"), -3.2, -2.6));
        Assert.Contains(answer.GetProperty("packages").EnumerateArray(), one => Ids(one).Contains("springs"));
    }

    private static string[] Ids(JsonElement one) => [.. one.GetProperty("parts").EnumerateArray().Select(id => id.GetString()!)];
}

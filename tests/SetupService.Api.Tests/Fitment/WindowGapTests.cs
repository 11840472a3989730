using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>Ends of a window that nothing is known of: each says what would settle it.</summary>
public sealed class WindowGapTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Bare = """
        { "vehicle": { "front": { "wheel": { "marking": "7Jx16 ET50" }, "tyre": { "marking": "205/55R16 91V" } } }, "axle": "front", "tyre": { "marking": "225/45R17 91W" }, "rimWidthsIn": [7, 7.5] }
        """;

    [Fact]
    public async Task Without_any_gap_both_ends_name_the_gap_they_need()
    {
        var answer = await fixture.Client.AnswerOf("/v1/fitment/window", Bare);

        var unknown = answer.GetProperty("unknown").EnumerateArray().ToDictionary(one => one.GetProperty("id").GetString()!, one => one.GetProperty("needs")[0].GetString());
        Assert.Equal("/vehicle/front/clearance/outboardMm", unknown["offsetMm/from"]);
        Assert.Equal("/vehicle/front/clearance/inboardMm", unknown["offsetMm/to"]);
        Assert.All(answer.GetProperty("unknown").EnumerateArray(), one => Assert.EndsWith("was not measured.", one.GetProperty("reason").GetString(), StringComparison.Ordinal));
    }
}

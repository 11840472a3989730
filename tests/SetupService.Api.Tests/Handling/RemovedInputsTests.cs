using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>Whatever optional figure of the car is left out, ride, camber target and what-if list what they used in its place.</summary>
public sealed class RemovedInputsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string[] Optional =
    [
        "/centreOfGravityHeightMm", "/front/unsprungMassKg", "/front/antiRollBar/rollRateNmPerDeg", "/front/compliance/camberDegPerKn", "/front/compliance/toeDegPerKn",
        "/front/bumpTravelMm", "/front/reboundTravelMm", "/front/bumpStop/rateNPerMm", "/front/bumpStop/lengthMm", "/front/alignment/camberDeg", "/front/alignment/toeDeg",
        "/front/suspension", "/front/tyre", "/rear/rollCentreHeightMm", "/rear/spring/motionRatio", "/rear/unsprungMassKg", "/rear/antiRollBar/rollRateNmPerDeg",
    ];

    public static TheoryData<string, string> Calls()
    {
        TheoryData<string, string> all = [];
        foreach (var call in (string[])["ride", "camber-target", "what-if"])
        {
            foreach (var place in Optional) all.Add(call, place);
        }

        return all;
    }

    [Theory]
    [MemberData(nameof(Calls))]
    public async Task What_is_left_out_is_listed(string call, string place)
    {
        var body = JsonNode.Parse(await File.ReadAllTextAsync(ExampleCall.FileOf(call + ".request.json")))!.AsObject().Without("/vehicle" + place);
        body.Remove("change");
        if (call == "what-if") body["changes"] = JsonNode.Parse("""[{"label":"bar","vehicle":{"front":{"antiRollBar":{"rollRateNmPerDeg":450}}}}]""");

        using var response = await fixture.Client.PostAsync("/v1/handling/" + call, body.ToJsonString());

        Assert.Equal(200, (int)response.StatusCode);
        var inputs = JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement.GetProperty("assumptions").EnumerateArray().Select(one => one.GetProperty("input").GetString()!);
        Assert.Contains(inputs, input => input.StartsWith("/vehicle" + place, StringComparison.Ordinal));
    }
}

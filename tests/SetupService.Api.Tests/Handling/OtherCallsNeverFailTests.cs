using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>Ride, camber target and what-if with anything anywhere: an answer that keeps its schema, or a reason.</summary>
public sealed class OtherCallsNeverFailTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("/v1/handling/ride", "ride.request.json")]
    [InlineData("/v1/handling/camber-target", "camber-target.request.json")]
    [InlineData("/v1/handling/what-if", "what-if.request.json")]
    [InlineData("/v1/handling/envelope", "envelope.request.json")]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason(string path, string example)
    {
        var text = await File.ReadAllTextAsync(ExampleCall.FileOf(example));
        await AnswerOrReason.CheckHostileAsync(fixture.Client, path, Gen.Const(text).Select(sound => JsonNode.Parse(sound)!.AsObject()), 250);
    }

    [Theory]
    [InlineData("/v1/handling/cornering", "cornering.request.json")]
    [InlineData("/v1/handling/cornering-sweep", "cornering-sweep.request.json")]
    [InlineData("/v1/handling/what-if", "what-if.request.json")]
    [InlineData("/v1/handling/envelope", "envelope.request.json")]
    [InlineData("/v1/handling/camber-target", "camber-target.request.json")]
    public async Task The_least_grip_that_may_be_stated_is_worked_with(string path, string example)
    {
        foreach (var heldG in (double[])[0.05, 0.06, 0.08])
        {
            var body = JsonNode.Parse(await File.ReadAllTextAsync(ExampleCall.FileOf(example)))!;
            body["heldLateralG"] = heldG;
            using var content = new StringContent(body.ToJsonString(), Encoding.UTF8, "application/json");
            using var response = await fixture.Client.PostAsync(new Uri(path, UriKind.Relative), content);
            var answer = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;

            Assert.True(response.IsSuccessStatusCode, answer.ToJsonString());

            // Nobody's tyres hold less than nothing, or six times what was measured.
            if (answer["limit"]?["front"] is { } front)
            {
                Assert.InRange(front["lower"]!.GetValue<double>(), 0, heldG);
                Assert.InRange(front["upper"]!.GetValue<double>(), heldG, 6 * heldG);
            }
        }
    }
}

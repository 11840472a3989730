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
}

using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http.Faults;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Examples;

/// <summary>The way an answer points leads on: the body sent before, with the members it says to add, is what the next call takes.</summary>
public sealed class NextCallsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // What no example of the next call names.
    private static readonly JsonObject Further = JsonNode.Parse("""
        {"target": {"camberDeg": -1.2}, "adjusters": [{"adjuster": "strutTopInboard", "rangeMm": {"from": -10, "to": 10}}]}
        """)!.AsObject();

    public static TheoryData<string> Answers() => [.. ExampleCall.All.Where(call => Body(call.Answer)?["next"] is not null).Select(call => call.Answer)];

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task What_is_added_to_the_body_makes_the_next_calls(string answer)
    {
        var call = ExampleCall.All.Single(one => one.Answer == answer);
        var sent = Body(call.Request!)!.AsObject();
        using var described = JsonDocument.Parse(await fixture.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)));
        Assert.All(Body(answer)!["next"]!.AsArray(), one => Assert.False(string.IsNullOrWhiteSpace(one!["why"]!.GetValue<string>())));
        foreach (var next in Body(answer)!["next"]!.AsArray())
        {
            var path = next!["path"]!.GetValue<string>();
            Assert.NotEqual(call.Path, path);
            var known = Members(described.RootElement, path);
            var adds = next["adds"]!.AsArray().Select(one => one!.GetValue<string>()).ToArray();
            Assert.Empty(adds.Except(known));
            var example = Body(ExampleCall.All.First(one => one.Path == path).Request!)!.AsObject();
            var body = new JsonObject();
            foreach (var member in known)
            {
                if ((adds.Contains(member) ? example[member] ?? Further[member] : sent[member]) is { } value) body[member] = value.DeepClone();
            }

            await IsWhole(path, body);
        }
    }

    // Answered, or refused for what a car lacks that the first call did not need: never for a member of the body itself.
    private async Task IsWhole(string path, JsonObject body)
    {
        using var content = new StringContent(body.ToJsonString(), Encoding.UTF8, "application/json");
        using var response = await fixture.Client.PostAsync(new Uri(path, UriKind.Relative), content);
        if (response.IsSuccessStatusCode) return;
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode is HttpStatusCode.BadRequest or HttpStatusCode.UnprocessableEntity, text);
        using var refusal = JsonDocument.Parse(text);
        Assert.All(
            refusal.RootElement.GetProperty("errors").EnumerateArray(),
            fault => Assert.True(fault.GetProperty("pointer").GetString()!.Split('/').Length > 2 && fault.GetProperty("code").GetString() != FaultCodes.UnknownMember, $"{path}: {text}"));
    }

    private static HashSet<string> Members(JsonElement description, string path)
    {
        var schema = description.GetProperty("paths").GetProperty(path).GetProperty("post").GetProperty("requestBody").GetProperty("content").GetProperty("application/json").GetProperty("schema").GetProperty("$ref").GetString()!;
        return [.. description.GetProperty("components").GetProperty("schemas").GetProperty(schema.Split('/')[^1]).GetProperty("properties").EnumerateObject().Select(one => one.Name)];
    }

    private static JsonNode? Body(string file) => file.EndsWith(".json", StringComparison.Ordinal) ? JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf(file))) : null;
}

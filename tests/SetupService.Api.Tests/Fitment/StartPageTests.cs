using System.Text.Json;
using System.Text.RegularExpressions;
using SetupService.Api.Tests.Contract;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>docs/start.md stays true: its requests are sent as they stand there, and lead where it says.</summary>
public sealed partial class StartPageTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string Page = File.ReadAllText(ContractFile.Path("../docs/start.md"));

    [Fact]
    public async Task Three_requests_lead_from_nothing_to_a_verdict()
    {
        var answers = new List<JsonElement>();
        foreach (Match request in Requests().Matches(Page))
            answers.Add(await fixture.Client.AnswerOf(request.Groups["path"].Value, request.Groups["body"].Value));

        Assert.Equal(["unknown", "unknown", "pass"], answers.Select(answer => answer.GetProperty("verdict").GetString()));
        foreach (var answer in answers.Skip(1))
            Assert.Contains("> " + answer.GetProperty("summary").GetString(), Page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_first_answer_needs_what_the_page_says_and_what_the_others_bring()
    {
        var told = JsonDocument.Parse(Needs().Match(Page).Groups["list"].Value).RootElement.Strings();
        var requests = Requests().Matches(Page).Select(request => request.Groups["body"].Value).ToArray();
        var first = await fixture.Client.AnswerOf(Calls.Check + "?detail=verdict", requests[0]);

        Assert.Equal(told, first.GetProperty("needs").Strings().Take(told.Length));
        using var last = JsonDocument.Parse(requests[^1]);
        Assert.All(told, pointer => Assert.True(IsThere(last.RootElement, pointer), pointer));
    }

    /// <summary>Of a car of which nothing is known the wheel and tyre fitted now come first: the gaps say nothing without them.</summary>
    [Fact]
    public async Task What_settles_most_is_asked_for_first()
    {
        var answer = await fixture.Client.AnswerOf(Calls.Check, $$"""{ "axle": "rear", "vehicle": {}, "candidate": {{Fitment.Requests.Candidate}} }""");

        Assert.Equal(
            ["/vehicle/rear/wheel", "/vehicle/rear/tyre", "/vehicle/rear/clearance/inboardMm", "/vehicle/rear/clearance/outboardMm", "/vehicle/rear/maximumAxleLoadKg", "/vehicle/topSpeedKmh"],
            answer.GetProperty("needs").Strings().Take(6));
    }

    private static bool IsThere(JsonElement body, string pointer)
    {
        foreach (var step in pointer[1..].Split('/'))
        {
            if (!body.TryGetProperty(step, out body)) return false;
        }

        return true;
    }

    [GeneratedRegex(@"curl -s 'http://localhost:5080(?<path>[^']+)' -H 'content-type: application/json' -d '(?<body>[^']+)'")]
    private static partial Regex Requests();

    [GeneratedRegex(@"```json\n(?<list>\[.*\])\n```")]
    private static partial Regex Needs();
}

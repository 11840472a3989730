using System.Globalization;
using System.Text;
using System.Text.Json;
using SetupService.Api.Tests.Contract;
using SetupService.Api.Tests.Host;
using Xunit.Abstractions;

namespace SetupService.Api.Tests.Wear.Stories;

/// <summary>
/// Whole stories sent to the running service: what somebody reads and tells, what a careful technician does first, and what must not be said. They are
/// written from published guidance, marked where there is none, and not from what the service answers; README.md beside this file tells how.
/// </summary>
public sealed class StoryTests(ServiceFixture fixture, ITestOutputHelper output) : IClassFixture<ServiceFixture>
{
    private const int LeastStories = 30;
    private const double LeastRight = 0.9;
    private static readonly JsonSerializerOptions Strict = new(JsonSerializerDefaults.Web) { UnmappedMemberHandling = System.Text.Json.Serialization.JsonUnmappedMemberHandling.Disallow };
    private static readonly Story[] All = [.. Directory.GetFiles(ContractFile.Path("../tests/SetupService.Api.Tests/Wear/Stories"), "*.json").Order(StringComparer.Ordinal)
        .SelectMany(file => JsonSerializer.Deserialize<Story[]>(File.ReadAllText(file), Strict)!)];

    public static TheoryData<string> Names() => [.. All.Select(story => story.Name)];

    [Fact]
    public void There_are_at_least_thirty_each_with_its_source_and_what_must_not_be_said()
    {
        Assert.True(All.Length >= LeastStories, $"{All.Length} stories");
        Assert.Equal(All.Length, All.Select(story => story.Name).Distinct().Count());
        Assert.All(All, story => Assert.True(story is { Source.Length: > 0, Account.Length: > 0, First.Length: > 0, Never.Length: > 0 }, story.Name));
        Assert.All(All, story => Assert.All(story.First, first => Assert.True(first is not { Cause: null, Says: null, Done: null }, story.Name)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task A_forbidden_sentence_appears_in_none(string name)
    {
        var story = All.Single(one => one.Name == name);
        var found = StoryJudge.Forbidden(story, await AnswerAsync(story));
        Assert.True(found.Count == 0, $"{story.Account} {string.Join("; ", found)}");
    }

    [Fact]
    public async Task What_comes_first_is_right_in_nine_of_ten()
    {
        var (right, report) = (0, new StringBuilder());
        foreach (var story in All)
        {
            var answer = await AnswerAsync(story);
            var (isRight, found) = (StoryJudge.IsFirstRight(story, answer), StoryJudge.Forbidden(story, answer));
            if (isRight) right++;
            report.AppendLine(CultureInfo.InvariantCulture, $"{(isRight ? "right" : "WRONG")} {(found.Count == 0 ? "clean" : "FORBIDDEN")} {story.Name}");
            if (!isRight) report.AppendLine(CultureInfo.InvariantCulture, $"    answered first: {StoryJudge.Leading(answer).ReplaceLineEndings(" | ")}");
            foreach (var one in found) report.AppendLine(CultureInfo.InvariantCulture, $"    {one}");
        }

        report.AppendLine(CultureInfo.InvariantCulture, $"first action right in {right} of {All.Length} stories");
        output.WriteLine(report.ToString());
        Assert.True(right >= LeastRight * All.Length, report.ToString());
    }

    // The judge itself: an answer that says what it must not, and does something else first, is seen.
    [Fact]
    public void The_judge_sees_what_is_wrong()
    {
        var story = new Story("", "", "", default, [new(Cause: "normal"), new(Done: ["rear"])], [new(Says: "(?i)more negative"), new(Cause: "wheelspin", Axle: "front", Above: 0.3), new(Amount: "toe", Axle: "front")]);
        var wrong = Json("""{"summary":"Set it 1.0° more negative. A. B. C. D. E.","causes":[{"cause":"wheelspin","axle":"front","probability":0.5,"meaning":"","evidence":[],"actions":[{"text":"Set it.","toeDeg":{"value":1},"stepDeg":2.5}]}]}""");
        var right = Json("""{"summary":"Nothing to change.","axles":{"front":null,"rear":{"isDone":true,"text":"Done."}},"causes":[{"cause":"toeIn","axle":"front","probability":0.1,"meaning":"","evidence":[],"actions":[]}]}""");

        Assert.False(StoryJudge.IsFirstRight(story, wrong));
        Assert.Equal(5, StoryJudge.Forbidden(story, wrong).Count);
        Assert.True(StoryJudge.IsFirstRight(story, right));
        Assert.Empty(StoryJudge.Forbidden(story, right));

        static JsonElement Json(string text) => JsonDocument.Parse(text).RootElement;
    }

    private async Task<JsonElement> AnswerAsync(Story story)
    {
        using var content = new StringContent(story.Request.GetRawText(), Encoding.UTF8, "application/json");
        using var response = await fixture.Client.PostAsync(new Uri("/v1/wear/diagnosis", UriKind.Relative), content);
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, $"{story.Name}: {text}");
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}

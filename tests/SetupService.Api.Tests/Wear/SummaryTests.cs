using System.Text.RegularExpressions;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Wear;

/// <summary>A summary is one text, first in its answer, of at most five sentences; the rest stands with the items it is about.</summary>
public sealed partial class SummaryTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("/v1/wear/diagnosis", "wear-diagnosis")]
    [InlineData("/v1/wear/forecast", "wear-forecast")]
    [InlineData("/v1/wear/before-after", "wear-before-after")]
    [InlineData("/v1/wear/temperatures", "wear-temperatures")]
    public async Task A_summary_comes_first_with_at_most_five_sentences(string path, string example)
    {
        var body = await File.ReadAllTextAsync(ExampleCall.FileOf(example + ".request.json"));

        foreach (var units in (string[])["metric", "us"])
        {
            var answer = await fixture.Client.AnswerOf($"{path}?units={units}", body);
            var first = answer.EnumerateObject().First();
            Assert.Equal("summary", first.Name);
            Assert.InRange(SentenceEnd().Count(first.Value.GetString()!), 1, 5);
        }
    }

    [GeneratedRegex(@"[.!?](?=\s+\p{Lu}|$)")]
    private static partial Regex SentenceEnd();
}

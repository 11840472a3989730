using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Comparison;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Examples;

/// <summary>
/// Sends every example of api/examples to the running service and holds its answer against the file kept: the structure
/// exactly, numbers to a tolerance. With SETUP_SERVICE_WRITE_EXAMPLES=1 in the environment the answers are written anew instead.
/// </summary>
public sealed class ExampleTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly bool IsWriting = Environment.GetEnvironmentVariable("SETUP_SERVICE_WRITE_EXAMPLES") == "1";

    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static TheoryData<string> Answers() => [.. Kept.Select(call => call.Answer)];

    private static IEnumerable<ExampleCall> Kept => ExampleCall.All.Concat(ExampleCall.Further);

    [Theory]
    [MemberData(nameof(Answers))]
    public async Task The_service_answers_the_example_as_the_file_says(string answer)
    {
        var sent = Shown(answer, await Kept.Single(call => call.Answer == answer).SendAsync(fixture.Client));
        var file = ExampleCall.FileOf(answer);
        if (IsWriting)
            await File.WriteAllTextAsync(file, sent);
        var kept = await File.ReadAllTextAsync(file);

        var differences = answer.EndsWith(".json", StringComparison.Ordinal)
            ? AnswerComparer.Compare(JsonNode.Parse(kept), JsonNode.Parse(sent))
            : AnswerComparer.CompareTexts(kept, sent);
        Assert.True(differences.Count == 0, $"{answer} says otherwise than the service: {string.Join("; ", differences.Take(10))}");
    }

    [Fact]
    public async Task Two_runs_give_the_same_bytes()
    {
        foreach (var call in ExampleCall.All)
            Assert.Equal(await call.SendAsync(fixture.Client), await call.SendAsync(fixture.Client));
    }

    [Fact]
    public void Every_file_kept_is_sent_or_answered()
    {
        var known = Kept.SelectMany(call => new[] { call.Request, call.Answer }).OfType<string>().Append("fitment-batch.car.json").Append("fitment-catalogue.cars.ndjson").Append("further/catalogue.csv").Distinct();
        var kept = Directory.GetFiles(ExampleCall.FileOf(""), "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(ExampleCall.FileOf(""), file).Replace('\\', '/'));

        Assert.Equal(known.Order(StringComparer.Ordinal), kept.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task The_demo_of_the_check_fits_and_carries()
    {
        using var answer = JsonDocument.Parse(await File.ReadAllTextAsync(ExampleCall.FileOf("fitment-check.answer.json")));

        Assert.Equal("pass", answer.RootElement.GetProperty("verdict").GetString());
        Assert.Equal(0, answer.RootElement.GetProperty("unknown").GetArrayLength());
    }

    /// <summary>As it is kept: JSON indented for people; rows of a table with the line ends files here have.</summary>
    private static string Shown(string answer, string text) => Path.GetExtension(answer) switch
    {
        ".json" => JsonNode.Parse(text)!.ToJsonString(Indented) + "\n",
        ".csv" => text.ReplaceLineEndings("\n"),
        _ => text,
    };
}

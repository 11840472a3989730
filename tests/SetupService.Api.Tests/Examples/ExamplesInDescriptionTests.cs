using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Examples;

/// <summary>The API description shows the files of api/examples, answers shortened, and something with every media type but pictures and pages.</summary>
public sealed class ExamplesInDescriptionTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task Every_media_type_of_every_call_but_pictures_and_pages_has_an_example()
    {
        using var document = await Served();
        Assert.All(
            MediaTypes(document).Where(media => !media.Call.EndsWith("image/svg+xml", StringComparison.Ordinal) && !media.Call.EndsWith("text/html", StringComparison.Ordinal)),
            media => Assert.True(Shown(document, media.Value) is { ValueKind: not JsonValueKind.Null }, media.Call));
    }

    [Fact]
    public async Task Each_example_is_its_file_and_an_answer_the_first_rows_of_it()
    {
        using var document = await Served();
        foreach (var call in ExampleCall.All)
        {
            var operation = document.RootElement.GetProperty("paths").GetProperty(call.Path.Split('?')[0]).GetProperty(call.Method.ToLowerInvariant());
            var answers = operation.GetProperty("responses").GetProperty("200").GetProperty("content");
            if (Path.GetExtension(call.Answer) is not (".svg" or ".html"))
                await Same(call.Answer, Shown(document, answers.GetProperty(MediaTypeOf(call.Answer)))!.Value, rows: 2);
            if (call.Request is null)
                continue;

            var content = operation.GetProperty("requestBody").GetProperty("content");
            var isTable = call.Request.EndsWith(".csv", StringComparison.Ordinal);
            var example = Shown(document, content.GetProperty(isTable ? "multipart/form-data" : MediaTypeOf(call.Request)))!.Value;
            await Same(call.Request, isTable ? example.GetProperty("candidates") : example, rows: int.MaxValue);
            if (isTable && example.TryGetProperty("cars", out var cars))
                await Same("fitment-catalogue.cars.ndjson", cars, rows: int.MaxValue);
            else if (isTable)
                await Same("fitment-batch.car.json", example.GetProperty("car"), rows: int.MaxValue);
        }
    }

    [Fact]
    public async Task A_shortened_answer_keeps_its_schema()
    {
        using var document = await Served();
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        var checkedOnes = 0;
        foreach (var call in ExampleCall.All.Where(call => call.Answer.EndsWith(".json", StringComparison.Ordinal)))
        {
            var path = call.Path.Split('?')[0];
            var media = document.RootElement.GetProperty("paths").GetProperty(path).GetProperty(call.Method.ToLowerInvariant())
                .GetProperty("responses").GetProperty("200").GetProperty("content").GetProperty("application/json");
            Assert.Null(schemas.FaultOf(call.Method.ToLowerInvariant(), path, 200, Shown(document, media)!.Value.GetRawText()));
            checkedOnes++;
        }

        Assert.True(checkedOnes > 15, $"{checkedOnes}");
    }

    [Fact]
    public async Task The_query_of_an_example_is_the_one_the_description_shows()
    {
        using var document = await Served();
        foreach (var call in ExampleCall.All.Where(call => call.Path.Contains('?', StringComparison.Ordinal)))
        {
            var path = call.Path.Split('?');
            var parameters = document.RootElement.GetProperty("paths").GetProperty(path[0]).GetProperty("get").GetProperty("parameters");
            var shown = parameters.EnumerateArray().Select(one => Target(document, one)).Where(one => one.TryGetProperty("example", out _)).Select(one => $"{one.GetProperty("name")}={one.GetProperty("example")}");

            Assert.Equal(shown, Uri.UnescapeDataString(path[1]).Split('&'));
        }
    }

    private static async Task Same(string file, JsonElement example, int rows)
    {
        var kept = await File.ReadAllTextAsync(ExampleCall.FileOf(file));
        var isSame = file.EndsWith(".json", StringComparison.Ordinal)
            ? IsStartOf(JsonNode.Parse(example.GetRawText()), JsonNode.Parse(kept), rows)
            : kept == example.GetString();
        Assert.True(isSame, $"{file} is shown otherwise: {example}");
    }

    /// <summary>Whether a value is another but for the ends of its lists, of each of which so many rows at most are shown and one at least.</summary>
    private static bool IsStartOf(JsonNode? shown, JsonNode? whole, int rows) => (shown, whole) switch
    {
        (JsonObject some, JsonObject all) => some.Count == all.Count && some.All(member => all.ContainsKey(member.Key) && IsStartOf(member.Value, all[member.Key], rows)),
        (JsonArray some, JsonArray all) => some.Count <= rows && (some.Count == all.Count || (some.Count > 0 && rows < int.MaxValue))
            && some.Zip(all).All(pair => IsStartOf(pair.First, pair.Second, rows == 2 ? 1 : rows)),
        _ => JsonNode.DeepEquals(shown, whole) || (rows < int.MaxValue && (IsBeginning(shown, whole) || IsRounded(shown, whole))),
    };

    private static bool IsBeginning(JsonNode? shown, JsonNode? whole) => shown is JsonValue && whole is JsonValue && shown.GetValueKind() == JsonValueKind.String && whole.GetValueKind() == JsonValueKind.String
        && shown.GetValue<string>() is [_, .., ' ', '…'] cut && whole.GetValue<string>().StartsWith(cut[..^2], StringComparison.Ordinal);

    private static bool IsRounded(JsonNode? shown, JsonNode? whole) => shown is JsonValue && whole is JsonValue && shown.GetValueKind() == JsonValueKind.Number && whole.GetValueKind() == JsonValueKind.Number
        && Math.Abs(shown.GetValue<double>() - whole.GetValue<double>()) <= 5e-4 * Math.Abs(whole.GetValue<double>());

    /// <summary>The example shown with a media type, wherever it stands.</summary>
    private static JsonElement? Shown(JsonDocument document, JsonElement media)
    {
        if (media.TryGetProperty("examples", out var examples))
            return Target(document, examples.GetProperty("demo")).GetProperty("value");
        return media.TryGetProperty("example", out var example) ? example : null;
    }

    private static JsonElement Target(JsonDocument document, JsonElement part) => part.TryGetProperty("$ref", out var target)
        ? target.GetString()!.Split('/').Skip(1).Aggregate(document.RootElement, (place, name) => place.GetProperty(name))
        : part;

    private static string MediaTypeOf(string file) => Path.GetExtension(file) switch
    {
        ".json" => "application/json",
        ".ndjson" => "application/x-ndjson",
        ".csv" => "text/csv",
        _ => "image/svg+xml",
    };

    private static IEnumerable<(string Call, JsonElement Value)> MediaTypes(JsonDocument document) =>
        from path in document.RootElement.GetProperty("paths").EnumerateObject()
        from operation in path.Value.EnumerateObject()
        from content in Contents(document, operation.Value)
        from media in content.EnumerateObject()
        select ($"{operation.Name} {path.Name} {media.Name}", media.Value);

    private static IEnumerable<JsonElement> Contents(JsonDocument document, JsonElement operation)
    {
        if (operation.TryGetProperty("requestBody", out var body))
            yield return body.GetProperty("content");
        foreach (var response in operation.GetProperty("responses").EnumerateObject())
        {
            // A 304 has no body.
            if (Target(document, response.Value).TryGetProperty("content", out var content))
                yield return content;
            else
                Assert.Equal("304", response.Name);
        }
    }

    private async Task<JsonDocument> Served() => JsonDocument.Parse(await fixture.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)));
}

using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Examples;

/// <summary>The API description shows the files of api/examples, and something with every media type.</summary>
public sealed class ExamplesInDescriptionTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task Every_media_type_of_every_call_has_an_example()
    {
        using var document = await Served();
        Assert.All(
            MediaTypes(document),
            media => Assert.True(media.Value.TryGetProperty("example", out var example) && example.ValueKind != JsonValueKind.Null, media.Call));
    }

    [Fact]
    public async Task Each_example_is_its_file()
    {
        using var document = await Served();
        foreach (var call in ExampleCall.All)
        {
            var operation = document.RootElement.GetProperty("paths").GetProperty(call.Path.Split('?')[0]).GetProperty(call.Method.ToLowerInvariant());
            var answers = operation.GetProperty("responses").GetProperty("200").GetProperty("content");
            await Same(call.Answer, answers.GetProperty(MediaTypeOf(call.Answer)).GetProperty("example"));
            if (call.Request is null)
                continue;

            var content = operation.GetProperty("requestBody").GetProperty("content");
            var isTable = call.Request.EndsWith(".csv", StringComparison.Ordinal);
            var example = content.GetProperty(isTable ? "multipart/form-data" : MediaTypeOf(call.Request)).GetProperty("example");
            await Same(call.Request, isTable ? example.GetProperty("candidates") : example);
            if (isTable)
                await Same("fitment-batch.car.json", example.GetProperty("car"));
        }
    }

    [Fact]
    public async Task The_query_of_an_example_is_the_one_the_description_shows()
    {
        using var document = await Served();
        foreach (var call in ExampleCall.All.Where(call => call.Path.Contains('?', StringComparison.Ordinal)))
        {
            var path = call.Path.Split('?');
            var parameters = document.RootElement.GetProperty("paths").GetProperty(path[0]).GetProperty("get").GetProperty("parameters");
            var shown = parameters.EnumerateArray().Select(one => $"{one.GetProperty("name")}={one.GetProperty("example")}");

            Assert.Equal(shown, Uri.UnescapeDataString(path[1]).Split('&'));
        }
    }

    private static async Task Same(string file, JsonElement example)
    {
        var kept = await File.ReadAllTextAsync(ExampleCall.FileOf(file));
        var isSame = file.EndsWith(".json", StringComparison.Ordinal)
            ? JsonNode.DeepEquals(JsonNode.Parse(kept), JsonNode.Parse(example.GetRawText()))
            : kept == example.GetString();
        Assert.True(isSame, $"{file} is shown otherwise: {example}");
    }

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
        from content in Contents(operation.Value)
        from media in content.EnumerateObject()
        select ($"{operation.Name} {path.Name} {media.Name}", media.Value);

    private static IEnumerable<JsonElement> Contents(JsonElement operation)
    {
        if (operation.TryGetProperty("requestBody", out var body))
            yield return body.GetProperty("content");
        foreach (var response in operation.GetProperty("responses").EnumerateObject())
        {
            // A 304 has no body.
            if (response.Value.TryGetProperty("content", out var content))
                yield return content;
            else
                Assert.Equal("304", response.Name);
        }
    }

    private async Task<JsonDocument> Served() => JsonDocument.Parse(await fixture.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)));
}

using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment.Batch;

namespace SetupService.Api.Tests.Fitment.Catalogue;

/// <summary>Sends catalogues and takes their answers apart.</summary>
internal static class CatalogueCalls
{
    public const string Path = "/v1/fitment/catalogue";

    /// <summary>A line with the demo car.</summary>
    public static JsonObject Car(JsonNode id, string? axle = "front")
    {
        var car = BatchCalls.Car();
        car.Remove("camberChange");
        car.Remove("axle");
        car["id"] = id.DeepClone();
        if (axle is not null)
            car["axle"] = axle;
        return car;
    }

    public static MultipartFormDataContent Form(string cars, string candidates, string? type = BatchCalls.Ndjson) => new()
    {
        { new StringContent(cars, new MediaTypeHeaderValue(BatchCalls.Ndjson)), "cars" },
        { new StringContent(candidates, Encoding.UTF8, new MediaTypeHeaderValue(type ?? "application/octet-stream")), "candidates" },
    };

    public static async Task<JsonElement[]> CatalogueOf(this HttpClient client, string cars, string candidates, string query = "", string? type = BatchCalls.Ndjson)
    {
        using var form = Form(cars, candidates, type);
        using var response = await client.PostAsync(new Uri(Path + query, UriKind.Relative), form);
        var text = await Calls.Text(response);
        Assert.Equal(BatchCalls.Ndjson, response.Content.Headers.ContentType!.MediaType);
        Assert.EndsWith("\n", text, StringComparison.Ordinal);
        return [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Calls.Parse)];
    }

    /// <summary>A line as "car candidate line verdict-or-codes".</summary>
    public static string Told(JsonElement line) => string.Join(' ', Text(line, "car"), Text(line, "candidate"), Text(line, "line"), line.TryGetProperty("problem", out var problem)
        ? string.Join(' ', problem.FaultsOf())
        : line.GetProperty("verdict").GetString());

    private static string Text(JsonElement line, string member) => line.TryGetProperty(member, out var value) ? value.ToString() is { Length: > 0 } text ? text : "null" : "-";
}

using System.Net;
using System.Text;
using System.Text.Json;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Contract;

/// <summary>What the API description shows as an example works when it is sent.</summary>
public sealed class ExamplesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task Every_described_example_is_answered()
    {
        using var document = JsonDocument.Parse(await fixture.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)));
        var sent = 0;
        foreach (var path in document.RootElement.GetProperty("paths").EnumerateObject().Where(path => !path.Name.Contains('{', StringComparison.Ordinal)))
        {
            foreach (var operation in path.Value.EnumerateObject())
            {
                if (RequestOf(document.RootElement.GetProperty("components"), path.Name, operation) is not { } request)
                    continue;

                using (request)
                using (var response = await fixture.Client.SendAsync(request))
                {
                    var answer = await response.Content.ReadAsStringAsync();
                    Assert.True(response.StatusCode == HttpStatusCode.OK, $"{operation.Name} {path.Name}: {answer}");
                    sent++;
                }
            }
        }

        Assert.True(sent > 5, $"Only {sent} calls could be tried.");
    }

    private static HttpRequestMessage? RequestOf(JsonElement components, string path, JsonProperty operation)
    {
        List<string> query = [];
        if (operation.Value.TryGetProperty("parameters", out var parameters))
            query.AddRange(parameters.EnumerateArray().Select(parameter => Shared(components, "parameters", parameter)).Where(parameter => parameter.TryGetProperty("example", out _)).Select(parameter => $"{parameter.GetProperty("name").GetString()}={Uri.EscapeDataString(parameter.GetProperty("example").ToString())}"));

        HttpRequestMessage request = new(new HttpMethod(operation.Name.ToUpperInvariant()), new Uri($"{path}?{string.Join('&', query)}".TrimEnd('?'), UriKind.Relative));
        if (!operation.Value.TryGetProperty("requestBody", out var body))
            return request;
        if (!body.GetProperty("content").TryGetProperty("application/json", out var media) || !media.TryGetProperty("examples", out var examples))
            return null;

        var example = Shared(components, "examples", examples.GetProperty("demo")).GetProperty("value");
        request.Content = new StringContent(example.GetRawText(), Encoding.UTF8, "application/json");
        return request;
    }

    private static JsonElement Shared(JsonElement components, string kind, JsonElement reference) =>
        components.GetProperty(kind).GetProperty(reference.GetProperty("$ref").GetString()!.Split('/')[^1]);
}

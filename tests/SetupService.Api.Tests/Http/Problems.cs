using System.Text.Json;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Tests.Http;

/// <summary>Reads a refusal and holds it to RFC 9457 and to what every refusal of this service promises.</summary>
internal static class Problems
{
    private static readonly string[] Inside = [" at SetupService", ".cs", "Exception", "System.", "Microsoft.", "Document`", "/tmp", "/src"];

    public static async Task<JsonElement> Read(HttpResponseMessage response, ProblemType type)
    {
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(type.Status == (int)response.StatusCode, $"{type.Status} wanted, {(int)response.StatusCode} came: {text}");
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.ToString());
        Assert.True(response.Headers.CacheControl!.NoStore);
        Assert.All(Inside, word => Assert.DoesNotContain(word, text, StringComparison.Ordinal));

        using var document = JsonDocument.Parse(text);
        var problem = document.RootElement.Clone();
        Assert.Equal(type.Uri, problem.GetProperty("type").GetString());
        Assert.Equal(type.Title, problem.GetProperty("title").GetString());
        Assert.Equal(type.Status, problem.GetProperty("status").GetInt32());
        Assert.NotEmpty(problem.GetProperty("detail").GetString()!);
        Assert.Equal(JsonValueKind.Array, problem.GetProperty("errors").ValueKind);
        Assert.Equal(Assert.Single(response.Headers.GetValues("Request-Id")), problem.GetProperty("requestId").GetString());
        return problem;
    }
}

using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment;

/// <summary>Sends requests to the running service and reads what comes back; a wrong status shows the body that came.</summary>
internal static class Calls
{
    public const string Comparison = "/v1/fitment/comparison";
    public const string Check = "/v1/fitment/check";
    public const string Window = "/v1/fitment/window";
    public const string Drawing = "/v1/fitment/drawing";
    public const string Batch = "/v1/fitment/batch";
    public const string BatchCsv = "/v1/fitment/batch/csv";

    public static Task<HttpResponseMessage> PostAsync(
        this HttpClient client, string path, string body, string? contentType = "application/json", string? accept = null)
    {
        ByteArrayContent content = new(Encoding.UTF8.GetBytes(body));
        content.Headers.ContentType = contentType is null ? null : MediaTypeHeaderValue.Parse(contentType);
        HttpRequestMessage request = new(HttpMethod.Post, new Uri(path, UriKind.Relative)) { Content = content };
        if (accept is not null)
            request.Headers.TryAddWithoutValidation("Accept", accept);
        return client.SendAsync(request);
    }

    public static async Task<JsonElement> AnswerOf(this HttpClient client, string path, JsonNode body) =>
        await client.AnswerOf(path, body.ToJsonString());

    public static async Task<JsonElement> AnswerOf(this HttpClient client, string path, string body)
    {
        using var response = await client.PostAsync(path, body);
        return Parse(await Text(response));
    }

    public static async Task<JsonElement> GetAnswer(this HttpClient client, string path)
    {
        using var response = await client.GetAsync(new Uri(path, UriKind.Relative));
        return Parse(await Text(response));
    }

    public static async Task<JsonElement> RefusalOf(this HttpClient client, string path, string body)
    {
        using var response = await client.PostAsync(path, body);
        return await Problems.Read(response, ProblemTypes.InvalidRequest);
    }

    /// <summary>The body of an answer that must be a 200.</summary>
    public static async Task<string> Text(HttpResponseMessage response)
    {
        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.StatusCode == HttpStatusCode.OK, $"{(int)response.StatusCode}: {text}");
        return text;
    }

    public static JsonElement Parse(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }

    /// <summary>An answer as it stands within another one: without the calls that follow it.</summary>
    public static JsonElement WithoutNext(this JsonElement answer)
    {
        var members = JsonNode.Parse(answer.GetRawText())!.AsObject();
        Assert.True(members.Remove("next"));
        return Parse(members.ToJsonString());
    }

    /// <summary>One check of a check's answer.</summary>
    public static JsonElement CheckOf(this JsonElement answer, string id) =>
        answer.GetProperty("checks").EnumerateArray().Single(check => check.GetProperty("id").GetString() == id);

    /// <summary>The checks an answer lists as unknown.</summary>
    public static string[] UnknownChecks(this JsonElement answer) =>
        [.. answer.GetProperty("unknown").EnumerateArray().Select(one => one.GetProperty("id").GetString()!)];

    /// <summary>The faults of a refusal as "pointer code".</summary>
    public static string[] FaultsOf(this JsonElement problem) =>
        [.. problem.GetProperty("errors").EnumerateArray().Select(fault => $"{Place(fault)} {fault.GetProperty("code").GetString()}")];

    public static string[] Strings(this JsonElement list) => [.. list.EnumerateArray().Select(one => one.GetString()!)];

    private static string? Place(JsonElement fault) =>
        (fault.TryGetProperty("pointer", out var pointer) ? pointer : fault.GetProperty("parameter")).GetString();
}

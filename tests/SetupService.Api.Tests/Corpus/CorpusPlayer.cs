using System.Globalization;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SetupService.Api.Tests.Corpus;

/// <summary>Sends an entry's request and gives the entry as it is answered now.</summary>
internal static class CorpusPlayer
{
    /// <summary>Digits an answer's numbers are kept with: what the contract promises, and enough for the tolerance.</summary>
    private const int KeptDigits = 9;

    /// <summary>Members that follow the edition in force or the moment, not the request: kept as "(any)".</summary>
    private static readonly string[] NotOfTheRequest = ["edition", "requestId"];

    public static async Task<CorpusEntry> PlayAsync(HttpClient client, CorpusEntry entry)
    {
        using HttpRequestMessage request = new(new HttpMethod(entry.Method), new Uri(entry.Path, UriKind.Relative)) { Content = Body(entry) };
        if (entry.Accept is not null)
            request.Headers.Accept.ParseAdd(entry.Accept);
        using var response = await client.SendAsync(request);
        var type = response.Content.Headers.ContentType?.MediaType;
        return entry with
        {
            Status = (int)response.StatusCode,
            AnswerType = type,
            Answer = Kept(Answer(type, await response.Content.ReadAsStringAsync())),
        };
    }

    private static HttpContent? Body(CorpusEntry entry)
    {
        if (entry.ContentType is null)
            return null;
        if (entry.ContentType != "multipart/form-data")
            return Typed(entry.Request!, entry.ContentType);

        MultipartFormDataContent form = [];
        foreach ((var name, var part) in entry.Request!.AsObject())
            form.Add(part is JsonArray lines ? Typed(Lines(lines), "application/x-ndjson") : Typed(part!, part is JsonObject ? "application/json" : "text/csv"), name);
        return form;
    }

    private static JsonValue Lines(JsonArray lines) => JsonValue.Create(string.Concat(lines.Select(line => line!.ToJsonString() + "\n")));

    private static StringContent Typed(JsonNode body, string type) =>
        new(body.GetValueKind() == JsonValueKind.String ? body.GetValue<string>() : body.ToJsonString(), Encoding.UTF8, new MediaTypeHeaderValue(type));

    private static JsonNode? Answer(string? type, string text) => type switch
    {
        "application/json" or "application/problem+json" => JsonNode.Parse(text),
        "application/x-ndjson" => new JsonArray([.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonNode.Parse(line))]),
        _ => JsonValue.Create(text.ReplaceLineEndings("\n")),
    };

    /// <summary>The answer with its numbers shortened and without what does not follow from the request.</summary>
    private static JsonNode? Kept(JsonNode? node) => node switch
    {
        JsonObject members => new JsonObject(members.Select(member => KeyValuePair.Create(member.Key, NotOfTheRequest.Contains(member.Key) ? "(any)" : Kept(member.Value)))),
        JsonArray items => new JsonArray([.. items.Select(Kept)]),
        JsonValue value when value.GetValueKind() == JsonValueKind.Number => Shortened(value.ToJsonString()),
        JsonValue value when value.GetValueKind() == JsonValueKind.String => WithoutKnownNames(value.GetValue<string>()),
        _ => node?.DeepClone(),
    };

    /// <summary>A refusal lists the names it knows; the list grows with every member and is held by other tests.</summary>
    private static string WithoutKnownNames(string text)
    {
        const string Lead = " Known: ";
        var place = text.IndexOf(Lead, StringComparison.Ordinal);
        return place < 0 ? text : $"{text.AsSpan(0, place + Lead.Length)}(any)";
    }

    private static JsonNode? Shortened(string number)
    {
        var value = double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);
        return JsonNode.Parse(value.ToString("G" + KeptDigits, CultureInfo.InvariantCulture));
    }
}

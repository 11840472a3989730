using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>Sends batches and takes their answers apart.</summary>
internal static class BatchCalls
{
    public const string Ndjson = "application/x-ndjson";

    /// <summary>The header of an answer without further columns.</summary>
    public const string Header = "line,id,verdict,decidedBy,governing,probableMm,worstCaseMm,failed,cautioned,unknown,reasons,problem";

    private static readonly JsonSerializerOptions OneLine = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The line that sets the demo car.</summary>
    public static string CarLine(string axle = "front") => Car(axle).ToJsonString(OneLine);

    public static JsonObject Car(string axle = "front")
    {
        var check = Requests.Check().With("/axle", axle);
        check.Remove("candidate");
        return check;
    }

    public static string CandidateLine(JsonNode? id, JsonNode candidate) =>
        new JsonObject { ["id"] = id?.DeepClone(), ["candidate"] = candidate.DeepClone() }.ToJsonString(OneLine);

    /// <summary>A good candidate line.</summary>
    public static string CandidateLine(JsonNode? id = null) => CandidateLine(id, Requests.Object(Requests.Candidate));

    public static async Task<JsonElement[]> LinesOf(this HttpClient client, string body, string query = "") =>
        await client.LinesOf(Encoding.UTF8.GetBytes(body), query);

    public static async Task<JsonElement[]> LinesOf(this HttpClient client, byte[] body, string query = "")
    {
        using ByteArrayContent content = new(body);
        content.Headers.ContentType = new MediaTypeHeaderValue(Ndjson);
        using var response = await client.PostAsync(new Uri(Calls.Batch + query, UriKind.Relative), content);
        var text = await Calls.Text(response);
        Assert.EndsWith("\n", text, StringComparison.Ordinal);
        return [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Calls.Parse)];
    }

    /// <summary>The rows answered to a table, the header left out.</summary>
    public static async Task<string[][]> RowsOf(this HttpClient client, string table, string? car = null)
    {
        var rows = await client.TableOf(table, car: car);
        Assert.Equal(Header, string.Join(',', rows[0]));
        return rows[1..];
    }

    /// <summary>The answer to a table, the header first.</summary>
    public static async Task<string[][]> TableOf(this HttpClient client, string table, char separator = ',', string query = "", string? car = null)
    {
        using var form = Form(table, car ?? CarLine());
        using var response = await client.PostAsync(new Uri(Calls.BatchCsv + query, UriKind.Relative), form);
        var rows = CsvText.Read(await Calls.Text(response), separator);
        Assert.All(rows, row => Assert.Equal(rows[0].Length, row.Length));
        return rows;
    }

    public static MultipartFormDataContent Form(string table, string car) => new()
    {
        { new StringContent(car, new MediaTypeHeaderValue("application/json")), "car" },
        { new StringContent(table, Encoding.UTF8, new MediaTypeHeaderValue("text/csv")), "candidates" },
    };

    /// <summary>The start of a table's request, with the boundary "edge", up to the table's header.</summary>
    public static string OpenForm { get; } =
        "--edge\r\nContent-Disposition: form-data; name=\"car\"\r\n\r\n" + CarLine()
        + "\r\n--edge\r\nContent-Disposition: form-data; name=\"candidates\"\r\n\r\nid,rimDiameterIn,rimWidthIn,offsetMm,marking\r\n";

    /// <summary>A good row under that header.</summary>
    public static string Row(int id) => CsvText.Row(id.ToString(System.Globalization.CultureInfo.InvariantCulture), "17", "8", "40", "225/45R17 94W XL");

    public static JsonElement Summary(JsonElement[] lines) => lines[^1].GetProperty("summary");

    public static void AssertSummary(JsonElement[] lines, int answered, int refused)
    {
        var summary = Summary(lines);
        Assert.Equal(answered + refused, summary.GetProperty("lineCount").GetInt64());
        Assert.Equal(answered, summary.GetProperty("answeredCount").GetInt64());
        Assert.Equal(refused, summary.GetProperty("refusedCount").GetInt64());
        Assert.True(summary.GetProperty("isComplete").GetBoolean());
        Assert.Equal(answered + refused + 1, lines.Length);
    }

    /// <summary>Number of the line and the codes of its faults; no codes where it has a verdict.</summary>
    public static (long Line, string Codes) Told(JsonElement line) => (
        line.GetProperty("line").GetInt64(),
        line.TryGetProperty("problem", out var problem) ? string.Join(' ', problem.FaultsOf()) : line.GetProperty("verdict").GetString() is not null ? "" : "nothing");
}

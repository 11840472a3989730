using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>One candidate asked about by itself, as a line and as a row: the same verdict, numbers and faults.</summary>
public sealed class BatchParityTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const int Batches = 40;

    private static readonly string[] Columns =
        ["id", "rimDiameterIn", "rimWidthIn", "offsetMm", "spacerMm", "boltCircle", "centreBoreMm", "loadRatingKg", "fastenerSeat", "padThicknessMm", "marking", "tyre.massKg", "pressureKpa"];

    private static readonly Gen<JsonNode?> Markings = OneOf(
        "225/45R17 94W XL", "225/45R17 91W", "235/45ZR17 (97Y)", "205/50R17 93V", "215/45R17 87T M+S", "225/40R18 92Y", "195R15C 106/104R",
        "45Q17", "225", "225/45R17 999W", new string('9', 61), null);

    private static readonly Gen<JsonNode?> Circles =
        OneOf("5x108", "5x114,3", "4/100", "5 x 108", "x108", "5x108x2", "0123456789012345678901", null, null);

    private static readonly Gen<JsonNode?> Seats = OneOf("cone60", "ball13", "flat", "Cone60", "", null, null);

    /// <summary>A candidate as JSON: mostly good, with now and then a text that cannot be read or a number out of range or missing.</summary>
    private static readonly Gen<JsonObject> Candidates =
        from diameter in Number(16, 18, 0.5, 7, 27)
        from width in Number(6.5, 9, 0.5, 2, 17)
        from offset in Number(10, 60, 0.1, -151, 151)
        from spacer in Number(0, 10, 1, -1, 81)
        from circle in Circles
        from bore in Number(60, 75, 0.1, 20, 260)
        from rating in Number(400, 800, 10, 40, 5001)
        from seat in Seats
        from pad in Number(9, 16, 0.5, 0, 90)
        from marking in Markings
        from mass in Number(8, 14, 0.1, 0, 151)
        from pressure in Number(180, 290, 5, 79, 501)
        select new JsonObject
        {
            ["wheel"] = Given(("rimDiameterIn", diameter), ("rimWidthIn", width), ("offsetMm", offset), ("spacerMm", spacer), ("boltCircle", circle), ("centreBoreMm", bore), ("loadRatingKg", rating), ("fastenerSeat", seat), ("padThicknessMm", pad)),
            ["tyre"] = Given(("marking", marking), ("massKg", mass), ("pressureKpa", pressure)),
        };

    [Fact]
    public async Task Single_line_full_line_and_row_tell_the_same()
    {
        int good = 0, bad = 0;
        await Candidates.Array[1, 12].SampleAsync(
            async candidates =>
            {
                string[] ids = [.. candidates.Select((_, i) => $"c{i}")];
                var body = BatchCalls.CarLine() + "\n" + string.Join('\n', candidates.Select((one, i) => BatchCalls.CandidateLine(ids[i], one)));
                var compact = await fixture.Client.LinesOf(body);
                var full = await fixture.Client.LinesOf(body, "?detail=full");
                var rows = await fixture.Client.RowsOf(Table(candidates, ids));
                Assert.Equal(candidates.Length + 1, compact.Length);
                for (var i = 0; i < candidates.Length; i++)
                {
                    var isGood = await Compare(candidates[i], compact[i], full[i], rows[i]);
                    Interlocked.Increment(ref isGood ? ref good : ref bad);
                    Assert.Equal((i + 2, ids[i]), (compact[i].GetProperty("line").GetInt32(), compact[i].GetProperty("id").GetString()));
                    Assert.Equal(($"{i + 2}", ids[i]), (rows[i][0], rows[i][1]));
                }
            },
            iter: Batches);

        // Both kinds must have come, or the property said less than it seems.
        Assert.True(good > 20 && bad > 20, $"{good} good, {bad} bad");
    }

    [Fact]
    public async Task Another_order_of_lines_gives_the_answers_in_that_order() =>
        await Candidates.Array[2, 10].SelectMany(candidates => Gen.Shuffle(Enumerable.Range(0, candidates.Length).ToArray()).Select(order => (candidates, order))).SampleAsync(
            async both =>
            {
                (var candidates, var order) = both;
                var straight = await fixture.Client.LinesOf(Body(candidates, [.. Enumerable.Range(0, candidates.Length)]));
                var shuffled = await fixture.Client.LinesOf(Body(candidates, order));
                for (var i = 0; i < order.Length; i++)
                    Assert.Equal(WithoutLine(straight[order[i]]), WithoutLine(shuffled[i]));
            },
            iter: Batches);

    private async Task<bool> Compare(JsonObject candidate, JsonElement compact, JsonElement full, string[] row)
    {
        var check = Requests.Check().With("/candidate", candidate.DeepClone());
        using var response = await fixture.Client.PostAsync(Calls.Check, check.ToJsonString());
        var single = Calls.Parse(await response.Content.ReadAsStringAsync());
        if (!response.IsSuccessStatusCode)
        {
            Assert.Equal(400, (int)response.StatusCode);
            var faults = Faults(single);
            Assert.Equal(faults, Faults(compact.GetProperty("problem")));
            Assert.Equal(faults, Faults(full.GetProperty("problem")));
            Assert.Equal(string.Join(" | ", single.GetProperty("errors").EnumerateArray().Select(fault => $"{fault.GetProperty("code")} {fault.GetProperty("pointer")}: {fault.GetProperty("message")}").Order(StringComparer.Ordinal)), string.Join(" | ", row[11].Split(" | ").Order(StringComparer.Ordinal)));
            return false;
        }

        Assert.True(JsonElement.DeepEquals(single.WithoutNext(), full.GetProperty("result")), full.ToString());
        var governing = single.GetProperty("governing").GetString();
        string[] expected =
        [
            single.GetProperty("verdict").GetString()!,
            string.Join(' ', single.GetProperty("decidedBy").Strings()),
            governing ?? "",
            governing is null ? "" : single.CheckOf(governing).GetProperty("probableMm").GetRawText(),
            governing is null ? "" : single.CheckOf(governing).GetProperty("worstCaseMm").GetRawText(),
            Having("fail"),
            Having("caution"),
            string.Join(' ', single.UnknownChecks()),
        ];
        Assert.Equal(expected, Compact(compact));
        Assert.Equal(expected, Compact(full));
        Assert.Equal(expected, row[2..10]);
        Assert.Equal(expected[1].Length > 0, row[10].Length > 0);
        Assert.Contains(row[10], single.GetProperty("summary").GetString(), StringComparison.Ordinal);
        Assert.Equal("", row[11]);
        return true;

        string Having(string status) => string.Join(' ', single.GetProperty("checks").EnumerateArray().Where(one => one.GetProperty("status").GetString() == status).Select(one => one.GetProperty("id").GetString()));
    }

    private static string[] Compact(JsonElement line) =>
    [
        line.GetProperty("verdict").GetString()!,
        string.Join(' ', line.GetProperty("decidedBy").Strings()),
        line.GetProperty("governing").GetString() ?? "",
        line.GetProperty("probableMm") is { ValueKind: JsonValueKind.Number } probable ? probable.GetRawText() : "",
        line.GetProperty("worstCaseMm") is { ValueKind: JsonValueKind.Number } worst ? worst.GetRawText() : "",
        string.Join(' ', line.GetProperty("failed").Strings()),
        string.Join(' ', line.GetProperty("cautioned").Strings()),
        string.Join(' ', line.GetProperty("unknown").Strings()),
    ];

    /// <summary>Place, code, message and limits; a line's own faults are the single call's.</summary>
    private static string[] Faults(JsonElement problem) =>
        [.. problem.GetProperty("errors").EnumerateArray().Select(fault => fault.GetRawText())];

    private static string WithoutLine(JsonElement line)
    {
        var copy = JsonObject.Create(line)!;
        copy.Remove("line");
        return copy.ToJsonString();
    }

    private static string Body(JsonObject[] candidates, int[] order) =>
        BatchCalls.CarLine() + "\n" + string.Join('\n', order.Select(i => BatchCalls.CandidateLine(i, candidates[i])));

    private static string Table(JsonObject[] candidates, string[] ids) =>
        CsvText.Row(Columns) + string.Concat(candidates.Select((one, i) => CsvText.Row(Columns.Select(column => column == "id" ? ids[i] : Cell(one, column)))));

    private static string Cell(JsonObject candidate, string column) =>
        (column.StartsWith("tyre.", StringComparison.Ordinal) ? candidate["tyre"]![column[5..]] : candidate["wheel"]![column] ?? candidate["tyre"]![column])?.ToString() ?? "";

    private static Gen<JsonNode?> OneOf(params string?[] texts) => Gen.Int[0, texts.Length - 1].Select(i => (JsonNode?)texts[i]);

    private static JsonObject Given(params (string Name, JsonNode? Value)[] members)
    {
        // An empty cell is a member left out, and so it is here: a text of no letters stays in JSON alone.
        JsonObject made = [];
        foreach ((var name, var value) in members.Where(member => member.Value is not null && member.Value.ToString().Length > 0))
            made[name] = value!.DeepClone();
        return made;
    }

    private static Gen<JsonNode?> Number(double from, double to, double step, double tooLow, double tooHigh) => Gen.Frequency<JsonNode?>(
        (30, Gen.Int[0, (int)((to - from) / step)].Select(steps => (JsonNode?)JsonValue.Create(double.Parse((from + (steps * step)).ToString("0.#", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)))),
        (1, Gen.Bool.Select(isLow => (JsonNode?)JsonValue.Create(isLow ? tooLow : tooHigh))),
        (1, Gen.Const((JsonNode?)null)));
}

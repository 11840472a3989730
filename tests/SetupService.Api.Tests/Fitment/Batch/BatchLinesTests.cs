using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>What a batch makes of each kind of line.</summary>
public sealed class BatchLinesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string Car = BatchCalls.CarLine();
    private static readonly string Good = BatchCalls.CandidateLine();

    [Fact]
    public async Task A_candidate_line_has_the_members_of_the_contract_in_order()
    {
        var lines = await fixture.Client.LinesOf($"{Car}\n{BatchCalls.CandidateLine("a")}\n");

        Assert.Equal(
            ["line", "id", "verdict", "decidedBy", "governing", "probableMm", "worstCaseMm", "failed", "cautioned", "unknown"],
            lines[0].EnumerateObject().Select(member => member.Name));
        Assert.Equal("a", lines[0].GetProperty("id").GetString());
        BatchCalls.AssertSummary(lines, answered: 1, refused: 0);
    }

    [Fact]
    public async Task Full_detail_adds_the_answer_of_the_single_call()
    {
        var lines = await fixture.Client.LinesOf($"{Car}\n{Good}\n", "?detail=full");

        var single = await fixture.Client.AnswerOf(Calls.Check, Requests.Check());
        Assert.True(JsonElement.DeepEquals(single.WithoutNext(), lines[0].GetProperty("result")), lines[0].ToString());
    }

    [Fact]
    public async Task Units_reach_the_texts_of_full_detail()
    {
        var lines = await fixture.Client.LinesOf($"{Car}\n{Good}\n", "?detail=full&units=us");

        var single = await fixture.Client.AnswerOf(Calls.Check + "?units=us", Requests.Check());
        Assert.True(JsonElement.DeepEquals(single.WithoutNext(), lines[0].GetProperty("result")), lines[0].ToString());
    }

    [Theory]
    [InlineData("\"a text of ünïcode \\u00e9 \\\" and \\\\ \"")]
    [InlineData("17")]
    [InlineData("-9007199254740993")]
    [InlineData("\"\"")]
    [InlineData("null")]
    public async Task An_id_comes_back_as_it_was(string id)
    {
        var lines = await fixture.Client.LinesOf($"{Car}\n{{\"id\":{id},\"candidate\":{OneLine(Requests.Candidate)}}}\n");

        Assert.True(JsonElement.DeepEquals(Calls.Parse(id), lines[0].GetProperty("id")), lines[0].ToString());
    }

    [Theory]
    [InlineData("1.5", "/id wrongType")]
    [InlineData("{}", "/id wrongType")]
    [InlineData("true", "/id wrongType")]
    [InlineData("\"0123456789012345678901234567890123456789012345678901234567890123456789\"", "/id tooLong")]
    public async Task Another_id_is_a_fault(string id, string fault)
    {
        var lines = await fixture.Client.LinesOf($"{Car}\n{{\"id\":{id},\"candidate\":{OneLine(Requests.Candidate)}}}\n{Good}\n");

        Assert.Equal((2, fault), BatchCalls.Told(lines[0]));
        BatchCalls.AssertSummary(lines, answered: 1, refused: 1);
    }

    [Fact]
    public async Task Bad_lines_are_answered_in_place_with_their_number_and_id()
    {
        var bad = BatchCalls.CandidateLine(7, Requests.Object(Requests.Candidate).With("/wheel/rimWidthIn", 21));
        var lines = await fixture.Client.LinesOf(string.Join('\n', Car, Good, bad, "{", "[1]", "17", "{}", Good, ""));

        Assert.Equal(
            [(2, ""), (3, "/candidate/wheel/rimWidthIn outOfRange"), (4, " syntax"), (5, " wrongType"), (6, " wrongType"), (7, "/candidate required"), (8, "")],
            lines[..^1].Select(BatchCalls.Told));
        Assert.Equal(7, lines[1].GetProperty("id").GetInt32());
        BatchCalls.AssertSummary(lines, answered: 2, refused: 5);
    }

    [Fact]
    public async Task Without_a_car_no_candidate_is_answered()
    {
        var lines = await fixture.Client.LinesOf($"{Good}\n{Car}\n{Good}\n");

        Assert.Equal([(1, " required"), (3, "")], lines[..^1].Select(BatchCalls.Told));
    }

    [Theory]
    [InlineData("{\"vehicle\":{\"topSpeedKmh\":9999},\"axle\":\"front\"}", "/vehicle/topSpeedKmh outOfRange")]
    [InlineData("{\"vehicle\":{},\"axle\":\"middle\"}", "/axle unknownWord")]
    [InlineData("{\"vehicle\":{}}", "/axle required")]
    [InlineData("{\"vehicle\":{\"front\":{\"hub\":{\"fastenerThread\":\"thick\"}}},\"axle\":\"front\"}", "/vehicle/front/hub/fastenerThread unreadable")]
    [InlineData("{\"vehicle\":{},\"axle\":\"front\",\"required\":[\"nothing\"]}", "/required/0 unknownWord")]
    [InlineData("{\"vehicle\":{},\"axle\":\"front\",\"candidate\":{}}", "/candidate unknownMember")]
    public async Task A_bad_car_fails_the_lines_after_it_until_the_next_good_one(string badCar, string fault)
    {
        var lines = await fixture.Client.LinesOf(string.Join('\n', Car, Good, badCar, Good, Good, Car, Good));

        Assert.Equal([(2, ""), (3, fault), (4, " required"), (5, " required"), (7, "")], lines[..^1].Select(BatchCalls.Told));
        BatchCalls.AssertSummary(lines, answered: 2, refused: 3);
    }

    [Fact]
    public async Task Each_car_line_holds_for_the_lines_after_it()
    {
        var tight = BatchCalls.Car().With("/vehicle/front/clearance/outboardMm", 1).ToJsonString();
        var lines = await fixture.Client.LinesOf(string.Join('\n', Car, Good, tight, Good, BatchCalls.CarLine("rear"), Good));

        var narrow = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().With("/vehicle/front/clearance/outboardMm", 1));
        var rear = await fixture.Client.AnswerOf(Calls.Check, Requests.Check().With("/axle", "rear"));
        Assert.Equal("outboardClearance", Assert.Single(lines[1].GetProperty("failed").EnumerateArray()).GetString());
        Assert.Equal(narrow.GetProperty("verdict").GetString(), lines[1].GetProperty("verdict").GetString());
        Assert.Equal(rear.GetProperty("governing").GetString(), lines[2].GetProperty("governing").GetString());
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\n \t \n")]
    [InlineData("\r\n\r\n\n")]
    public async Task Line_ends_of_either_kind_and_blank_lines_are_no_lines_to_answer(string end)
    {
        var lines = await fixture.Client.LinesOf(Car + end + Good + end + Good + end);

        var step = end.Count(letter => letter == '\n');
        Assert.Equal([(1 + step, ""), (1 + (2 * step), "")], lines[..^1].Select(BatchCalls.Told));
    }

    [Fact]
    public async Task The_last_line_needs_no_end()
    {
        var lines = await fixture.Client.LinesOf($"{Car}\n{Good}");

        BatchCalls.AssertSummary(lines, answered: 1, refused: 0);
    }

    [Fact]
    public async Task A_byte_order_mark_before_the_first_line_is_not_part_of_it()
    {
        var lines = await fixture.Client.LinesOf([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes($"{Car}\n{Good}\n")]);

        Assert.Equal([(2, "")], lines[..^1].Select(BatchCalls.Told));
    }

    [Fact]
    public async Task Bytes_that_are_no_utf8_are_a_syntax_fault_of_their_line()
    {
        byte[] broken = [.. Encoding.UTF8.GetBytes($"{Car}\n{{\"id\":\""), 0xC3, 0x28, .. Encoding.UTF8.GetBytes($"\"}}\n{Good}\n")];
        var lines = await fixture.Client.LinesOf(broken);

        Assert.Equal([(2, " syntax"), (3, "")], lines[..^1].Select(BatchCalls.Told));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n")]
    [InlineData("  \r\n")]
    public async Task A_body_without_a_line_is_refused(string body)
    {
        using StringContent content = new(body, new System.Net.Http.Headers.MediaTypeHeaderValue("application/x-ndjson"));
        using var answer = await fixture.Client.PostAsync(new Uri("/v1/fitment/batch", UriKind.Relative), content);
        var text = await answer.Content.ReadAsStringAsync();

        Assert.True(answer.StatusCode == System.Net.HttpStatusCode.BadRequest, text);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("required", (string?)JsonNode.Parse(text)!["errors"]![0]!["code"]);
    }

    [Fact]
    public async Task Only_cars_have_a_summary_of_nothing() =>
        BatchCalls.AssertSummary(await fixture.Client.LinesOf($"{Car}\n{Car}\n"), answered: 0, refused: 0);

    private static string OneLine(string json) => JsonNode.Parse(json)!.ToJsonString();
}

using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>A line over 64 KiB is reported where it stands, and the lines after it are answered.</summary>
public sealed class LongLinesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const int Cap = 65_536;

    private static readonly string Car = BatchCalls.CarLine();
    private static readonly string Good = BatchCalls.CandidateLine();

    [Theory]
    [InlineData(Cap, "")]
    [InlineData(Cap + 1, " tooLong")]
    [InlineData(2 * Cap, " tooLong")]
    [InlineData(1 << 20, " tooLong")]
    public async Task A_line_may_have_64_kib(int bytes, string fault)
    {
        var padded = Good[..^1] + new string(' ', bytes - Good.Length) + "}";
        var lines = await fixture.Client.LinesOf(string.Join('\n', Car, Good, padded, Good, ""));

        Assert.Equal([(2, ""), (3, fault), (4, "")], lines[..^1].Select(BatchCalls.Told));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_long_line_at_the_end_is_reported_once(bool ends)
    {
        var lines = await fixture.Client.LinesOf($"{Car}\n{Good}\n{new string('x', 300_000)}{(ends ? "\n" : "")}");

        Assert.Equal([(2, ""), (3, " tooLong")], lines[..^1].Select(BatchCalls.Told));
        var problem = lines[1].GetProperty("problem");
        Assert.Equal(413, problem.GetProperty("status").GetInt32());
        Assert.Equal(Cap, problem.GetProperty("errors")[0].GetProperty("limits").GetProperty("maximum").GetInt32());
        BatchCalls.AssertSummary(lines, answered: 1, refused: 1);
    }

    [Fact]
    public async Task A_car_line_that_is_too_long_is_no_car()
    {
        var car = Car[..^1] + new string(' ', Cap) + "}";
        var lines = await fixture.Client.LinesOf(string.Join('\n', car, Good, Car, Good));

        // What was skipped may have been a car, so the lines after it cannot be answered on one that was set before.
        Assert.Equal([(1, " tooLong"), (2, " required"), (4, "")], lines[..^1].Select(BatchCalls.Told));
    }

    /// <summary>A table whose second row has a cell of many bytes, as it is or between quotes, with line ends in it or without.</summary>
    [Theory]
    [InlineData(70_000, false, false)]
    [InlineData(70_000, true, false)]
    [InlineData(70_000, true, true)]
    [InlineData(1 << 20, false, false)]
    [InlineData(1 << 20, true, false)]
    [InlineData(1 << 20, true, true)]
    public async Task A_row_too_long_is_reported_and_the_rows_after_it_keep_their_lines(int bytes, bool quoted, bool withLines)
    {
        string cell = new('x', bytes);
        if (withLines)
            cell = string.Join('\n', cell.Chunk(1000).Select(chunk => new string(chunk)));
        var within = cell.Count(letter => letter == '\n');
        var table = "id,rimDiameterIn,rimWidthIn,offsetMm,marking\r\n"
            + "one,17,8,40,225/45R17 94W\r\n"
            + $"{(quoted ? "\"" : "")}{cell}{(quoted ? "\"" : "")},17,8,40,225/45R17 94W\r\n"
            + "three,17,8,40,225/45R17 94W\r\n"
            + $"{(quoted ? "\"" : "")}{cell}{(quoted ? "\"" : "")},17,8,40,225/45R17 94W\r\n"
            + "five,17,8,40,225/45R17 94W\r\n";

        var rows = await fixture.Client.RowsOf(table);

        Assert.Equal(["one", "", "three", "", "five"], rows.Select(row => row[1]));
        Assert.Equal([2, 3, 4 + within, 5 + within, 6 + (2 * within)], rows.Select(row => int.Parse(row[0])));
        Assert.All(new[] { 0, 2, 4 }, index => Assert.Equal("", rows[index][11]));
        Assert.All(new[] { 1, 3 }, index => Assert.Contains("tooLong", rows[index][11], StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_long_row_at_the_end_is_reported_once()
    {
        var rows = await fixture.Client.RowsOf($"id,rimDiameterIn,rimWidthIn,offsetMm,marking\n1,17,8,40,225/45R17 94W\n2,17,8,40,{new string('x', 200_000)}");

        Assert.Equal(2, rows.Length);
        Assert.Contains("tooLong", rows[1][11], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_car_part_too_long_is_refused_as_a_whole()
    {
        var car = BatchCalls.Car();
        using var form = BatchCalls.Form("id\n", car.ToJsonString()[..^1] + new string(' ', Cap) + "}");
        using var response = await fixture.Client.PostAsync(new Uri(Calls.BatchCsv, UriKind.Relative), form);

        await Http.Problems.Read(response, Api.Http.Problems.ProblemTypes.TooLarge);
    }
}

using System.Globalization;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>Both sides of a batch stream over a real connection.</summary>
public sealed class StreamingTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string Car = BatchCalls.CarLine();

    [Fact]
    public async Task A_line_is_answered_before_the_next_one_is_sent()
    {
        using var batch = await OpenBatch.StartAsync(fixture.Client);
        await batch.SendAsync(Car + "\n");
        for (var i = 0; i < 3; i++)
        {
            // Nothing more is sent until the answer is here.
            await batch.SendAsync(BatchCalls.CandidateLine(i) + "\n");
            var answer = Calls.Parse((await batch.ReadLineAsync())!);
            Assert.Equal(i, answer.GetProperty("id").GetInt32());
        }

        await batch.EndAsync();
        Assert.Contains("summary", await batch.ReadLineAsync(), StringComparison.Ordinal);
        Assert.Null(await batch.ReadLineAsync());
        Assert.StartsWith("HTTP/1.1 200 ", batch.Head, StringComparison.Ordinal);
        Assert.Contains("Content-Type: application/x-ndjson\n", batch.Head, StringComparison.Ordinal);
        Assert.Contains("Cache-Control: no-store\n", batch.Head, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_cut_between_two_pieces_is_one_line()
    {
        using var batch = await OpenBatch.StartAsync(fixture.Client);
        await batch.SendAsync(Car + "\n");
        foreach (var letter in BatchCalls.CandidateLine("a ü") + "\n")
            await batch.SendAsync(letter.ToString());

        Assert.Equal("a ü", Calls.Parse((await batch.ReadLineAsync())!).GetProperty("id").GetString());
        await batch.EndAsync();
        Assert.Contains("\"answeredCount\":1", await batch.ReadToEndAsync(), StringComparison.Ordinal);
    }

    /// <summary>A table is read by the block, so its first row comes back once a block is full: well before the table ends.</summary>
    [Fact]
    public async Task Rows_are_answered_while_the_table_is_still_being_sent()
    {
        const int Rows = 4000;
        using var batch = await OpenBatch.StartAsync(fixture.Client, "multipart/form-data; boundary=edge", Calls.BatchCsv);
        await batch.SendAsync(BatchCalls.OpenForm);
        await batch.SendAsync(string.Concat(Enumerable.Range(0, Rows).Select(BatchCalls.Row)));

        // Neither the end of the table nor of the body is sent yet.
        Assert.StartsWith("line,", await batch.ReadLineAsync(), StringComparison.Ordinal);
        Assert.StartsWith("2,0,", await batch.ReadLineAsync(), StringComparison.Ordinal);

        await batch.SendAsync("\r\n--edge--\r\n");
        await batch.EndAsync();
        var rest = (await batch.ReadToEndAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(Rows - 1, rest.Length);
        Assert.All(rest.Select((row, i) => (row, i)), one => Assert.StartsWith(string.Create(CultureInfo.InvariantCulture, $"{one.i + 3},{one.i + 1},"), one.row, StringComparison.Ordinal));
    }

    // The server's own cap for a body is 256 KiB; a batch has none.
    [Fact]
    public async Task A_body_over_30_mb_streams_through_in_order()
    {
        const int Lines = 120_000;
        using var batch = await OpenBatch.StartAsync(fixture.Client);
        var writing = Task.Run(Write);
        for (var i = 0; i < Lines; i++)
        {
            var line = await batch.ReadLineAsync();
            Assert.StartsWith(string.Create(CultureInfo.InvariantCulture, $"{{\"line\":{i + 2},\"id\":{i},"), line, StringComparison.Ordinal);
        }

        var summary = Calls.Parse((await batch.ReadLineAsync())!).GetProperty("summary");
        Assert.Equal(Lines, summary.GetProperty("answeredCount").GetInt64());
        Assert.True(summary.GetProperty("isComplete").GetBoolean());
        var sent = await writing;
        Assert.True(sent > 30_000_000, $"{sent} bytes");

        async Task<long> Write()
        {
            long bytes = 0;
            await batch.SendAsync(Car + "\n");
            var candidate = BatchCalls.CandidateLine("here");
            for (var i = 0; i < Lines; i += 100)
            {
                var piece = string.Concat(Enumerable.Range(i, 100).Select(id => candidate.Replace("\"here\"", id.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal) + "\n"));
                bytes += piece.Length;
                await batch.SendAsync(piece);
            }

            await batch.EndAsync();
            return bytes;
        }
    }
}

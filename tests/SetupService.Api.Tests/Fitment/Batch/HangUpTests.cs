using Microsoft.Extensions.DependencyInjection;
using Serilog;
using Serilog.Events;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>A caller that hangs up, or sends nothing more, ends a batch. Counts the lines of the whole process, so it runs by itself.</summary>
[Collection(nameof(ByItself))]
public sealed class HangUpTests
{
    private const int SilenceMs = 1000;

    [Fact]
    public async Task A_client_that_hangs_up_stops_the_work_and_is_no_failure()
    {
        CapturedLog log = new();
        await using var service = await RunningService.StartAsync(configure: builder =>
            builder.Services.AddSerilog(logger => logger.MinimumLevel.Information().WriteTo.Sink(log), preserveStaticLogger: true));
        using LineCount count = new();
        using var batch = await OpenBatch.StartAsync(service.Client);
        using CancellationTokenSource gone = new();
        var writing = Task.Run(Write);
        Assert.Contains("verdict", await batch.ReadLineAsync(), StringComparison.Ordinal);

        // Nobody reads on, so both ends fill up and the service waits for room to answer. Then the caller goes.
        await count.Settled();
        batch.HangUp();
        await gone.CancelAsync();
        var sent = await writing;
        var answered = await count.Settled();

        Assert.True(answered > 0 && answered < sent, $"{answered} of {sent} lines were answered");
        Assert.DoesNotContain(log.Events, one => one.Level >= LogEventLevel.Error);

        // The service goes on for others.
        BatchCalls.AssertSummary(await service.Client.LinesOf($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n"), answered: 1, refused: 0);

        async Task<long> Write()
        {
            long lines = 0;
            var piece = string.Concat(Enumerable.Repeat(BatchCalls.CandidateLine() + "\n", 200));
            try
            {
                await batch.SendAsync(BatchCalls.CarLine() + "\n");
                for (; !gone.IsCancellationRequested; lines += 200)
                    await batch.SendAsync(piece).WaitAsync(gone.Token);
            }
            catch (Exception ended) when (ended is IOException or OperationCanceledException or ObjectDisposedException)
            {
                // The connection is closed under it, as the test wants.
            }

            return lines;
        }
    }

    [Fact]
    public async Task A_batch_in_which_nothing_comes_is_closed_with_a_summary_that_says_so()
    {
        await using var service = await Impatient();
        using var batch = await OpenBatch.StartAsync(service.Client);
        await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n{{\"id\":\"half a li");

        var lines = (await batch.ReadToEndAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal("""{"summary":{"lineCount":1,"answeredCount":1,"refusedCount":0,"verdicts":{"passCount":0,"cautionCount":1,"failCount":0,"unknownCount":0},"isComplete":false,"reason":"No bytes came for 1 s, so the service stopped waiting. Send the lines after the last one answered again."}}""", lines[^1]);
        Assert.Equal(2, lines.Length);
    }

    [Fact]
    public async Task Slow_is_not_silent()
    {
        await using var service = await Impatient();
        using var batch = await OpenBatch.StartAsync(service.Client);
        await batch.SendAsync(BatchCalls.CarLine() + "\n");

        // A line takes longer than the service waits, but each piece of it comes in time.
        foreach (var piece in (BatchCalls.CandidateLine() + "\n").Chunk(20))
        {
            await batch.SendAsync(new string(piece));
            await Task.Delay(SilenceMs / 6);
        }

        await batch.EndAsync();
        Assert.Contains("\"answeredCount\":1,\"refusedCount\":0,\"verdicts\":{\"passCount\":0,\"cautionCount\":1,\"failCount\":0,\"unknownCount\":0},\"isComplete\":true", await batch.ReadToEndAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_table_in_which_nothing_comes_ends_with_a_row_that_says_so()
    {
        await using var service = await Impatient();
        using var batch = await OpenBatch.StartAsync(service.Client, "multipart/form-data; boundary=edge", Calls.BatchCsv);
        await batch.SendAsync(BatchCalls.OpenForm);
        await batch.SendAsync(string.Concat(Enumerable.Range(0, 4000).Select(BatchCalls.Row)));

        var rows = CsvText.Read(await batch.ReadToEndAsync());

        Assert.Equal("0", rows[1][1]);
        Assert.Equal("syntax /candidates: No bytes came for 1 s, so the service stopped waiting. Send the lines after the last one answered again. The rows up to here stand.", rows[^1][11]);
    }

    [Fact]
    public async Task A_table_whose_car_does_not_come_is_refused()
    {
        await using var service = await Impatient();
        using var batch = await OpenBatch.StartAsync(service.Client, "multipart/form-data; boundary=edge", Calls.BatchCsv);
        await batch.SendAsync("--edge\r\nContent-Disposition: form-data; name=\"car\"\r\n\r\n{\"vehicle\":");

        await Assert.ThrowsAsync<InvalidOperationException>(batch.ReadLineAsync);
        Assert.StartsWith("HTTP/1.1 408 ", batch.Head, StringComparison.Ordinal);
        Assert.Contains("Content-Type: application/problem+json\n", batch.Head, StringComparison.Ordinal);
    }

    private static Task<RunningService> Impatient() => RunningService.StartAsync(configure: builder =>
        builder.Services.AddSingleton(new BatchSettings { SilenceSeconds = SilenceMs / 1000.0 }));
}

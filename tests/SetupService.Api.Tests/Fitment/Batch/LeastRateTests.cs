using System.Diagnostics;
using System.Net.Sockets;
using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>A batch whose caller sends, or reads, more slowly than is allowed does not hold the service.</summary>
public sealed class LeastRateTests : IAsyncLifetime
{
    private RunningService _service = null!;

    public async Task InitializeAsync() => _service = await RunningService.StartAsync(
        configure: static builder => builder.Services.AddSingleton(new BatchSettings { LeastBytesPerSecond = 1_000_000, LeastRateAfterSeconds = 2 }));

    public async Task DisposeAsync() => await _service.DisposeAsync();

    [Fact]
    public async Task One_that_comes_too_slowly_is_closed_with_the_reason_and_what_was_answered_stands()
    {
        using var batch = await OpenBatch.StartAsync(_service.Client);
        await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n");
        Assert.Contains("\"line\":2,", await batch.ReadLineAsync(), StringComparison.Ordinal);

        var last = await batch.ReadLineAsync();

        Assert.Contains("\"answeredCount\":1,", last, StringComparison.Ordinal);
        Assert.Contains("\"isComplete\":false,\"reason\":\"The lines came more slowly than 1000000 bytes a second", last, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_whose_answer_is_not_read_is_cut_off()
    {
        using TcpClient caller = new() { NoDelay = true, ReceiveBufferSize = 4096 };
        await caller.ConnectAsync(_service.Client.BaseAddress!.Host, _service.Client.BaseAddress.Port);
        var lines = string.Concat(Enumerable.Repeat(BatchCalls.CandidateLine() + "\n", 20_000));
        var body = System.Text.Encoding.UTF8.GetBytes($"{BatchCalls.CarLine()}\n{lines}");
        var head = $"POST {Calls.Batch} HTTP/1.1\r\nHost: test\r\nContent-Type: {BatchCalls.Ndjson}\r\nContent-Length: {body.Length}\r\n\r\n";
        var stream = caller.GetStream();
        var since = Stopwatch.StartNew();

        // The service stops reading while its answer is not read; it closes the connection, and so the sending fails. Without that it would wait for good.
        var fault = await Assert.ThrowsAnyAsync<IOException>(async () =>
        {
            await stream.WriteAsync(System.Text.Encoding.UTF8.GetBytes(head));
            while (true)
                await stream.WriteAsync(body).AsTask().WaitAsync(TimeSpan.FromMinutes(5));
        });

        Assert.IsType<SocketException>(fault.InnerException);
        Assert.True(since.Elapsed >= TimeSpan.FromSeconds(1.5), $"It was closed after {since.Elapsed}, sooner than the settings allow.");
    }
}

using System.IO.Pipelines;
using Microsoft.Extensions.Time.Testing;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>How long a batch waits and lasts, and that it computes by turns.</summary>
public sealed class BatchFlowTests : IDisposable
{
    private static readonly BatchSettings Settings = new() { SilenceSeconds = 5, LongestSeconds = 60 };

    private readonly FakeTimeProvider _clock = new();
    private readonly WorkGate _gate;

    public BatchFlowTests() => _gate = new(new WorkSettings(), _clock);

    public void Dispose() => _gate.Dispose();

    /// <summary>A flow with limits no test meets.</summary>
    internal static BatchFlow Unlimited() => new(new BatchSettings(), new CapSettings(), new WorkGate(new WorkSettings(), TimeProvider.System), TimeProvider.System, CancellationToken.None);

    [Fact]
    public async Task It_ends_when_nothing_comes_in_time()
    {
        using var flow = Start();
        var waiting = flow.WaitAsync(Forever).AsTask();

        _clock.Advance(TimeSpan.FromSeconds(4.9));
        Assert.False(waiting.IsCompleted);
        _clock.Advance(TimeSpan.FromSeconds(0.2));

        var ended = await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        Assert.Equal("No bytes came for 5 s, so the service stopped waiting. Send the lines after the last one answered again.", flow.EndReason);
        Assert.Equal(flow.EndReason, flow.ReasonOf(ended));
    }

    [Fact]
    public async Task Each_wait_starts_anew_and_work_between_two_does_not_count()
    {
        using var flow = Start();
        for (var i = 0; i < 4; i++)
        {
            TaskCompletionSource<long> came = new();
            var waiting = flow.WaitAsync(_ => new ValueTask<long>(came.Task)).AsTask();
            _clock.Advance(TimeSpan.FromSeconds(4));
            came.SetResult(1000);
            await waiting;
            _clock.Advance(TimeSpan.FromSeconds(6));
            await flow.WaitAsync(static _ => new ValueTask<long>(1));
        }

        flow.ThrowIfEnded();
        Assert.Null(flow.EndReason);
    }

    [Fact]
    public async Task It_ends_when_over_all_waiting_too_little_came()
    {
        // 100 bytes a second: the 1,200 bytes that come allow 12 s of waiting, of which two waits take 9; what comes at once takes none.
        using BatchFlow flow = new(new BatchSettings { SilenceSeconds = 5, LeastBytesPerSecond = 100, LeastRateAfterSeconds = 10 }, new CapSettings(), _gate, _clock, CancellationToken.None);
        await flow.WaitAsync(static _ => new ValueTask<long>(400));
        for (var i = 0; i < 2; i++)
        {
            TaskCompletionSource<long> came = new();
            var one = flow.WaitAsync(_ => new ValueTask<long>(came.Task)).AsTask();
            _clock.Advance(TimeSpan.FromSeconds(4.5));
            came.SetResult(400);
            await one;
        }

        var waiting = flow.WaitAsync(Forever).AsTask();
        _clock.Advance(TimeSpan.FromSeconds(2.9));
        Assert.False(waiting.IsCompleted);
        _clock.Advance(TimeSpan.FromSeconds(0.2));

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        Assert.Equal("The lines came more slowly than 100 bytes a second, so the service stopped waiting. Send the lines after the last one answered again.", flow.EndReason);
    }

    [Fact]
    public async Task It_ends_when_its_time_is_over_although_bytes_come()
    {
        using var flow = Start();
        await flow.WaitAsync(static _ => new ValueTask<long>(1));
        _clock.Advance(TimeSpan.FromSeconds(59.9));
        flow.ThrowIfEnded();
        _clock.Advance(TimeSpan.FromSeconds(0.2));

        Assert.ThrowsAny<OperationCanceledException>(flow.ThrowIfEnded);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () => await flow.WaitAsync(static _ => new ValueTask<long>(1)));
        Assert.Equal("A batch may take 60 s, and they were over. Send the lines after the last one answered again.", flow.EndReason);
    }

    [Fact]
    public async Task A_debt_of_years_is_waited_for_until_the_batch_has_no_time_left()
    {
        WorkQuota quota = new(new QuotaSettings { SustainedUnits = 1, SustainedSeconds = 2_678_400, LinesPerUnit = 1 }, _clock);
        using BatchFlow flow = new(Settings, new CapSettings(), _gate, _clock, CancellationToken.None, quota);
        flow.ChargeLines(1000);
        var waiting = flow.WaitAsync(static _ => new ValueTask<long>(1)).AsTask();
        Assert.False(waiting.IsCompleted);

        _clock.Advance(TimeSpan.FromSeconds(61));

        await waiting;
        Assert.ThrowsAny<OperationCanceledException>(flow.ThrowIfEnded);
        Assert.StartsWith("A batch may take 60 s", flow.EndReason, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_caller_that_went_away_is_no_reason()
    {
        using CancellationTokenSource gone = new();
        using BatchFlow flow = new(Settings, new CapSettings(), _gate, _clock, gone.Token);
        var waiting = flow.WaitAsync(Forever).AsTask();

        await gone.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        Assert.Null(flow.EndReason);
    }

    [Fact]
    public async Task More_streams_than_processors_compute_by_turns()
    {
        var flows = Enumerable.Range(0, Environment.ProcessorCount).Select(_ => Start()).ToArray();
        foreach (var flow in flows)
            await flow.WaitAsync(static _ => new ValueTask<long>(1));
        using var late = Start();
        var waiting = late.WaitAsync(static _ => new ValueTask<long>(1)).AsTask();
        Assert.False(waiting.IsCompleted);

        // Whoever sends gives its turn away, and comes again after the other.
        Pipe pipe = new();
        var sending = flows[0].SendAsync(pipe.Writer, new byte[1]).AsTask();
        await waiting;
        Assert.False(sending.IsCompleted);
        late.Dispose();
        await sending;
        foreach (var flow in flows)
            flow.Dispose();
    }

    private static async ValueTask<long> Forever(CancellationToken cancellation)
    {
        await Task.Delay(Timeout.Infinite, cancellation);
        return 0;
    }

    private BatchFlow Start() => new(Settings, new CapSettings(), _gate, _clock, CancellationToken.None);
}

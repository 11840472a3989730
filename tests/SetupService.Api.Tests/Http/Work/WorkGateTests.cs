using Microsoft.Extensions.Time.Testing;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Tests.Http.Work;

/// <summary>Who computes, who waits and who is turned away.</summary>
public sealed class WorkGateTests : IDisposable
{
    private readonly FakeTimeProvider _clock = new();
    private readonly WorkGate _gate;

    public WorkGateTests() => _gate = new(new WorkSettings { Concurrency = 2, QueueLength = 1, QueueSeconds = 3 }, _clock);

    public void Dispose() => _gate.Dispose();

    [Fact]
    public async Task As_many_compute_as_the_settings_say_one_waits_and_the_next_is_turned_away()
    {
        using var first = await _gate.EnterAsync(default);
        using var second = await _gate.EnterAsync(default);
        var waiting = _gate.EnterAsync(default).AsTask();
        var refused = await _gate.EnterAsync(default);

        Assert.True(first is not null && second is not null);
        Assert.Null(refused);
        Assert.False(waiting.IsCompleted);
        Assert.Equal(1, _gate.WaitingCount);
        first!.Dispose();
        Assert.NotNull(await waiting);
        Assert.Equal(0, _gate.WaitingCount);
    }

    [Fact]
    public async Task Who_waits_too_long_is_turned_away()
    {
        using var first = await _gate.EnterAsync(default);
        using var second = await _gate.EnterAsync(default);
        var waiting = _gate.EnterAsync(default).AsTask();

        _clock.Advance(TimeSpan.FromSeconds(2.9));
        Assert.False(waiting.IsCompleted);
        _clock.Advance(TimeSpan.FromSeconds(0.2));

        Assert.Null(await waiting);
        Assert.Equal(0, _gate.WaitingCount);
    }

    [Fact]
    public async Task Who_goes_while_waiting_leaves_the_queue()
    {
        using var first = await _gate.EnterAsync(default);
        using var second = await _gate.EnterAsync(default);
        using CancellationTokenSource gone = new();
        var waiting = _gate.EnterAsync(gone.Token).AsTask();

        await gone.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        Assert.Equal(0, _gate.WaitingCount);
    }

    [Fact]
    public async Task Streams_do_not_wait_behind_calls()
    {
        using var first = await _gate.EnterAsync(default);
        using var second = await _gate.EnterAsync(default);

        using var stream = await _gate.EnterStreamAsync(default);

        Assert.NotNull(stream);
    }
}

using Microsoft.Extensions.Time.Testing;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Tests.Http.Work;

/// <summary>When the service is behind, over a queue whose time and length are the tests'.</summary>
public sealed class OverloadDetectorTests : IDisposable
{
    private readonly FakeTimeProvider _clock = new();
    private readonly QueueUnderTest _queue = new();
    private readonly OverloadDetector _detector;

    public OverloadDetectorTests() => _detector = _queue.Watch(new WorkSettings { DelaySeconds = 0.01 }, _clock);

    public void Dispose() => _detector.Dispose();

    [Fact]
    public void Who_waits_as_long_as_allowed_is_let_in_and_who_waits_longer_is_not()
    {
        _queue.Length = OverloadDetector.ShortQueue + 1;
        Assert.False(_detector.IsOverloaded());

        _clock.Advance(TimeSpan.FromMilliseconds(10));
        Assert.False(_detector.IsOverloaded());

        _clock.Advance(TimeSpan.FromMilliseconds(0.1));
        Assert.True(_detector.IsOverloaded());
    }

    [Fact]
    public void A_short_queue_is_no_overload_however_long_the_wait()
    {
        _detector.IsOverloaded();
        _clock.Advance(TimeSpan.FromSeconds(1));

        _queue.Length = OverloadDetector.ShortQueue;
        Assert.False(_detector.IsOverloaded());
        _queue.Length++;
        Assert.True(_detector.IsOverloaded());
    }

    [Fact]
    public void One_probe_waits_at_a_time_and_the_next_request_after_its_turn_sends_another()
    {
        _detector.IsOverloaded();
        _detector.IsOverloaded();
        Assert.Equal(1, _queue.Sent);

        _queue.RunProbe();
        Assert.Equal(1, _queue.Sent);
        _detector.IsOverloaded();
        Assert.Equal(2, _queue.Sent);
    }

    [Fact]
    public void What_the_last_probe_waited_holds_for_as_long_and_then_no_more()
    {
        _queue.Length = 1000;
        _detector.IsOverloaded();
        _clock.Advance(TimeSpan.FromMilliseconds(30));
        _queue.RunProbe();

        _clock.Advance(TimeSpan.FromMilliseconds(29));
        Assert.True(_detector.IsOverloaded());
        _queue.RunProbe();
        _clock.Advance(TimeSpan.FromMilliseconds(1));
        Assert.False(_detector.IsOverloaded());
    }

    [Fact]
    public async Task The_processes_own_queue_has_the_probe_run()
    {
        using OverloadDetector own = new(new WorkSettings { DelaySeconds = 600 }, TimeProvider.System);

        Assert.False(own.IsOverloaded());
        await Task.Yield();
        Assert.False(own.IsOverloaded());
    }
}

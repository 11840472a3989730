using System.Diagnostics.Metrics;

namespace SetupService.Api.Http.Work;

/// <summary>
/// Tells whether more comes than can be worked on, by how long work waits in the thread pool's queue: there a request spends its time, before its first byte is looked at.
/// The wait is that of a probe which is queued like everything else. One is sent when a request comes and none is waiting, so that a service that is asked nothing does
/// nothing. Safe for all threads.
/// </summary>
public sealed class OverloadDetector : IThreadPoolWorkItem, IDisposable
{
    /// <summary>
    /// With so few items waiting there is no overload: a thread was held up, by the collector, another program or dear calls, and what waits is soon done. So many requests of
    /// a cheap call take a processor some 4 ms. Judgement, by what was measured: docs/benchmarks.
    /// </summary>
    public const int ShortQueue = 64;

    private readonly TimeProvider _clock;
    private readonly Action<IThreadPoolWorkItem> _enqueue;
    private readonly Func<long> _countWaiting;
    private readonly TimeSpan _longestWait;
    private readonly Meter _meter = new(ServiceMeter.Name);

    // Timestamps of the clock and differences of them; 0 where no probe waits.
    private long _probeSent;
    private long _lastWait;
    private long _lastWaitHoldsUntil;

    /// <summary>Watches the process's own thread pool.</summary>
    public OverloadDetector(WorkSettings settings, TimeProvider clock)
        : this(settings, clock, static probe => ThreadPool.UnsafeQueueUserWorkItem(probe, preferLocal: false), static () => ThreadPool.PendingWorkItemCount)
    {
    }

    /// <summary>Watches another queue.</summary>
    /// <param name="settings">Have the longest wait.</param>
    /// <param name="clock">Tells the time.</param>
    /// <param name="enqueue">Puts the probe at the queue's end.</param>
    /// <param name="countWaiting">Number of items in the queue.</param>
    internal OverloadDetector(WorkSettings settings, TimeProvider clock, Action<IThreadPoolWorkItem> enqueue, Func<long> countWaiting)
    {
        ArgumentNullException.ThrowIfNull(settings);
        (_clock, _enqueue, _countWaiting) = (clock, enqueue, countWaiting);
        _longestWait = TimeSpan.FromSeconds(settings.DelaySeconds);
        _meter.CreateObservableGauge("setup.work.delay", () => FindWait(clock.GetTimestamp()).TotalSeconds, unit: "s", description: "How long work waits for a thread.");
    }

    /// <summary>Looks at the queue for a request that has come out of it. True where the service is behind, and the request should be refused.</summary>
    public bool IsOverloaded()
    {
        var now = _clock.GetTimestamp();
        if (Volatile.Read(ref _probeSent) == 0 && Interlocked.CompareExchange(ref _probeSent, now, 0) == 0)
            _enqueue(this);
        return FindWait(now) > _longestWait && _countWaiting() > ShortQueue;
    }

    /// <summary>The probe's turn has come.</summary>
    void IThreadPoolWorkItem.Execute()
    {
        // What one waited is taken for what the next will wait, for as long.
        var now = _clock.GetTimestamp();
        var wait = now - Volatile.Read(ref _probeSent);
        Volatile.Write(ref _lastWait, wait);
        Volatile.Write(ref _lastWaitHoldsUntil, now + wait);
        Volatile.Write(ref _probeSent, 0);
    }

    /// <inheritdoc />
    public void Dispose() => _meter.Dispose();

    /// <summary>The wait of the probe that waits now, or, for a while, of the last one, whichever is longer.</summary>
    private TimeSpan FindWait(long now)
    {
        var sent = Volatile.Read(ref _probeSent);
        var waiting = sent == 0 ? 0 : now - sent;
        var last = now <= Volatile.Read(ref _lastWaitHoldsUntil) ? Volatile.Read(ref _lastWait) : 0;
        return _clock.GetElapsedTime(0, Math.Max(waiting, last));
    }
}

using System.Diagnostics.Metrics;
using System.Threading.RateLimiting;

namespace SetupService.Api.Http.Work;

/// <summary>
/// Lets so many calls of solvers compute at once as the settings say, has a few others wait for their turn, and turns away the rest. Streams take turns of
/// their own, a block of lines at a time: a stream never waits behind a solver, nor a solver behind a stream.
/// </summary>
public sealed class WorkGate : IDisposable
{
    // Beside computing calls the pool's threads answer health and tables, and see that callers go and deadlines pass: they must not wait until the pool grows by itself.
    private const int ThreadsBesideCalls = 4;

    private readonly ConcurrencyLimiter _calls;
    private readonly ConcurrencyLimiter _blocks;
    private readonly TimeSpan _longestWait;
    private readonly TimeProvider _clock;
    private readonly Meter _meter = new(ServiceMeter.Name);

    /// <summary>A gate that lets through what the settings say.</summary>
    public WorkGate(WorkSettings settings, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(settings);
        _clock = clock;
        _longestWait = TimeSpan.FromSeconds(settings.QueueSeconds);
        RetryAfterSeconds = settings.RetryAfterSeconds;
        _calls = Limiter(settings.ConcurrencyOrProcessors, settings.QueueLength);
        _blocks = Limiter(Environment.ProcessorCount, int.MaxValue);
        _meter.CreateObservableGauge("setup.work.waiting", () => WaitingCount, description: "Calls of solvers that wait for their turn.");
        _meter.CreateObservableGauge("setup.work.computing", () => settings.ConcurrencyOrProcessors - (_calls.GetStatistics()?.CurrentAvailablePermits ?? 0), description: "Calls of solvers being computed.");
        ThreadPool.GetMinThreads(out var workers, out var ports);
        ThreadPool.SetMinThreads(Math.Max(workers, settings.ConcurrencyOrProcessors + Environment.ProcessorCount + ThreadsBesideCalls), ports);
    }

    /// <summary>Seconds after which one who was turned away may come again.</summary>
    public int RetryAfterSeconds { get; }

    /// <summary>Number of calls that wait for their turn.</summary>
    public long WaitingCount => _calls.GetStatistics()?.CurrentQueuedCount ?? 0;

    /// <summary>A turn of a call, to be disposed at its end; null where too many wait or its own wait was too long.</summary>
    /// <exception cref="OperationCanceledException">The caller went away.</exception>
    public ValueTask<IDisposable?> EnterAsync(CancellationToken gone)
    {
        var turn = _calls.AttemptAcquire();
        return turn.IsAcquired ? new(turn) : WaitAsync(gone);
    }

    /// <summary>The next turn of a stream, for a block of its lines.</summary>
    /// <exception cref="OperationCanceledException">The stream ended.</exception>
    public async ValueTask<IDisposable> EnterStreamAsync(CancellationToken ended)
    {
        var turn = _blocks.AttemptAcquire();
        return turn.IsAcquired ? turn : await _blocks.AcquireAsync(cancellationToken: ended).ConfigureAwait(false);
    }

    /// <inheritdoc />
    public void Dispose()
    {
        _meter.Dispose();
        _calls.Dispose();
        _blocks.Dispose();
    }

    private async ValueTask<IDisposable?> WaitAsync(CancellationToken gone)
    {
        using CancellationTokenSource tooLong = new(_longestWait, _clock);
        using var either = CancellationTokenSource.CreateLinkedTokenSource(tooLong.Token, gone);
        try
        {
            var turn = await _calls.AcquireAsync(cancellationToken: either.Token).ConfigureAwait(false);
            return turn.IsAcquired ? turn : null;
        }
        catch (OperationCanceledException) when (!gone.IsCancellationRequested)
        {
            return null;
        }
    }

    private static ConcurrencyLimiter Limiter(int atOnce, int waiting) => new(new ConcurrencyLimiterOptions
    {
        PermitLimit = atOnce,
        QueueLimit = waiting,
        QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
    });
}

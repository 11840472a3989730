using System.IO.Pipelines;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;
using SetupService.Api.Http;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// Paces a batch: bounds each wait for the caller's next bytes and the whole batch in time, and has it compute by turns, one block of lines after the other, with the
/// turn given back whenever it waits or sends. A caller that goes away ends it too.
/// </summary>
internal sealed class BatchFlow : IDisposable
{
    private static readonly TimeSpan LongestGoodbye = TimeSpan.FromSeconds(1);

    // A timer takes no more than some weeks, and a debt may be longer.
    private static readonly TimeSpan LongestDelay = TimeSpan.FromDays(1);

    private readonly BatchSettings _settings;
    private readonly WorkGate _gate;
    private readonly CancellationToken _gone;
    private readonly TimeProvider _clock;
    private readonly WorkQuota? _quota;
    private readonly CancellationTokenSource _end;
    private readonly ITimer _wholeTime;
    private readonly ITimer _silence;
    private readonly ITimer _goodbye;
    private readonly Lock _goodbyeLock = new();
    private readonly TimeSpan _longestSilence;
    private IDisposable? _turn;
    private Action? _cutOff;
    private TimeSpan _waited;
    private long _cameBytes;
    private CancellationTokenRegistration _drained;
    private volatile string? _reason;

    /// <summary>Begins a batch: its time runs from now.</summary>
    /// <param name="settings">The limits of time and rate.</param>
    /// <param name="caps">The most that is read at once.</param>
    /// <param name="gate">Gives turns.</param>
    /// <param name="clock">Tells the time.</param>
    /// <param name="gone">Cancelled when the caller goes away.</param>
    /// <param name="quota">What the caller may ask for; null where nothing is limited.</param>
    public BatchFlow(BatchSettings settings, CapSettings caps, WorkGate gate, TimeProvider clock, CancellationToken gone, WorkQuota? quota = null)
    {
        (_settings, Caps, _gate, _gone, _clock, _quota) = (settings, caps, gate, gone, clock, quota);
        _longestSilence = TimeSpan.FromSeconds(settings.SilenceSeconds);
        _end = CancellationTokenSource.CreateLinkedTokenSource(gone);
        _wholeTime = clock.CreateTimer(
            static state => ((BatchFlow)state!).End(static settings => BatchProblems.TookTooLong(settings.LongestSeconds)), this, TimeSpan.FromSeconds(settings.LongestSeconds), Timeout.InfiniteTimeSpan);
        _silence = clock.CreateTimer(static state => ((BatchFlow)state!).EndWait(), this, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        _goodbye = clock.CreateTimer(static state => ((BatchFlow)state!).CutOff(), this, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }

    /// <summary>The most that is read of its caller at once.</summary>
    public CapSettings Caps { get; }

    /// <summary>Why the batch was ended by the service; null where it was not, and where the caller went away.</summary>
    public string? EndReason => _gone.IsCancellationRequested ? null : _reason;

    /// <summary>Prepares a connection for streams of any length, and begins.</summary>
    public static BatchFlow Start(HttpContext context, string mediaType)
    {
        var services = context.RequestServices;
        var settings = services.GetRequiredService<BatchSettings>();

        // The line limit bounds memory, the least rates and the limits of time bound slow callers.
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = null;
        if (context.Features.Get<IHttpMinRequestBodyDataRateFeature>() is { } incoming)
        {
            // The flow holds the caller to the least rate itself: over HTTP/2 the server lets none but its own be set.
            incoming.MinDataRate = null;
        }

        // Over HTTP/2 the server has its own for the answers of a connection.
        if (context.Features.Get<IHttpMinResponseDataRateFeature>() is { } outgoing)
            outgoing.MinDataRate = new(settings.LeastBytesPerSecond, TimeSpan.FromSeconds(settings.LeastRateAfterSeconds));
        context.Response.ContentType = mediaType;
        context.Response.Headers.CacheControl = "no-store";
        BatchFlow flow = new(settings, services.GetRequiredService<CapSettings>(), services.GetRequiredService<WorkGate>(), services.GetRequiredService<TimeProvider>(), context.RequestAborted, Caller.From(context).Quota);
        flow._cutOff = context.Abort;
        context.Response.OnCompleted(() => flow.LetGoAsync(context));
        flow._drained = services.GetRequiredService<ShutdownSignal>().Drained.UnsafeRegister(static one => ((BatchFlow)one!).End(static _ => BatchProblems.ShuttingDown()), flow);
        return flow;
    }

    /// <summary>Gives the turn back, waits for the caller, and takes a turn again.</summary>
    /// <param name="wait">Waits, and tells how many bytes came.</param>
    /// <exception cref="OperationCanceledException">The batch is at its end: <see cref="EndReason"/> says why, or the caller went away.</exception>
    public async ValueTask WaitAsync(Func<CancellationToken, ValueTask<long>> wait)
    {
        _end.Token.ThrowIfCancellationRequested();
        GiveTurnBack();
        var waiting = wait(_end.Token);
        if (waiting.IsCompletedSuccessfully)
            _cameBytes += waiting.Result;
        else
            await WaitLongerAsync(waiting).ConfigureAwait(false);

        await PayAsync().ConfigureAwait(false);
        _turn = await _gate.EnterStreamAsync(_end.Token).ConfigureAwait(false);
    }

    /// <summary>Gives the turn back, sends bytes, and takes a turn again.</summary>
    public async ValueTask SendAsync(PipeWriter to, ReadOnlyMemory<byte> bytes)
    {
        GiveTurnBack();
        await to.WriteAsync(bytes, _gone).ConfigureAwait(false);
        await PayAsync().ConfigureAwait(false);
        if (!_end.IsCancellationRequested)
            _turn = await _gate.EnterStreamAsync(_gone).ConfigureAwait(false);
    }

    /// <summary>Charges lines to the caller: a batch that costs more than the caller may ask for waits with the next block.</summary>
    public void ChargeLines(long lines) => _quota?.ChargeLines(lines);

    /// <summary>Charges to the caller what is as much work as a request of its own: a car, a line that is refused, a line told in more than its verdict.</summary>
    public void ChargeRequests(long requests) => _quota?.ChargeRequests(requests);

    /// <summary>Charges pairs of a catalogue to the caller.</summary>
    public void ChargePairs(long pairs) => _quota?.ChargePairs(pairs);

    /// <summary>Throws where the caller has gone or the batch is at its end.</summary>
    public void ThrowIfEnded() => _end.Token.ThrowIfCancellationRequested();

    public void Dispose()
    {
        // A connection whose request is over is another request's.
        lock (_goodbyeLock)
            _cutOff = null;
        _goodbye.Dispose();
        _drained.Dispose();
        _wholeTime.Dispose();
        _silence.Dispose();
        GiveTurnBack();
        _end.Dispose();
    }

    /// <summary>The reason to tell in the last line for an exception that ended the reading; null where the caller went away.</summary>
    public string? ReasonOf(Exception exception) => exception switch
    {
        OperationCanceledException => EndReason,
        _ => BrokenBody.Message,
    };

    /// <summary>
    /// Closes the connection of a batch that the service has ended, once its caller has read the last line and closed it, or soon after: the server would wait for what
    /// else is sent, and a service that ends has no time for that.
    /// </summary>
    private async Task LetGoAsync(HttpContext context)
    {
        if (EndReason is null)
            return;
        await Task.Delay(LongestGoodbye, _clock, _gone).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        context.Abort();
    }

    private async ValueTask WaitLongerAsync(ValueTask<long> waiting)
    {
        var since = _clock.GetTimestamp();
        _silence.Change(LongestWait(), Timeout.InfiniteTimeSpan);
        _cameBytes += await waiting.ConfigureAwait(false);
        _silence.Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        _waited += _clock.GetElapsedTime(since);
    }

    /// <summary>How long the next wait may last.</summary>
    private TimeSpan LongestWait()
    {
        var left = LeftByRate();
        return left < _longestSilence ? left : _longestSilence;
    }

    /// <summary>How long may still be waited until what came, over all waiting, has come more slowly than it may.</summary>
    private TimeSpan LeftByRate()
    {
        var seconds = Math.Max(_settings.LeastRateAfterSeconds, (double)_cameBytes / _settings.LeastBytesPerSecond) - _waited.TotalSeconds;
        return TimeSpan.FromSeconds(Math.Max(0, seconds));
    }

    /// <summary>Ends a wait that has lasted too long.</summary>
    private void EndWait()
    {
        if (LeftByRate() < _longestSilence)
            End(static settings => BatchProblems.CameTooSlowly(settings.LeastBytesPerSecond));
        else
            End(static settings => BatchProblems.NothingCame(settings.SilenceSeconds));
    }

    /// <summary>Waits until the caller has no debt, or the batch is at its end.</summary>
    private async ValueTask PayAsync()
    {
        while (_quota?.UntilPaid() is { Ticks: > 0 } debt && !_end.IsCancellationRequested)
            await Task.Delay(debt < LongestDelay ? debt : LongestDelay, _clock, _end.Token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    private void GiveTurnBack()
    {
        _turn?.Dispose();
        _turn = null;
    }

    private void End(Func<BatchSettings, string> reason)
    {
        _reason ??= reason(_settings);
        try
        {
            _goodbye.Change(TimeSpan.FromSeconds(_settings.LeastRateAfterSeconds), Timeout.InfiniteTimeSpan);
            _end.Cancel();
        }
        catch (ObjectDisposedException)
        {
            // The batch ended by itself at the same time.
        }
    }

    /// <summary>Cuts off a caller who, when the batch has ended, does not read what it is still told.</summary>
    private void CutOff()
    {
        lock (_goodbyeLock)
            _cutOff?.Invoke();
    }
}

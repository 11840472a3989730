namespace SetupService.Api.Fitment.Batch;

/// <summary>Waits for a caller's next bytes, but not forever, and not for a caller that has gone away.</summary>
internal sealed class BatchPatience(TimeSpan patience, CancellationToken aborted) : IDisposable
{
    private readonly CancellationTokenSource _source = CancellationTokenSource.CreateLinkedTokenSource(aborted);

    /// <summary>Whether the wait ended because nothing came in time.</summary>
    public bool IsExhausted => _source.IsCancellationRequested && !aborted.IsCancellationRequested;

    public async ValueTask WaitAsync(Func<CancellationToken, ValueTask> wait)
    {
        var waiting = wait(_source.Token);
        if (!waiting.IsCompletedSuccessfully)
        {
            _source.CancelAfter(patience);
            await waiting.ConfigureAwait(false);
            _source.CancelAfter(Timeout.InfiniteTimeSpan);
        }
    }

    public void Dispose() => _source.Dispose();
}

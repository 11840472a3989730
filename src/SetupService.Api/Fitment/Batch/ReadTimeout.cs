using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;

namespace SetupService.Api.Fitment.Batch;

/// <summary>Limits the time the service waits for a caller's next bytes; a caller that goes away ends the wait too.</summary>
internal sealed class ReadTimeout(TimeSpan limit, CancellationToken aborted) : IDisposable
{
    private readonly CancellationTokenSource _source = CancellationTokenSource.CreateLinkedTokenSource(aborted);

    /// <summary>True when the wait ended because nothing came in time; false when the caller went away.</summary>
    public bool IsExpired => _source.IsCancellationRequested && !aborted.IsCancellationRequested;

    public async ValueTask WaitAsync(Func<CancellationToken, ValueTask> wait)
    {
        var waiting = wait(_source.Token);
        if (!waiting.IsCompletedSuccessfully)
        {
            _source.CancelAfter(limit);
            await waiting.ConfigureAwait(false);
            _source.CancelAfter(Timeout.InfiniteTimeSpan);
        }
    }

    public void Dispose() => _source.Dispose();
}

/// <summary>Prepares a connection for streams of any length.</summary>
internal static class BatchTransport
{
    public static void Prepare(HttpContext context, string mediaType)
    {
        // The line limit bounds memory and ReadTimeout bounds slow callers, so the server's own limits are lifted.
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = null;
        if (context.Features.Get<IHttpMinRequestBodyDataRateFeature>() is { } rate)
            rate.MinDataRate = null;
        context.Response.ContentType = mediaType;
        context.Response.Headers.CacheControl = "no-store";
    }
}

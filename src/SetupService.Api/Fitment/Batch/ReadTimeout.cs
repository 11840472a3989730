using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;

namespace SetupService.Api.Fitment.Batch;

/// <summary>Waits for a caller's next bytes, but not forever, and not for a caller that has gone away.</summary>
internal sealed class ReadTimeout(TimeSpan limit, CancellationToken aborted) : IDisposable
{
    private readonly CancellationTokenSource _source = CancellationTokenSource.CreateLinkedTokenSource(aborted);

    /// <summary>Whether the wait ended because nothing came in time.</summary>
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

/// <summary>Sets a connection up for streams of any length.</summary>
internal static class BatchTransport
{
    public static void Prepare(HttpContext context, string mediaType)
    {
        // Memory is bounded by the line, not by the body, and slow callers by ReadTimeout, so the server's own bounds go.
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = null;
        if (context.Features.Get<IHttpMinRequestBodyDataRateFeature>() is { } rate)
            rate.MinDataRate = null;
        context.Response.ContentType = mediaType;
        context.Response.Headers.CacheControl = "no-store";
    }
}

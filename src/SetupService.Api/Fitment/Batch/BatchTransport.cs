using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Server.Kestrel.Core.Features;

namespace SetupService.Api.Fitment.Batch;

/// <summary>Sets a connection up for streams of any length.</summary>
internal static class BatchTransport
{
    public static void Prepare(HttpContext context, string mediaType)
    {
        // Memory is bounded by the line, not by the body, and slow callers by BatchPatience, so the server's own bounds go.
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = null;
        if (context.Features.Get<IHttpMinRequestBodyDataRateFeature>() is { } rate)
            rate.MinDataRate = null;
        context.Response.ContentType = mediaType;
        context.Response.Headers.CacheControl = "no-store";
    }
}

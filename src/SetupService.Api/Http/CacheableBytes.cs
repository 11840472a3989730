using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace SetupService.Api.Http;

/// <summary>Bytes that never change while the service runs, sent with an entity tag, or as 304 to who has them already.</summary>
/// <param name="contentType">The value of Content-Type.</param>
/// <param name="bytes">The bytes.</param>
public sealed class CacheableBytes(string contentType, ReadOnlyMemory<byte> bytes) : IResult
{
    private readonly EntityTagHeaderValue _tag = new($"\"{Convert.ToHexStringLower(SHA256.HashData(bytes.Span).AsSpan(0, 8))}\"");

    /// <summary>The bytes.</summary>
    public ReadOnlyMemory<byte> Bytes => bytes;

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var response = httpContext.Response;
        response.Headers.ETag = _tag.ToString();
        response.Headers.CacheControl = "public, max-age=3600";
        if (IsKnown(httpContext.Request))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }

        response.ContentType = contentType;
        response.ContentLength = bytes.Length;
        await response.BodyWriter.WriteAsync(bytes, httpContext.RequestAborted).ConfigureAwait(false);
    }

    // If-None-Match compares weakly (RFC 9110, section 13.1.2).
    private bool IsKnown(HttpRequest request) =>
        EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch.ToArray()!, out var tags)
        && tags.Any(known => known.Tag == "*" || known.Compare(_tag, useStrongComparison: false));
}

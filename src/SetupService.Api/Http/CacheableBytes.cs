using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Net.Http.Headers;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Http;

/// <summary>
/// Bytes that the same address always answers with: sent with a strong entity tag made of their content, or as 304 to who has
/// them already. Each coding (Brotli, gzip, none) has a tag of its own, because its bytes differ (RFC 9110, section 8.8.3.3);
/// what is kept is compressed once.
/// </summary>
/// <param name="contentType">The value of Content-Type.</param>
/// <param name="bytes">The bytes.</param>
public sealed class CacheableBytes(string contentType, ReadOnlyMemory<byte> bytes) : IResult
{
    private const int DigestBytes = 8;
    private const string Brotli = "br";

    private readonly string _digest = Convert.ToHexStringLower(SHA256.HashData(bytes.Span).AsSpan(0, DigestBytes));
    private byte[]? _brotli;
    private byte[]? _gzip;

    /// <summary>The bytes.</summary>
    public ReadOnlyMemory<byte> Bytes => bytes;

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var response = httpContext.Response;
        var compression = Coding(httpContext);
        EntityTagHeaderValue tag = new(compression is null ? $"\"{_digest}\"" : $"\"{_digest}-{compression.EncodingName}\"");
        response.Headers.ETag = tag.ToString();
        response.Headers.CacheControl = CacheLifetime.For(httpContext);
        response.Headers.Append(HeaderNames.Vary, HeaderNames.AcceptEncoding);
        if (IsKnown(httpContext.Request, tag))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }

        var sent = bytes;
        if (compression is not null)
        {
            response.Headers.ContentEncoding = compression.EncodingName;
            sent = compression.EncodingName == Brotli ? _brotli ??= Compress(Brotli, bytes) : _gzip ??= Compress(compression.EncodingName, bytes);
        }

        response.ContentType = contentType;
        response.ContentLength = sent.Length;
        await response.BodyWriter.WriteAsync(sent, httpContext.RequestAborted).ConfigureAwait(false);
    }

    /// <summary>The coding the caller likes best; null where it accepts none, or there is too little to compress.</summary>
    private ICompressionProvider? Coding(HttpContext context)
    {
        if (bytes.Length < AnswerCompression.SmallestBytes)
            return null;
        var codings = context.RequestServices.GetRequiredService<IResponseCompressionProvider>();
        return codings.CheckRequestAcceptsCompression(context) ? codings.GetCompressionProvider(context) : null;
    }

    // Kept on both sides, so it may take longer than an answer that is computed each time. Two callers at once may both compress; either result serves.
    private static byte[] Compress(string coding, ReadOnlyMemory<byte> bytes)
    {
        using MemoryStream whole = new();
        using (Stream stream = coding == Brotli ? new BrotliStream(whole, CompressionLevel.Optimal, leaveOpen: true) : new GZipStream(whole, CompressionLevel.Optimal, leaveOpen: true))
            stream.Write(bytes.Span);
        return whole.ToArray();
    }

    // If-None-Match compares weakly (RFC 9110, section 13.1.2).
    private static bool IsKnown(HttpRequest request, EntityTagHeaderValue tag) =>
        EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch.ToArray()!, out var tags)
        && tags.Any(known => known.Tag == "*" || known.Compare(tag, useStrongComparison: false));
}

/// <summary>
/// Who may keep an answer that depends on its address alone, and for how long (RFC 9111, section 5.2.2): everybody on the way for an hour; but what a key has opened only who
/// sent the key, or a cache would answer those who have none, and what a signature has opened no longer than the signature holds.
/// </summary>
internal static class CacheLifetime
{
    private const long LongestSeconds = 3600;

    private const string OfEverybody = "public, max-age=3600";
    private const string OfOneCaller = "private, max-age=3600";

    /// <summary>The value of Cache-Control.</summary>
    public static string For(HttpContext context)
    {
        var request = context.Request;
        if (request.Headers.ContainsKey(Caller.KeyHeader))
            return OfOneCaller;
        return request.Query.ContainsKey(SignedAddress.Signature.Name) && long.TryParse(request.Query[SignedAddress.Expires.Name], NumberStyles.None, CultureInfo.InvariantCulture, out var expires)
            ? string.Create(CultureInfo.InvariantCulture, $"public, max-age={Math.Clamp(expires - NowOf(context), 0, LongestSeconds)}")
            : OfEverybody;
    }

    private static long NowOf(HttpContext context) => context.RequestServices.GetRequiredService<TimeProvider>().GetUtcNow().ToUnixTimeSeconds();
}

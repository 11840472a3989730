using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.Options;

namespace SetupService.Api.Http;

/// <summary>
/// Compresses answers for callers that accept Brotli or gzip (RFC 9110, section 12.5.3), streams too: each flush of a stream
/// leaves as a block of its own, so that nothing waits for it. What is small, or compressed already, goes as it is.
/// </summary>
internal sealed class AnswerCompression(IServiceProvider services, IOptions<ResponseCompressionOptions> options)
    : ResponseCompressionProvider(services, options)
{
    /// <summary>What fits one packet of a network arrives no sooner compressed (a payload of 1,500 bytes less headers; common practice, no source).</summary>
    public const int SmallestBytes = 1200;

    private static readonly string[] MediaTypes =
    [
        "application/json", "application/problem+json", "application/x-ndjson", "application/yaml", "image/svg+xml",
        "text/csv", "text/html", "text/markdown", "text/css", "text/javascript", "application/javascript",
    ];

    /// <summary>Declares the compression with its codings, the best first.</summary>
    public static void AddTo(IServiceCollection services)
    {
        services.AddResponseCompression(static compression =>
        {
            // Guessing a secret from the length of compressed answers needs a secret in them; no answer here has one.
            compression.EnableForHttps = true;
            compression.MimeTypes = MediaTypes;
            compression.Providers.Add<BrotliCompressionProvider>();
            compression.Providers.Add<GzipCompressionProvider>();
        });
        services.Configure<BrotliCompressionProviderOptions>(static brotli => brotli.Level = CompressionLevel.Fastest);
        services.Configure<GzipCompressionProviderOptions>(static gzip => gzip.Level = CompressionLevel.Fastest);
        services.AddSingleton<IResponseCompressionProvider, AnswerCompression>();
    }

    /// <inheritdoc />
    public override bool ShouldCompressResponse(HttpContext context) =>
        context.Response.Headers.ContentEncoding.Count == 0
        && context.Response.ContentLength is null or >= SmallestBytes
        && base.ShouldCompressResponse(context);
}

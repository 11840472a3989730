using System.Reflection;
using System.Text;
using Microsoft.AspNetCore.Http.Metadata;
using SetupService.Api.Http;

namespace SetupService.Api.Drawings;

/// <summary>A picture: 200 with SVG, not to be stored by caches.</summary>
/// <param name="svg">The whole document.</param>
public sealed class SvgAnswer(string svg) : IResult, IEndpointMetadataProvider
{
    /// <summary>The media type of a picture.</summary>
    public const string MediaType = "image/svg+xml";

    /// <summary>The value of Content-Type.</summary>
    internal const string ContentType = MediaType + "; charset=utf-8";

    private static readonly ProducedMedia Svg = new(MediaType);

    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(string), [Svg.Type]));
        builder.Metadata.Add(Svg);
    }

    /// <inheritdoc />
    public Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var (response, bytes) = (httpContext.Response, Encoding.UTF8.GetBytes(svg));
        response.ContentType = ContentType;
        response.ContentLength = bytes.Length;
        response.Headers.CacheControl = "no-store";
        return response.BodyWriter.WriteAsync(bytes, httpContext.RequestAborted).AsTask();
    }
}

/// <summary>A picture that depends on its address alone: 200 with SVG and an entity tag, or 304 to who has it already.</summary>
/// <param name="svg">The whole document.</param>
public sealed class CacheableSvg(string svg) : IResult, IEndpointMetadataProvider
{
    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        SvgAnswer.PopulateMetadata(method, builder);
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status304NotModified));
    }

    /// <inheritdoc />
    public Task ExecuteAsync(HttpContext httpContext) => new CacheableBytes(SvgAnswer.ContentType, Encoding.UTF8.GetBytes(svg)).ExecuteAsync(httpContext);
}

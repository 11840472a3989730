using System.Reflection;
using Microsoft.AspNetCore.Http.Metadata;
using SetupService.Api.Http;

namespace SetupService.Api.Drawings;

/// <summary>A picture: 200 with SVG, not to be stored by caches.</summary>
/// <param name="svg">The whole document.</param>
public sealed class SvgAnswer(string svg) : IResult, IEndpointMetadataProvider
{
    /// <summary>The media type of a picture.</summary>
    public const string MediaType = "image/svg+xml";

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
        httpContext.Response.ContentType = MediaType + "; charset=utf-8";
        httpContext.Response.Headers.CacheControl = "no-store";
        return httpContext.Response.WriteAsync(svg, httpContext.RequestAborted);
    }
}

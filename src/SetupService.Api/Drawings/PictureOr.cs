using System.Reflection;
using Microsoft.AspNetCore.Http.Metadata;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Drawings;

/// <summary>The answer of a call that has two forms: a document as JSON, or a picture of it as SVG.</summary>
/// <typeparam name="T">The answer document.</typeparam>
public sealed class PictureOr<T> : IResult, IEndpointMetadataProvider
    where T : class
{
    private readonly IResult _chosen;

    /// <summary>The document.</summary>
    public PictureOr(T answer) => _chosen = new Answer<T>(answer);

    /// <summary>The picture.</summary>
    public PictureOr(SvgAnswer picture) => _chosen = picture;

    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Metadata.Add(builder.ApplicationServices.GetRequiredService<JsonContract>().TypeOf<T>());
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(T), [ProducedMedia.Json.Type, SvgAnswer.MediaType]));
        builder.Metadata.Add(ProducedMedia.Json);
        builder.Metadata.Add(new ProducedMedia(SvgAnswer.MediaType));
    }

    /// <inheritdoc />
    public Task ExecuteAsync(HttpContext httpContext) => _chosen.ExecuteAsync(httpContext);
}

using System.Reflection;
using System.Text.Json.Serialization.Metadata;
using Microsoft.AspNetCore.Http.Metadata;
using SetupService.Api.Http.Documents;

namespace SetupService.Api.Http;

/// <summary>
/// The answer of a GET that depends on its address alone, as JSON: written to bytes once, sent with an entity tag, and answered
/// with 304 to a caller who has it already. A table that never changes is one instance in a static field.
/// </summary>
/// <typeparam name="T">The answer document.</typeparam>
/// <param name="make">Makes the answer; called at most once.</param>
public sealed class CacheableAnswer<T>(Func<T> make) : IResult, IEndpointMetadataProvider
    where T : class
{
    private readonly Lock _making = new();
    private volatile CacheableBytes? _written;

    /// <summary>An answer worked for one request.</summary>
    public CacheableAnswer(T value)
        : this(() => value)
    {
    }

    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Metadata.Add(builder.ApplicationServices.GetRequiredService<JsonContract>().TypeOf<T>());
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(T), [ProducedMedia.Json.Type]));
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status304NotModified));
        builder.Metadata.Add(ProducedMedia.Json);
    }

    /// <inheritdoc />
    public Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var written = _written ?? Write(httpContext.GetEndpoint()!.Metadata.GetRequiredMetadata<JsonTypeInfo<T>>());
        return written.ExecuteAsync(httpContext);
    }

    private CacheableBytes Write(JsonTypeInfo<T> type)
    {
        lock (_making)
        {
            return _written ??= new CacheableBytes(ProducedMedia.JsonUtf8, JsonOutput.ToBytes(make(), type));
        }
    }
}

using System.Reflection;
using System.Text.Json.Serialization.Metadata;
using Microsoft.AspNetCore.Http.Metadata;
using SetupService.Api.Http.Documents;

namespace SetupService.Api.Http;

/// <summary>A computed answer: 200 with the value as JSON, not to be stored by caches.</summary>
/// <typeparam name="T">The answer document.</typeparam>
/// <param name="value">The value.</param>
public sealed class Answer<T>(T value) : IResult, IValueHttpResult<T>, IEndpointMetadataProvider
    where T : class
{
    /// <summary>The value sent.</summary>
    public T Value { get; } = value;

    T? IValueHttpResult<T>.Value => Value;

    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Metadata.Add(builder.ApplicationServices.GetRequiredService<JsonContract>().TypeOf<T>());
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(T), [ProducedMedia.Json.Type]));
        builder.Metadata.Add(ProducedMedia.Json);
    }

    /// <inheritdoc />
    public Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var type = httpContext.GetEndpoint()?.Metadata.GetMetadata<JsonTypeInfo<T>>()
            ?? throw new InvalidOperationException($"The endpoint does not declare {typeof(T).Name} as its answer.");
        var response = httpContext.Response;
        response.ContentType = ProducedMedia.JsonUtf8;
        response.Headers.CacheControl = "no-store";
        return JsonOutput.WriteAsync(response, Value, type);
    }
}

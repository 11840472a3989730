using System.Reflection;
using System.Text.Json.Serialization.Metadata;
using Microsoft.AspNetCore.Http.Metadata;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Http;

/// <summary>
/// A table that never changes while the service runs: written to bytes once, sent with an entity tag, and answered
/// with 304 to a caller who has it already. Keep one instance in a static field and return it from the handler.
/// </summary>
/// <typeparam name="T">The answer document.</typeparam>
/// <param name="make">Makes the table; called at most once.</param>
public sealed class CacheableTable<T>(Func<T> make) : IResult, IEndpointMetadataProvider
    where T : class
{
    private readonly Lock _making = new();
    private volatile CacheableBytes? _written;

    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Metadata.Add(builder.ApplicationServices.GetRequiredService<JsonContract>().TypeOf<T>());
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(T), [ProducedMedia.Json.Type]));
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status304NotModified));
        builder.Metadata.Add(ProducedMedia.Json);
        builder.AddProblems(ProblemTypes.InvalidRequest);
    }

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        if (Refusal.From(QueryFaults.Find(httpContext)) is { } refusal)
        {
            await Problem.Invalid(refusal).ExecuteAsync(httpContext).ConfigureAwait(false);
            return;
        }

        var table = _written ?? Write(httpContext.GetEndpoint()!.Metadata.GetRequiredMetadata<JsonTypeInfo<T>>());
        await table.ExecuteAsync(httpContext).ConfigureAwait(false);
    }

    private CacheableBytes Write(JsonTypeInfo<T> type)
    {
        lock (_making)
        {
            return _written ??= new CacheableBytes(ProducedMedia.JsonUtf8, JsonOutput.ToBytes(make(), type));
        }
    }
}

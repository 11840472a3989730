using System.Reflection;
using System.Security.Cryptography;
using System.Text.Json.Serialization.Metadata;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Net.Http.Headers;
using SetupService.Api.Http.Contract;
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
    private volatile Written? _written;

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
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        if (QueryFaults.Find(httpContext) is { Count: > 0 } faults)
        {
            await Problems.Problem.Invalid(faults).ExecuteAsync(httpContext).ConfigureAwait(false);
            return;
        }

        Written table = _written ?? Write(httpContext.GetEndpoint()!.Metadata.GetRequiredMetadata<JsonTypeInfo<T>>());
        HttpResponse response = httpContext.Response;
        response.Headers.ETag = table.Tag;
        response.Headers.CacheControl = "public, max-age=3600";
        if (IsKnown(httpContext.Request, table.Tag))
        {
            response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }

        response.ContentType = ProducedMedia.JsonUtf8;
        response.ContentLength = table.Bytes.Length;
        await response.BodyWriter.WriteAsync(table.Bytes, httpContext.RequestAborted).ConfigureAwait(false);
    }

    private Written Write(JsonTypeInfo<T> type)
    {
        lock (_making)
        {
            if (_written is null)
            {
                byte[] bytes = JsonOutput.ToBytes(make(), type);
                string digest = Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 8));
                _written = new Written(bytes, $"\"{digest}\"");
            }

            return _written;
        }
    }

    // If-None-Match compares weakly (RFC 9110, section 13.1.2).
    private static bool IsKnown(HttpRequest request, string tag)
    {
        if (!EntityTagHeaderValue.TryParseList(request.Headers.IfNoneMatch.ToArray()!, out IList<EntityTagHeaderValue>? tags))
            return false;

        EntityTagHeaderValue own = new(tag);
        return tags.Any(known => known.Tag == "*" || known.Compare(own, useStrongComparison: false));
    }

    private sealed record Written(byte[] Bytes, string Tag);
}

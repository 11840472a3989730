using System.Globalization;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Http;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Writes each refusal, query parameter and header once and lets every call refer to it.</summary>
internal sealed class SharedParts : IOpenApiDocumentTransformer
{
    private const string NotModified = "304";
    private const string RequestId = "RequestId";
    private const string EntityTag = "EntityTag";

    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        document.Components ??= new OpenApiComponents();
        AddHeaders(document.Components);
        foreach (var operation in (document.Paths ?? []).SelectMany(static path => path.Value.Operations ?? []).Select(static pair => pair.Value))
        {
            ShareParameters(document, operation);
            ShareResponses(document, operation);
        }

        return Task.CompletedTask;
    }

    private static void AddHeaders(OpenApiComponents components)
    {
        components.Headers ??= new Dictionary<string, IOpenApiHeader>();
        components.Headers[RequestId] = Header(
            "The id of this request, the same as in a problem's requestId and in the service's log.", "0af7651916cd43dd8448eb211c80319c");
        components.Headers[EntityTag] = Header(
            "Names these bytes; sent back as If-None-Match it saves sending them again.", "\"5e1f2a9c03b7d468\"");
    }

    private static OpenApiHeader Header(string description, string sample) => new()
    {
        Description = description,
        Schema = new OpenApiSchema { Type = JsonSchemaType.String },
        Example = sample,
    };

    private static void ShareParameters(OpenApiDocument document, OpenApiOperation operation)
    {
        var shared = document.Components!.Parameters ??= new Dictionary<string, IOpenApiParameter>();
        for (var i = 0; i < (operation.Parameters?.Count ?? 0); i++)
        {
            var parameter = (OpenApiParameter)operation.Parameters![i];
            NameWords(document, parameter, operation.OperationId ?? "");
            operation.Parameters[i] = new OpenApiParameterReference(Place(shared, parameter, parameter.Name!, operation.OperationId ?? ""), document);
        }
    }

    /// <summary>A parameter's closed set of words gets a schema of its own.</summary>
    private static void NameWords(OpenApiDocument document, OpenApiParameter parameter, string operation)
    {
        if (parameter.Schema is OpenApiSchema { Items.Enum: { Count: > 0 } words } list)
        {
            // Several words are those of a set that answers have too.
            var known = document.Components!.Schemas!.First(one => one.Value.Enum is { } others && others.Select(word => word?.ToString()).SequenceEqual(words.Select(word => word?.ToString())));
            list.Items = new OpenApiSchemaReference(known.Key, document);
        }

        if (parameter.Schema is not OpenApiSchema { Enum.Count: > 0 } schema)
            return;

        var standing = schema.Default;
        schema.Default = null;
        schema.Description ??= parameter.Description;
        var name = Place(document.Components!.Schemas!, schema, Capital(parameter.Name!), Capital(operation));
        parameter.Schema = new OpenApiSchemaReference(name, document) { Default = standing };
    }

    private static void ShareResponses(OpenApiDocument document, OpenApiOperation operation)
    {
        var shared = document.Components!.Responses ??= new Dictionary<string, IOpenApiResponse>();
        var isCacheable = operation.Responses!.ContainsKey(NotModified);
        foreach ((var status, var response) in operation.Responses.ToArray())
        {
            var whole = (OpenApiResponse)response;
            whole.Headers = new Dictionary<string, IOpenApiHeader> { [RequestIds.Header] = new OpenApiHeaderReference(RequestId, document) };
            if (isCacheable && status is "200" or NotModified)
                whole.Headers["ETag"] = new OpenApiHeaderReference(EntityTag, document);
            if (status != "200")
                operation.Responses[status] = new OpenApiResponseReference(Place(shared, whole, status, Capital(operation.OperationId ?? "")), document);
        }
    }

    /// <summary>The name under which a part stands: its own, or, where something else has it already, that with the call's before it: this one's, or another's with the very same part.</summary>
    private static string Place<T>(IDictionary<string, T> shared, T part, string name, string operation)
        where T : IOpenApiSerializable
    {
        if (shared.TryAdd(name, part) || TextOf(shared[name]) == TextOf(part))
            return name;

        foreach ((var other, var known) in shared)
        {
            if (other.EndsWith(Capital(name), StringComparison.Ordinal) && TextOf(known) == TextOf(part))
                return other;
        }

        var own = operation + Capital(name);
        shared[own] = part;
        return own;
    }

    private static string TextOf(IOpenApiSerializable part)
    {
        using StringWriter text = new(CultureInfo.InvariantCulture);
        part.SerializeAsV31(new OpenApiJsonWriter(text));
        return text.ToString();
    }

    private static string Capital(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
}

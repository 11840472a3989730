using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace SetupService.Api.Host.OpenApi;

/// <summary>
/// Writes references the way client generators read best: a member that may be left out is a bare reference (its absence is its
/// null), a member that is always there and may be null is one of the reference and null, and a closed set of words has a schema
/// of its own wherever it stands.
/// </summary>
internal sealed class PlainReferences : IOpenApiDocumentTransformer
{
    /// <summary>Under this key a schema of words carries the name of its set.</summary>
    public const string SetName = "setName";

    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        foreach (var schema in (document.Components?.Schemas?.Values ?? []).OfType<OpenApiSchema>().ToArray())
        {
            foreach ((var name, var member) in (schema.Properties ?? new Dictionary<string, IOpenApiSchema>()).ToArray())
            {
                schema.Properties![name] = Nullable(member, schema.Required?.Contains(name) == true);
                if (member is OpenApiSchema { Items: OpenApiSchema items } list && SetOf(items) is { } set)
                    list.Items = Named(document, set, items);
            }
        }

        return Task.CompletedTask;
    }

    private static string? SetOf(OpenApiSchema schema) => schema.Metadata?.TryGetValue(SetName, out var name) == true ? (string)name : null;

    private static OpenApiSchemaReference Named(OpenApiDocument document, string set, OpenApiSchema words)
    {
        document.Components!.Schemas!.TryAdd(set, words);
        return new OpenApiSchemaReference(set, document);
    }

    private static IOpenApiSchema Nullable(IOpenApiSchema member, bool isRequired)
    {
        if (member is not OpenApiSchema { OneOf: [OpenApiSchema { Type: JsonSchemaType.Null } nothing, OpenApiSchemaReference reference] })
            return member;
        if (!isRequired)
            return reference;

        var description = reference.Reference.Description;
        reference.Reference.Description = null;
        return new OpenApiSchema { Description = description, OneOf = [reference, nothing] };
    }
}

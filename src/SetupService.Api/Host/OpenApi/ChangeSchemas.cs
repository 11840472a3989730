using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Http.Documents;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Describes each change to a document by the described document itself.</summary>
internal sealed class ChangeSchemas(JsonContract contract) : IOpenApiDocumentTransformer
{
    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        foreach ((var change, var changed) in contract.ChangeTypes())
        {
            if (document.Components?.Schemas?.TryGetValue(change.Name, out var schema) == true)
                new PartialSchemas(document).Fill((OpenApiSchema)schema, changed.Name);
        }

        return Task.CompletedTask;
    }
}

using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Fitment.Catalogue;

namespace SetupService.Api.Host.OpenApi;

/// <summary>
/// Describes the lines of the batch by named schemas. A stream of lines has no schema of its own in OpenAPI 3.1: it is a
/// text, or, for tools that read sequences, an array of its lines.
/// </summary>
internal sealed class BatchSchemas : IOpenApiOperationTransformer
{
    public Task TransformAsync(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellationToken)
    {
        if (operation.RequestBody?.Content is not { } sent)
            return Task.CompletedTask;

        OpenApiSchemaReference car = new(nameof(BatchCarLine), context.Document);
        if (sent.TryGetValue(FormParts.MediaType, out var form))
            DescribeForm(form, operation, car, context.Document!);
        if (!sent.TryGetValue(NdjsonBatch.MediaType, out var lines))
            return Task.CompletedTask;

        lines.Schema = Lines(
            context.Document!, "BatchLines", "Lines, each a car or a candidate.", car, new OpenApiSchemaReference(nameof(BatchCandidateLine), context.Document));
        if (operation.Responses?["200"].Content?.TryGetValue(NdjsonBatch.MediaType, out var answers) == true)
        {
            answers.Schema = Lines(
                context.Document!,
                "BatchAnswerLines",
                "Lines, one for each candidate and each bad line; the last is the summary.",
                new OpenApiSchemaReference(nameof(BatchAnswerLine), context.Document));
        }

        return Task.CompletedTask;
    }

    private static OpenApiSchemaReference Lines(OpenApiDocument document, string name, string description, params IList<IOpenApiSchema> kinds)
    {
        OpenApiSchema lines = new()
        {
            Description = description,
            AnyOf =
            [
                new OpenApiSchema { Type = JsonSchemaType.String },
                new OpenApiSchema { Type = JsonSchemaType.Array, Items = kinds.Count == 1 ? kinds[0] : new OpenApiSchema { AnyOf = kinds } },
            ],
        };
        document.Components!.Schemas!.TryAdd(name, lines);
        return new OpenApiSchemaReference(name, document);
    }

    private static void DescribeForm(OpenApiMediaType form, OpenApiOperation operation, IOpenApiSchema car, OpenApiDocument document)
    {
        if (operation.Responses?["200"].Content?.TryGetValue(NdjsonBatch.MediaType, out var answers) != true)
        {
            DescribeForm(form, ("car", car, "application/json"), (CsvBatch.MediaType, "The table: a header of member names, then a candidate a row."));
            return;
        }

        var cars = Lines(document, "CatalogueCarLines", "Lines, a car each.", new OpenApiSchemaReference(nameof(CatalogueCarLine), document));
        DescribeForm(form, ("cars", cars, NdjsonBatch.MediaType), ($"{NdjsonBatch.MediaType}, {CsvBatch.MediaType}", "The candidates: lines of BatchCandidateLine, or a table with a candidate a row."));
        answers!.Schema = Lines(
            document, "CatalogueAnswerLines", "Lines, one for each pair kept and each car and candidate that cannot be read; the last is the summary.", new OpenApiSchemaReference(nameof(CatalogueAnswerLine), document));
    }

    private static void DescribeForm(OpenApiMediaType form, (string Name, IOpenApiSchema Schema, string Type) first, (string Type, string Description) candidates)
    {
        form.Schema = new OpenApiSchema
        {
            Type = JsonSchemaType.Object,
            Properties = new Dictionary<string, IOpenApiSchema>
            {
                [first.Name] = first.Schema,
                ["candidates"] = new OpenApiSchema { Type = JsonSchemaType.String, Description = candidates.Description },
            },
            Required = new HashSet<string> { first.Name, "candidates" },
        };
        form.Encoding = new Dictionary<string, OpenApiEncoding>
        {
            [first.Name] = new() { ContentType = first.Type },
            ["candidates"] = new() { ContentType = candidates.Type },
        };
    }
}

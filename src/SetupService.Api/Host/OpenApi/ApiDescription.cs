using Microsoft.OpenApi;

namespace SetupService.Api.Host.OpenApi;

/// <summary>The description of the API (OpenAPI 3.1).</summary>
internal static class ApiDescription
{
    /// <summary>The name the framework knows the description by.</summary>
    public const string DocumentName = "v1";

    /// <summary>Has the service make its description from the code instead of serving the committed one.</summary>
    public static void AddGeneratedDescription(this IServiceCollection services)
    {
        services.AddSingleton<IDescription, GeneratedDescription>();
        services.AddOpenApi("v1", static options =>
        {
            options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
            options.AddSchemaTransformer<ContractSchemas>();
            options.AddOperationTransformer<Operations>();
            options.AddOperationTransformer<BatchSchemas>();
            options.AddOperationTransformer<MediaExamples>();
            options.AddDocumentTransformer<DocumentFrame>();
            options.AddDocumentTransformer<ChangeSchemas>();
            options.AddDocumentTransformer<PlainReferences>();
            options.AddDocumentTransformer<KindSchemas>();
            options.AddDocumentTransformer<SharedParts>();
        });
    }
}

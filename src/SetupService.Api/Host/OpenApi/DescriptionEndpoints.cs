using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Http;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Serves the API description, made once, as JSON and as YAML.</summary>
internal static class DescriptionEndpoints
{
    private delegate Task Writing(OpenApiDocument document, Stream stream, OpenApiSpecVersion version, CancellationToken cancellationToken);

    public static void MapDescription(this IEndpointRouteBuilder routes)
    {
        Map(routes, "/openapi/v1.json", "application/json; charset=utf-8", static (document, stream, version, stop) => document.SerializeAsJsonAsync(stream, version, stop));
        Map(routes, "/openapi/v1.yaml", "application/yaml; charset=utf-8", static (document, stream, version, stop) => document.SerializeAsYamlAsync(stream, version, stop));
    }

    private static void Map(IEndpointRouteBuilder routes, string path, string contentType, Writing write)
    {
        Lazy<Task<CacheableBytes>> once = new(() => MakeAsync(routes.ServiceProvider, contentType, write));
        RequestDelegate send = async context => await (await once.Value.ConfigureAwait(false)).ExecuteAsync(context).ConfigureAwait(false);
        routes.MapMethods(path, [HttpMethods.Get], send).ExcludeFromDescription();
    }

    private static async Task<CacheableBytes> MakeAsync(IServiceProvider services, string contentType, Writing write)
    {
        var document = await services.GetRequiredKeyedService<IOpenApiDocumentProvider>(ApiDescription.DocumentName)
            .GetOpenApiDocumentAsync().ConfigureAwait(false);
        using MemoryStream stream = new();
        await write(document, stream, OpenApiSpecVersion.OpenApi3_1, CancellationToken.None).ConfigureAwait(false);
        return new CacheableBytes(contentType, stream.ToArray());
    }
}

using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using SetupService.Api.Http;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Serves the API description, made once, as JSON and as YAML.</summary>
internal static class DescriptionEndpoints
{
    private delegate Task<byte[]> Writing(OpenApiDocument document);

    public static void MapDescription(this IEndpointRouteBuilder routes)
    {
        Map(routes, "/openapi/v1.json", "application/json; charset=utf-8", JsonAsync);
        Map(routes, "/openapi/v1.yaml", "application/yaml; charset=utf-8", YamlAsync);
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
        return new CacheableBytes(contentType, await write(document).ConfigureAwait(false));
    }

    private static async Task<byte[]> JsonAsync(OpenApiDocument document)
    {
        using MemoryStream stream = new();
        await document.SerializeAsJsonAsync(stream, OpenApiSpecVersion.OpenApi3_1, CancellationToken.None).ConfigureAwait(false);
        using var json = JsonDocument.Parse(stream.ToArray());
        return Encoding.UTF8.GetBytes(CompactLayout.Format(json.RootElement));
    }

    private static async Task<byte[]> YamlAsync(OpenApiDocument document)
    {
        using MemoryStream stream = new();
        await document.SerializeAsYamlAsync(stream, OpenApiSpecVersion.OpenApi3_1, CancellationToken.None).ConfigureAwait(false);
        return stream.ToArray();
    }
}

using SetupService.Api.Http;

namespace SetupService.Api.Host.OpenApi;

/// <summary>Serves the API description, read once, as JSON and as YAML.</summary>
internal static class DescriptionEndpoints
{
    public static void MapDescription(this IEndpointRouteBuilder routes)
    {
        Map(routes, "/openapi/v1.json", "application/json; charset=utf-8", static description => description.JsonAsync());
        Map(routes, "/openapi/v1.yaml", "application/yaml; charset=utf-8", static description => description.YamlAsync());
    }

    private static void Map(IEndpointRouteBuilder routes, string path, string contentType, Func<IDescription, Task<byte[]>> read)
    {
        Lazy<Task<CacheableBytes>> once = new(async () =>
            new CacheableBytes(contentType, await read(routes.ServiceProvider.GetRequiredService<IDescription>()).ConfigureAwait(false)));
        RequestDelegate send = async context => await (await once.Value.ConfigureAwait(false)).ExecuteAsync(context).ConfigureAwait(false);
        routes.MapMethods(path, [HttpMethods.Get], send).ExcludeFromDescription();
    }
}

namespace SetupService.Api.Host.OpenApi;

/// <summary>The description of the API (OpenAPI 3.1) and the pages that show it.</summary>
internal static class ApiDescription
{
    public static void AddApiDescription(this IServiceCollection services) => services.AddOpenApi("v1");

    public static void UseApiPages(this WebApplication app) =>
        app.UseSwaggerUI(static pages =>
        {
            pages.RoutePrefix = "docs";
            pages.DocumentTitle = "Setup service";
            pages.SwaggerEndpoint("/openapi/v1.json", "Setup service v1");
        });
}

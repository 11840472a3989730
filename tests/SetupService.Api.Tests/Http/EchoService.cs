using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Host;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Tests.Host;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Tests.Http;

/// <summary>The service with calls of the tests' own beside its real ones, to reach each corner of the plumbing.</summary>
internal static class EchoService
{
    public static Task<RunningService> StartAsync(string environment, Action<WebApplicationBuilder>? configure = null) =>
        RunningService.StartAsync(environment, configure, Map);

    private static void Map(WebApplication app)
    {
        app.MapPost("/test/vehicle", Take);
        app.MapPost("/test/refuse", Refuse);
        app.MapGet("/test/fails", Fail);
    }

    private static Results<Answer<HealthAnswer>, Problem> Take(Body<VehicleDocument> body) =>
        body.Value is { } vehicle ? new Answer<HealthAnswer>(new HealthAnswer { Status = vehicle.Label ?? "nameless" }) : body.Problem!;

    private static Results<Answer<HealthAnswer>, Problem> Refuse(Body<VehicleDocument> body) => body.Problem ?? body.Refuse();

    private static Answer<HealthAnswer> Fail(QueryReader query) =>
        throw new InvalidOperationException("secret of the inside at /var/lib/inside.cs");
}

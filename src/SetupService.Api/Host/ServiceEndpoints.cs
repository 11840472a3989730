using System.Reflection;
using System.Runtime.InteropServices;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Domain.Answers;

namespace SetupService.Api.Host;

/// <summary>The calls about the service itself.</summary>
internal static class ServiceEndpoints
{
    private static readonly CacheableAnswer<VersionAnswer> VersionTable = new(MakeVersion);

    public static void MapService(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("").WithTags("Service");
        group.MapGet("/health/live", Live)
            .WithExample("health-live")
            .WithName("healthLive")
            .WithSummary("Is the process alive?")
            .WithDescription("Answers 200 as long as the process can answer at all. Does no work.");
        group.MapGet("/health/ready", Ready)
            .WithExample("health-ready")
            .WithName("healthReady")
            .WithSummary("Is the service ready for requests?")
            .WithProblems(ProblemTypes.Unavailable)
            .WithDescription("Answers 200 once the service has started and takes requests, 503 once it shuts down.");
        group.MapGet("/version", Version)
            .WithName("version")
            .WithSummary("Which edition and build runs?")
            .WithDescription("The edition of model and tables, the commit the service was built from, and the runtime.");
    }

    private static Answer<HealthAnswer> Live() => new(new HealthAnswer { Status = "live" });

    private static Results<Answer<HealthAnswer>, Problem> Ready(HttpContext context, ShutdownSignal shutdown, WorkSettings work) =>
        shutdown.IsReady
            ? new Answer<HealthAnswer>(new HealthAnswer { Status = "ready" })
            : ComputingCalls.Busy(context, work.RetryAfterSeconds) with { Detail = "The service is shutting down." };

    private static Results<CacheableAnswer<VersionAnswer>, Problem> Version(QueryReader query) => query.Problem is { } problem ? problem : VersionTable;

    private static VersionAnswer MakeVersion()
    {
        var version = typeof(ServiceEndpoints).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";
        var plus = version.IndexOf('+', StringComparison.Ordinal);
        return new VersionAnswer
        {
            Edition = Edition.Current,
            Commit = plus < 0 ? "unknown" : version[(plus + 1)..],
            Runtime = RuntimeInformation.FrameworkDescription,
        };
    }
}

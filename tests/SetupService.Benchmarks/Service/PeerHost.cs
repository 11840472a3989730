using SetupService.Api.Fitment;
using SetupService.Api.Host;

namespace SetupService.Benchmarks.Service;

/// <summary>
/// The service with one endpoint more: the peer, which binds the same request type as the framework does it and serialises a
/// prepared answer of the same type. What the service's own endpoint is slower by is what it computes and checks.
/// </summary>
internal static class PeerHost
{
    public const string PeerPath = "/peer/check";

    public static int Run(string[] args)
    {
        var app = SetupServiceHost.Build(args);
        CheckAnswer? prepared = null;
        app.MapPost("/peer/prepare", (CheckAnswer answer) => { prepared = answer; });
        app.MapPost(PeerPath, (CheckRequest request) => TypedResults.Ok(prepared));
        app.Run();
        return 0;
    }
}

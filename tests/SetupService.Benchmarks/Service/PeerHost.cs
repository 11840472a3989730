using SetupService.Api.Fitment.Check;
using SetupService.Api.Geometry.TravelSweeps;
using SetupService.Api.Handling.CamberTarget;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Handling.Ride;
using SetupService.Api.Host;

namespace SetupService.Benchmarks.Service;

/// <summary>
/// The service with a few endpoints more: the peers, each of which binds the same request type as the framework does it and
/// serialises a prepared answer of the same type. What the service's own endpoint is slower by is what it computes and checks.
/// </summary>
internal static class PeerHost
{
    public static int Run(string[] args)
    {
        var app = SetupServiceHost.Build(args);
        CheckAnswer? check = null;
        app.MapPost(PeeredCall.Check.PreparePath, (CheckAnswer answer) => { check = answer; });
        app.MapPost(PeeredCall.Check.PeerPath, (CheckRequest request) => TypedResults.Ok(check));
        TravelSweepAnswer? sweep = null;
        app.MapPost(PeeredCall.Sweep.PreparePath, (TravelSweepAnswer answer) => { sweep = answer; });
        app.MapPost(PeeredCall.Sweep.PeerPath, (TravelSweepRequest request) => TypedResults.Ok(sweep));
        CorneringAnswer? cornering = null;
        app.MapPost(PeeredCall.Cornering.PreparePath, (CorneringAnswer answer) => { cornering = answer; });
        app.MapPost(PeeredCall.Cornering.PeerPath, (CorneringRequest request) => TypedResults.Ok(cornering));
        CorneringAnswer? turn = null;
        app.MapPost(PeeredCall.Turn.PreparePath, (CorneringAnswer answer) => { turn = answer; });
        app.MapPost(PeeredCall.Turn.PeerPath, (CorneringRequest request) => TypedResults.Ok(turn));
        RideAnswer? ride = null;
        app.MapPost(PeeredCall.Ride.PreparePath, (RideAnswer answer) => { ride = answer; });
        app.MapPost(PeeredCall.Ride.PeerPath, (RideRequest request) => TypedResults.Ok(ride));
        RideAnswer? rideAxles = null;
        app.MapPost(PeeredCall.RideAxles.PreparePath, (RideAnswer answer) => { rideAxles = answer; });
        app.MapPost(PeeredCall.RideAxles.PeerPath, (RideRequest request) => TypedResults.Ok(rideAxles));
        CamberTargetAnswer? camber = null;
        app.MapPost(PeeredCall.CamberTarget.PreparePath, (CamberTargetAnswer answer) => { camber = answer; });
        app.MapPost(PeeredCall.CamberTarget.PeerPath, (CamberTargetRequest request) => TypedResults.Ok(camber));
        app.Run();
        return 0;
    }
}

using SetupService.Api.Handling.CamberTarget;
using SetupService.Api.Handling.Cornering;
using SetupService.Api.Handling.CorneringSweep;
using SetupService.Api.Handling.Envelope;
using SetupService.Api.Handling.Ride;
using SetupService.Api.Handling.WhatIf;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Handling;

/// <summary>The calls about how a car stands on its springs and in a turn.</summary>
internal static class HandlingEndpoints
{
    public static void MapHandling(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/v1/handling").WithTags("Handling").WithWork();
        group.MapRide();
        group.MapCornering();
        group.MapCorneringSweep();
        group.MapEnvelope();
        group.MapCamberTarget();
        group.MapWhatIf();
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment.Window;

/// <summary>The call that finds the feasible offsets.</summary>
internal static class WindowEndpoint
{
    public static void MapWindow(this RouteGroupBuilder group) =>
        group.MapPost("/window", Window)
            .WithQuery(QueryParameters.Units)
            .WithExample("fitment-window")
            .WithName("fitmentWindow")
            .WithSummary("Which offsets fit at each rim width?")
            .WithDescription("For each rim width the range of offsets at which no clearance check fails, and what limits each end.");

    private static Results<Answer<WindowAnswer>, Problem> Window(Body<WindowRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!WindowMapper.Map(request).TryGet(out var inputs, out var refusal))
            return body.Refuse(refusal);
        var car = FitmentContext.Prepare(inputs.Vehicle, request.Axle, FitmentMapper.Settings(request.Tolerances, required: null, request.CamberChange));
        return new Answer<WindowAnswer>(WindowMapper.ToAnswer(car, inputs.Tyre, request.RimWidthsIn, query.Units));
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Vehicles;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>The call about tread temperatures and pressures after driving.</summary>
internal static class TemperaturesEndpoint
{
    public static void MapTemperatures(this RouteGroupBuilder group) =>
        group.MapPost("/temperatures", Read)
            .WithQuery(QueryParameters.Units)
            .WithExample("wear-temperatures")
            .WithName("wearTemperatures")
            .WithSummary("What do tread temperatures and hot pressures say, and which cold pressure to set?")
            .WithDescription("What to do first; per tyre spread, middle and mean against usual ranges; from a hot aim a cold setting, never below the load's need.");

    private static Results<Answer<TemperaturesAnswer>, Problem> Read(Body<TemperaturesRequest> body, QueryReader query, TimeProvider clock)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        Vehicle? vehicle = null;
        if (request.Vehicle is { } document && !VehicleMapper.Map(document).Under("vehicle").TryGet(out vehicle, out var refusal))
            return body.Refuse(refusal);
        var today = request.ReadOn is { } day ? TyreReadingMapper.Day(day)!.Value : DateOnly.FromDateTime(clock.GetUtcNow().Date);
        return new Answer<TemperaturesAnswer>(TemperaturesMapper.ToAnswer(new HeatReadings(request, vehicle, today), query.Units));
    }
}

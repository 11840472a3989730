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
            .WithDescription("Per tyre the spread across the tread, its middle and mean against usual ranges, each with the thermometer's error and a rough estimate of the tread at the end of the lap; front against rear and left against right. From cold and hot pressure the gas temperature; from a hot aim the cold setting now and at another temperature, and what to let out, never below what the load needs. What is not given is unknown.");

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

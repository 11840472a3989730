using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Vehicles;
using SetupService.Domain.Handling.Ride;

namespace SetupService.Api.Handling.Ride;

/// <summary>The call about springs, tyres and dampers.</summary>
internal static class RideEndpoint
{
    public static void MapRide(this RouteGroupBuilder group) =>
        group.MapPost("/ride", Ride)
            .WithQuery(QueryParameters.Units)
            .WithExample("ride")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("ride")
            .WithSummary("How stiff is the ride, and do the dampers suit the springs?")
            .WithDescription("Wheel and ride rates, frequencies, damping ratios, spring lengths and travel left, of the car as it is or after a change (a partial vehicle, RFC 7396 without null), with the verdict on keeping the dampers.");

    private static Results<Answer<RideAnswer>, Problem> Ride(Body<RideRequest> body, JsonContract contract, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal))
            return body.Refuse(refusal);
        if (RideEvaluation.AsGiven(vehicle, query.Units) is not { } car)
            return HandlingProblems.NoCorner(vehicle);
        var range = request.DampingRatioRange is { } asked ? new DampingRange(asked.From, asked.To, "the request") : DampingRange.RoadAndTrack;
        if (request.Change is null)
            return new Answer<RideAnswer>(RideAnswers.Create(car, null, range, query.Units));

        var change = contract.Changing(request.Vehicle, "/vehicle").With(request.Change, "/change");
        if (!change.Read(RideRules.Changed).TryGet(out var document, out refusal)
            || !VehicleMapper.Map(document).Under("change").TryGet(out var changed, out refusal))
        {
            return body.Refuse(refusal);
        }

        return car.Changed(changed, query.Units) is { } after
            ? new Answer<RideAnswer>(RideAnswers.Create(after, car, range, query.Units))
            : HandlingProblems.NoCorner(changed);
    }
}

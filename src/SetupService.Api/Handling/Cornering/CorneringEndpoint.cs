using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Handling.Cornering;

/// <summary>The call that computes a car in one steady turn.</summary>
internal static class CorneringEndpoint
{
    public static void MapCornering(this RouteGroupBuilder group) =>
        group.MapPost("/cornering", Corner)
            .WithQuery(QueryParameters.Units, TurnMapper.Detail)
            .WithExample("cornering")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("cornering")
            .WithSummary("What do the body and each wheel do in this turn?")
            .WithDescription("Equilibrium of body and four wheels in a steady turn: roll, wheel loads, travel, steer, and each wheel's inclination to the road as the sum of its contributions; load transfer by its parts, roll stiffness, what of its grip each axle uses, what each can hold and which gives up first. With longitudinalG the car is braked or driven through it, quasi-steady: load transfer, pitch, dive, brake and drive shares, combined slip; yaw acceleration, engine limit, banking and crests stay out. Missing figures get typical values, each listed with how far it moves the answer.");

    private static Results<Answer<CorneringAnswer>, Problem> Corner(Body<CorneringRequest> body, QueryReader query, RequestWork work)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal))
            return body.Refuse(refusal);
        if (CorneringEvaluation.Create(request, vehicle, query.Units, work.Budget, request.LongitudinalG) is not { } car)
            return HandlingProblems.NoCorner(vehicle);
        var turn = car.Run.At(request.LateralG, out var obstacle);
        work.Cancellation.ThrowIfCancellationRequested();
        return turn is { } solved
            ? new Answer<CorneringAnswer>(CorneringAnswers.Create(car, solved, TurnMapper.DetailOf(query)))
            : TurnProblems.NoEquilibrium(request, car, obstacle!.Value);
    }
}

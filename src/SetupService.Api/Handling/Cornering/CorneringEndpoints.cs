using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Handling.Cornering;

/// <summary>The calls that take a car through a turn.</summary>
internal static class CorneringEndpoints
{
    private static readonly CorneringRules Rules = new();
    private static readonly CorneringSweepRules SweepRules = new();

    public static void MapCornering(this RouteGroupBuilder group)
    {
        group.MapPost("/cornering", Corner)
            .WithExample("cornering")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("cornering")
            .WithSummary("How does the car stand in this turn, and each wheel to the road?")
            .WithDescription("Equilibrium of body and four wheels in a steady turn: roll, wheel loads, travel, steer, and each wheel's inclination to the road as the sum of its causes; load transfer by its parts, roll stiffness, balance. Missing figures get typical values, listed with how far the answer moves.");
        group.MapPost("/cornering-sweep", Sweep)
            .WithQuery(QueryParameters.Units)
            .WithExample("cornering-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("corneringSweep")
            .WithSummary("How does the car stand as it turns harder?")
            .WithDescription("The call cornering over a range of lateral acceleration, at most 1,000 rows, each by itself; turns in which the car would roll over or a wheel cannot follow are listed with the limit. With Accept: image/svg+xml the same as charts.");
    }

    private static Results<Answer<CorneringAnswer>, Problem> Corner(Body<CorneringRequest> body)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!Rules.Validate(request).IsValid || !VehicleReading.TryRead(request.Vehicle, out var vehicle))
            return body.Refuse();
        if (TurnedCar.Of(request, vehicle) is not { } car)
            return HandlingProblems.NoCorner(vehicle);
        return car.Run.At(request.LateralG, out var obstacle) is { } turn
            ? new Answer<CorneringAnswer>(CorneringAnswers.Of(car, turn))
            : CorneringProblems.NoEquilibrium(request, car, obstacle!.Value);
    }

    private static Results<PictureOr<CorneringSweepAnswer>, Problem> Sweep(
        Body<CorneringSweepRequest> body, PictureChoice picture, QueryReader query, CancellationToken cancellation)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!SweepRules.Validate(request).IsValid || !VehicleReading.TryRead(request.Vehicle, out var vehicle))
            return body.Refuse();
        if (TurnedCar.Of(request, vehicle) is not { } car)
            return HandlingProblems.NoCorner(vehicle);
        if (CorneringSweepAnswers.Of(car, request.LateralG.ToRange(), cancellation, out var first) is not { } answer)
            return CorneringProblems.NoEquilibrium(request, car, first!.Value, isOfSweep: true);
        return picture.IsWanted
            ? new PictureOr<CorneringSweepAnswer>(new SvgAnswer(CorneringChart.Draw(request, car, answer, query.Units)))
            : new PictureOr<CorneringSweepAnswer>(answer);
    }
}

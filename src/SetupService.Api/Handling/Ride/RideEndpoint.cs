using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Api.Vehicles;
using SetupService.Domain.Handling.Ride;

namespace SetupService.Api.Handling.Ride;

/// <summary>The call about springs, tyres and dampers.</summary>
internal static class RideEndpoint
{
    private static readonly EnumParameter Detail = new("detail", "How much is worked out: both axles, or also the turn in which each stop is met and how far what was assumed moves the answer.", EnumNames<RideDetail>.List, Default: "full");

    public static void MapRide(this RouteGroupBuilder group)
    {
        group.MapPost("/ride", Ride)
            .WithQuery(QueryParameters.Units, Detail)
            .WithExample("ride")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("ride")
            .WithSummary("How stiff is the ride, and do the dampers suit the springs?")
            .WithDescription("Wheel and ride rates, frequencies, damping ratios, spring lengths and travel left, of the car as it is or after a change (values set by a partial vehicle, RFC 7396 without null; parts taken off; spring seats trimmed to keep the ride height), with the verdict on keeping the dampers.");
        group.MapPost("/ride/chart", Chart)
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("ride")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("rideChart")
            .WithSummary("Each end pushed down and let go, before and after the change")
            .WithDescription("Takes the body of ride and draws the height of the front and of the rear over time after each is pushed down and let go, as springs and dampers move it, with the verdicts on the dampers beneath.");
    }

    private static Results<Answer<RideAnswer>, Problem> Ride(Body<RideRequest> body, JsonContract contract, QueryReader query, RequestWork work) =>
        TryEvaluate(body, contract, query, work, out var car, out var before, out var problem)
            ? new Answer<RideAnswer>(RideAnswers.Create(car, before, RangeOf(body.Value!), query.Units, query.Word<RideDetail>(Detail) ?? RideDetail.Full))
            : problem;

    private static Results<SvgAnswer, Problem> Chart(Body<RideRequest> body, JsonContract contract, QueryReader query, RequestWork work) =>
        TryEvaluate(body, contract, query, work, out var car, out var before, out var problem)
            ? new SvgAnswer(RideChart.Draw(car, before, body.Value!.Vehicle.Label, RangeOf(body.Value!), query.Units, query.WidthPx))
            : problem;

    private static DampingRange RangeOf(RideRequest request) =>
        request.DampingRatioRange is { } asked ? new DampingRange(asked.From, asked.To, "the request") : DampingRange.RoadAndTrack;

    private static bool TryEvaluate(
        Body<RideRequest> body, JsonContract contract, QueryReader query, RequestWork work, [NotNullWhen(true)] out RideEvaluation? car, out RideEvaluation? before, [NotNullWhen(false)] out Problem? problem)
    {
        (car, before) = (null, null);
        problem = body.Problem ?? Evaluate(body, body.Value!, contract, query, work, out car, out before);
        return car is not null;
    }

    private static Problem? Evaluate(Body<RideRequest> body, RideRequest request, JsonContract contract, QueryReader query, RequestWork work, out RideEvaluation? car, out RideEvaluation? before)
    {
        (car, before) = (null, null);
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal))
            return body.Refuse(refusal);
        if (RideEvaluation.AsGiven(vehicle, query.Units, work.Budget) is not { } given)
            return HandlingProblems.NoCorner(vehicle);
        if (request.Change is null)
        {
            car = given;
            return null;
        }

        if (!CarChangeMapper.Make(contract.Changing(request.Vehicle, "/vehicle"), request.Change, "/change").TryGet(out var made, out refusal)
            || !made.Document.Read(RideRules.Changed).TryGet(out var document, out refusal)
            || !VehicleMapper.MapChanged(document, request.Vehicle, vehicle).Under("change/vehicle").TryGet(out var merged, out refusal))
        {
            return body.Refuse(refusal);
        }

        before = given;
        if (given.Car.Changed(merged, made.Change, out var fault, query.Units) is not { } after) return ChangeProblems.CannotStand(fault!, made.Change, "/change", query.Units);
        car = new RideEvaluation(after, work.Budget);
        return null;
    }
}

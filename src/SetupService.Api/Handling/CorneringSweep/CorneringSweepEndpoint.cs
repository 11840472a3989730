using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Handling.Turns;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;

namespace SetupService.Api.Handling.CorneringSweep;

/// <summary>The call that runs cornering over lateral acceleration, and its chart.</summary>
internal static class CorneringSweepEndpoint
{
    public static void MapCorneringSweep(this RouteGroupBuilder group)
    {
        group.MapPost("/cornering-sweep", Sweep)
            .WithQuery(QueryParameters.Units, TurnMapper.Detail)
            .WithExample("cornering-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("corneringSweep")
            .WithSummary("How do roll, wheel loads and balance change with lateral acceleration?")
            .WithDescription("Runs cornering over a range of lateral acceleration, at most 1,000 rows, each solved separately. Rows where the car would roll over or a wheel would leave its travel are listed with the limit.");
        group.MapPost("/cornering-sweep/chart", Chart)
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("cornering-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("corneringSweepChart")
            .WithSummary("The cornering sweep as charts")
            .WithDescription("Takes the body of cornering-sweep and draws roll, wheel loads, inclination and balance over lateral acceleration.");
    }

    private static Results<Answer<CorneringSweepAnswer>, Problem> Sweep(Body<CorneringSweepRequest> body, QueryReader query, RequestWork work) =>
        TrySweep(body, query.Units, TurnMapper.DetailOf(query), work, out _, out var answer, out var problem) ? new Answer<CorneringSweepAnswer>(answer) : problem;

    private static Results<SvgAnswer, Problem> Chart(Body<CorneringSweepRequest> body, QueryReader query, RequestWork work) =>
        TrySweep(body, query.Units, TurnDetail.Turn, work, out var car, out var answer, out var problem)
            ? new SvgAnswer(CorneringChart.Draw(body.Value!, car, answer, query.Units, query.WidthPx))
            : problem;

    private static bool TrySweep(
        Body<CorneringSweepRequest> body,
        UnitSystem units,
        TurnDetail detail,
        RequestWork work,
        [NotNullWhen(true)] out CorneringEvaluation? car,
        [NotNullWhen(true)] out CorneringSweepAnswer? answer,
        [NotNullWhen(false)] out Problem? problem)
    {
        car = null;
        answer = null;
        problem = body.Problem!;
        if (body.Value is not { } request)
            return false;
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal))
        {
            problem = body.Refuse(refusal);
            return false;
        }

        car = CorneringEvaluation.Create(request, vehicle, units, work.Budget, request.LongitudinalG);
        if (car is null)
        {
            problem = HandlingProblems.NoCorner(vehicle);
            return false;
        }

        answer = CorneringSweepAnswers.Solve(car, request.LateralG.ToRange(), detail, work.Cancellation, out var first);
        problem = answer is null ? TurnProblems.NoEquilibrium(request, car, first!.Value, isOfSweep: true) : null;
        return answer is not null;
    }
}

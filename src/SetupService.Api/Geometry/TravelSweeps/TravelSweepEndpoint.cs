using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.TravelSweeps;

/// <summary>The call that moves a corner over its travel and rack.</summary>
internal static class TravelSweepEndpoint
{
    public static void MapTravelSweep(this RouteGroupBuilder group)
    {
        group.MapPost("/travel-sweep", Sweep)
            .WithWork()
            .WithQuery(QueryParameters.Units)
            .WithExample("travel-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("travelSweep")
            .WithSummary("What does the wheel do over its travel and lock?")
            .WithDescription("Moves a corner over wheel travel and rack: angles, contact, instant and roll centres, motion ratios, bump steer, both wheels' steer. At most 5,000 rows.");
        group.MapPost("/travel-sweep/chart", Chart)
            .WithWork()
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("travel-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("travelSweepChart")
            .WithSummary("The travel sweep as charts")
            .WithDescription("Takes the body of travel-sweep and draws its rows over travel, a curve for each rack position.");
    }

    private static Results<Answer<TravelSweepAnswer>, Problem> Sweep(Body<TravelSweepRequest> body, QueryReader query, RequestWork work) =>
        TryCompute(body, query, work, out var answer, out var problem) ? new Answer<TravelSweepAnswer>(answer) : problem;

    private static Results<SvgAnswer, Problem> Chart(Body<TravelSweepRequest> body, QueryReader query, RequestWork work) =>
        TryCompute(body, query, work, out var answer, out var problem)
            ? new SvgAnswer(TravelSweepChart.Draw(body.Value!, answer, query.Units, query.WidthPx))
            : problem;

    private static bool TryCompute(
        Body<TravelSweepRequest> body,
        QueryReader query,
        RequestWork work,
        [NotNullWhen(true)] out TravelSweepAnswer? answer,
        [NotNullWhen(false)] out Problem? problem)
    {
        answer = null;
        problem = body.Problem!;
        if (body.Value is not { } request)
            return false;
        if (!CornerMapper.Map(request, request.Motion).TryGet(out var corner, out var refusal))
        {
            problem = body.Refuse(refusal);
            return false;
        }

        var rack = request.RackMm?.ToRange() ?? SweepRange.Only(0);
        if (TravelSweep.Start(corner.Suspension, corner.Setup, request.TravelMm.ToRange(), rack, TravelSweepMapper.AxleInputs(request), work.Budget) is not { } sweep)
        {
            problem = GeometryProblems.NotKnownHere(corner);
            return false;
        }

        answer = TravelSweepMapper.ToAnswer(sweep, corner, TravelSweepMapper.PointError(request, corner, work.Budget), TravelSweepMapper.Assumptions(request, corner), work.Cancellation, out var missed, query.Units);
        problem = answer is null ? GeometryProblems.NothingReached(sweep.Reach, missed!.Value) : null!;
        return answer is not null;
    }
}

using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Vehicles;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>The call that moves a corner over its travel and rack.</summary>
internal static class SweepEndpoints
{
    private static readonly TravelSweepRules Rules = new();

    public static void MapSweeps(this RouteGroupBuilder group)
    {
        group.MapPost("/travel-sweep", Sweep)
            .WithQuery(QueryParameters.Units)
            .WithExample("travel-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("travelSweep")
            .WithSummary("What does the wheel do over its travel and lock?")
            .WithDescription("Moves a corner over wheel travel and rack: angles, contact, instant and roll centres, motion ratios, bump steer, both wheels' steer. At most 5,000 rows.");
        group.MapPost("/travel-sweep/chart", Chart)
            .WithQuery(QueryParameters.Units)
            .WithExample("travel-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("travelSweepChart")
            .WithSummary("The travel sweep as charts")
            .WithDescription("Takes the body of travel-sweep and draws its rows over travel, a curve for each rack position.");
    }

    private static Results<Answer<TravelSweepAnswer>, Problem> Sweep(Body<TravelSweepRequest> body, QueryReader query, CancellationToken cancellation) =>
        TryCompute(body, query, cancellation, out var answer, out var problem) ? new Answer<TravelSweepAnswer>(answer) : problem;

    private static Results<SvgAnswer, Problem> Chart(Body<TravelSweepRequest> body, QueryReader query, CancellationToken cancellation) =>
        TryCompute(body, query, cancellation, out var answer, out var problem)
            ? new SvgAnswer(SweepChart.Draw(body.Value!, answer, query.Units))
            : problem;

    private static bool TryCompute(
        Body<TravelSweepRequest> body,
        QueryReader query,
        CancellationToken cancellation,
        [NotNullWhen(true)] out TravelSweepAnswer? answer,
        [NotNullWhen(false)] out Problem? problem)
    {
        answer = null;
        problem = body.Problem!;
        if (body.Value is not { } request)
            return false;
        if (!Rules.Validate(request).IsValid)
            problem = body.Refuse();
        else if (MeasuredInputs.TryRead(request.Suspension, request.Alignment, out var measured))
            problem = OfReadings(request, measured, query, out answer);
        else if (SuspensionMapper.Read(request.Suspension) is { } suspension)
            problem = OfPoints(request, suspension, query, cancellation, out answer);
        else
            problem = body.Refuse();
        return answer is not null;
    }

    private static Problem? OfPoints(TravelSweepRequest request, Hardpoints suspension, QueryReader query, CancellationToken cancellation, out TravelSweepAnswer? answer)
    {
        answer = null;
        var corner = MechanismBuilder.Build(SweepInputs.Setting(suspension, request.Alignment, request.LoadedRadiusMm, request.Motion));
        var axle = SweepInputs.Axle(request);
        var rack = request.RackMm?.ToRange() ?? SweepRange.Only(0);
        if (TravelSweep.Start(corner, request.TravelMm.ToRange(), rack, axle, WorkBudget.Generous(cancellation)) is not { } sweep)
            return GeometryProblems.NothingHolds();

        var assumptions = GeometryAssumptions.ForSweep(request.Suspension, request.Alignment, request.MeasuringDiameterMm, request.Motion is not null);
        GeometryAssumptions.AddUnused(assumptions, request.Suspension, request.Motion is not null, request.TrackMm is not null);
        answer = TravelSweepAnswers.Of(sweep, corner, axle, assumptions, cancellation, out var missed, query.Units);
        return answer is null ? GeometryProblems.NothingReached(corner, missed!.Value) : null;
    }

    private static Problem? OfReadings(TravelSweepRequest request, MeasuredCorner corner, QueryReader query, out TravelSweepAnswer? answer)
    {
        answer = MeasuredSweepAnswers.Of(request, corner, query.Units);
        return answer is null
            ? MeasuredInputs.NotTold("/travelMm", MeasuredWords.BeyondReadings(request.TravelMm.From, corner.FirstMm, corner.LastMm))
            : null;
    }
}

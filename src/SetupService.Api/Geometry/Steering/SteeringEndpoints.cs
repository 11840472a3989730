using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Drawings.Charts;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>The calls about the axis a wheel steers about.</summary>
internal static class SteeringEndpoints
{
    public static void MapSteering(this RouteGroupBuilder group)
    {
        group.MapPost("/steering-axis", Axis)
            .WithExample("steering-axis")
            .WithName("steeringAxis")
            .WithSummary("Where is the steering axis relative to the wheel?")
            .WithDescription("Caster, inclination, scrub radius and trail from the two joints a left wheel steers about, with where the axis meets the ground and how far the wheel centre is from it.");
        group.MapPost("/steer-sweep", Sweep)
            .WithExample("steer-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("steerSweep")
            .WithSummary("How does camber change with steer?")
            .WithDescription("Exact rotation of a wheel about a fixed steering axis, with the handbooks' approximation for comparison; scrub radius, trail and height too where the wheel's position on the axis is given. At most 5,000 rows.");
        group.MapPost("/steer-sweep/chart", Chart)
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("steer-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("steerSweepChart")
            .WithSummary("The steer sweep as a chart")
            .WithDescription("Takes the body of steer-sweep and draws camber over steer, with the handbooks' approximation for comparison.");
        group.MapPost("/caster-from-readings", Read)
            .WithExample("caster-from-readings")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("casterFromReadings")
            .WithSummary("Which caster and inclination follow from camber readings on turn plates?")
            .WithDescription("Least squares over the exact model for any three or more readings, with standard errors and 90 % ranges from the gauge's error, the residual of each reading, and the workshop's shortcut formulas for comparison.");
    }

    private static Results<Answer<SteeringAxisAnswer>, Problem> Axis(Body<SteeringAxisRequest> body)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        return new Answer<SteeringAxisAnswer>(SteeringAxisMapper.ToAnswer(request));
    }

    private static Results<Answer<SteerSweepAnswer>, Problem> Sweep(Body<SteerSweepRequest> body) =>
        TrySweep(body, out var answer, out var problem) ? new Answer<SteerSweepAnswer>(answer) : problem;

    private static Results<SvgAnswer, Problem> Chart(Body<SteerSweepRequest> body, QueryReader query) =>
        TrySweep(body, out _, out var problem) ? new SvgAnswer(ChartDrawing.Draw(SteerSweepChart.Build(body.Value!, query.Units), query.WidthPx)) : problem;

    private static bool TrySweep(
        Body<SteerSweepRequest> body, [NotNullWhen(true)] out SteerSweepAnswer? answer, [NotNullWhen(false)] out Problem? problem)
    {
        answer = null;
        problem = body.Problem!;
        if (body.Value is not { } request)
            return false;
        answer = SteerSweepMapper.ToAnswer(request);
        problem = answer.Rows.Length == 0 ? SteeringProblems.NothingReached(request, answer.Unreachable[0].Reason) : null;
        return problem is null;
    }

    private static Results<Answer<CasterFromReadingsAnswer>, Problem> Read(Body<CasterFromReadingsRequest> body)
    {
        if (body.Value is not { } request)
            return body.Problem!;

        var readings = Array.ConvertAll(request.Readings, reading => new SteerReading(reading.SteerDeg, reading.CamberDeg));
        var result = CasterReadings.From(readings, SteerSweepMapper.Side(request.Side), request.GaugeErrorDeg ?? CasterReadings.DefaultGaugeErrorDeg);
        return result.Fit is { } fit
            ? new Answer<CasterFromReadingsAnswer>(CasterFromReadingsMapper.ToAnswer(request, result, fit, readings))
            : SteeringProblems.NotTold(result.Gap!.Value, readings, result.WorkshopRuleCasterDeg);
    }
}

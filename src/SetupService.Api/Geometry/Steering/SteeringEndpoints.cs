using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Drawings.Charts;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Geometry.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>The calls about the axis a wheel steers about.</summary>
internal static class SteeringEndpoints
{
    private static readonly SteeringAxisRules AxisRules = new();
    private static readonly SteerSweepRules SweepRules = new();

    public static void MapSteering(this RouteGroupBuilder group)
    {
        group.MapPost("/steering-axis", Axis)
            .WithExample("steering-axis")
            .WithName("steeringAxis")
            .WithSummary("Where does the steering axis stand to its wheel?")
            .WithDescription("Caster, inclination, scrub radius and trail from the two joints a left wheel steers about, with where the axis meets the ground and how far the wheel centre stands off it.");
        group.MapPost("/steer-sweep", Sweep)
            .WithQuery(QueryParameters.Units)
            .WithExample("steer-sweep")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("steerSweep")
            .WithSummary("What does camber do while the wheel steers?")
            .WithDescription("Turns a wheel about a fixed axis of given caster and inclination, exactly, and shows the handbooks' approximation beside it; scrub radius, trail and height where the wheel's place on its axis is given. At most 5,000 rows. With Accept: image/svg+xml the same as a chart.");
        group.MapPost("/caster-from-readings", Read)
            .WithExample("caster-from-readings")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("casterFromReadings")
            .WithSummary("Which caster and inclination do camber readings on turn plates tell?")
            .WithDescription("Least squares over the exact model for any three or more readings, with standard errors and 90 % ranges from the gauge's error, the residual of each reading, and the workshop's short cuts beside it as the approximations they are.");
    }

    private static Results<Answer<SteeringAxisAnswer>, Problem> Axis(Body<SteeringAxisRequest> body)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        return AxisRules.Validate(request).IsValid
            ? new Answer<SteeringAxisAnswer>(SteeringAxisAnswers.Of(request))
            : body.Refuse();
    }

    private static Results<PictureOr<SteerSweepAnswer>, Problem> Sweep(Body<SteerSweepRequest> body, PictureChoice picture, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!SweepRules.Validate(request).IsValid)
            return body.Refuse();

        var answer = SteerSweepAnswers.Of(request);
        if (answer.Rows.Length == 0)
            return SteeringProblems.NothingReached(request, answer.Unreachable[0].Reason);
        return picture.IsWanted
            ? new PictureOr<SteerSweepAnswer>(new SvgAnswer(ChartDrawing.Draw(SteerChart.Of(request, query.Units))))
            : new PictureOr<SteerSweepAnswer>(answer);
    }

    private static Results<Answer<CasterFromReadingsAnswer>, Problem> Read(Body<CasterFromReadingsRequest> body)
    {
        if (body.Value is not { } request)
            return body.Problem!;

        var readings = Array.ConvertAll(request.Readings, reading => new SteerReading(reading.SteerDeg, reading.CamberDeg));
        var result = CasterReadings.From(readings, SteerSweepReading.Side(request.Side), request.GaugeErrorDeg ?? CasterReadings.DefaultGaugeErrorDeg);
        return result.Fit is { } fit
            ? new Answer<CasterFromReadingsAnswer>(CasterFromReadingsAnswers.Of(request, result, fit, readings))
            : SteeringProblems.NotTold(result.Gap!.Value, readings, result.WorkshopRuleCasterDeg);
    }
}

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
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Envelope;

/// <summary>The call that finds how hard a car corners while it is braked or driven, and its chart.</summary>
internal static class EnvelopeEndpoint
{
    /// <summary>The speed where neither speed nor radius is given, km/h.</summary>
    public const double UsualSpeedKmh = 100;

    public static void MapEnvelope(this RouteGroupBuilder group)
    {
        group.MapPost("/envelope", Find)
            .WithQuery(QueryParameters.Units)
            .WithExample("envelope")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("envelope")
            .WithSummary("How hard does it corner while it brakes or drives?")
            .WithDescription("The most lateral acceleration over longitudinal acceleration and what ends it at each point: side force of the front or rear, brakes or driven wheels at their end, roll-over, travel. Load transfer, pitch, dive camber, brake and drive shares, differential, combined slip and forces of the air act; yaw acceleration, engine limit, banking and crests stay out. At most 200 rows.");
        group.MapPost("/envelope/chart", Chart)
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("envelope")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("envelopeChart")
            .WithSummary("The grip envelope as charts")
            .WithDescription("Takes the body of envelope and draws the most lateral acceleration, the limit of each axle, the grip used lengthwise and pitch over longitudinal acceleration.");
    }

    private static Results<Answer<EnvelopeAnswer>, Problem> Find(Body<EnvelopeRequest> body, QueryReader query, RequestWork work) =>
        TryFind(body, query.Units, work, out var answer, out var problem) ? new Answer<EnvelopeAnswer>(answer) : problem;

    private static Results<SvgAnswer, Problem> Chart(Body<EnvelopeRequest> body, QueryReader query, RequestWork work) =>
        TryFind(body, query.Units, work, out var answer, out var problem)
            ? new SvgAnswer(EnvelopeChart.Draw(body.Value!, answer, query.Units, query.WidthPx))
            : problem;

    private static bool TryFind(
        Body<EnvelopeRequest> body, UnitSystem units, RequestWork work, [NotNullWhen(true)] out EnvelopeAnswer? answer, [NotNullWhen(false)] out Problem? problem)
    {
        answer = null;
        problem = body.Problem!;
        if (body.Value is not { } request)
            return false;
        if (!VehicleMapper.Map(request.Vehicle).Under("vehicle").TryGet(out var vehicle, out var refusal))
        {
            problem = body.Refuse(refusal);
            return false;
        }

        var turn = request.Turn ?? TurnDirection.Left;
        var path = request.CornerRadiusM is { } radiusM ? TurnPath.AtRadius(turn, radiusM) : TurnPath.AtSpeed(turn, request.SpeedKmh ?? UsualSpeedKmh);
        var range = request.LongitudinalG.ToRange();
        var (from, to) = (Math.Min(range.From, range.To), Math.Max(range.From, range.To));
        answer = CorneringEvaluation.Create(path, request.HeldLateralG, vehicle, units, work.Budget, (from, to)) is { } car
            ? EnvelopeAnswers.Create(request, car, range)
            : null;
        problem = answer is null ? HandlingProblems.NoCorner(vehicle) : null;
        work.Cancellation.ThrowIfCancellationRequested();
        return answer is not null;
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Vehicles;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>The call that asks the tyres.</summary>
internal static class DiagnosisEndpoints
{
    private static readonly DiagnosisRules Rules = new();

    public static void MapDiagnosis(this RouteGroupBuilder group) =>
        group.MapPost("/diagnosis", Diagnose)
            .WithQuery(QueryParameters.Units)
            .WithExample("wear-diagnosis")
            .WithName("wearDiagnosis")
            .WithSummary("Why do the tyres wear as they do?")
            .WithDescription("From depths, what eye and hand find, temperatures, pressures, alignment and history: how likely each cause is, several may hold at once, what speaks for and against it, what to do with the amount where physics gives one, and the measurement expected to tell most. With a whole vehicle also how many degrees the camber is short, learned from the treads. What was not read is unknown. With Accept: image/svg+xml the treads as a picture.");

    private static Results<PictureOr<DiagnosisAnswer>, Problem> Diagnose(
        Body<DiagnosisRequest> body, PictureChoice picture, QueryReader query, TimeProvider clock)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        Vehicle? vehicle = null;
        if (!Rules.Validate(request).IsValid || (request.Vehicle is { } document && !VehicleReading.TryRead(document, out vehicle)))
            return body.Refuse();
        var today = request.ReadOn is { } day ? DiagnosisReading.Day(day)!.Value : DateOnly.FromDateTime(clock.GetUtcNow().Date);
        var car = DiagnosedCar.Of(request, vehicle, today);
        return picture.IsWanted
            ? new PictureOr<DiagnosisAnswer>(new SvgAnswer(TreadChart.Draw(car, query.Units)))
            : new PictureOr<DiagnosisAnswer>(DiagnosisAnswers.Of(car, query.Units));
    }
}

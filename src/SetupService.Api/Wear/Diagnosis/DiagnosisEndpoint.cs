using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>The calls that diagnose tyre wear and draw the treads.</summary>
internal static class DiagnosisEndpoint
{
    public static void MapDiagnosis(this RouteGroupBuilder group)
    {
        group.MapPost("/diagnosis", Diagnose)
            .WithWork()
            .WithQuery(QueryParameters.Units)
            .WithExample("wear-diagnosis")
            .WithName("wearDiagnosis")
            .WithSummary("Why do the tyres wear as they do?")
            .WithDescription("How likely each cause is and why, what to do now in a step one would dare, whether an axle is done, and which measurement would tell most. What was not read is unknown.");
        group.MapPost("/diagnosis/chart", Chart)
            .WithWork()
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("wear-diagnosis")
            .WithName("wearDiagnosisChart")
            .WithSummary("The treads as a picture")
            .WithDescription("The depth across each tread: the readings, the curve fitted to them, and what the wear model predicts.");
    }

    private static Results<Answer<DiagnosisAnswer>, Problem> Diagnose(Body<DiagnosisRequest> body, QueryReader query, TimeProvider clock, RequestWork work) =>
        TryDiagnose(body, query.Units, clock, work, out var car, out var problem) ? new Answer<DiagnosisAnswer>(DiagnosisAnswers.Create(car, query.Units)) : problem;

    private static Results<SvgAnswer, Problem> Chart(Body<DiagnosisRequest> body, QueryReader query, TimeProvider clock, RequestWork work) =>
        TryDiagnose(body, query.Units, clock, work, out var car, out var problem) ? new SvgAnswer(TreadChart.Draw(car, query.Units, query.WidthPx)) : problem;

    private static bool TryDiagnose(
        Body<DiagnosisRequest> body, UnitSystem units, TimeProvider clock, RequestWork work, [NotNullWhen(true)] out DiagnosedCar? car, [NotNullWhen(false)] out Problem? problem)
    {
        car = null;
        problem = body.Problem!;
        if (body.Value is not { } request)
            return false;

        Vehicle? vehicle = null;
        if (request.Vehicle is { } document && !VehicleMapper.Map(document).Under("vehicle").TryGet(out vehicle, out var refusal))
        {
            problem = body.Refuse(refusal);
            return false;
        }

        var today = request.ReadOn is { } day ? TyreReadingMapper.Day(day)!.Value : DateOnly.FromDateTime(clock.GetUtcNow().Date);
        car = DiagnosedCar.From(request, vehicle, today, units, work.Budget);
        return true;
    }
}

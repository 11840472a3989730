using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http;
using SetupService.Api.Http.Pages;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Fitment.Report;

/// <summary>The call that makes a check a page to print.</summary>
internal static class ReportEndpoint
{
    public static void MapReport(this RouteGroupBuilder group) =>
        group.MapPost("/check/report", Report)
            .WithQuery(QueryParameters.Units)
            .WithExample("fitment-check")
            .WithName("fitmentReport")
            .WithSummary("The fit report: a check as a page to print")
            .WithDescription("Takes the body of the check and answers one HTML page that holds everything it shows: verdict, drawing, every check, what changes, what is still to be measured, what to do by hand. No script, nothing fetched; prints on A4 and Letter.");

    private static Results<PageAnswer, Problem> Report(Body<CheckRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        return CheckedFitting.Evaluate(request).TryGet(out var done, out var refusal)
            ? new PageAnswer(ReportPage.Write(done, request.Vehicle.Label, query.Units), ReportStyle.Page.Policy)
            : body.Refuse(refusal);
    }
}

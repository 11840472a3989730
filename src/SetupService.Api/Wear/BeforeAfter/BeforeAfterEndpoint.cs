using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Wear.BeforeAfter;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>The call that compares wear before and after a change.</summary>
internal static class BeforeAfterEndpoint
{
    public static void MapBeforeAfter(this RouteGroupBuilder group) =>
        group.MapPost("/before-after", Compare)
            .WithQuery(QueryParameters.Units)
            .WithExample("wear-before-after")
            .WithName("wearBeforeAfter")
            .WithSummary("Did the change alter how the tread wears?")
            .WithDescription("Wear of both shoulders and the centre before and after a change: the ratio of the rates with its 90 % range, whether the data show a change, the shoulders against the centre, and how many more laps would show the change seen or hoped for. Without readings after the change it plans the session. Too few readings give unknown with the reason.");

    private static Results<Answer<BeforeAfterAnswer>, Problem> Compare(Body<BeforeAfterRequest> body, QueryReader query)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        var question = new ComparisonQuestion
        {
            Before = DepthReadingDocument.ToDomain(request.Before),
            After = DepthReadingDocument.ToDomain(request.After),
            GaugeErrorMm = request.GaugeErrorMm,
            ExpectedRatio = request.ExpectedRatio,
            PlannedReadings = request.PlannedReadings ?? ComparisonQuestion.UsualReadings,
            PlannedLaps = request.PlannedLaps,
        };
        return new Answer<BeforeAfterAnswer>(BeforeAfterMapper.ToAnswer(request, question, WearComparison.Compute(question), query.Units));
    }
}

using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>The calls that compare wear before and after a change and draw it.</summary>
internal static class BeforeAfterEndpoint
{
    public static void MapBeforeAfter(this RouteGroupBuilder group)
    {
        group.MapPost("/before-after", Compare)
            .WithQuery(QueryParameters.Units)
            .WithExample("wear-before-after")
            .WithName("wearBeforeAfter")
            .WithSummary("Did the change alter how the tread wears?")
            .WithDescription("The shoulders against the centre and each rate before and after, beyond what sessions vary; how many more sessions would show it. Without readings after it plans.");
        group.MapPost("/before-after/chart", Chart)
            .WithQuery(QueryParameters.Units, QueryParameters.WidthPx)
            .WithExample("wear-before-after")
            .WithName("wearBeforeAfterChart")
            .WithSummary("Wear before and after as charts")
            .WithDescription("Takes the body of before-after and draws for each tyre how fast outer shoulder, centre and inner shoulder wore before and after, with 90 % ranges.");
    }

    private static Results<Answer<BeforeAfterAnswer>, Problem> Compare(Body<BeforeAfterRequest> body, QueryReader query) => body.Value is { } request
        ? new Answer<BeforeAfterAnswer>(BeforeAfterMapper.ToAnswer(request, BeforeAfterMapper.Compute(request), query.Units))
        : body.Problem!;

    private static Results<SvgAnswer, Problem> Chart(Body<BeforeAfterRequest> body, QueryReader query) => body.Value is { } request
        ? new SvgAnswer(BeforeAfterChart.Draw(BeforeAfterMapper.Compute(request), query.Units, query.WidthPx))
        : body.Problem!;
}

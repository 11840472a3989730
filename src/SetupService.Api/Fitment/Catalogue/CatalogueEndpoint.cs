using Microsoft.AspNetCore.Http.Metadata;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Fitment.Catalogue;

/// <summary>The call that holds a catalogue of wheels and tyres against many cars.</summary>
internal static class CatalogueEndpoint
{
    public static void MapCatalogue(this IEndpointRouteBuilder group)
    {
        group.ServiceProvider.GetRequiredService<JsonContract>().ReaderOf<CatalogueCarLine>();
        var caps = group.ServiceProvider.GetRequiredService<CapSettings>();
        group.MapPost("/catalogue", Start)
            .WithStreamPlace()
            .WithQuery(VerdictFilter.Parameter)
            .WithMetadata(new AcceptsMetadata([FormParts.MediaType], typeof(string)))
            .WithMediaTypes(NdjsonBatch.MediaType)
            .WithProblems(ProblemTypes.InvalidRequest, ProblemTypes.RequestTimeout, ProblemTypes.TooLarge, ProblemTypes.UnsupportedMediaType)
            .WithSchemas(typeof(CatalogueCarLine), typeof(CatalogueAnswerLine))
            .WithExample("fitment-catalogue")
            .WithName("fitmentCatalogue")
            .WithSummary("A catalogue of wheels and tyres against many cars")
            .WithDescription($$"""
                Asks every pair of candidate and car. Send multipart/form-data with the part cars (JSON lines, CatalogueCarLine) before the
                part candidates, of any length (JSON lines, BatchCandidateLine, or the table of /v1/fitment/batch/csv). The answer has a line for each pair with the
                verdict of the single check, by candidates, then cars. A car or candidate that cannot be read is told once. The last line counts everything; without it
                the answer was cut off. {{caps.OfCars}}. Both sides stream: read answers while you write.
                """);
    }

    private static IResult Start(HttpContext context, QueryReader query, JsonContract contract) =>
        (query.Problem ?? BatchEndpoint.FindFormProblem(context, "cars and candidates")) is { } problem
            ? problem
            : new CatalogueAnswer(contract, BatchEndpoint.BoundaryOf(context)!, VerdictFilter.From(query));
}

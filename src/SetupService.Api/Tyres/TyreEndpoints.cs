using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>The calls that read tyre markings and hand out the tables behind them.</summary>
internal static class TyreEndpoints
{
    public static void MapTyres(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/v1/tyres/decode", Decode)
            .WithTags("Tyres")
            .WithQuery(TyreQuery.All)
            .WithExample("tyre-decode")
            .WithName("tyreDecode")
            .WithSummary("What does this tyre marking say?")
            .WithDescription("Reads a sidewall marking as people type it: dimensions, permitted rims, load, speed, rolling circumference. With a rim width, pressure, top speed, load or vertical rate it also tells the tyre in use.");
        var reference = routes.MapGroup("/v1/reference").WithTags("Reference");
        reference.MapGet("/load-indices", LoadIndices)
            .WithExample("load-indices")
            .WithName("loadIndices")
            .WithSummary("The load index table")
            .WithDescription("Every load index from 0 to 200 with the load it stands for. Carries an entity tag.");
        reference.MapGet("/speed-symbols", SpeedSymbols)
            .WithExample("speed-symbols")
            .WithName("speedSymbols")
            .WithSummary("The speed symbol table")
            .WithDescription("Every speed symbol with the speed it stands for. Carries an entity tag.");
    }

    private static Results<CacheableAnswer<LoadIndexTableAnswer>, Problem> LoadIndices(QueryReader query) => query.Problem is { } problem ? problem : ReferenceTables.LoadIndices;

    private static Results<CacheableAnswer<SpeedSymbolTableAnswer>, Problem> SpeedSymbols(QueryReader query) => query.Problem is { } problem ? problem : ReferenceTables.SpeedSymbols;

    private static Results<CacheableAnswer<TyreAnswer>, Problem> Decode(QueryReader query)
    {
        if (query.Problem is { } problem)
            return problem;
        var marking = TyreMarkingReader.Read(query.Text(TyreQuery.Marking)!).Value!;
        return new CacheableAnswer<TyreAnswer>(TyreAnswers.Create(marking, TyreQuery.Answer(marking, query), query.Number(TyreQuery.VerticalRateNPerMm), query.Units));
    }
}

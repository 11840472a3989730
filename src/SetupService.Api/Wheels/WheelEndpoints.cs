using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Wheels;

/// <summary>The call that reads wheel markings.</summary>
internal static class WheelEndpoints
{
    private static readonly TextParameter Marking = new(
        "marking", "The marking as stamped or as people type it.", WheelMarkingReader.MaximumLength, "8.5Jx18 ET44")
    {
        IsRequired = true,
        Judge = static text => WheelMarkingReader.Read(text).Fault,
    };

    public static void MapWheels(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/v1/wheels/decode", Decode)
            .WithTags("Wheels")
            .WithQuery(Marking, QueryParameters.Units)
            .WithExample("wheel-decode")
            .WithName("wheelDecode")
            .WithSummary("What does this wheel marking say?")
            .WithDescription("Reads a wheel's marking as stamped: width, flange, diameter, hump, offset, bolt circle, centre bore, load rating; with backspacing and frontspacing over the flanges.");

    private static Results<CacheableAnswer<WheelAnswer>, Problem> Decode(QueryReader query)
    {
        if (query.Problem is { } problem)
            return problem;
        return new CacheableAnswer<WheelAnswer>(WheelAnswer.From(WheelMarkingReader.Read(query.Text(Marking)!).Value!, query.Units));
    }
}

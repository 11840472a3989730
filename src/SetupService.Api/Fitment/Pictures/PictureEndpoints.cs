using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Drawings;
using SetupService.Api.Drawings.Badge;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;

namespace SetupService.Api.Fitment.Pictures;

/// <summary>The pictures a page shows by their address alone.</summary>
internal static class PictureEndpoints
{
    public static void MapPictures(this RouteGroupBuilder group)
    {
        group.MapGet("/drawing", Draw)
            .WithQuery([.. CompactQuery.Parameters, SignedAddress.Expires, SignedAddress.Signature])
            .WithMetadata(SignedAddress.Instance)
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("fitmentPicture")
            .WithSummary("The corner as a picture for a page")
            .WithDescription("The drawing of a check by its address alone, for the src of an img; carries an entity tag. What the query leaves out is unknown, as in the check.");
        group.MapGet("/badge", Badge)
            .WithQuery([.. CompactQuery.Parameters, SignedAddress.Expires, SignedAddress.Signature])
            .WithMetadata(SignedAddress.Instance)
            .WithName("fitmentBadge")
            .WithSummary("Whether it fits, as a small card for a page")
            .WithDescription("The verdict of a check in words, what decided it and the wheel and tyre meant, as SVG by its address alone. Takes the query of the drawing; what is not known it calls not known.");
    }

    private static Results<CacheableSvg, Problem> Draw(QueryReader query)
    {
        if (query.Problem is { } problem)
            return problem;
        if (!CompactQuery.Evaluate(query).TryGet(out var done, out var refusal))
            return Problem.Invalid(refusal);
        return done.Candidate.Tyre.Marking.HasDimensions
            ? new CacheableSvg(CornerDrawing.Draw(done.Car, done.Candidate, done.Sheet, query.Units))
            : CompactQuery.WithoutSize(done);
    }

    private static Results<CacheableSvg, Problem> Badge(QueryReader query)
    {
        if (query.Problem is { } problem)
            return problem;
        return CompactQuery.Evaluate(query).TryGet(out var done, out var refusal)
            ? new CacheableSvg(BadgeDrawing.Draw(done.Car, done.Candidate, done.Sheet, query.Units))
            : Problem.Invalid(refusal);
    }
}

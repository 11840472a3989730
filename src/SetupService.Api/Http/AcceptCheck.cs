using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Http;

/// <summary>Refuses with 406, before any work, what the endpoint has no acceptable form of (RFC 9110, section 12.5.1).</summary>
internal static class AcceptCheck
{
    public static Problem? Find(HttpContext context)
    {
        var accept = context.Request.Headers.Accept;
        if (accept.Count == 0 || context.GetEndpoint()?.Metadata is not { } metadata)
            return null;

        return Find(accept, metadata.GetOrderedMetadata<ProducedMedia>());
    }

    private static Problem? Find(StringValues accept, IReadOnlyList<ProducedMedia> produced)
    {
        if (accept.Count == 0 || produced.Count == 0 || (accept.Count == 1 && accept[0] is "" or "*/*"))
            return null;
        foreach (var media in produced)
        {
            if (accept.Count == 1 && accept[0] == media.Type)
                return null;
        }

        // A header that cannot be read asks for nothing that could be refused.
        if (!MediaTypeHeaderValue.TryParseList(accept.ToArray()!, out var ranges)
            || produced.Any(media => Quality(media.Type, ranges) > 0))
        {
            return null;
        }

        var types = string.Join(", ", produced.Select(media => media.Type).Distinct());
        return Problem.Create(ProblemTypes.NotAcceptable, $"The call answers in {types}; Accept allows none of it.");
    }

    /// <summary>The weight the most exact range gives to a media type; 0 where none names it.</summary>
    private static double Quality(string type, IList<MediaTypeHeaderValue> ranges)
    {
        MediaTypeHeaderValue candidate = new(type);
        var best = ranges
            .Where(range => range.MatchesAllTypes || candidate.Type.Equals(range.Type, StringComparison.OrdinalIgnoreCase)
                && (range.MatchesAllSubTypes || candidate.SubType.Equals(range.SubType, StringComparison.OrdinalIgnoreCase)))
            .MinBy(range => range.MatchesAllTypes ? 2 : range.MatchesAllSubTypes ? 1 : 0);
        return best is null ? 0 : best.Quality ?? 1;
    }
}

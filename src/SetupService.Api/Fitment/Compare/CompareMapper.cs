using SetupService.Api.Http;
using SetupService.Domain.Fitment;

namespace SetupService.Api.Fitment.Compare;

/// <summary>Maps the request of a comparison to domain values.</summary>
internal static class CompareMapper
{
    /// <summary>The fittings of a comparison.</summary>
    public static MapResult<(Fitting Current, Fitting Candidate)> Map(ComparisonRequest request)
    {
        Refusal? refusal = null;
        var current = FitmentMapper.Map(request.Current).Take("current", ref refusal);
        var candidate = FitmentMapper.Map(request.Candidate).Take("candidate", ref refusal);
        if (refusal is not null)
            return refusal;
        return (current, candidate);
    }
}

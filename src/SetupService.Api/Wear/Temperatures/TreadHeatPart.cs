using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Wear.Temperatures;

/// <summary>What a tread's temperatures say; figures are as read, not corrected for cooling.</summary>
public sealed record TreadHeatPart
{
    /// <summary>Outer less inner shoulder; negative = the inner one is hotter.</summary>
    public required UncertaintyResponse OuterLessInnerC { get; init; }

    /// <summary>The hottest place less the coldest.</summary>
    public required UncertaintyResponse WidestSpreadC { get; init; }

    /// <summary>The middle less the mean of the shoulders; positive = the middle is hotter.</summary>
    public required UncertaintyResponse CentreLessShouldersC { get; init; }

    /// <summary>Mean of the three places.</summary>
    public required UncertaintyResponse MeanC { get; init; }

    /// <summary>The tread at the end of the lap; null where that cannot be told.</summary>
    public required TreadAtLapEndPart? AtLapEndC { get; init; }

    /// <summary>Each figure against its range, in this order.</summary>
    public required TreadFindingPart[] Findings { get; init; }

    /// <summary>How the readings contradict each other; null where they do not.</summary>
    [Sample("The tread means 12 °C and the air is said to be 21 °C.")]
    public required string? Contradiction { get; init; }
}

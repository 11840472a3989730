using SetupService.Api.Http.Contract;
using SetupService.Domain.Geometry.Alignment;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>What the two sides' inclinations and included angles hint at. An inspection of the parts decides.</summary>
public sealed record IncludedAngleHintPart
{
    /// <summary>Where to look first.</summary>
    [Sample("noDifference")]
    public required IncludedAngleHint Hint { get; init; }

    /// <summary>The hint as sentences, with the figures of the case.</summary>
    [Sample("Left and right differ by 0.10° in steering-axis inclination and by 0.20° in included angle. That is within the 0.50° in which sides count as equal; it does not show that parts are sound.")]
    public required string Text { get; init; }
}

using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Ride;

/// <summary>Front and rear against each other.</summary>
public sealed record FlatRidePart
{
    /// <summary>Rear ride frequency by the front's.</summary>
    [Sample(1.12)]
    public required double FrequencyRatio { get; init; }

    /// <summary>Whether that lets both ends fall into step after a bump.</summary>
    [Sample(true)]
    public required bool IsFlat { get; init; }

    /// <summary>The same as a sentence.</summary>
    [Sample("It rides flat.")]
    public required string Text { get; init; }
}

using SetupService.Api.Http.Contract;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Forecast;

/// <summary>The zone that ends the tyre if it is used as it was.</summary>
public sealed record EndsFirstPart
{
    /// <summary>The zone estimated to be at the limit first.</summary>
    [Sample("inner")]
    public required TreadPlace Zone { get; init; }

    /// <summary>How sure that is.</summary>
    [Sample(0.97)]
    public required double Probability { get; init; }

    /// <summary>Whether the readings tell it from the other zones: a probability of 0.9 or more.</summary>
    [Sample(true)]
    public required bool IsToldApart { get; init; }
}

using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Forecast;

/// <summary>What turning the tyre on its rim brings: outer and inner shoulder change places. Only where the tread has no direction and no marked outside.</summary>
public sealed record TurningPart
{
    /// <summary>When, and how much.</summary>
    public required ChangeOfPlacePart Change { get; init; }

    /// <summary>Whether the readings show that the shoulders wear at different rates; else the gain may be chance.</summary>
    [Sample(true)]
    public required bool IsShown { get; init; }
}

using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>A zone's wear before and after.</summary>
public sealed record ZoneChangePart
{
    /// <summary>By the compared clock; null where the readings before do not tell a rate.</summary>
    public required RateChangePart? Rate { get; init; }

    /// <summary>Per 1000 km of road beside it; null where laps are not compared or the road is not told apart.</summary>
    public required RateChangePart? Road { get; init; }

    /// <summary>The ratio further readings are to show: the one expected, or the one seen.</summary>
    [Sample(0.8)]
    public required double? SoughtRatio { get; init; }

    /// <summary>Further laps that would show it four times in five; null where the road is compared, or no use would.</summary>
    [Sample(38.0)]
    public required double? LapsToShow { get; init; }

    /// <summary>The same in kilometres; null where laps are compared without road, or no use would.</summary>
    [Sample(2100.0)]
    public required double? KmToShow { get; init; }

    /// <summary>How often the laps planned would show it; null where none are planned.</summary>
    [Sample(0.87)]
    public required double? PlannedPower { get; init; }
}

namespace SetupService.Domain.Suspension;

/// <summary>Why a suspension does not tell something.</summary>
public enum SuspensionGapKind
{
    /// <summary>Nobody described the suspension: neither points nor readings are given.</summary>
    NotDescribed,

    /// <summary>Points or readings contradict each other.</summary>
    Contradicts,

    /// <summary>Camber was read at one height only, which makes no curve.</summary>
    TooFewReadings,

    /// <summary>The points do not close at the stated position, or leave the wheel a free movement.</summary>
    DoesNotHold,

    /// <summary>The parts stop short of a travel.</summary>
    TravelNotReached,

    /// <summary>The readings, carried on for 20 mm, end before a travel.</summary>
    BeyondReadings,

    /// <summary>Only points tell it; readings of camber and toe do not.</summary>
    NeedsPoints,

    /// <summary>The work allowed was spent, or the caller has gone.</summary>
    WorkSpent,
}

/// <summary>What a suspension does not tell, why, and what would settle it.</summary>
/// <param name="Kind">Why.</param>
/// <param name="Needs">The inputs that would settle it, as JSON Pointers within the axle, for example <c>/suspension/points</c>.</param>
public sealed record SuspensionGap(SuspensionGapKind Kind, IReadOnlyList<string> Needs)
{
    /// <summary>Where it stops short, the last travel reached, mm from the stated position; else null.</summary>
    public double? ReachedMm { get; init; }

    /// <summary>Where it contradicts itself, the member to look at first, as the contract names it below <c>points</c> or the suspension; else null.</summary>
    public string? Member { get; init; }
}

/// <summary>Why nothing is known of a wheel at the ride height asked for.</summary>
/// <param name="Kind">Why.</param>
/// <param name="Reason">The same as a clause with the figures of the case.</param>
/// <param name="Input">The input to look at, as a JSON Pointer within the axle.</param>
public sealed record RideHeightGap(SuspensionGapKind Kind, string Reason, string Input);

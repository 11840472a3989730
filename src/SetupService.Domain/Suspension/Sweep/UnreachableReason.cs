namespace SetupService.Domain.Suspension.Sweep;

/// <summary>Why a position cannot be reached.</summary>
public enum UnreachableReason
{
    /// <summary>The parts do not meet there.</summary>
    DoesNotClose,

    /// <summary>The parts meet, but only past a place where they no longer hold the wheel, or assembled another way.</summary>
    DeadPoint,

    /// <summary>The readings, carried on for 20 mm, end before the travel.</summary>
    BeyondReadings,

    /// <summary>How far a rack steers was not read.</summary>
    RackNotRead,

    /// <summary>The work allowed was spent before the position was found, or the caller has gone.</summary>
    WorkSpent,
}

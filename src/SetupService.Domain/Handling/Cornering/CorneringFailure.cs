namespace SetupService.Domain.Handling.Cornering;

/// <summary>Why there is no equilibrium.</summary>
public enum CorneringFailure
{
    /// <summary>The inner side is without load: the car would roll over.</summary>
    RollsOver,

    /// <summary>The suspension, or its readings, do not reach the travel or steer the turn asks for.</summary>
    TravelNotReached,

    /// <summary>The tyres, held to a fixed peak, cannot give the side force.</summary>
    GripExceeded,

    /// <summary>The work allowed was spent, or the caller has gone.</summary>
    WorkSpent,
}

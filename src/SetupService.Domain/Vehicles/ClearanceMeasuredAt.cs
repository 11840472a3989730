namespace SetupService.Domain.Vehicles;

/// <summary>Where in its travel the suspension stood when the gaps were measured.</summary>
public enum ClearanceMeasuredAt
{
    /// <summary>The person has already allowed for travel: the gap is the smallest over all of it.</summary>
    WorstTravel,

    /// <summary>At ride height; travel still comes off.</summary>
    RideHeight,
}

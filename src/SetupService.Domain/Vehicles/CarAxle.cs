namespace SetupService.Domain.Vehicles;

/// <summary>One of the two axles of a car.</summary>
public enum CarAxle
{
    /// <summary>The front, steered axle.</summary>
    Front,

    /// <summary>The rear axle.</summary>
    Rear,
}

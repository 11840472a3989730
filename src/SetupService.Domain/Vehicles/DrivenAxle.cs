namespace SetupService.Domain.Vehicles;

/// <summary>Which axle the engine drives.</summary>
public enum DrivenAxle
{
    /// <summary>The front axle.</summary>
    Front,

    /// <summary>The rear axle.</summary>
    Rear,

    /// <summary>Both axles.</summary>
    Both,
}

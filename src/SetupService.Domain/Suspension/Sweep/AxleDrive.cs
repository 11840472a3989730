namespace SetupService.Domain.Suspension.Sweep;

/// <summary>How far an axle drives the car.</summary>
public enum AxleDrive
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>It alone.</summary>
    Alone,

    /// <summary>Together with the other axle, in a share that is not known.</summary>
    Shared,
}

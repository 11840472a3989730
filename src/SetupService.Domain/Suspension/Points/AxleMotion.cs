namespace SetupService.Domain.Suspension.Points;

/// <summary>How the two wheels of an axle move together.</summary>
public enum AxleMotion
{
    /// <summary>Both alike: heave.</summary>
    Parallel,

    /// <summary>As much up on one side as down on the other: roll.</summary>
    Opposite,
}

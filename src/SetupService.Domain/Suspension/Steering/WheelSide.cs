namespace SetupService.Domain.Suspension.Steering;

/// <summary>Which side of the car a wheel is on, seen in the direction of travel.</summary>
public enum WheelSide
{
    /// <summary>Left.</summary>
    Left,

    /// <summary>Right.</summary>
    Right,
}

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>One position of a corner in which its parts close, and how it moves from there.</summary>
public readonly record struct SuspensionPose
{
    /// <summary>Wheel travel from the stated position, mm; positive = bump.</summary>
    public double TravelMm { get; init; }

    /// <summary>Rack travel, mm; positive = to the left.</summary>
    public double RackMm { get; init; }

    /// <summary>Where the upright is.</summary>
    public UprightPose Pose { get; init; }

    /// <summary>How it moves per mm of wheel travel, the rack held.</summary>
    public UprightMotion PerTravel { get; init; }

    /// <summary>How it moves per mm of rack, the wheel's height held; nothing where there is no rack.</summary>
    public UprightMotion PerRack { get; init; }

    /// <summary>The largest length by which a part does not close, mm.</summary>
    public double ResidualMm { get; init; }

    /// <summary>
    /// Which way the parts are assembled: the sign of the constraints' determinant. It changes only through a dead point, where the
    /// links hold the wheel no longer.
    /// </summary>
    public int AssemblySign { get; init; }
}

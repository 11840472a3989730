namespace SetupService.Domain.Suspension;

/// <summary>One place of a wheel's path, against the wheel at the stated position.</summary>
/// <param name="TravelMm">Wheel travel from the stated position, mm; positive = bump.</param>
/// <param name="CamberDeg">Camber against the body, degrees; negative = top towards the car's centre.</param>
/// <param name="OutboardMm">Movement of the wheel centre outboard since the stated position, mm; null where it is not known.</param>
public readonly record struct WheelPathPoint(double TravelMm, double CamberDeg, double? OutboardMm);

/// <summary>
/// The way of a left wheel between two travels, the rack in the middle. Places lie in the order of travel asked for, both ends and the stated
/// position (where it lies between them) among them.
/// </summary>
public sealed record WheelPath
{
    /// <summary>
    /// Distance between places at most, mm. A turning point lies within half a step of a place looked at: camber that curves by
    /// 0.0005°/mm² (a strut or wishbone of usual lengths: 0.0001 to 0.0004) turns 0.001° beyond it.
    /// </summary>
    public const double LongestStepMm = 4;

    /// <summary>The places; empty where <see cref="Gap"/> says why nothing is known.</summary>
    public required IReadOnlyList<WheelPathPoint> Points { get; init; }

    /// <summary>Camber at the stated position, degrees; the lean of a place is its camber less this.</summary>
    public double StatedCamberDeg { get; init; }

    /// <summary>Why the path is not known, or not to its end; null where it is.</summary>
    public SuspensionGap? Gap { get; init; }

    /// <summary>Why the sideways movement of the wheel centre is not known; null where it is.</summary>
    public SuspensionGap? SidewaysGap { get; init; }

    /// <summary>Standard error of camber at the place it is known least, degrees; 0 where points are taken as exact.</summary>
    public double CamberErrorDeg { get; init; }

    /// <summary>True where readings are carried on beyond their ends, an assumption to be listed.</summary>
    public bool IsExtrapolated { get; init; }
}

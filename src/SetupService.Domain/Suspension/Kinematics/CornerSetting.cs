using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>A corner as it stands: its suspension and how the wheel is set in it.</summary>
public sealed record CornerSetting
{
    /// <summary>The points, at the stated position.</summary>
    public required Hardpoints Suspension { get; init; }

    /// <summary>Camber at the stated position, degrees; negative = top towards the car's centre.</summary>
    public required double CamberDeg { get; init; }

    /// <summary>Toe at the stated position, degrees; positive = toe-in.</summary>
    public required double ToeDeg { get; init; }

    /// <summary>Height of the wheel centre over the ground at no camber, mm.</summary>
    public required double LoadedRadiusMm { get; init; }

    /// <summary>How both wheels move together; only a twist beam tells the difference.</summary>
    public AxleMotion Motion { get; init; }
}

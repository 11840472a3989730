using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension;

/// <summary>
/// How a wheel is set in its suspension, and the few figures that stand in for what the suspension does not tell itself: stated, or typical
/// values that the caller has listed as assumptions. Of a left wheel; a right one is given as its mirror image, with the same signs.
/// </summary>
public sealed record WheelSetup
{
    /// <summary>Camber at the stated position, degrees; negative = top towards the car's centre. Null = as read; with points, or where it was not read, 0.</summary>
    public required double? CamberDeg { get; init; }

    /// <summary>Toe at the stated position, degrees; positive = toe-in. Null = as read; with points, or where it was not read, 0.</summary>
    public required double? ToeDeg { get; init; }

    /// <summary>Height of the wheel centre over the ground at no camber, mm.</summary>
    public double LoadedRadiusMm { get; init; }

    /// <summary>How much higher the body stands than where points and readings were taken, mm; negative = lowered. Travel is then counted from there.</summary>
    public double RideHeightChangeMm { get; init; }

    /// <summary>How both wheels move together; only a twist beam tells the difference.</summary>
    public AxleMotion Motion { get; init; }

    /// <summary>Whether the axle steers.</summary>
    public bool IsSteered { get; init; }

    /// <summary>Distance between the contact centres, mm, above zero.</summary>
    public double TrackMm { get; init; }

    /// <summary>Roll-centre height at the stated position, mm above the ground.</summary>
    public double RollCentreHeightMm { get; init; }

    /// <summary>Front-view swing arm, mm: contact to instant centre, positive = the instant centre is inboard.</summary>
    public double SwingArmMm { get; init; }

    /// <summary>Caster, degrees.</summary>
    public double CasterDeg { get; init; }

    /// <summary>Steering-axis inclination, degrees.</summary>
    public double SteeringAxisInclinationDeg { get; init; }

    /// <summary>Caster and inclination as stated, degrees, each null where it was not; of a corner known by its angles alone.</summary>
    public (double? CasterDeg, double? InclinationDeg)? StatedAxis { get; init; }

    /// <summary>Caster set on top of what the suspension tells or <see cref="CasterDeg"/> says, degrees, as the wheel's turn about its axis feels it.</summary>
    public double AddedCasterDeg { get; init; }

    /// <summary>Spring travel by wheel travel.</summary>
    public double SpringMotionRatio { get; init; }

    /// <summary>Damper travel by wheel travel.</summary>
    public double DamperMotionRatio { get; init; }
}

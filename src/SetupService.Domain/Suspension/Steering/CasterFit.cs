using SetupService.Domain.Answers;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>The steering axis that explains camber readings best, degrees; signs as everywhere, the same for both sides.</summary>
public readonly record struct CasterFit
{
    /// <summary>Caster; positive = top rearward.</summary>
    public required double CasterDeg { get; init; }

    /// <summary>What the gauge's error leaves open in the caster.</summary>
    public required double CasterStandardErrorDeg { get; init; }

    /// <summary>Steering-axis inclination; positive = top inboard.</summary>
    public required double SteeringAxisInclinationDeg { get; init; }

    /// <summary>What the gauge's error leaves open in the inclination: some ten times as much as in the caster.</summary>
    public required double InclinationStandardErrorDeg { get; init; }

    /// <summary>Camber with the wheel straight ahead.</summary>
    public required double CamberAheadDeg { get; init; }

    /// <summary>What the gauge's error leaves open in the camber straight ahead.</summary>
    public required double CamberAheadStandardErrorDeg { get; init; }

    /// <summary>Standard error of one camber reading that the errors above are worked from.</summary>
    public required double GaugeErrorDeg { get; init; }

    /// <summary>
    /// How far the readings themselves scatter about the fit, as a standard deviation of one reading; null for three readings,
    /// which any axis within reach meets exactly.
    /// </summary>
    public required double? ResidualStandardDeviationDeg { get; init; }

    /// <summary>The 90 % range of the caster.</summary>
    public Uncertainty Caster => RangeOf(CasterDeg, CasterStandardErrorDeg);

    /// <summary>The 90 % range of the inclination.</summary>
    public Uncertainty Inclination => RangeOf(SteeringAxisInclinationDeg, InclinationStandardErrorDeg);

    /// <summary>The 90 % range of the camber straight ahead.</summary>
    public Uncertainty CamberAhead => Uncertainty.Ninety(CamberAheadDeg, CamberAheadStandardErrorDeg);

    /// <summary>
    /// The camber this axis gives a wheel at a steer angle, degrees, under 90 in size; not a number where it cannot head there.
    /// </summary>
    public double CamberDegAt(double steerDeg, WheelSide side)
    {
        // A left wheel's toe is the opposite of its steer, a right wheel's is its steer.
        var (sinToe, cosToe) = Math.SinCos(double.DegreesToRadians(side == WheelSide.Left ? -steerDeg : steerDeg));
        var (sinAhead, cosAhead) = Math.SinCos(double.DegreesToRadians(CamberAheadDeg));
        var inclination = Math.Tan(double.DegreesToRadians(SteeringAxisInclinationDeg));
        var lean = (Math.Tan(double.DegreesToRadians(CasterDeg)) * sinToe) + (inclination * cosToe);
        return double.RadiansToDegrees(Math.Asin((sinAhead + (inclination * cosAhead)) / Math.Sqrt(1 + (lean * lean))) - Math.Atan(lean));
    }

    // Camber readings are linear in the tangents of the axis' angles; a wide range is fair there and not in the angles.
    private static Uncertainty RangeOf(double angleDeg, double standardErrorDeg)
    {
        var tangent = Math.Tan(double.DegreesToRadians(angleDeg));
        var range = Uncertainty.Ninety(tangent, double.DegreesToRadians(standardErrorDeg) * (1 + (tangent * tangent)));
        return new(angleDeg, AngleDeg(range.Lower), AngleDeg(range.Upper), range.LevelPct);
    }

    private static double AngleDeg(double tangent) => double.RadiansToDegrees(Math.Atan(tangent));
}

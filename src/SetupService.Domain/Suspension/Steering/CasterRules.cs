namespace SetupService.Domain.Suspension.Steering;

/// <summary>
/// Two short cuts from camber readings at opposite steer angles to caster, degrees. Both leave out what inclination and camber
/// do; null where no such readings are there.
/// </summary>
public static class CasterRules
{
    /// <summary>Steer angle the workshop's rule is made for, degrees.</summary>
    public const double WorkshopSteerDeg = 20;

    /// <summary>Caster per degree of camber difference by the workshop's rule (common practice, no source).</summary>
    public const double WorkshopFactor = 1.5;

    /// <summary>How far a reading may lie off the angle a rule wants, degrees (our choice).</summary>
    public const double SteerToleranceDeg = 1;

    /// <summary>Least steer angle of a pair, degrees (our choice): below it the gauge's error is multiplied by more than six.</summary>
    public const double LeastPairSteerDeg = 5;

    /// <summary>
    /// The workshop's rule: 1.5 × (camber with the wheel as the inner one − camber as the outer one) at 20° either way. Several
    /// readings at one lock are averaged. Reads some 2 to 4 % high.
    /// </summary>
    public static double? WorkshopDeg(ReadOnlySpan<SteerReading> readings, WheelSide side)
    {
        if (MeanCamber(readings, Inner(side) * WorkshopSteerDeg) is not { } inner) return null;
        if (MeanCamber(readings, -Inner(side) * WorkshopSteerDeg) is not { } outer) return null;
        return WorkshopFactor * (inner - outer);
    }

    /// <summary>
    /// The difference over the sum of both sines, 1 / (2 sin steer) for a symmetric pair: the pair of readings to either side
    /// with the widest steer among those that differ by no more than <see cref="SteerToleranceDeg"/> in size.
    /// </summary>
    public static (double CasterDeg, double SteerDeg)? PairDeg(ReadOnlySpan<SteerReading> readings, WheelSide side)
    {
        (double CasterDeg, double SteerDeg)? widest = null;
        foreach (var inner in readings)
        {
            foreach (var outer in readings)
            {
                var (innerSteerDeg, outerSteerDeg) = (Inner(side) * inner.SteerDeg, -Inner(side) * outer.SteerDeg);
                var steerDeg = (innerSteerDeg + outerSteerDeg) / 2;
                if (Math.Min(innerSteerDeg, outerSteerDeg) < LeastPairSteerDeg) continue;
                if (Math.Abs(innerSteerDeg - outerSteerDeg) > SteerToleranceDeg || steerDeg <= (widest?.SteerDeg ?? 0)) continue;
                widest = ((inner.CamberDeg - outer.CamberDeg) / (Sine(innerSteerDeg) + Sine(outerSteerDeg)), steerDeg);
            }
        }

        return widest;
    }

    // A wheel is the inner one where it is steered to its own side; left is positive.
    private static int Inner(WheelSide side) => side == WheelSide.Left ? 1 : -1;

    private static double Sine(double angleDeg) => Math.Sin(double.DegreesToRadians(angleDeg));

    private static double? MeanCamber(ReadOnlySpan<SteerReading> readings, double steerDeg)
    {
        var (sumDeg, count) = (0.0, 0);
        foreach (var reading in readings)
        {
            if (Math.Abs(reading.SteerDeg - steerDeg) > SteerToleranceDeg) continue;
            sumDeg += reading.CamberDeg;
            count++;
        }

        return count == 0 ? null : sumDeg / count;
    }
}

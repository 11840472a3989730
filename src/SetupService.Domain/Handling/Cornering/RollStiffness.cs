using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Handling.Cornering;

/// <summary>
/// Roll stiffness of one axle at ride height by the textbook's closed form, N m per degree of roll: springs k t²/2 with k at the wheel and
/// t the track, and bar, together in series with the tyres k t²/2. The motion ratio is taken as constant.
/// </summary>
/// <param name="SpringsNmPerDeg">Of the two springs.</param>
/// <param name="BarNmPerDeg">Of the anti-roll bar.</param>
/// <param name="TyresNmPerDeg">Of the two tyres.</param>
public readonly record struct RollStiffness(double SpringsNmPerDeg, double BarNmPerDeg, double TyresNmPerDeg)
{
    /// <summary>Of the suspension on rigid tyres.</summary>
    public double SuspensionNmPerDeg => SpringsNmPerDeg + BarNmPerDeg;

    /// <summary>Of the suspension with the tyres in series.</summary>
    public double TotalNmPerDeg => SuspensionNmPerDeg * TyresNmPerDeg / (SuspensionNmPerDeg + TyresNmPerDeg);

    /// <summary>The axle's.</summary>
    public static RollStiffness Compute(HandlingAxle axle)
    {
        ArgumentNullException.ThrowIfNull(axle);
        var perRate = double.DegreesToRadians(1) * axle.TrackMm * axle.TrackMm / 2000;
        return new(perRate * axle.WheelRateNPerMm, axle.BarRollRateNmPerDeg, perRate * axle.TyreRateNPerMm);
    }

    /// <summary>The front axle's share of both axles' stiffness with the tyres in series, percent.</summary>
    public static double FrontSharePct(HandlingCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var front = Compute(car.Front).TotalNmPerDeg;
        return 100 * front / (front + Compute(car.Rear).TotalNmPerDeg);
    }
}

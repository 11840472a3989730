namespace SetupService.Domain.Handling.Ride;

/// <summary>
/// One end of a car pushed down and let go: the sprung mass on its spring and damper, the tyre left out, which is hardly worked by so slow a swing. The damper brakes
/// with its rebound figure on the way up and with its bump figure on the way down, each taken as linear. Method page: docs/methods/ride.
/// </summary>
public readonly record struct ReleasedBody
{
    // From this ratio on the body creeps back and never swings.
    private const double Critical = 1;

    private readonly double _radPerS;
    private readonly double _bumpRatio;
    private readonly double _reboundRatio;

    private ReleasedBody(double radPerS, double bumpRatio, double reboundRatio) => (_radPerS, _bumpRatio, _reboundRatio) = (radPerS, bumpRatio, reboundRatio);

    /// <summary>One end; null where its damper is not known.</summary>
    public static ReleasedBody? From(RideAxle axle)
    {
        ArgumentNullException.ThrowIfNull(axle);
        return axle is { BumpRatio: { } bump, ReboundRatio: { } rebound } ? new(2 * Math.PI * axle.SpringFrequencyHz, bump, rebound) : null;
    }

    /// <summary>How far the body rises beyond its height on the first way up, as a share of the push; 0 where it creeps back.</summary>
    public double Overshoot => Left(_reboundRatio);

    /// <summary>Height above rest after this time, s, as a share of the push: −1 as it is let go.</summary>
    public double Height(double timeS)
    {
        var (height, isRising) = (-1.0, true);
        while (true)
        {
            var ratio = isRising ? _reboundRatio : _bumpRatio;
            var halfSwingS = ratio < Critical ? Math.PI / (_radPerS * Math.Sqrt(1 - (ratio * ratio))) : double.PositiveInfinity;
            if (timeS <= halfSwingS || height == 0) return height * Decay(ratio, timeS);
            (height, timeS, isRising) = (-height * Left(ratio), timeS - halfSwingS, !isRising);
        }
    }

    /// <summary>What is left on the other side after half a swing.</summary>
    private static double Left(double ratio) => ratio < Critical ? Math.Exp(-Math.PI * ratio / Math.Sqrt(1 - (ratio * ratio))) : 0;

    // From rest at 1: swinging, creeping, or just between.
    private double Decay(double ratio, double timeS)
    {
        var turned = _radPerS * timeS;
        if (ratio == Critical) return (1 + turned) * Math.Exp(-turned);
        if (ratio < Critical)
        {
            var damped = Math.Sqrt(1 - (ratio * ratio));
            var (sin, cos) = Math.SinCos(damped * turned);
            return Math.Exp(-ratio * turned) * (cos + (ratio / damped * sin));
        }

        var apart = Math.Sqrt((ratio * ratio) - 1);
        var (slow, fast) = (1 / (ratio + apart), ratio + apart);
        return ((fast * Math.Exp(-slow * turned)) - (slow * Math.Exp(-fast * turned))) / (fast - slow);
    }
}

namespace SetupService.Domain.Numerics.Statistics;

/// <summary>Student's t: an estimate over its standard error where the error itself is known from a few readings only.</summary>
public static class StudentT
{
    private const int MostSteps = 60;

    // Above this many degrees of freedom the normal distribution with its first two corrections is as good as exact.
    private const int Many = 2000;

    /// <summary>
    /// Probability of lying below a place, by the finite series in the angle atan(t/√ν) (Abramowitz and Stegun, Handbook of
    /// Mathematical Functions, 26.7.3 and 26.7.4).
    /// </summary>
    /// <param name="place">Where.</param>
    /// <param name="degreesOfFreedom">At least 1.</param>
    public static double Below(double place, int degreesOfFreedom)
    {
        if (degreesOfFreedom > Many) return NormalDistribution.Below(Normal(place, degreesOfFreedom));
        var root = Math.Sqrt(degreesOfFreedom);
        var hypotenuse = Math.Sqrt((place * place) + degreesOfFreedom);
        var (sin, cos) = (place / hypotenuse, root / hypotenuse);
        var isOdd = degreesOfFreedom % 2 == 1;
        var (term, sum) = isOdd ? (cos, 0.0) : (1.0, 0.0);
        for (var k = isOdd ? 1 : 0; k <= degreesOfFreedom - 2; k += 2)
        {
            sum += term;
            term *= cos * cos * (k + 1) / (k + 2);
        }

        var between = isOdd ? 2 / Math.PI * (Math.Atan2(place, root) + (sin * sum)) : sin * sum;
        return Math.Clamp(0.5 + (between / 2), 0, 1);
    }

    /// <summary>The place below which a share lies.</summary>
    /// <param name="share">From 0.5 to less than 1: an upper quantile.</param>
    /// <param name="degreesOfFreedom">At least 1.</param>
    public static double UpperQuantile(double share, int degreesOfFreedom)
    {
        var (low, high) = (0.0, 1.0);
        while (Below(high, degreesOfFreedom) < share && high < 1e9) (low, high) = (high, 2 * high);

        // Regula falsi would crawl in the tail; halving is sure, and the secant inside the bracket makes it quick.
        var (lowMiss, highMiss) = (Below(low, degreesOfFreedom) - share, Below(high, degreesOfFreedom) - share);
        for (var step = 0; step < MostSteps && high - low > 1e-14 * high; step++)
        {
            var middle = step % 3 == 2 ? (low + high) / 2 : low - (lowMiss * (high - low) / (highMiss - lowMiss));
            if (!(middle > low && middle < high)) middle = (low + high) / 2;
            var miss = Below(middle, degreesOfFreedom) - share;
            if (miss == 0) return middle;
            if (miss < 0) (low, lowMiss) = (middle, miss);
            else (high, highMiss) = (middle, miss);
        }

        return (low + high) / 2;
    }

    /// <summary>
    /// Probability that a t whose mean is shifted passes a place: what a test finds when there is something to find. The normal
    /// approximation of the noncentral t (Abramowitz and Stegun, 26.7.10).
    /// </summary>
    /// <param name="place">What has to be passed.</param>
    /// <param name="shift">How many standard errors the true value is away from nothing.</param>
    /// <param name="degreesOfFreedom">At least 1.</param>
    public static double AboveShifted(double place, double shift, int degreesOfFreedom)
    {
        var quarter = 1 - (1 / (4.0 * degreesOfFreedom));
        return NormalDistribution.Below((shift - (place * quarter)) / Math.Sqrt(1 + (place * place / (2.0 * degreesOfFreedom))));
    }

    private static double Normal(double place, int degreesOfFreedom)
    {
        // Abramowitz and Stegun, 26.7.8.
        var quarter = 1 - (1 / (4.0 * degreesOfFreedom));
        return place * quarter / Math.Sqrt(1 + (place * place / (2.0 * degreesOfFreedom)));
    }
}

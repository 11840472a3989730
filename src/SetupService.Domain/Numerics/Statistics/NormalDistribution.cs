namespace SetupService.Domain.Numerics.Statistics;

/// <summary>The standard normal distribution: mean 0, standard deviation 1.</summary>
public static class NormalDistribution
{
    // Beyond this many standard deviations a double cannot tell the probability from 0 or 1 by this series.
    private const double Furthest = 8.3;
    private const double RootOfTwoPi = 2.5066282746310002;
    private const int MostTerms = 200;
    private const int MostSteps = 40;

    /// <summary>Density at a place.</summary>
    public static double Density(double place) => Math.Exp(-place * place / 2) / RootOfTwoPi;

    /// <summary>
    /// Probability of lying below a place, to 1e-14 absolute, by the series of odd powers (Abramowitz and Stegun, Handbook of
    /// Mathematical Functions, 26.2.11).
    /// </summary>
    public static double Below(double place)
    {
        if (place <= -Furthest) return 0;
        if (place >= Furthest) return 1;
        var (term, sum) = (place, place);
        for (var odd = 3; odd < 2 * MostTerms && Math.Abs(term) > 1e-17; odd += 2)
        {
            term *= place * place / odd;
            sum += term;
        }

        return Math.Clamp(0.5 + (Density(place) * sum), 0, 1);
    }

    /// <summary>The place below which a share lies; <paramref name="share"/> is between 0 and 1, and ends are ±8.3.</summary>
    public static double Quantile(double share)
    {
        if (share <= 0) return -Furthest;
        if (share >= 1) return Furthest;
        var place = 0.0;
        for (var step = 0; step < MostSteps; step++)
        {
            // Newton's steps from 0 never pass the place: the density falls on the way. Far out they are kept short.
            var way = (share - Below(place)) / Density(place);
            place = Math.Clamp(place + Math.Clamp(way, -1, 1), -Furthest, Furthest);
            if (Math.Abs(way) < 1e-13) break;
        }

        return place;
    }
}

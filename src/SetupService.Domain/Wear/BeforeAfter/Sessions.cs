using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.StraightWear;

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>
/// How much wear rates vary from one session to the next with nothing changed: weather, surface, traffic, driver. A rate fitted over one session
/// has that error whole, over several less; no number of laps in one session takes it away.
/// </summary>
public static class Sessions
{
    /// <summary>
    /// Spread of a wear rate between sessions, one standard deviation as a share. Judgement: repeats weeks apart moved rates by up to 30 %
    /// (Tire Sci. Technol. 13(1), abstract).
    /// </summary>
    public const double UsualSpread = 0.2;

    /// <summary>
    /// Share of that spread in the ratio of a shoulder to the centre, where the pace cancels and only where on the track the tyre works does not.
    /// Judgement: the same work has 2 % for the ratio of whole tyres run together.
    /// </summary>
    public const double ShareInRatio = 0.5;

    /// <summary>How many sessions readings span.</summary>
    /// <param name="sessions">The session of each reading; empty = all in one.</param>
    public static int Count(ReadOnlySpan<int> sessions)
    {
        var count = 0;
        for (var i = 1; i < sessions.Length; i++)
        {
            // The stretch before a reading is of the reading's session; the first reading begins the first stretch.
            if (!sessions[1..i].Contains(sessions[i])) count++;
        }

        return Math.Max(1, count);
    }

    /// <summary>
    /// Sum of the squared weights that the fitted rate of a clock gives the sessions: 1 for one session, about 1/k for k alike. The weights add up to 1.
    /// </summary>
    /// <param name="design">When the readings were taken.</param>
    /// <param name="readings">The readings.</param>
    /// <param name="sessions">The session of each; empty = all in one.</param>
    /// <param name="isTrack">True for the rate by laps, false for that by road; where both clocks count as one it does not matter.</param>
    public static double SquaredWeights(WearDesign design, ReadOnlySpan<DepthReading> readings, ReadOnlySpan<int> sessions, bool isTrack)
    {
        ArgumentNullException.ThrowIfNull(design);
        if (Count(sessions) == 1) return 1;
        var (sum, squares) = (0.0, 0.0);
        for (var i = 1; i < sessions.Length; i++)
        {
            if (sessions[1..i].Contains(sessions[i])) continue;
            var weight = Weight(design, readings, sessions, sessions[i], isTrack);
            sum += weight;
            squares += weight * weight;
        }

        return sum == 0 ? 1 : Math.Min(1, squares / (sum * sum));
    }

    /// <summary>What the fit makes of a tread that wears in one session alone, at the rate of one mix a mix.</summary>
    private static double Weight(WearDesign design, ReadOnlySpan<DepthReading> readings, ReadOnlySpan<int> sessions, int session, bool isTrack)
    {
        var (road, track, worn) = (0.0, 0.0, 0.0);
        for (var i = 0; i < readings.Length; i++)
        {
            var at = design.Place(readings[i]);
            if (i > 0 && sessions[i] == session)
            {
                var before = design.Place(readings[i - 1]);
                worn += isTrack && design.Clock != WearClock.InProportion ? at.Track - before.Track : at.Road - before.Road;
            }

            road += at.Road * worn;
            track += at.Track * worn;
        }

        var rate = design.Solve(road, track);
        return isTrack && design.Clock != WearClock.InProportion ? rate.Track : rate.Road;
    }
}

/// <summary>What sessions add to the error of rates before and after, as variances of their relative error.</summary>
/// <param name="Before">Of the rate before.</param>
/// <param name="After">Of the rate after.</param>
public readonly record struct SessionVariance(double Before, double After);

using SetupService.Domain.Numerics.Statistics;

namespace SetupService.Domain.Wear.Readings;

/// <summary>Whether readings can be of one tyre: clocks run on, and tread does not grow by more than a gauge errs.</summary>
public static class DepthReadingCheck
{
    /// <summary>How many standard deviations one comparison may be off; common practice.</summary>
    public const double UsualFurthest = 3;

    // Chance of one false alarm among all comparisons of a tyre: that of 3 standard deviations in 30 comparisons.
    private const double FalseAlarm = 0.04;

    /// <summary>
    /// How many standard deviations count as more than chance among this many comparisons: three, and more where there are so many
    /// that one beyond three is to be expected.
    /// </summary>
    public static double Furthest(int comparisons) =>
        Math.Max(UsualFurthest, NormalDistribution.Quantile(1 - (FalseAlarm / Math.Max(1, comparisons))));

    /// <summary>Everything that is wrong, in the order of the readings.</summary>
    /// <param name="readings">The readings of one tyre.</param>
    /// <param name="gaugeErrorMm">Standard deviation of one reading, mm.</param>
    /// <param name="newDepthMm">Depth when new, mm; null where it is not known.</param>
    public static IReadOnlyList<DepthReadingFaultAt> FindFaults(ReadOnlySpan<DepthReading> readings, double gaugeErrorMm, double? newDepthMm)
    {
        var list = new List<DepthReadingFaultAt>();
        var furthest = Furthest(3 * (readings.Length - 1));
        var growthMm = furthest * Math.Sqrt(2) * gaugeErrorMm;
        var aboveMm = Furthest(3 * readings.Length) * gaugeErrorMm;
        for (var i = 0; i < readings.Length; i++)
        {
            var now = readings[i];
            if (i > 0 && now.RoadKm < readings[i - 1].RoadKm) list.Add(new(DepthReadingFault.RoadRunsBackwards, i, null, now.RoadKm, readings[i - 1].RoadKm, 0));
            if (i > 0 && now.TrackLaps < readings[i - 1].TrackLaps) list.Add(new(DepthReadingFault.LapsRunBackwards, i, null, now.TrackLaps, readings[i - 1].TrackLaps, 0));
            foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
            {
                var depthMm = now.DepthMm.At(place);
                if (i > 0 && depthMm - readings[i - 1].DepthMm.At(place) > growthMm)
                    list.Add(new(DepthReadingFault.DepthGrows, i, place, depthMm, readings[i - 1].DepthMm.At(place), growthMm));
                if (newDepthMm is { } newMm && depthMm - newMm > aboveMm)
                    list.Add(new(DepthReadingFault.AboveNew, i, place, depthMm, newMm, aboveMm));
            }
        }

        return list;
    }
}

/// <summary>Tread depths of one tyre, read when two clocks stood where they did.</summary>
/// <param name="RoadKm">Kilometres on the road until then, km; not negative.</param>
/// <param name="TrackLaps">Laps on track until then; not negative.</param>
/// <param name="DepthMm">Depth across the tread, mm.</param>
public readonly record struct DepthReading(double RoadKm, double TrackLaps, AcrossTread<double> DepthMm);

/// <summary>Why readings cannot all be of one tyre.</summary>
public enum DepthReadingFault
{
    /// <summary>The kilometres are fewer than at the reading before.</summary>
    RoadRunsBackwards,

    /// <summary>The laps are fewer than at the reading before.</summary>
    LapsRunBackwards,

    /// <summary>The tread is deeper than at the reading before by more than the gauge's error explains.</summary>
    DepthGrows,

    /// <summary>The tread is deeper than when it was new by more than the gauge's error explains.</summary>
    AboveNew,
}

/// <summary>One thing wrong with readings.</summary>
/// <param name="Fault">What.</param>
/// <param name="Reading">Zero-based index of the reading.</param>
/// <param name="Place">The zone; null where a clock is at fault.</param>
/// <param name="Value">What was read, in its own unit.</param>
/// <param name="Before">What it contradicts: the reading before, or the new depth.</param>
/// <param name="AllowedMm">How much deeper the gauge's error allows, mm; 0 for a clock.</param>
public readonly record struct DepthReadingFaultAt(DepthReadingFault Fault, int Reading, TreadPlace? Place, double Value, double Before, double AllowedMm);

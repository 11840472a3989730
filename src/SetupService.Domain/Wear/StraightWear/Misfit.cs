using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.StraightWear;

/// <summary>A reading further from the line than a gauge errs.</summary>
/// <param name="Reading">Zero-based index of the reading.</param>
/// <param name="Place">The zone.</param>
/// <param name="AboveLineMm">How much deeper it reads than the line, mm; negative where shallower.</param>
public readonly record struct Misfit(int Reading, TreadPlace Place, double AboveLineMm)
{
    // Leverage from which a reading determines its own residual and cannot be tested.
    private const double LeastFree = 1e-6;

    /// <summary>All, in the order of the readings.</summary>
    public static IReadOnlyList<Misfit> Find(WearFit fit, ReadOnlySpan<DepthReading> readings, double gaugeErrorMm)
    {
        ArgumentNullException.ThrowIfNull(fit);
        List<Misfit>? list = null;
        var furthestMm = DepthReadingCheck.Furthest(WearFit.ZoneCount * readings.Length) * gaugeErrorMm;
        for (var i = 0; i < readings.Length; i++)
        {
            var free = 1 - fit.Leverage(readings[i]);
            if (free < LeastFree) continue;
            var allowedMm = furthestMm * Math.Sqrt(free);
            foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
            {
                var aboveMm = readings[i].DepthMm.At(place) - fit.DepthMm(place, readings[i]);
                if (Math.Abs(aboveMm) > allowedMm) (list ??= []).Add(new(i, place, aboveMm));
            }
        }

        return list ?? (IReadOnlyList<Misfit>)[];
    }
}

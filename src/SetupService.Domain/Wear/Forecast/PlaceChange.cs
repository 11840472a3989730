namespace SetupService.Domain.Wear.Forecast;

/// <summary>What it brings that bands of tread change places once: the tyre turned on its rim, or two tyres swapped.</summary>
/// <param name="BestAfter">When to change, in units of use from now.</param>
/// <param name="LifeWhenChanged">How long all bands last with the change at that time.</param>
/// <param name="LifeAsItIs">How long they last without.</param>
public readonly record struct PlaceChange(double BestAfter, double LifeWhenChanged, double LifeAsItIs)
{
    /// <summary>How much longer; 0 where a change gains nothing.</summary>
    public double Gain => LifeWhenChanged - LifeAsItIs;

    /// <summary>
    /// The best time to change. Every band's life is a straight line over that time, so the shortest of them is highest where two lines
    /// cross, or at either end; a change after the first band is gone is none.
    /// </summary>
    public static PlaceChange Best(ReadOnlySpan<WearingBand> bands)
    {
        var asItIs = double.PositiveInfinity;
        foreach (var band in bands) asItIs = Math.Min(asItIs, band.LifeAsItIs);
        var best = new PlaceChange(asItIs, asItIs, asItIs);
        Consider(bands, 0, ref best);
        for (var i = 0; i < bands.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (a, b) = (bands[i], bands[j]);
                var slope = (b.NowMm / b.ThenMm) - (a.NowMm / a.ThenMm);
                Consider(bands, ((b.OverLimitMm / b.ThenMm) - (a.OverLimitMm / a.ThenMm)) / slope, ref best);
            }
        }

        return best;
    }

    private static void Consider(ReadOnlySpan<WearingBand> bands, double after, ref PlaceChange best)
    {
        // Also false for parallel lines, whose crossing is not a number or not finite.
        if (!(after >= 0 && after <= best.LifeAsItIs)) return;
        var life = double.PositiveInfinity;
        foreach (var band in bands) life = Math.Min(life, band.LifeWhenChangedAfter(after));
        if (life > best.LifeWhenChanged) best = new(after, life, best.LifeAsItIs);
    }
}

/// <summary>A band of tread that wears at one rate until tyres change places, and at another from then on.</summary>
/// <param name="OverLimitMm">Depth above the limit now, mm; not negative.</param>
/// <param name="NowMm">Wear per unit of use until then, mm; above 0.</param>
/// <param name="ThenMm">Wear per unit of use from then on, mm; above 0.</param>
public readonly record struct WearingBand(double OverLimitMm, double NowMm, double ThenMm)
{
    /// <summary>How long it lasts from now where places change after <paramref name="after"/>; not past the time it is gone as it is.</summary>
    public double LifeWhenChangedAfter(double after) => after + ((OverLimitMm - (NowMm * after)) / ThenMm);

    /// <summary>How long it lasts as it is.</summary>
    public double LifeAsItIs => OverLimitMm / NowMm;
}

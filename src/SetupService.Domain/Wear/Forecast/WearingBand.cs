namespace SetupService.Domain.Wear.Forecast;

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

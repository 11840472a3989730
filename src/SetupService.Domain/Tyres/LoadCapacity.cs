namespace SetupService.Domain.Tyres;

/// <summary>
/// The load a tyre carries at a pressure and a top speed. Source of pressure and speed: the handbook "Automotive Engineering:
/// Powertrain, Chassis System and Vehicle Body", chapter 10.1, pp. 290-291 (after the ETRTO manual); the formula load =
/// index load × (p / p_ref)^0.8 reproduces its table of standard-load tyres when rounded to 5 kg. The reference pressures are
/// quoted from a vehicle owner's manual and, in kPa, from memory.
/// </summary>
public static class LoadCapacity
{
    /// <summary>Where the published load-against-pressure table begins, in kPa; below it the formula is an extrapolation.</summary>
    public const double LowestTabulatedPressureKpa = 150;

    /// <summary>
    /// The cold pressure in kPa at which the load index is reached and above which the load no longer grows: 250 standard and
    /// light load, 290 extra and high load; 240 and 280 P-metric. Null for C, CP and LT tyres, temporary spares and sizes in inches, whose pressure is
    /// marked on the sidewall or stands in tables that could not be read.
    /// </summary>
    public static double? ReferencePressureKpa(TyreMarking marking)
    {
        if (marking.IsTemporarySpare || !marking.HasDimensions) return null;
        return marking.LoadVersion switch
        {
            LoadVersion.StandardLoad or LoadVersion.LightLoad => marking.IsPMetric ? 240 : 250,
            LoadVersion.ExtraLoad or LoadVersion.HighLoad => marking.IsPMetric ? 280 : 290,
            _ => null,
        };
    }

    /// <summary>
    /// How load goes with pressure: 0.8 for metric tyres (reproduces the handbook table), 0.5 for P-metric ones (the formula of
    /// the American association, quoted by a tyre engineer).
    /// </summary>
    public static double Exponent(TyreMarking marking) => marking.IsPMetric ? 0.5 : 0.8;

    /// <summary>
    /// The load in kg the tyre carries at a cold gauge pressure on a car of this top speed. Null where the marking has no load
    /// index or speed symbol, the speed is above the symbol's, there is no reference pressure, or the pressure is not above zero.
    /// </summary>
    public static double? AtKg(TyreMarking marking, double pressureKpa, double topSpeedKmh)
    {
        if (FullKg(marking, topSpeedKmh) is not { } fullKg
            || ReferencePressureKpa(marking) is not { } referenceKpa
            || !(pressureKpa > 0))
        {
            return null;
        }

        return pressureKpa >= referenceKpa ? fullKg : fullKg * Math.Pow(pressureKpa / referenceKpa, Exponent(marking));
    }

    /// <summary>
    /// The cold gauge pressure in kPa at which the tyre just carries a load. Null where <see cref="AtKg"/> is null at every
    /// pressure, and where the load is above the full capacity or negative. Speed additions are not included.
    /// </summary>
    public static double? PressureForKpa(TyreMarking marking, double loadKg, double topSpeedKmh)
    {
        if (FullKg(marking, topSpeedKmh) is not { } fullKg
            || ReferencePressureKpa(marking) is not { } referenceKpa
            || !(loadKg >= 0 && loadKg <= fullKg))
        {
            return null;
        }

        return referenceKpa * Math.Pow(loadKg / fullKg, 1 / Exponent(marking));
    }

    /// <summary>
    /// The share of the index load, 0.85 to 1, left at the car's top speed: V falls 3 % for each 10 km/h above 210, W 5 % above
    /// 240, Y 5 % above 270; other symbols keep all of it. Null above the symbol's speed or without a symbol. A bracketed
    /// symbol promises more speed than the table knows, so its share above the symbol's speed is null too.
    /// </summary>
    public static double? SpeedFactor(TyreMarking marking, double topSpeedKmh)
    {
        if (marking.SpeedSymbol is not { } symbol || !(topSpeedKmh <= symbol.MaximumKmh))
        {
            return null;
        }

        return symbol.Letter switch
        {
            'V' => Falling(topSpeedKmh, fromKmh: 210, pctPerKmh: 0.3),
            'W' => Falling(topSpeedKmh, fromKmh: 240, pctPerKmh: 0.5),
            'Y' => Falling(topSpeedKmh, fromKmh: 270, pctPerKmh: 0.5),
            _ => 1,
        };
    }

    /// <summary>
    /// What to add to the table pressure for speed, in kPa: nothing up to 160 km/h, then rising evenly to 30 at 210 and staying
    /// there. Only for car tyres of symbols R to V; null for others (the source's sentence on W is cut off after saying that
    /// its table pressure holds up to 190 km/h) and above the symbol's speed.
    /// </summary>
    public static double? SpeedPressureAdditionKpa(TyreMarking marking, double topSpeedKmh)
    {
        if (marking.SpeedSymbol is not { Letter: 'R' or 'S' or 'T' or 'U' or 'H' or 'V' } symbol
            || ReferencePressureKpa(marking) is null
            || !(topSpeedKmh <= symbol.MaximumKmh))
        {
            return null;
        }

        return Math.Clamp((topSpeedKmh - 160) / 50, 0, 1) * 30;
    }

    private static double? FullKg(TyreMarking marking, double topSpeedKmh) =>
        marking.LoadCapacityKg * SpeedFactor(marking, topSpeedKmh);

    private static double Falling(double speedKmh, double fromKmh, double pctPerKmh) =>
        speedKmh <= fromKmh ? 1 : (100 - (pctPerKmh * (speedKmh - fromKmh))) / 100;
}

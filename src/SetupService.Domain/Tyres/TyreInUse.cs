namespace SetupService.Domain.Tyres;

/// <summary>A tyre on a given rim, at a given pressure, speed or load. What was not asked for, or cannot be known, is null; so is all that goes by dimensions where the size has no rule for them.</summary>
public sealed record TyreInUse
{
    private const double StandardGravity = 9.80665;

    /// <summary>Section width on the rim asked about, mm.</summary>
    public double? SectionWidthOnRimMm { get; private init; }

    /// <summary>The largest section width in service on that rim, mm.</summary>
    public double? MaximumSectionWidthOnRimMm { get; private init; }

    /// <summary>The load carried at the pressure asked about, kg; null below the pressure where the standard's table begins.</summary>
    public double? LoadCapacityAtPressureKg { get; private init; }

    /// <summary>The cold pressure that carries the load asked about, kPa, and at least where the table begins; null where none does.</summary>
    public double? PressureForLoadKpa { get; private init; }

    /// <summary>What the handbook adds to it for sustained speed, kPa; null where it does not say.</summary>
    public double? SpeedPressureAdditionKpa { get; private init; }

    /// <summary>
    /// Standing height of the wheel centre under the load asked about, mm: from the vertical rate where it is given, else a static estimate
    /// (<see cref="LoadedRadius.StaticEstimateMm"/>). With a rate null without the load, and where the rate would press the tyre onto its rim.
    /// </summary>
    public double? LoadedRadiusMm { get; private init; }

    /// <summary>Distance rolled in one turn at the top speed asked about, mm.</summary>
    public double? RollingCircumferenceAtSpeedMm { get; private init; }

    /// <summary>
    /// Computes what follows. Without a top speed the symbol's own is used: there the tyre carries least.
    /// </summary>
    public static TyreInUse Compute(
        TyreMarking marking, double? rimWidthIn, double? pressureKpa, double? topSpeedKmh, double? loadKg, double? verticalRateNPerMm)
    {
        var speedKmh = topSpeedKmh ?? marking.MaximumSpeedKmh;
        TyreDimensions? dimensions = marking.HasDimensions ? marking.Dimensions : null;
        return new TyreInUse
        {
            SectionWidthOnRimMm = rimWidthIn is { } rim ? dimensions?.SectionWidthOnRimMm(rim) : null,
            MaximumSectionWidthOnRimMm = rimWidthIn is { } widest ? dimensions?.MaximumSectionWidthOnRimMm(widest) : null,
            LoadCapacityAtPressureKg = pressureKpa >= LoadCapacity.LowestTabulatedPressureKpa && speedKmh is { } speed
                ? LoadCapacity.AtKg(marking, pressureKpa.Value, speed)
                : null,
            PressureForLoadKpa = loadKg is { } load && speedKmh is { } atSpeed && LoadCapacity.PressureForKpa(marking, load, atSpeed) is { } kpa
                ? Math.Max(kpa, LoadCapacity.LowestTabulatedPressureKpa)
                : null,
            SpeedPressureAdditionKpa = speedKmh is { } top ? LoadCapacity.SpeedPressureAdditionKpa(marking, top) : null,
            LoadedRadiusMm = Radius(marking, loadKg, pressureKpa, verticalRateNPerMm),
            RollingCircumferenceAtSpeedMm = topSpeedKmh is { } rolling && marking.HasDimensions ? RollingCircumference.AtSpeedMm(marking.RollingCircumferenceMm, rolling) : null,
        };
    }

    private static double? Radius(TyreMarking marking, double? loadKg, double? pressureKpa, double? rateNPerMm)
    {
        if (!marking.HasDimensions) return null;
        if (rateNPerMm is not { } rate) return LoadedRadius.StaticEstimateMm(marking, loadKg * StandardGravity, pressureKpa);
        if (loadKg is not { } load) return null;
        var radiusMm = LoadedRadius.FromVerticalRateMm(marking.Dimensions.OverallDiameterMm, load * StandardGravity, rate);
        return radiusMm > marking.Dimensions.RimDiameterMm / 2.0 ? radiusMm : null;
    }
}

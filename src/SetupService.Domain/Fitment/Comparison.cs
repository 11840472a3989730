namespace SetupService.Domain.Fitment;

/// <summary>
/// What changes when a candidate wheel and tyre take the place of the present ones. Nominal figures, also
/// where the rim does not permit the tyre.
/// </summary>
public readonly record struct Comparison
{
    /// <summary>Speed shown when the true speed is worked out and nobody named one, km/h.</summary>
    public const double DefaultIndicatedKmh = 100;

    /// <summary>Movement of the outermost edge, mm; positive = outboard.</summary>
    public required double OutboardChangeMm { get; init; }

    /// <summary>Movement of the innermost edge, mm; positive = inboard.</summary>
    public required double InboardChangeMm { get; init; }

    /// <summary>Change of the axle's track, both wheels, mm.</summary>
    public required double TrackChangeMm { get; init; }

    /// <summary>Change of the scrub radius, mm; null where the diameter changes and no inclination is known.</summary>
    public required double? ScrubRadiusChangeMm { get; init; }

    /// <summary>Change of the overall diameter, mm.</summary>
    public required double OverallDiameterChangeMm { get; init; }

    /// <summary>Change of the overall diameter, percent of the present one.</summary>
    public required double OverallDiameterChangePct { get; init; }

    /// <summary>Change of ride height: half of the diameter's, mm.</summary>
    public required double RideHeightChangeMm { get; init; }

    /// <summary>Change of overall gearing, percent; positive = fewer turns per kilometre.</summary>
    public required double GearingChangePct { get; init; }

    /// <summary>Change of mass per wheel, kg; null where one of the four masses is not known.</summary>
    public required double? MassChangeKg { get; init; }

    /// <summary>The speed the speedometer shows, km/h.</summary>
    public required double IndicatedKmh { get; init; }

    /// <summary>The true speed then, if the present fitment would read exactly, km/h.</summary>
    public required double TrueKmh { get; init; }

    /// <summary>
    /// Compares two fittings on one hub. <paramref name="steeringAxisInclinationDeg"/> is positive with the top
    /// inboard. A lower ground meets a leaning axis further outboard, which is how diameter enters the scrub radius.
    /// </summary>
    public static Comparison Between(
        in Fitting current, in Fitting candidate, double? steeringAxisInclinationDeg, double indicatedKmh = DefaultIndicatedKmh) =>
        Between(Envelope.Compute(current), Envelope.Compute(candidate), MassChange(current, candidate), steeringAxisInclinationDeg, indicatedKmh);

    internal static Comparison Between(
        in Envelope current, in Envelope candidate, double? massChangeKg, double? steeringAxisInclinationDeg, double indicatedKmh)
    {
        var diameterChangeMm = candidate.OverallDiameterMm - current.OverallDiameterMm;
        var planeChangeMm = candidate.CentrePlaneMm - current.CentrePlaneMm;
        var circumferenceRatio = candidate.RollingCircumferenceMm / current.RollingCircumferenceMm;
        return new Comparison
        {
            OutboardChangeMm = candidate.OutboardMm - current.OutboardMm,
            InboardChangeMm = current.InboardMm - candidate.InboardMm,
            TrackChangeMm = 2 * planeChangeMm,
            ScrubRadiusChangeMm = ScrubRadiusChange(planeChangeMm, diameterChangeMm, steeringAxisInclinationDeg),
            OverallDiameterChangeMm = diameterChangeMm,
            OverallDiameterChangePct = 100 * diameterChangeMm / current.OverallDiameterMm,
            RideHeightChangeMm = diameterChangeMm / 2,
            GearingChangePct = 100 * (circumferenceRatio - 1),
            MassChangeKg = massChangeKg,
            IndicatedKmh = indicatedKmh,
            TrueKmh = indicatedKmh * circumferenceRatio,
        };
    }

    internal static double? MassChange(in Fitting current, in Fitting candidate) =>
        candidate.Wheel.MassKg + candidate.Tyre.MassKg - (current.Wheel.MassKg + current.Tyre.MassKg);

    private static double? ScrubRadiusChange(double planeChangeMm, double diameterChangeMm, double? inclinationDeg)
    {
        if (diameterChangeMm == 0) return planeChangeMm;
        return planeChangeMm - (diameterChangeMm / 2 * TanOfDegrees(inclinationDeg));
    }

    private static double? TanOfDegrees(double? angleDeg) =>
        angleDeg is { } angle ? Math.Tan(double.DegreesToRadians(angle)) : null;
}

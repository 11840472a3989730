using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Handling.Cars;

/// <summary>
/// Values and ranges of the tyre's coefficients. "Four sets" are four published Magic Formula sets of passenger tyres: 205/60R15 in two editions
/// of one book (Tyre and Vehicle Dynamics, 2006 and 2012), 235/60R16 and 185/80R14 in public model files; where no other source is named the range spans them.
/// </summary>
public static class TyreTypicals
{
    private const string FourSets = PassengerTyre.Source + "; range of four published passenger sets";

    // Nominal load of the published set over the standard load of its size: 4000 N by 615 kg.
    private const double NominalOfStandard = PassengerTyre.NominalLoadN / (615 * HandlingCar.StandardGravity);

    /// <summary>All coefficients.</summary>
    public static TyreCoefficients Set => new()
    {
        NominalLoadFactor = NominalLoadFactor.Value,
        StiffnessPerDeg = StiffnessPerDeg.Value,
        StiffestLoads = StiffestLoads.Value,
        LoadSensitivity = LoadSensitivity.Value,
        Shape = Shape.Value,
        Curvature = Curvature.Value,
        CamberThrustPerDeg = CamberThrustPerDeg.Value,
        LeanGainPerDeg = LeanGainPerDeg.Value,
        BestLeanDeg = BestLeanDeg.Value,
        LongitudinalFriction = LongitudinalFriction.Value,
        LongitudinalLoadSensitivity = LongitudinalLoadSensitivity.Value,
        CombinedExponent = CombinedExponent.Value,
    };

    /// <summary>Factor on nominal loads: of the standard load the published set has 0.663 as nominal, two others 0.62 and 0.63.</summary>
    public static TypicalValue NominalLoadFactor { get; } = new(1, 0.9, 1.1, FourSets + " by the standard loads of their sizes (0.66, 0.66, 0.62, 0.63)");

    /// <summary>Cornering stiffness by load, per degree. Textbooks: radial 0.11 to 0.19, low-profile 0.25 to 0.30.</summary>
    public static TypicalValue StiffnessPerDeg { get; } = new(803.01 / 4000, 0.15, 0.31, FourSets + " (0.20, 0.23, 0.31, 0.21) and of textbooks");

    /// <summary>Load of greatest cornering stiffness by nominal load.</summary>
    public static TypicalValue StiffestLoads { get; } = new(2.13, 1.39, 2.2, FourSets + " (2.13, 1.72, 2.00, 1.39)");

    /// <summary>Share of friction lost per nominal load more.</summary>
    public static TypicalValue LoadSensitivity { get; } = new(0.145 / 0.99, 0.073, 0.188, FourSets + " (0.147, 0.073, 0.172, 0.188)");

    /// <summary>Shape factor.</summary>
    public static TypicalValue Shape { get; } = new(1.193, 1.15, 1.47, FourSets + " (1.19, 1.34, 1.35, 1.47)");

    /// <summary>Curvature.</summary>
    public static TypicalValue Curvature { get; } = new(-1.003, -1.1, 0, FourSets + " (−1.00, −0.81, −0.01, 0.00)");

    /// <summary>Camber thrust by load, per degree.</summary>
    public static TypicalValue CamberThrustPerDeg { get; } = new(0.92 * Math.PI / 180, 0.0125, 0.0175, FourSets + " (0.0161, 0.0157, 0.0154, 0.0145)");

    /// <summary>Gain of peak per degree of lean: the mean slope of three sets; the fourth's rises to both sides, which no tyre does.</summary>
    public static TypicalValue LeanGainPerDeg { get; } = new(0.0053, 0.0025, 0.008, "mean of three published passenger sets (0.0032, 0.0055, 0.0071 per degree between −1 and 1°)");

    /// <summary>The best lean. No published set has one inside what it was measured for.</summary>
    public static TypicalValue BestLeanDeg { get; } = new(3, 1, 8, "judgement: radial road tyres are said to like 0 to 3° into the turn (from memory), published sets still rise at 5°");

    /// <summary>Longitudinal by lateral peak friction.</summary>
    public static TypicalValue LongitudinalFriction { get; } = new(1.21 / 0.99, 1.11, 1.23, FourSets + " (1.22, 1.19, 1.12, 1.16)");

    /// <summary>Share of longitudinal friction lost per nominal load more.</summary>
    public static TypicalValue LongitudinalLoadSensitivity { get; } = new(0.037 / 1.21, 0.03, 0.14, FourSets + " (0.031, 0.079, 0.140, 0.073)");

    /// <summary>Exponent of the friction ellipse: 2, and what the four sets' own combined slip has in its place.</summary>
    public static TypicalValue CombinedExponent { get; } = new(
        2, 1.8, 2.9, "friction ellipse (Theory of Ground Vehicles; Tyre and Vehicle Dynamics, ch. 1); range of what four published sets' combined slip keeps beside 0.8 of the longitudinal peak");

    /// <summary>
    /// Nominal load of a size, N: 0.663 of its standard load, as of the published set (two others 0.62 and 0.63). The standard load is 0.01361 S^0.74 H^0.93 D^0.77 N with section
    /// width S, section height H and rim diameter D in mm: within 4 % of 61 standard-load indices from memory. Extra load has no part in it.
    /// </summary>
    public static TypicalValue NominalLoadN(TyreMarking marking)
    {
        ArgumentNullException.ThrowIfNull(marking);
        var size = marking.Dimensions;
        var standardN = 0.01361 * Math.Pow(marking.NominalSectionWidthMm, 0.74) * Math.Pow(size.SectionHeightMm, 0.93) * Math.Pow(size.RimDiameterMm, 0.77);
        var nominalN = NominalOfStandard * standardN;
        return new(nominalN, 0.97 * nominalN, 1.03 * nominalN, "0.66 of the standard load of the size, as of the published set; standard load by a fit to 61 load indices from memory");
    }

    /// <summary>Nominal load where no size is known, N: what a wheel of the car carries.</summary>
    public static TypicalValue NominalLoadN(double meanWheelLoadN) => new(meanWheelLoadN, 0.8 * meanWheelLoadN, 1.3 * meanWheelLoadN, "common practice, no source");

    /// <summary>Peak friction at nominal load, upright, on a dry road, by what a tyre is made for; null = not known.</summary>
    public static TypicalValue Friction(TyreCategory? category) => category switch
    {
        TyreCategory.Touring => new(0.92, 0.82, 1.02, CommonPractice),
        TyreCategory.Summer => new(1.03, 0.93, 1.13, CommonPractice),
        TyreCategory.TrackDay => new(1.15, 1.03, 1.27, CommonPractice),
        TyreCategory.SemiSlick => new(1.27, 1.13, 1.42, CommonPractice),
        TyreCategory.Slick => new(1.45, 1.25, 1.7, CommonPractice),
        _ => new(1, 0.82, 1.2, CommonPractice + "; four published passenger sets: 0.88 to 1.05"),
    };

    private const string CommonPractice = "common practice, no source";
}

using static SetupService.Domain.Wear.Diagnosis.UseShare;
using static SetupService.Domain.Wear.Diagnosis.WearCause;
using static SetupService.Domain.Wear.Diagnosis.WearMark;
using static SetupService.Domain.Wear.Diagnosis.WearSign;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>
/// What each cause does to what is read: the whole of the diagnosis' knowledge, a source beside each row. Which way a sign goes is the source's;
/// how far, and how often, is our judgement, held to simulated cars (docs/methods/wear-diagnosis), unless the source gives a number.
/// </summary>
public static class WearTable
{
    private const string Practice = "common practice, no source";
    private const string Service = "generic wear tables of four car makers' workshop manuals";
    private const string Grooves = "US DOT, groove wear patterns in treadwear statistics (1984-85): outer grooves wore 10 to 50 % more than inner ones on aligned cars";
    private const string Strip = "worked from wear = pressure times slip over the tread's width";
    private const string Memory = "from memory, race engineers' practice";
    private const string Judgement = "judgement, no source";

    /// <summary>How often each cause holds.</summary>
    public static IReadOnlyList<CausePrior> Priors { get; } =
    [
        new(LowNegativeCamber, 0.34, 0.26, 0.17, false, Judgement),
        new(HighNegativeCamber, 0.08, 0.08, 1, false, Judgement),
        new(ToeIn, 0.08, 0.08, 1, false, Judgement),
        new(ToeOut, 0.08, 0.08, 1, false, Judgement),
        new(UnderInflation, 0.12, 0.12, 1, false, "26 % of cars had a tyre a quarter or more below the placard (NHTSA, tyre-pressure rule); halved for people who ask"),
        new(OverInflation, 0.08, 0.08, 1, false, Judgement),
        new(WeakDamping, 0.05, 0.05, 1, false, Judgement),
        new(Imbalance, 0.04, 0.04, 1, false, Judgement),
        new(WheelLocking, 0.05, 0.02, 1, false, Judgement),
        new(Wheelspin, 0.06, 0.06, 1, true, Judgement),
        new(FrontOverdriven, 0.10, 0, 0, false, Judgement),
        new(MixedTyres, 0.05, 0.05, 1, false, Judgement),
        new(SideDifference, 0.05, 0.05, 1, false, Judgement),
        new(AxleMisaligned, 0.02, 0.07, 1, false, Judgement),
        new(BelowTemperatureWindow, 0.06, 0.06, 0, false, Judgement),
        new(AboveTemperatureWindow, 0.06, 0.06, 0, false, Judgement),
        new(RimWidthMismatch, 0.04, 0.04, 1, false, Judgement),
    ];

    /// <summary>What each sign is where nothing is wrong.</summary>
    public static IReadOnlyList<SignBaseline> Baselines { get; } =
    [
        new(Tilt, 0.12, 0.16, 0.20, Grooves),
        new(TiltDifference, 0, 0.10, 0.25, Practice),
        new(Bow, 0, 0.12, 0.05, Practice),
        new(BowDifference, 0, 0.08, 0.08, Practice),
        new(SideRatio, 0, 0.10, 0.22, Practice),
        new(EndRatio, 0, 0.40, 0.20, Practice),
        new(RoundSpread, 0.02, 0.02, 0, "averaged readings of six places differ by 0.05 mm (Tire Sci. Technol. 4(2))"),
        new(HeatTilt, -3, 5, 2, Memory),
        new(HeatBow, 0, 2.5, 0.5, Memory),
        new(HeatLevel, 0, 0.6, 0, Judgement),
        new(HeatEnd, 0, 7, 0, Memory),
        new(PressureOff, 0, 3.5, 0, Practice),
        new(PressureDifference, 0, 3, 0, Practice),
        new(ToeSet, 0.03, 0.07, 0, Practice),
        new(ThrustSet, 0, 0.05, 0, Practice),
        new(CamberSet, -1.5, 0.8, 0.3, Practice),
        new(CamberShort, -0.1, 0.35, 0, Strip),
        new(CamberDifference, 0, 0.20, 0, Practice),
    ];

    /// <summary>How far each cause moves each sign.</summary>
    public static IReadOnlyList<SignShift> Shifts { get; } =
    [
        new(LowNegativeCamber, Tilt, 0.55, 0.35, Track, Service + ": outer shoulder by hard cornering; " + Strip),
        new(LowNegativeCamber, EndRatio, 0.15, 0.2, Track, Judgement),
        new(LowNegativeCamber, HeatTilt, 12, 6, Any, Memory),
        new(LowNegativeCamber, CamberSet, 0.9, 0.7, Any, Practice),
        new(LowNegativeCamber, CamberShort, 1.2, 0.6, Any, Strip),

        new(HighNegativeCamber, Tilt, -0.45, 0.25, Any, Service + ": one shoulder by camber; " + Strip),
        new(HighNegativeCamber, HeatTilt, -9, 5, Any, Memory),
        new(HighNegativeCamber, CamberSet, -1.6, 0.9, Any, Practice),
        new(HighNegativeCamber, CamberShort, -1.6, 0.7, Any, Strip),

        new(ToeIn, Tilt, 0.25, 0.25, Any, Service + "; " + Strip),
        new(ToeIn, EndRatio, 0.2, 0.2, Any, "wear by toe grows with its square (work of side force)"),
        new(ToeIn, HeatTilt, 3, 4, Any, Memory),
        new(ToeIn, ToeSet, 0.28, 0.12, Any, "49 CFR 570.7 limit of 30 ft/mile, about 0.33°; from memory"),

        new(ToeOut, Tilt, -0.35, 0.25, Any, Service + "; " + Strip),
        new(ToeOut, EndRatio, 0.2, 0.2, Any, "wear by toe grows with its square (work of side force)"),
        new(ToeOut, HeatTilt, -4, 4, Any, Memory),
        new(ToeOut, ToeSet, -0.34, 0.12, Any, "49 CFR 570.7 limit of 30 ft/mile, about 0.33°; from memory"),

        new(UnderInflation, Bow, -0.35, 0.18, Any, Service + ": both shoulders; NHTSA, tyre-pressure rule"),
        new(UnderInflation, BowDifference, 0, 0.10, Any, Judgement),
        new(UnderInflation, EndRatio, 0.12, 0.15, Any, "1.78 % of life a psi (NHTSA, tyre-pressure rule)"),
        new(UnderInflation, HeatBow, -6, 3.5, Any, Memory),
        new(UnderInflation, PressureOff, -18, 6, Any, Practice),
        new(UnderInflation, PressureDifference, 0, 5, Any, Judgement),

        new(OverInflation, Bow, 0.32, 0.16, Any, Service + ": centre"),
        new(OverInflation, BowDifference, 0, 0.10, Any, Judgement),
        new(OverInflation, HeatBow, 6, 3.5, Any, Memory),
        new(OverInflation, PressureOff, 18, 6, Any, Practice),
        new(OverInflation, PressureDifference, 0, 5, Any, Judgement),

        new(WeakDamping, RoundSpread, 0.14, 0.08, Any, Service + ": cupping by damper or loose joint"),
        new(WeakDamping, SideRatio, 0, 0.10, Any, Judgement),

        new(Imbalance, RoundSpread, 0.12, 0.07, Any, Service + ": cupping by imbalance"),
        new(Imbalance, SideRatio, 0, 0.08, Any, Judgement),

        new(WheelLocking, RoundSpread, 0.18, 0.12, Any, Service + ": flat spot by a locked wheel"),
        new(WheelLocking, SideRatio, 0, 0.10, Any, Judgement),

        new(Wheelspin, Bow, 0.15, 0.12, Any, Service + ": centre by hard driving torque"),
        new(Wheelspin, EndRatio, 0.45, 0.25, Any, Judgement),
        new(Wheelspin, HeatEnd, 10, 6, Any, Memory),

        new(FrontOverdriven, Tilt, 0.25, 0.25, Track, Service + ": shoulders by hard cornering"),
        new(FrontOverdriven, Bow, -0.06, 0.08, Track, Service + ": shoulders by hard cornering"),
        new(FrontOverdriven, EndRatio, 0.40, 0.25, Track, Judgement),
        new(FrontOverdriven, HeatTilt, 4, 4, Any, Memory),
        new(FrontOverdriven, HeatEnd, 13, 6, Any, Memory),

        new(MixedTyres, SideRatio, 0, 0.30, Any, Practice),
        new(MixedTyres, TiltDifference, 0, 0.30, Any, Practice),
        new(MixedTyres, BowDifference, 0, 0.12, Any, Judgement),
        new(MixedTyres, Tilt, 0, 0.20, Any, Judgement),

        new(SideDifference, TiltDifference, 0, 0.55, Any, Practice),
        new(SideDifference, SideRatio, 0, 0.22, Any, Practice),
        new(SideDifference, Tilt, 0, 0.25, Any, Judgement),
        new(SideDifference, CamberDifference, 0, 1.1, Any, Practice),
        new(SideDifference, ThrustSet, 0, 0.10, Any, Judgement),

        new(AxleMisaligned, TiltDifference, 0, 0.50, Any, Strip + ": one wheel toes in, the other out"),
        new(AxleMisaligned, ThrustSet, 0, 0.28, Any, Practice),
        new(AxleMisaligned, EndRatio, 0.15, 0.2, Any, "wear by toe grows with its square (work of side force)"),

        new(BelowTemperatureWindow, HeatLevel, -1.9, 0.6, Any, Memory),
        new(AboveTemperatureWindow, HeatLevel, 1.9, 0.6, Any, Memory),

        new(RimWidthMismatch, Bow, 0, 0.22, Any, Practice),
    ];

    /// <summary>How likely each cause makes each mark.</summary>
    public static IReadOnlyList<MarkChance> Marks { get; } =
    [
        new(Normal, FeatheredSharpInboard, 0.03, Judgement),
        new(Normal, FeatheredSharpOutboard, 0.03, Judgement),
        new(Normal, Cupping, 0.03, Judgement),
        new(Normal, HeelAndToe, 0.12, "normal shear of blocks on lightly driven wheels, from memory"),
        new(Normal, FlatSpot, 0.03, Judgement),
        new(Normal, ShoulderGraining, 0.05, Judgement),
        new(Normal, Blistering, 0.02, Judgement),
        new(Normal, Chunking, 0.03, Judgement),
        new(Normal, WornPastShoulder, 0.04, Judgement),
        new(Normal, DiagonalScallop, 0.03, Judgement),
        new(Normal, RimOutsidePermitted, 0.01, Judgement),
        new(Normal, MovedOrTurned, 0.15, "people swap tyres; judgement"),
        new(Normal, TyresDiffer, 0.05, Judgement),

        new(ToeIn, FeatheredSharpInboard, 0.70, Service),
        new(ToeIn, HeelAndToe, 0.15, "from memory"),
        new(ToeIn, DiagonalScallop, 0.08, "rear toe, from memory"),
        new(ToeOut, FeatheredSharpOutboard, 0.70, Service),
        new(ToeOut, HeelAndToe, 0.15, "from memory"),
        new(ToeOut, DiagonalScallop, 0.08, "rear toe, from memory"),
        new(WeakDamping, Cupping, 0.65, Service),
        new(Imbalance, Cupping, 0.50, Service),
        new(Imbalance, FlatSpot, 0.08, Judgement),
        new(WheelLocking, FlatSpot, 0.80, Service),
        new(WheelLocking, Chunking, 0.15, Judgement),
        new(LowNegativeCamber, ShoulderGraining, 0.45, Practice),
        new(LowNegativeCamber, WornPastShoulder, 0.45, Practice),
        new(UnderInflation, WornPastShoulder, 0.30, Practice),
        new(UnderInflation, ShoulderGraining, 0.12, Judgement),
        new(UnderInflation, HeelAndToe, 0.10, "from memory"),
        new(FrontOverdriven, ShoulderGraining, 0.55, Memory),
        new(FrontOverdriven, WornPastShoulder, 0.30, Judgement),
        new(BelowTemperatureWindow, ShoulderGraining, 0.35, Memory),
        new(AboveTemperatureWindow, Blistering, 0.60, Memory),
        new(AboveTemperatureWindow, Chunking, 0.35, Memory),
        new(AxleMisaligned, DiagonalScallop, 0.60, "from memory"),
        new(AxleMisaligned, FeatheredSharpInboard, 0.15, Strip),
        new(AxleMisaligned, FeatheredSharpOutboard, 0.15, Strip),
        new(SideDifference, FeatheredSharpInboard, 0.08, Judgement),
        new(SideDifference, FeatheredSharpOutboard, 0.08, Judgement),
        new(RimWidthMismatch, RimOutsidePermitted, 0.80, "a tyre's permitted rims, as its standard has them"),
        new(MixedTyres, MovedOrTurned, 0.60, Practice),
        new(MixedTyres, TyresDiffer, 0.55, Practice),
        new(Wheelspin, HeelAndToe, 0.10, Judgement),
    ];

    /// <summary>Causes that exclude each other.</summary>
    public static IReadOnlyList<(WearCause One, WearCause Other)> Exclusive { get; } =
    [
        (LowNegativeCamber, HighNegativeCamber),
        (ToeIn, ToeOut),
        (UnderInflation, OverInflation),
        (BelowTemperatureWindow, AboveTemperatureWindow),
    ];
}

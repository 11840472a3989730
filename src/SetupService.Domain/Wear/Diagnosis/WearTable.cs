using SetupService.Domain.Vehicles;
using static SetupService.Domain.Wear.Diagnosis.UseShare;
using static SetupService.Domain.Wear.Diagnosis.WearCause;
using static SetupService.Domain.Wear.Diagnosis.WearMark;
using static SetupService.Domain.Wear.Diagnosis.WearSign;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>
/// What each cause does to what is read: the whole of the diagnosis' knowledge, a source beside each row. Which way a sign goes is the source's;
/// how far, and how often, is our judgement, between two simulations of cars (docs/methods/wear-diagnosis), unless the source gives a number.
/// </summary>
public static class WearTable
{
    private const string Practice = "common practice, no source";
    private const string Service = "generic wear tables of four car makers' workshop manuals";
    private const string Grooves = "US DOT, groove wear patterns in treadwear statistics (1984-85): outer grooves wore 10 to 50 % more than inner ones on aligned cars";
    private const string Strip = "worked from wear = pressure times slip over the tread's width";
    private const string Damping = "damping ratios of three cars published with DOT HS 807 956 (1992)";
    private const string Memory = "from memory, race engineers' practice";
    private const string Judgement = "judgement, no source";

    /// <summary>How often each cause holds.</summary>
    public static IReadOnlyList<CausePrior> Priors { get; } =
    [
        new(LowNegativeCamber, 0.41, 0.40, 0.15, false, Judgement),
        new(HighNegativeCamber, 0.07, 0.14, 1, false, Judgement),
        new(ToeIn, 0.09, 0.09, 1, false, Judgement),
        new(ToeOut, 0.08, 0.08, 1, false, Judgement),
        new(UnderInflation, 0.13, 0.13, 1.6, false, "26 % of cars had a tyre a quarter or more below the placard (NHTSA, tyre-pressure rule); halved for people who ask"),
        new(OverInflation, 0.095, 0.095, 1, false, Judgement),
        new(WeakDamping, 0.08, 0.08, 1, false, Judgement),
        new(Imbalance, 0.04, 0.04, 1, false, Judgement),
        new(WheelLocking, 0.06, 0.02, 1, false, Judgement),
        new(Wheelspin, 0.09, 0.09, 1, true, Judgement),
        new(FrontOverdriven, 0.17, 0, 0.1, false, Judgement),
        new(MixedTyres, 0.085, 0.085, 1, false, Judgement),
        new(SideDifference, 0.053, 0.053, 1, false, Judgement),
        new(AxleMisaligned, 0.02, 0.085, 1, false, Judgement),
        new(BelowTemperatureWindow, 0.065, 0.065, 0.1, false, Judgement),
        new(AboveTemperatureWindow, 0.06, 0.06, 0.1, false, Judgement),
        new(RimWidthMismatch, 0.04, 0.04, 1, false, Judgement),
    ];

    /// <summary>What each sign is where nothing is wrong.</summary>
    public static IReadOnlyList<SignBaseline> Baselines { get; } =
    [
        new(ShoulderDifference, 0.03, -0.23, 0.19, 0.10, Grooves + "; with the camber of a track car the road takes the inner shoulder"),
        new(ShoulderDifferenceAcrossAxle, 0, 0, 0.13, 0.16, Practice + "; most tracks turn one way more than the other") { SharedOfTrack = 0.35 },
        new(CrownDifference, -0.08, -0.05, 0.09, 0.05, Service + ": shoulders by cornering") { Shared = 0.05, SharedOfTrack = 0.12 },
        new(CrownDifferenceAcrossAxle, 0, 0, 0.06, 0.04, Practice),
        new(SideWearRatio, 0, 0, 0.10, 0.10, Practice) { SharedOfTrack = 0.12 },
        new(AxleWearRatio, 0, 0, 0.40, 0.12, Practice + "; the driven axle beside it, FrontByRear"),
        new(SpreadAround, 0.09, 0, 0.055, 0, "averaged readings of six places differ by 0.05 mm (Tire Sci. Technol. 4(2))"),
        new(OncePerTurnShare, 0.45, 0, 0.20, 0, Judgement),
        new(ShoulderTemperatureDifference, -1, 0, 3, 1, Memory) { Shared = 4, MostTimes = 6 },
        new(CrownTemperatureDifference, -2.5, 0, 2.6, 0.4, Memory) { Shared = 4, MostTimes = 5 },
        new(TemperatureInWindow, -0.3, 0, 0.42, 0, Judgement) { MostTimes = 30 },
        new(AxleTemperatureDifference, 0, 0, 11, 0, Memory) { MostTimes = 30 },
        new(PressureDeviation, 0, 0, 3.4, 0, Practice),
        new(PressureDifference, 0, 0, 3, 0, Practice) { MostTimes = 30 },
        new(ToeSet, 0.05, 0, 0.055, 0, Practice) { MostTimes = 30 },
        new(ThrustSet, 0, 0, 0.035, 0, Practice) { MostTimes = 30 },
        new(CamberSet, -1.3, -1.3, 1, 0, Practice) { MostTimes = 5 },
        new(CamberShort, 1.2, 0, 0.7, 0, Strip) { Shared = 1.2, MostTimes = 5 },
        new(CamberDifference, 0, 0, 0.32, 0, Practice) { MostTimes = 150 },
        new(DampingRatio, 0.34, 0, 0.10, 0, Damping + ": 0.27 to 0.40") { MostTimes = 30 },
    ];

    /// <summary>
    /// Natural logarithm of the front tyres' mean wear by the rear ones' on a sound car. The trade says of front-driven cars "almost twice", up to three to one (no source
    /// that could be read); simulated ones have 1.2 to 1.3. Judgement between them.
    /// </summary>
    public static double FrontByRear(DrivenAxle? driven) => driven switch
    {
        DrivenAxle.Front => 0.35,
        DrivenAxle.Rear => -0.05,
        DrivenAxle.Both => 0.15,
        _ => 0.12,
    };

    /// <summary>
    /// Difference of the shoulders' wear across an axle by a degree of difference in camber, left less right: the wheel with less negative camber wears its outer shoulder. Worked as
    /// for <see cref="TreadWear.EvenWear"/>; judgement between road and track.
    /// </summary>
    public const double AcrossByCamberDeg = 0.2;

    /// <summary>How far that is off, standard deviation.</summary>
    public const double AcrossByCamberSpread = 0.25;

    /// <summary>
    /// How many times as likely both shoulders worn more than the centre make a cause at most while no pressure was read: guidance names hard cornering beside low pressure; judgement.
    /// </summary>
    public const double MostTimesWithoutPressure = 8;

    /// <summary>The same of both shoulders hotter than the centre, which is the same work told once more.</summary>
    public const double MostTimesOfHeatWithoutPressure = 2;

    /// <summary>
    /// How much more the outer shoulders of a sound car's front tyres are worn than those of its rear ones, against the inner ones and by the mean wear: steering takes the outer shoulder in
    /// front, and rear wheels are built with more negative camber; common practice, no source.
    /// </summary>
    public const double ShoulderFrontByRear = 0.06;

    /// <summary>The same of the temperatures of the shoulders, °C.</summary>
    public const double ShoulderTemperatureFrontByRearC = 2;

    /// <summary>
    /// How much of the chance of too little negative camber at the rear goes with the track's share of the wear: rear wheels are built with the camber that roads need, front wheels steer
    /// and lean in the bends of either; judgement.
    /// </summary>
    public const double RearCamberByTrackShare = 0.4;

    /// <summary>
    /// How many times as often too little negative camber shows on an axle that drives or does not: drive wears the whole width of a tread, so that bends, and the camber in them, have
    /// less of the wear; judgement.
    /// </summary>
    /// <param name="isDriven">Whether the axle drives; null = not known.</param>
    /// <param name="isBoth">True where both axles do.</param>
    public static double LowCamberByDrive(bool? isDriven, bool isBoth) => isDriven switch
    {
        null => 1,
        true => isBoth ? 0.8 : 0.55,
        false => 1.3,
    };

    /// <summary>How much less negative the camber of a sound front wheel is than that of a rear one, degrees; common practice, no source.</summary>
    public const double CamberFrontByRearDeg = 0.4;

    /// <summary>How much more toe-in a sound rear wheel has than a front one, degrees; common practice, no source.</summary>
    public const double ToeRearByFrontDeg = 0.05;

    /// <summary>What one sign is where nothing is wrong.</summary>
    public static SignBaseline BaselineOf(WearSign sign) => Baselines.Single(row => row.Sign == sign);

    /// <summary>How far each cause moves each sign.</summary>
    public static IReadOnlyList<SignShift> Shifts { get; } =
    [
        new(LowNegativeCamber, ShoulderDifference, 0.23, 0.16, Any, Service + ": outer shoulder by hard cornering; " + Strip),
        new(LowNegativeCamber, ShoulderDifference, 0.12, 0.15, Track, Strip),
        new(LowNegativeCamber, CrownDifference, 0.04, 0.06, Any, Strip),
        new(LowNegativeCamber, AxleWearRatio, 0, 0.12, Track, Judgement),
        new(LowNegativeCamber, ShoulderTemperatureDifference, 3.5, 2.5, Any, Memory),
        new(LowNegativeCamber, CamberSet, 1.4, 0.6, Any, Practice),
        new(LowNegativeCamber, CamberShort, 1.2, 0.6, Any, Strip),

        new(HighNegativeCamber, ShoulderDifference, -0.34, 0.2, Any, Service + ": one shoulder by camber; " + Strip),
        new(HighNegativeCamber, CrownDifference, -0.08, 0.07, Any, Strip),
        new(HighNegativeCamber, AxleWearRatio, 0.09, 0.15, Any, Strip),
        new(HighNegativeCamber, ShoulderTemperatureDifference, -4, 3, Any, Memory),
        new(HighNegativeCamber, CamberSet, -1.4, 0.9, Any, Practice),
        new(HighNegativeCamber, CamberShort, -1.4, 0.9, Any, Strip),

        new(ToeIn, ShoulderDifference, 0.38, 0.12, Any, Service + "; " + Strip),
        new(ToeIn, CrownDifference, 0.06, 0.05, Any, Strip),
        new(ToeIn, AxleWearRatio, 0.33, 0.2, Any, "wear by toe grows with its square (work of side force)"),
        new(ToeIn, ShoulderTemperatureDifference, 1, 3, Any, Memory),
        new(ToeIn, ToeSet, 0.36, 0.11, Any, "49 CFR 570.7 limit of 30 ft/mile, about 0.33°; from memory"),

        new(ToeOut, ShoulderDifference, -0.48, 0.22, Any, Service + "; " + Strip),
        new(ToeOut, AxleWearRatio, 0.37, 0.22, Any, "wear by toe grows with its square (work of side force)"),
        new(ToeOut, ShoulderTemperatureDifference, -1.5, 3, Any, Memory),
        new(ToeOut, ToeSet, -0.42, 0.12, Any, "49 CFR 570.7 limit of 30 ft/mile, about 0.33°; from memory"),

        new(UnderInflation, CrownDifference, -0.29, 0.16, Any, Service + ": both shoulders; NHTSA, tyre-pressure rule"),
        new(UnderInflation, CrownDifferenceAcrossAxle, 0, 0.14, Any, "often one tyre alone"),
        new(UnderInflation, AxleWearRatio, 0.02, 0.15, Any, "1.78 % of life a psi (NHTSA, tyre-pressure rule)"),
        new(UnderInflation, CrownTemperatureDifference, -3, 2.5, Any, Memory),
        new(UnderInflation, PressureDeviation, -20, 7, Any, Practice),
        new(UnderInflation, PressureDifference, 0, 10, Any, "often one tyre alone"),

        new(OverInflation, CrownDifference, 0.38, 0.14, Any, Service + ": centre"),
        new(OverInflation, CrownDifferenceAcrossAxle, 0, 0.06, Any, Judgement),
        new(OverInflation, CrownTemperatureDifference, 4.5, 2.5, Any, Memory),
        new(OverInflation, PressureDeviation, 22, 7, Any, Practice),
        new(OverInflation, PressureDifference, 0, 4, Any, Judgement),

        new(WeakDamping, SpreadAround, 0.09, 0.07, Any, Service + ": cupping by damper or loose joint"),
        new(WeakDamping, OncePerTurnShare, -0.10, 0.15, Any, "hollows at several places round the tyre; " + Service),
        new(WeakDamping, SideWearRatio, 0, 0.05, Any, Judgement),
        new(WeakDamping, DampingRatio, -0.19, 0.06, Any, Damping + ", half of it lost"),

        new(Imbalance, SpreadAround, 0.14, 0.06, Any, Service + ": cupping by imbalance"),
        new(Imbalance, OncePerTurnShare, 0.35, 0.12, Any, "one heavy or high side wears once round the tyre; common practice, no source"),
        new(Imbalance, SideWearRatio, 0, 0.05, Any, Judgement),

        new(WheelLocking, SpreadAround, 0.07, 0.13, Any, Service + ": flat spot by a locked wheel"),
        new(WheelLocking, SideWearRatio, 0, 0.05, Any, Judgement),

        new(Wheelspin, CrownDifference, 0.19, 0.09, Any, Service + ": centre by hard driving torque"),
        new(Wheelspin, AxleWearRatio, 0.48, 0.20, Any, Judgement),
        new(Wheelspin, AxleTemperatureDifference, 7, 6, Any, Memory),

        new(FrontOverdriven, ShoulderDifference, 0.12, 0.15, Any, Service + ": shoulders by hard cornering"),
        new(FrontOverdriven, AxleWearRatio, 0.53, 0.28, Any, Judgement),
        new(FrontOverdriven, ShoulderTemperatureDifference, 2, 3, Any, Memory),
        new(FrontOverdriven, AxleTemperatureDifference, 15, 7, Any, Memory),

        new(MixedTyres, SideWearRatio, 0, 0.42, Any, Practice),
        new(MixedTyres, ShoulderDifferenceAcrossAxle, 0, 0.16, Any, Practice),
        new(MixedTyres, CrownDifferenceAcrossAxle, 0, 0.08, Any, Judgement),
        new(MixedTyres, ShoulderDifference, 0, 0.12, Any, Judgement),

        new(SideDifference, ShoulderDifferenceAcrossAxle, 0, 0.36, Any, Practice),
        new(SideDifference, SideWearRatio, 0, 0.10, Any, Practice),
        new(SideDifference, ShoulderDifference, 0, 0.18, Any, Practice),
        new(SideDifference, CamberDifference, 0, 1.5, Any, Practice),
        new(SideDifference, ThrustSet, 0, 0.04, Any, Judgement),

        new(AxleMisaligned, ShoulderDifferenceAcrossAxle, 0, 0.78, Any, Strip + ": one wheel toes in, the other out"),
        new(AxleMisaligned, ThrustSet, 0, 0.42, Any, Practice),
        new(AxleMisaligned, SideWearRatio, 0, 0.25, Any, Strip),
        new(AxleMisaligned, AxleWearRatio, 0.18, 0.18, Any, "wear by toe grows with its square (work of side force)"),

        new(BelowTemperatureWindow, TemperatureInWindow, -1.6, 0.45, Any, Memory),
        new(BelowTemperatureWindow, AxleTemperatureDifference, -16, 12, Any, Memory),
        new(AboveTemperatureWindow, TemperatureInWindow, 1.9, 0.6, Any, Memory),
        new(AboveTemperatureWindow, AxleTemperatureDifference, 17, 13, Any, Memory),

        new(RimWidthMismatch, CrownDifference, 0, 0.26, Any, Practice),
    ];

    /// <summary>How likely each cause makes each mark.</summary>
    public static IReadOnlyList<MarkChance> Marks { get; } =
    [
        new(Normal, FeatheredSharpInboard, 0.1, Judgement),
        new(Normal, FeatheredSharpOutboard, 0.05, Judgement),
        new(Normal, Cupping, 0.05, Judgement),
        new(Normal, HeelAndToe, 0.16, "normal shear of blocks on lightly driven wheels, from memory"),
        new(Normal, FlatSpot, 0.045, Judgement),
        new(Normal, ShoulderGraining, 0.06, Judgement),
        new(Normal, Blistering, 0.035, Judgement),
        new(Normal, Chunking, 0.05, Judgement),
        new(Normal, WornPastShoulder, 0.05, Judgement),
        new(Normal, DiagonalScallop, 0.04, Judgement),
        new(Normal, RimOutsidePermitted, 0.002, Judgement),
        new(Normal, MovedOrTurned, 0.019, "people swap tyres; judgement"),
        new(Normal, TyresDiffer, 0.003, Judgement),

        new(ToeIn, FeatheredSharpInboard, 0.92, Service),
        new(ToeIn, HeelAndToe, 0.18, "from memory"),
        new(ToeIn, DiagonalScallop, 0.16, "rear toe, from memory"),
        new(ToeOut, FeatheredSharpOutboard, 0.88, Service),
        new(ToeOut, HeelAndToe, 0.18, "from memory"),
        new(ToeOut, DiagonalScallop, 0.16, "rear toe, from memory"),
        new(WeakDamping, Cupping, 0.75, Service),
        new(Imbalance, Cupping, 0.4, Service),
        new(Imbalance, FlatSpot, 0.08, Judgement),
        new(WheelLocking, FlatSpot, 0.78, Service),
        new(WheelLocking, Chunking, 0.15, Judgement),
        new(UnderInflation, HeelAndToe, 0.22, "from memory"),
        new(BelowTemperatureWindow, ShoulderGraining, 0.5, Memory),
        new(AboveTemperatureWindow, Blistering, 0.72, Memory),
        new(AboveTemperatureWindow, Chunking, 0.35, Memory),
        new(AxleMisaligned, DiagonalScallop, 0.78, "from memory"),
        new(AxleMisaligned, FeatheredSharpInboard, 0.58, Strip),
        new(AxleMisaligned, FeatheredSharpOutboard, 0.58, Strip),
        new(AxleMisaligned, HeelAndToe, 0.2, Judgement),
        new(SideDifference, FeatheredSharpInboard, 0.08, Judgement),
        new(SideDifference, FeatheredSharpOutboard, 0.08, Judgement),
        new(RimWidthMismatch, RimOutsidePermitted, 0.95, "a tyre's permitted rims, as its standard has them"),
        new(MixedTyres, MovedOrTurned, 0.60, Practice),
        new(MixedTyres, TyresDiffer, 0.45, Practice),
        new(Wheelspin, HeelAndToe, 0.10, Judgement),
    ];

    /// <summary>
    /// How likely each cause has the outer edge dragged in bends, which is not read itself: grains on the outer shoulder and scuffs past it are both made by it, and are one finding of
    /// it, not two.
    /// </summary>
    public static IReadOnlyList<EdgeChance> DraggedEdge { get; } =
    [
        new(Normal, 0.27, "hard bends drag the edge of a sound car's tyre too; judgement"),
        new(LowNegativeCamber, 0.52, Practice),
        new(ToeOut, 0.15, Judgement),
        new(UnderInflation, 0.45, Practice),
        new(FrontOverdriven, 0.92, Memory),
        new(RimWidthMismatch, 0.15, Judgement),
    ];

    /// <summary>How likely a person who looks at an edge dragged in bends finds grains on it.</summary>
    public const double GrainsOnDraggedEdge = 0.75;

    /// <summary>How likely he finds it worn past the shoulder.</summary>
    public const double PastDraggedEdge = 0.7;

    /// <summary>Causes that exclude each other.</summary>
    public static IReadOnlyList<(WearCause One, WearCause Other)> Exclusive { get; } =
    [
        (LowNegativeCamber, HighNegativeCamber),
        (ToeIn, ToeOut),
        (UnderInflation, OverInflation),
        (BelowTemperatureWindow, AboveTemperatureWindow),
    ];
}

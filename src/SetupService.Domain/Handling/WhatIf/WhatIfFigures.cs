namespace SetupService.Domain.Handling.WhatIf;

/// <summary>What a change of the car is judged by; null where a figure is not known.</summary>
public readonly record struct WhatIfFigures
{
    /// <summary>Roll of the body in the turn, degrees.</summary>
    public required double? RollDeg { get; init; }

    /// <summary>Inclination of the outer front wheel to the road, degrees.</summary>
    public required double? FrontInclinationDeg { get; init; }

    /// <summary>Inclination of the outer rear wheel to the road, degrees.</summary>
    public required double? RearInclinationDeg { get; init; }

    /// <summary>Front axle's share of the load transfer, percent.</summary>
    public required double? FrontLoadTransferPct { get; init; }

    /// <summary>Lateral acceleration the front axle can hold, g.</summary>
    public required double? FrontLimitG { get; init; }

    /// <summary>Lateral acceleration the rear axle can hold, g.</summary>
    public required double? RearLimitG { get; init; }

    /// <summary>The rear's limit less the front's, g; positive where the front gives up first.</summary>
    public required double? LimitMarginG { get; init; }

    /// <summary>Understeer gradient, degrees per g; null where an axle uses more than nine tenths of its grip or a wheel has lifted.</summary>
    public required double? UndersteerDegPerG { get; init; }

    /// <summary>Travel left to the bump stop at the outer front wheel in the turn, mm.</summary>
    public required double? FrontBumpLeftMm { get; init; }

    /// <summary>Travel left to the bump stop at the outer rear wheel in the turn, mm.</summary>
    public required double? RearBumpLeftMm { get; init; }

    /// <summary>Front ride frequency, Hz.</summary>
    public required double? FrontRideFrequencyHz { get; init; }

    /// <summary>Rear ride frequency, Hz.</summary>
    public required double? RearRideFrequencyHz { get; init; }

    /// <summary>Mean damping ratio in front.</summary>
    public required double? FrontDampingRatio { get; init; }

    /// <summary>Mean damping ratio behind.</summary>
    public required double? RearDampingRatio { get; init; }

    /// <summary>Front ride height less that of the car as given, mm.</summary>
    public required double? FrontRideHeightMm { get; init; }

    /// <summary>Rear ride height less that of the car as given, mm.</summary>
    public required double? RearRideHeightMm { get; init; }

    /// <summary>Camber of the front wheels standing, mean of both, degrees.</summary>
    public required double? FrontCamberDeg { get; init; }

    /// <summary>Camber of the rear wheels standing, mean of both, degrees.</summary>
    public required double? RearCamberDeg { get; init; }

    /// <summary>Height of the front roll centre above the ground, standing, mm.</summary>
    public required double? FrontRollCentreHeightMm { get; init; }

    /// <summary>Height of the rear roll centre above the ground, standing, mm.</summary>
    public required double? RearRollCentreHeightMm { get; init; }

    /// <summary>Front track, mm.</summary>
    public required double? FrontTrackMm { get; init; }

    /// <summary>Rear track, mm.</summary>
    public required double? RearTrackMm { get; init; }

    /// <summary>Scrub radius of the front wheels, standing, mm; positive = the steering axis meets the ground inboard of the contact.</summary>
    public required double? FrontScrubRadiusMm { get; init; }

    /// <summary>Unsprung mass of a front wheel, kg.</summary>
    public required double? FrontUnsprungMassKg { get; init; }

    /// <summary>Unsprung mass of a rear wheel, kg.</summary>
    public required double? RearUnsprungMassKg { get; init; }

    /// <summary>These figures less others; null where either is not known.</summary>
    public WhatIfFigures Less(in WhatIfFigures other) => new()
    {
        RollDeg = RollDeg - other.RollDeg,
        FrontInclinationDeg = FrontInclinationDeg - other.FrontInclinationDeg,
        RearInclinationDeg = RearInclinationDeg - other.RearInclinationDeg,
        FrontLoadTransferPct = FrontLoadTransferPct - other.FrontLoadTransferPct,
        FrontLimitG = FrontLimitG - other.FrontLimitG,
        RearLimitG = RearLimitG - other.RearLimitG,
        LimitMarginG = LimitMarginG - other.LimitMarginG,
        UndersteerDegPerG = UndersteerDegPerG - other.UndersteerDegPerG,
        FrontBumpLeftMm = FrontBumpLeftMm - other.FrontBumpLeftMm,
        RearBumpLeftMm = RearBumpLeftMm - other.RearBumpLeftMm,
        FrontRideFrequencyHz = FrontRideFrequencyHz - other.FrontRideFrequencyHz,
        RearRideFrequencyHz = RearRideFrequencyHz - other.RearRideFrequencyHz,
        FrontDampingRatio = FrontDampingRatio - other.FrontDampingRatio,
        RearDampingRatio = RearDampingRatio - other.RearDampingRatio,
        FrontRideHeightMm = FrontRideHeightMm - other.FrontRideHeightMm,
        RearRideHeightMm = RearRideHeightMm - other.RearRideHeightMm,
        FrontCamberDeg = FrontCamberDeg - other.FrontCamberDeg,
        RearCamberDeg = RearCamberDeg - other.RearCamberDeg,
        FrontRollCentreHeightMm = FrontRollCentreHeightMm - other.FrontRollCentreHeightMm,
        RearRollCentreHeightMm = RearRollCentreHeightMm - other.RearRollCentreHeightMm,
        FrontTrackMm = FrontTrackMm - other.FrontTrackMm,
        RearTrackMm = RearTrackMm - other.RearTrackMm,
        FrontScrubRadiusMm = FrontScrubRadiusMm - other.FrontScrubRadiusMm,
        FrontUnsprungMassKg = FrontUnsprungMassKg - other.FrontUnsprungMassKg,
        RearUnsprungMassKg = RearUnsprungMassKg - other.RearUnsprungMassKg,
    };

    /// <summary>True when every one of these differences is as good as nothing, or not known.</summary>
    public bool AreNothing => Array.TrueForAll(
        (double?[])
        [
            RollDeg, FrontInclinationDeg, RearInclinationDeg, FrontLoadTransferPct, FrontLimitG, RearLimitG, UndersteerDegPerG, FrontBumpLeftMm, RearBumpLeftMm, FrontRideFrequencyHz,
            RearRideFrequencyHz, FrontDampingRatio, RearDampingRatio, FrontRideHeightMm, RearRideHeightMm, FrontCamberDeg, RearCamberDeg, FrontRollCentreHeightMm, RearRollCentreHeightMm,
            FrontTrackMm, RearTrackMm, FrontScrubRadiusMm, FrontUnsprungMassKg, RearUnsprungMassKg,
        ],
        one => one is null || Math.Abs(one.Value) < 1e-6);
}

using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>A corner's figures at the height it stands at, or a change of them; null where this corner has no such figure or it is not known.</summary>
public sealed record CornerFiguresPart
{
    /// <summary>Camber; negative = top towards the car's centre.</summary>
    [Sample(-1.35)]
    public required double? CamberDeg { get; init; }

    /// <summary>Caster; null where nothing steers the wheel.</summary>
    [Sample(6.4)]
    public required double? CasterDeg { get; init; }

    /// <summary>Steering-axis inclination.</summary>
    [Sample(13.7)]
    public required double? SteeringAxisInclinationDeg { get; init; }

    /// <summary>Toe of this wheel; positive = toe-in.</summary>
    [Sample(0.31)]
    public required double? ToeDeg { get; init; }

    /// <summary>Inclination and camber together: it changes only where the wheel moves in its upright.</summary>
    [Sample(12.4)]
    public required double? IncludedAngleDeg { get; init; }

    /// <summary>Scrub radius.</summary>
    [Sample(-2.1)]
    public required double? ScrubRadiusMm { get; init; }

    /// <summary>Mechanical trail.</summary>
    [Sample(27.7)]
    public required double? MechanicalTrailMm { get; init; }

    /// <summary>Kinematic roll centre above the contact centre.</summary>
    [Sample(66.5)]
    public required double? RollCentreHeightMm { get; init; }

    /// <summary>Change of camber per mm of bump.</summary>
    [Sample(-0.0155)]
    public required double? CamberGainDegPerMm { get; init; }

    /// <summary>Change of toe per 10 mm of bump.</summary>
    [Sample(-0.03)]
    public required double? BumpSteerDegPer10Mm { get; init; }

    /// <summary>Spring travel per wheel travel.</summary>
    [Sample(0.95)]
    public required double? SpringMotionRatio { get; init; }

    /// <summary>What changed since.</summary>
    internal CornerFiguresPart Since(CornerFiguresPart before) => new()
    {
        CamberDeg = CamberDeg - before.CamberDeg,
        CasterDeg = CasterDeg - before.CasterDeg,
        SteeringAxisInclinationDeg = SteeringAxisInclinationDeg - before.SteeringAxisInclinationDeg,
        ToeDeg = ToeDeg - before.ToeDeg,
        IncludedAngleDeg = IncludedAngleDeg - before.IncludedAngleDeg,
        ScrubRadiusMm = ScrubRadiusMm - before.ScrubRadiusMm,
        MechanicalTrailMm = MechanicalTrailMm - before.MechanicalTrailMm,
        RollCentreHeightMm = RollCentreHeightMm - before.RollCentreHeightMm,
        CamberGainDegPerMm = CamberGainDegPerMm - before.CamberGainDegPerMm,
        BumpSteerDegPer10Mm = BumpSteerDegPer10Mm - before.BumpSteerDegPer10Mm,
        SpringMotionRatio = SpringMotionRatio - before.SpringMotionRatio,
    };
}

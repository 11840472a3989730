using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Suspension.PointErrors;

/// <summary>A figure of a sweep's row, in the unit its name ends in; signs as in <see cref="SweepRow"/>.</summary>
public enum SweepFigure
{
    /// <summary>Camber.</summary>
    CamberDeg,

    /// <summary>Toe; steer of the wheel is its opposite.</summary>
    ToeDeg,

    /// <summary>Caster.</summary>
    CasterDeg,

    /// <summary>Steering-axis inclination.</summary>
    SteeringAxisInclinationDeg,

    /// <summary>Scrub radius.</summary>
    ScrubRadiusMm,

    /// <summary>Mechanical trail.</summary>
    MechanicalTrailMm,

    /// <summary>Movement of the contact centre outboard.</summary>
    HalfTrackChangeMm,

    /// <summary>Movement of the contact centre forward.</summary>
    ContactForwardMm,

    /// <summary>Front-view instant centre, across.</summary>
    InstantCentreYMm,

    /// <summary>Front-view instant centre, height.</summary>
    InstantCentreZMm,

    /// <summary>Front-view swing arm.</summary>
    SwingArmMm,

    /// <summary>Roll centre above the ground.</summary>
    RollCentreHeightMm,

    /// <summary>Side-view instant centre, forward.</summary>
    SideInstantCentreXMm,

    /// <summary>Side-view instant centre, height.</summary>
    SideInstantCentreZMm,

    /// <summary>Anti-dive.</summary>
    AntiDivePct,

    /// <summary>Anti-lift.</summary>
    AntiLiftPct,

    /// <summary>Anti-squat.</summary>
    AntiSquatPct,

    /// <summary>Spring travel per wheel travel.</summary>
    SpringMotionRatio,

    /// <summary>Length between the spring's points.</summary>
    SpringLengthMm,

    /// <summary>Damper travel per wheel travel.</summary>
    DamperMotionRatio,

    /// <summary>Length between the damper's points.</summary>
    DamperLengthMm,

    /// <summary>Change of camber per mm of bump.</summary>
    CamberGainDegPerMm,

    /// <summary>Camber against the body gained per degree of roll.</summary>
    CamberGainPerRoll,

    /// <summary>Change of toe per mm of bump.</summary>
    ToeGainDegPerMm,

    /// <summary>Change of toe at the measuring diameter per mm of bump, mm.</summary>
    BumpSteerMmPerMm,

    /// <summary>Steer of the other wheel.</summary>
    OtherSteerDeg,

    /// <summary>Ackermann.</summary>
    AckermannPct,

    /// <summary>Turning circle.</summary>
    TurningCircleM,
}

/// <summary>Reads a figure off a row.</summary>
public static class SweepFigureValues
{
    /// <summary>How many there are.</summary>
    public const int Count = (int)SweepFigure.TurningCircleM + 1;

    /// <summary>The figure; null where the row has none.</summary>
    public static double? Read(SweepFigure figure, in SweepRow row) => figure switch
    {
        SweepFigure.CamberDeg => row.Wheel.CamberDeg,
        SweepFigure.ToeDeg => row.Wheel.ToeDeg,
        SweepFigure.CasterDeg => row.Wheel.CasterDeg,
        SweepFigure.SteeringAxisInclinationDeg => row.Wheel.SteeringAxisInclinationDeg,
        SweepFigure.ScrubRadiusMm => row.Wheel.ScrubRadiusMm,
        SweepFigure.MechanicalTrailMm => row.Wheel.MechanicalTrailMm,
        SweepFigure.HalfTrackChangeMm => row.Wheel.HalfTrackChangeMm,
        SweepFigure.ContactForwardMm => row.Wheel.ContactForwardMm,
        SweepFigure.InstantCentreYMm => row.Wheel.InstantCentreYMm,
        SweepFigure.InstantCentreZMm => row.Wheel.InstantCentreZMm,
        SweepFigure.SwingArmMm => row.Wheel.SwingArmMm,
        SweepFigure.RollCentreHeightMm => row.Wheel.RollCentreHeightMm,
        SweepFigure.SideInstantCentreXMm => row.Wheel.SideInstantCentreXMm,
        SweepFigure.SideInstantCentreZMm => row.Wheel.SideInstantCentreZMm,
        SweepFigure.AntiDivePct => row.Anti.AntiDivePct,
        SweepFigure.AntiLiftPct => row.Anti.AntiLiftPct,
        SweepFigure.AntiSquatPct => row.Anti.AntiSquatPct,
        SweepFigure.SpringMotionRatio => row.Wheel.SpringMotionRatio,
        SweepFigure.SpringLengthMm => row.Wheel.SpringLengthMm,
        SweepFigure.DamperMotionRatio => row.Wheel.DamperMotionRatio,
        SweepFigure.DamperLengthMm => row.Wheel.DamperLengthMm,
        SweepFigure.CamberGainDegPerMm => row.Wheel.CamberGainDegPerMm,
        SweepFigure.CamberGainPerRoll => row.Wheel.CamberGainPerRoll,
        SweepFigure.ToeGainDegPerMm => row.Wheel.ToeGainDegPerMm,
        SweepFigure.BumpSteerMmPerMm => row.BumpSteerMmPerMm,
        SweepFigure.OtherSteerDeg => row.Pair?.OtherSteerDeg,
        SweepFigure.AckermannPct => row.Pair?.AckermannPct,
        _ => row.Pair?.TurningCircleM,
    };
}

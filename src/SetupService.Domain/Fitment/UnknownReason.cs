namespace SetupService.Domain.Fitment;

/// <summary>Why a check came out as it did: what is missing where it is unknown, else what decided it. The explanation has a sentence for each.</summary>
public enum UnknownReason
{
    /// <summary>The check was computed from all it needs.</summary>
    Computed,

    /// <summary>The wheel and tyre fitted now are not described.</summary>
    PresentFittingMissing,

    /// <summary>The height of a tyre does not follow from its size by any rule that could be read (6.00-16).</summary>
    TyreSizeUnknown,

    /// <summary>The gap at this place was not measured.</summary>
    GapMissing,

    /// <summary>The gap and what travel takes of it cannot both be right: the wheel fitted now would touch.</summary>
    MeasurementsContradict,

    /// <summary>The gap is at ride height and the bump travel is not known.</summary>
    BumpTravelMissing,

    /// <summary>The gap is at ride height, no measured camber curve reaches the bump travel, and the suspension's points are not known.</summary>
    CamberCurveMissing,

    /// <summary>The gap is at ride height and the suspension's points, which would tell the lean, contradict each other.</summary>
    PointsContradict,

    /// <summary>The gap is at ride height and the suspension's points, which would tell the lean, do not hold the wheel.</summary>
    PointsDoNotHold,

    /// <summary>The gap is at ride height and the suspension's parts do not close up to the bump travel.</summary>
    TravelNotReached,

    /// <summary>The camber change needs the height of its pivot or of the narrowest place.</summary>
    PivotHeightMissing,

    /// <summary>Another value the check needs was not given.</summary>
    ValueMissing,

    /// <summary>The tyre's marking carries no load index or speed symbol.</summary>
    MarkingSilent,

    /// <summary>The limits are a pattern, not a listed row, and are passed by no more than half an inch.</summary>
    JustOutsidePattern,

    /// <summary>The pressure is below the lowest that the standard tabulates.</summary>
    PressureBelowTable,

    /// <summary>The standard ties this tyre's load to a pressure that only its maker states.</summary>
    ReferencePressureUnknown,

    /// <summary>The load index is below the lowest the car's papers allow.</summary>
    IndexBelowMinimum,

    /// <summary>The axle's greatest load is not given, and what it carries as driven is already too much.</summary>
    LessThanAsDriven,

    /// <summary>The load is carried, but not with the addition for sustained speed.</summary>
    SpeedAdditionShort,

    /// <summary>A winter tyre below the car's top speed.</summary>
    SnowTyreBelowTopSpeed,

    /// <summary>The car is faster than the tyre's symbol allows.</summary>
    BeyondSpeedSymbol,

    /// <summary>Rings are needed between bore and hub.</summary>
    RingsNeeded,

    /// <summary>What centres the spacer on the hub, or the wheel on the spacer, is not given.</summary>
    SpacerPilotMissing,

    /// <summary>The spacer's bore is smaller than the hub's spigot.</summary>
    SpacerNotOnHub,

    /// <summary>The wheel's bore against the spacer's own spigot.</summary>
    OnSpacerPilot,

    /// <summary>As <see cref="OnSpacerPilot"/>, with rings needed between them.</summary>
    RingsNeededOnSpacer,

    /// <summary>The spacer is held by fasteners of its own, and those of the wheel are not described.</summary>
    SpacerOwnFasteners,

    /// <summary>The seat of wheel and fastener differ.</summary>
    SeatMismatch,

    /// <summary>Only the seat is not known; the engagement is enough.</summary>
    SeatMissing,

    /// <summary>Bolts reach further into the hub than now.</summary>
    BoltReachesDeeper,

    /// <summary>Judged from the smallest rim the car's papers allow, not from outlines.</summary>
    FromMinimumRim,

    /// <summary>The outline of the wheel does not reach past the caliper by the margin wanted.</summary>
    OutlineTooShort,

    /// <summary>The outline of the wheel ends so near to the caliper that what it does not show may be nearer than what it shows.</summary>
    OutlineEndsNear,

    /// <summary>The difference is no greater than the car has now.</summary>
    NoWiderThanNow,

    /// <summary>The hub's bolt circle is taken from the wheel fitted now.</summary>
    FromPresentWheel,

    /// <summary>The candidate takes no more room at this place than the wheel and tyre fitted now.</summary>
    InsidePresent,
}

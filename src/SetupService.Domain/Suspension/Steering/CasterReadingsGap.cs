namespace SetupService.Domain.Suspension.Steering;

/// <summary>Why readings on turn plates do not tell the steering axis.</summary>
public enum CasterReadingsGap
{
    /// <summary>Fewer than three different steer angles: caster, inclination and the camber straight ahead are three unknowns.</summary>
    TooFewSteerAngles,

    /// <summary>All steer angles lie within a degree.</summary>
    SteerAnglesTooClose,

    /// <summary>No steering axis comes near these readings, or they leave open which.</summary>
    NoAxisFits,
}

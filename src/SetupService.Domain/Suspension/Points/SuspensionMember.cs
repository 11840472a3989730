namespace SetupService.Domain.Suspension.Points;

/// <summary>A moving part that can carry the end of a spring or damper.</summary>
public enum SuspensionMember
{
    /// <summary>The lower arm.</summary>
    LowerArm,

    /// <summary>The upper arm.</summary>
    UpperArm,

    /// <summary>The upright.</summary>
    Upright,

    /// <summary>The beam or trailing arm.</summary>
    Beam,
}

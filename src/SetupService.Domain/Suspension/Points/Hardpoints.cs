using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>
/// The points of a left corner as they stand at the stated position: ride height, rack in the middle. Axes as ISO 8855: x forward,
/// y left with the car's centre plane at 0, z up; mm.
/// </summary>
public abstract record Hardpoints
{
    /// <summary>Where the spin axis meets the wheel's centre plane, mm.</summary>
    public required Vector3 WheelCentre { get; init; }

    /// <summary>The spring; null where its points are not known. A strut without one stands around its damper.</summary>
    public SpringLine? Spring { get; init; }

    /// <summary>The damper; null where its points are not known. A strut without one is its own damper.</summary>
    public SpringLine? Damper { get; init; }

    /// <summary>The part that usually carries the moving end of spring and damper (common practice, no source).</summary>
    public virtual SuspensionMember UsualCarrier => SuspensionMember.Beam;

    /// <summary>Whether a rack or toe link sets this wheel's heading.</summary>
    public virtual bool HasTieRod => false;
}

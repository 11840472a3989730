using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>
/// An arm that carries the wheel and turns about an axis through two pivots: a semi-trailing arm, and where the axis lies across
/// the car a trailing arm. Each pivot has two places, the same until something is adjusted: on the body and on the arm.
/// </summary>
public sealed record TrailingArm : Hardpoints
{
    /// <summary>Inner pivot on the body, mm.</summary>
    public required Vector3 Inner { get; init; }

    /// <summary>Outer pivot on the body, mm.</summary>
    public required Vector3 Outer { get; init; }

    /// <summary>Inner pivot on the arm, the arm at the stated position, mm.</summary>
    public required Vector3 ArmInner { get; init; }

    /// <summary>Outer pivot on the arm, the arm at the stated position, mm.</summary>
    public required Vector3 ArmOuter { get; init; }

    /// <summary>An arm as it is drawn.</summary>
    public static TrailingArm About(Vector3 inner, Vector3 outer, Vector3 wheelCentre) => new()
    {
        Inner = inner,
        Outer = outer,
        ArmInner = inner,
        ArmOuter = outer,
        WheelCentre = wheelCentre,
    };
}

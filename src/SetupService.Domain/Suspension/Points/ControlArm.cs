using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>
/// An arm that swings about two pivots on the body and carries a ball joint. The joint has two places, the same until something is
/// adjusted: where the upright has it and where the arm has it.
/// </summary>
/// <param name="Front">Front pivot, mm.</param>
/// <param name="Rear">Rear pivot, mm.</param>
/// <param name="Joint">Ball joint on the upright at the stated position, mm.</param>
/// <param name="Seat">Ball joint on the arm, the arm at the stated position, mm.</param>
public sealed record ControlArm(Vector3 Front, Vector3 Rear, Vector3 Joint, Vector3 Seat)
{
    /// <summary>An arm as it is drawn: its joint where the upright has it.</summary>
    public ControlArm(Vector3 front, Vector3 rear, Vector3 joint)
        : this(front, rear, joint, joint)
    {
    }

    /// <summary>Direction of the axis it swings about, of length 1, from rear to front.</summary>
    public Vector3 Axis => (Front - Rear).Unit();
}

using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>A lower arm, a strut that slides and turns in its top mount, a tie rod.</summary>
public sealed record MacPhersonStrut : Hardpoints
{
    /// <summary>The lower arm.</summary>
    public required ControlArm LowerArm { get; init; }

    /// <summary>Centre of the top mount on the body, mm.</summary>
    public required Vector3 StrutTop { get; init; }

    /// <summary>A point of the strut's axis, fixed to the upright, at the stated position, mm.</summary>
    public required Vector3 StrutLower { get; init; }

    /// <summary>Direction of the strut's axis in the upright at the stated position, upward, of length 1.</summary>
    public required Vector3 StrutAxis { get; init; }

    /// <summary>The tie rod.</summary>
    public required Link TieRod { get; init; }

    /// <inheritdoc />
    public override SuspensionMember UsualCarrier => SuspensionMember.Upright;

    /// <inheritdoc />
    public override bool HasTieRod => true;
}

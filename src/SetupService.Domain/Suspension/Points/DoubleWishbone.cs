namespace SetupService.Domain.Suspension.Points;

/// <summary>A lower and an upper arm and a tie rod.</summary>
public sealed record DoubleWishbone : Hardpoints
{
    /// <summary>The lower arm.</summary>
    public required ControlArm LowerArm { get; init; }

    /// <summary>The upper arm.</summary>
    public required ControlArm UpperArm { get; init; }

    /// <summary>The tie rod.</summary>
    public required Link TieRod { get; init; }

    /// <inheritdoc />
    public override SuspensionMember UsualCarrier => SuspensionMember.LowerArm;

    /// <inheritdoc />
    public override bool HasTieRod => true;
}

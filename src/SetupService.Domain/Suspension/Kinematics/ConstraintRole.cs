namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>Which part of a suspension a constraint stands for; names it where it cannot be kept.</summary>
public enum ConstraintRole
{
    /// <summary>The lower arm, from its front pivot to its ball joint.</summary>
    LowerArmFront,

    /// <summary>The lower arm, from its rear pivot to its ball joint.</summary>
    LowerArmRear,

    /// <summary>The upper arm, from its front pivot to its ball joint.</summary>
    UpperArmFront,

    /// <summary>The upper arm, from its rear pivot to its ball joint.</summary>
    UpperArmRear,

    /// <summary>The strut, whose top mount stays on its axis.</summary>
    Strut,

    /// <summary>The tie rod.</summary>
    TieRod,

    /// <summary>The first of five links.</summary>
    Link1,

    /// <summary>The second of five links.</summary>
    Link2,

    /// <summary>The third of five links.</summary>
    Link3,

    /// <summary>The fourth of five links.</summary>
    Link4,

    /// <summary>The fifth of five links: the tie rod or toe link.</summary>
    Link5,

    /// <summary>A trailing arm's pivot.</summary>
    ArmPivot,
}

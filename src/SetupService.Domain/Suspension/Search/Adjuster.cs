namespace SetupService.Domain.Suspension.Search;

/// <summary>What a workshop can turn, shim or swap at a corner. Amounts are mm, or degrees for the shims, positive as the name says.</summary>
public enum Adjuster
{
    /// <summary>The strut's top mount, inboard, mm. The strut's axis keeps its place in the upright.</summary>
    StrutTopInboard,

    /// <summary>The strut's top mount, rearward, mm.</summary>
    StrutTopRearward,

    /// <summary>
    /// An eccentric bolt between strut and knuckle, its throw in mm: the knuckle turns about the other bolt, the wheel's top inboard.
    /// </summary>
    KnuckleEccentric,

    /// <summary>The lower ball joint's seat on its arm, outboard, mm: a slotted joint, or a longer arm.</summary>
    LowerJointOutboard,

    /// <summary>The lower ball joint's seat on its arm, forward, mm.</summary>
    LowerJointForward,

    /// <summary>The upper ball joint's seat on its arm, outboard, mm.</summary>
    UpperJointOutboard,

    /// <summary>The upper ball joint's seat on its arm, forward, mm.</summary>
    UpperJointForward,

    /// <summary>A spacer, or a longer pin, that puts the lower ball joint lower on the upright, mm.</summary>
    LowerJointSpacer,

    /// <summary>One of five links, longer, mm.</summary>
    LinkLength,

    /// <summary>The tie rod or toe link, longer, mm.</summary>
    TieRodLength,

    /// <summary>The rack (the tie rod's inner end), higher, mm, the rod's length kept.</summary>
    RackHeight,

    /// <summary>A trailing arm's outer pivot, higher, mm.</summary>
    OuterPivotUp,

    /// <summary>A trailing arm's outer pivot, further forward, mm.</summary>
    OuterPivotForward,

    /// <summary>A shim or re-set flange that turns the hub in the upright: camber, degrees.</summary>
    HubShimCamber,

    /// <summary>A shim or re-set flange that turns the hub in the upright: toe, degrees.</summary>
    HubShimToe,

    /// <summary>The body, higher over the wheel, mm: spring seat or spring.</summary>
    RideHeight,
}

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>Where a corner's steering axis comes from.</summary>
internal enum AxisSource
{
    /// <summary>Nothing steers the wheel.</summary>
    None,

    /// <summary>From the lower ball joint to a point of the body: a strut's top mount.</summary>
    JointToBody,

    /// <summary>From the lower to the upper ball joint, both on the upright.</summary>
    JointToJoint,

    /// <summary>The axis of the screw that the upright makes when the rack moves: links without a joint in common.</summary>
    Screw,
}

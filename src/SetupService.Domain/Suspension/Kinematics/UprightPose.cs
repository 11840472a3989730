using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>Where the upright is: the wheel centre, and how far it has turned from the stated position.</summary>
/// <param name="Centre">Wheel centre, mm.</param>
/// <param name="Turn">Rotation from the stated position.</param>
public readonly record struct UprightPose(Vector3 Centre, Rotation Turn)
{
    /// <summary>The pose moved and turned a little: along the body's axes in mm, about them in radians.</summary>
    public UprightPose MovedBy(in Vector3 moveMm, in Vector3 turnRad) => new(Centre + moveMm, Turn.TurnedBy(turnRad));
}

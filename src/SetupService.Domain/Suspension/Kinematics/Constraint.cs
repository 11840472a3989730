using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>
/// One of the five conditions that hold the upright. Its value is the length, mm, by which it is not kept; its gradient says how
/// the value grows as the upright moves and turns.
/// </summary>
/// <remarks>
/// With p the wheel centre, R the upright's rotation, r = R·<see cref="Upright"/>, b = <see cref="Body"/> and m the direction:
/// <list type="bullet">
/// <item>link: d = p + r − b; value (d·d − L²)/(2L), which is d's length less L to first order and needs no root;</item>
/// <item>body plane: value m·(p + r − b);</item>
/// <item>upright plane: m turns with the upright; value m·(b − p − r);</item>
/// <item>heading: m turns with the upright; value b·m × 300 mm, b a level direction.</item>
/// </list>
/// A turn by the small vector φ moves r by φ × r and m by φ × m, which gives the moments below.
/// </remarks>
internal readonly record struct Constraint
{
    /// <summary>Arm that makes a length of the heading's angle, so that all five values are of one size, mm.</summary>
    private const double HeadingArmMm = 300;

    private Constraint(ConstraintRole role, ConstraintForm form, in Vector3 body, in Vector3 upright)
    {
        Role = role;
        Form = form;
        Body = body;
        Upright = upright;
    }

    public ConstraintRole Role { get; }

    public ConstraintForm Form { get; }

    /// <summary>The point of the body, mm; for a heading the level direction that the upright's direction stays square to.</summary>
    public Vector3 Body { get; }

    /// <summary>The point of the upright from the wheel centre, in the upright's frame, mm.</summary>
    public Vector3 Upright { get; }

    /// <summary>Direction of the plane or heading, of length 1, in the frame of the part it is fixed to.</summary>
    public Vector3 Direction { get; private init; }

    /// <summary>Length of a link, mm.</summary>
    public double LengthMm { get; private init; }

    /// <summary>Whether the body's point moves left with the rack.</summary>
    public bool MovesWithRack { get; private init; }

    public static Constraint Link(ConstraintRole role, in Vector3 body, in Vector3 upright, double lengthMm, bool movesWithRack = false) =>
        new(role, ConstraintForm.Link, body, upright) { LengthMm = lengthMm, MovesWithRack = movesWithRack };

    public static Constraint BodyPlane(ConstraintRole role, in Vector3 body, in Vector3 upright, in Vector3 direction) =>
        new(role, ConstraintForm.BodyPlane, body, upright) { Direction = direction };

    public static Constraint UprightPlane(ConstraintRole role, in Vector3 body, in Vector3 upright, in Vector3 direction) =>
        new(role, ConstraintForm.UprightPlane, body, upright) { Direction = direction };

    public static Constraint Heading(ConstraintRole role, in Vector3 squareTo, in Vector3 direction) =>
        new(role, ConstraintForm.Heading, squareTo, default) { Direction = direction };

    /// <summary>How the value grows with the rack, mm per mm, given the gradient's force.</summary>
    public double PerRack(in Vector3 force) => MovesWithRack ? -force.Y : 0;

    /// <summary>The value, mm, and its gradient: per mm of movement along, and per radian about, the body's axes.</summary>
    public double Evaluate(in Vector3 centre, in RotationMatrix turn, double rackMm, out Vector3 force, out Vector3 moment) => Form switch
    {
        ConstraintForm.Link => EvaluateLink(centre, turn.Apply(Upright), rackMm, out force, out moment),
        ConstraintForm.BodyPlane => EvaluateBodyPlane(centre, turn.Apply(Upright), out force, out moment),
        ConstraintForm.UprightPlane => EvaluateUprightPlane(centre, turn, out force, out moment),
        _ => EvaluateHeading(turn.Apply(Direction), out force, out moment),
    };

    /// <summary>What the value grows with the square of a movement that goes on as it is, mm per unit squared: its second derivative but for what the movement's own change adds by the gradient.</summary>
    public double Bend(in Vector3 centre, in RotationMatrix turn, double rackMm, in UprightMotion motion)
    {
        if (Form == ConstraintForm.Heading)
        {
            var level = turn.Apply(Direction);
            return HeadingArmMm * motion.Spin.Cross(motion.Spin.Cross(level)).Dot(Body);
        }

        var arm = turn.Apply(Upright);
        var inward = motion.Spin.Cross(motion.Spin.Cross(arm));
        if (Form == ConstraintForm.BodyPlane) return Direction.Dot(inward);
        var velocity = motion.At(arm);
        var line = centre + arm - (MovesWithRack ? new Vector3(Body.X, Body.Y + rackMm, Body.Z) : Body);
        if (Form == ConstraintForm.Link) return (velocity.Dot(velocity) + line.Dot(inward)) / LengthMm;
        var direction = turn.Apply(Direction);
        return -(motion.Spin.Cross(motion.Spin.Cross(direction)).Dot(line) + (2 * motion.Spin.Cross(direction).Dot(velocity)) + direction.Dot(inward));
    }

    private double EvaluateLink(in Vector3 centre, in Vector3 arm, double rackMm, out Vector3 force, out Vector3 moment)
    {
        var line = centre + arm - (MovesWithRack ? new Vector3(Body.X, Body.Y + rackMm, Body.Z) : Body);
        force = (1 / LengthMm) * line;
        moment = arm.Cross(force);
        return 0.5 * (line.Dot(force) - LengthMm);
    }

    private double EvaluateBodyPlane(in Vector3 centre, in Vector3 arm, out Vector3 force, out Vector3 moment)
    {
        force = Direction;
        moment = arm.Cross(force);
        return Direction.Dot(centre + arm - Body);
    }

    private double EvaluateUprightPlane(in Vector3 centre, in RotationMatrix turn, out Vector3 force, out Vector3 moment)
    {
        var direction = turn.Apply(Direction);
        var toBody = Body - centre;
        force = -direction;
        moment = direction.Cross(toBody);
        return direction.Dot(toBody - turn.Apply(Upright));
    }

    private double EvaluateHeading(in Vector3 direction, out Vector3 force, out Vector3 moment)
    {
        force = default;
        moment = HeadingArmMm * direction.Cross(Body);
        return HeadingArmMm * direction.Dot(Body);
    }
}

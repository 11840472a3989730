using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Suspension.Kinematics;

/// <summary>
/// A corner made ready to be moved: the five constraints that hold its upright, and what is carried along. Immutable; made once for
/// a sweep.
/// </summary>
public sealed class CornerMechanism
{
    private readonly Constraint[] _constraints;

    internal CornerMechanism(CornerSetting setting, Constraint[] constraints)
    {
        _constraints = constraints;
        Setting = setting;
        Stated = WheelPlane.At(setting.Suspension.WheelCentre, setting.CamberDeg, setting.ToeDeg);
        StatedContact = Stated.Contact(setting.LoadedRadiusMm);
        HasRack = setting.Suspension.HasTieRod;
        IsBeamInHeave = setting is { Suspension: TwistBeam, Motion: AxleMotion.Parallel };
    }

    /// <summary>What it was made of.</summary>
    public CornerSetting Setting { get; }

    /// <summary>The wheel at the stated position.</summary>
    public WheelPlane Stated { get; }

    /// <summary>The contact centre at the stated position, mm.</summary>
    public Vector3 StatedContact { get; }

    /// <summary>Whether a rack moves its tie rod or toe link.</summary>
    public bool HasRack { get; }

    /// <summary>True of a twist beam both of whose wheels move alike: what belongs to roll is not told of it.</summary>
    public bool IsBeamInHeave { get; }

    internal ReadOnlySpan<Constraint> Constraints => _constraints;

    internal AxisSource AxisSource { get; init; }

    /// <summary>Lower ball joint from the wheel centre, in the upright's frame, mm.</summary>
    internal Vector3 LowerJoint { get; init; }

    /// <summary>The axis' upper point: of the body, or from the wheel centre in the upright's frame, mm.</summary>
    internal Vector3 UpperPoint { get; init; }

    internal ForceLine? Spring { get; init; }

    internal ForceLine? Damper { get; init; }

    /// <summary>A corner whose tie rod is set so that toe stays at the stated value: the rod's length is then an outcome.</summary>
    internal CornerMechanism WithToeHeld(double toeDeg)
    {
        Constraint[] constraints = [.. _constraints];
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(toeDeg));
        constraints[^1] = Constraint.Heading(constraints[^1].Role, new Vector3(cos, -sin, 0), Stated.Spin);
        return new CornerMechanism(Setting, constraints)
        {
            AxisSource = AxisSource,
            LowerJoint = LowerJoint,
            UpperPoint = UpperPoint,
            Spring = Spring,
            Damper = Damper,
        };
    }
}

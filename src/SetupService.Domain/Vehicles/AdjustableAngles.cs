using SetupService.Domain.Suspension;

namespace SetupService.Domain.Vehicles;

/// <summary>How far a workshop can set the wheel angles of an axle with the parts fitted.</summary>
public sealed record AdjustableAngles
{
    /// <summary>Camber; null = nobody said.</summary>
    public AngleReach? Camber { get; init; }

    /// <summary>Toe of each wheel; null = nobody said.</summary>
    public AngleReach? Toe { get; init; }

    /// <summary>Caster; null = nobody said.</summary>
    public AngleReach? Caster { get; init; }

    /// <summary>
    /// What a kind of suspension tells by itself: the wheels of a twist beam and of a semi-trailing arm are fixed to it, without camber, toe or caster to set unless parts were
    /// added for it (common practice, no source). Other kinds tell nothing: some cars have eccentrics or slotted mounts, others have none.
    /// </summary>
    public static AdjustableAngles ByKind(SuspensionLayout? layout) => layout is SuspensionLayout.TwistBeam or SuspensionLayout.SemiTrailingArm
        ? new() { Camber = AngleReach.None, Toe = AngleReach.None, Caster = AngleReach.None }
        : new();

    /// <summary>These, completed by another's where nobody said.</summary>
    public AdjustableAngles Or(AdjustableAngles other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new() { Camber = Camber ?? other.Camber, Toe = Toe ?? other.Toe, Caster = Caster ?? other.Caster };
    }

    /// <summary>True where every setting of another's can be set by these as well.</summary>
    public bool Cover(AdjustableAngles other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Covers(Camber, other.Camber) && Covers(Toe, other.Toe) && Covers(Caster, other.Caster);

        static bool Covers(AngleReach? own, AngleReach? wanted) => wanted is not { CanBeSet: true } reach || (own is { } has && has.Holds(reach.FromDeg) && has.Holds(reach.ToDeg));
    }
}

/// <summary>How far one angle can be set; the default is not at all.</summary>
public readonly record struct AngleReach
{
    private AngleReach(double fromDeg, double toDeg) => (CanBeSet, FromDeg, ToDeg) = (true, fromDeg, toDeg);

    /// <summary>It cannot be set.</summary>
    public static AngleReach None => default;

    /// <summary>False where it cannot be set; the ends then mean nothing.</summary>
    public bool CanBeSet { get; }

    /// <summary>The lowest setting, degrees.</summary>
    public double FromDeg { get; }

    /// <summary>The highest setting, degrees; not below <see cref="FromDeg"/>.</summary>
    public double ToDeg { get; }

    /// <summary>It can be set between two settings, degrees; <paramref name="toDeg"/> is not below <paramref name="fromDeg"/>.</summary>
    public static AngleReach Between(double fromDeg, double toDeg) => new(fromDeg, toDeg);

    /// <summary>The setting nearest to one wanted, degrees, where <paramref name="nowDeg"/> is set now.</summary>
    public double Nearest(double wantedDeg, double nowDeg) => CanBeSet ? Math.Clamp(wantedDeg, FromDeg, ToDeg) : nowDeg;

    /// <summary>True where a setting, degrees, lies within it.</summary>
    public bool Holds(double deg) => CanBeSet && deg >= FromDeg && deg <= ToDeg;
}

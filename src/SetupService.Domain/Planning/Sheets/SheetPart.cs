using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Planning.Sheets;

/// <summary>A part of a package as the workshop sees it.</summary>
/// <param name="Part">The part on offer.</param>
/// <param name="Axles">The axles it is fitted at, by what it changes there or by the parts it shares a strip-down with; empty = nobody said.</param>
public sealed record SheetPart(OfferedPart Part, IReadOnlyList<CarAxle> Axles)
{
    /// <summary>True where it changes nothing the model knows and renews what is there.</summary>
    public bool IsRenewal => Part.ChangeNumber < 0;

    /// <summary>True where it is fitted at an axle; a part whose axle nobody told counts at none.</summary>
    public bool IsAt(CarAxle? axle) => axle is { } at ? Axles.Contains(at) : Axles.Count == 0;

    /// <summary>The parts of a package with their axles.</summary>
    /// <param name="parts">The parts on offer.</param>
    /// <param name="package">The package.</param>
    /// <param name="members">Which members of the car a part sets, as JSON Pointers within the vehicle.</param>
    public static IReadOnlyList<SheetPart> List(IReadOnlyList<OfferedPart> parts, PartPackage package, Func<int, IEnumerable<string>> members)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(members);
        var places = package.Places();
        var own = places.ToDictionary(place => place, place => Axles(members(place)));

        // What only renews something stands where the parts on the same strip-down do.
        return [.. places.Select(place => new SheetPart(parts[place], own[place].Count > 0 ? own[place] : Union(places.Where(other => other != place && AreTied(place, other)).SelectMany(other => own[other]))))];

        bool AreTied(int one, int other) => PackageSearch.SharedHours(parts, one, other) > 0 || parts[one].Needs.Contains(other) || parts[other].Needs.Contains(one);

        static IReadOnlyList<CarAxle> Axles(IEnumerable<string> pointers)
        {
            string[] all = [.. pointers];
            CarAxle[] both = [CarAxle.Front, CarAxle.Rear];
            return Array.FindAll(both, at => Array.Exists(all, pointer => pointer.StartsWith(at == CarAxle.Front ? "/front/" : "/rear/", StringComparison.Ordinal)));
        }

        static IReadOnlyList<CarAxle> Union(IEnumerable<CarAxle> axles) => [.. axles.Distinct().Order()];
    }
}

/// <summary>What a workshop is asked to do to a car: the parts, and what is known of how it is built.</summary>
/// <param name="Parts">The parts.</param>
/// <param name="FrontLayout">How the front is suspended; null where nobody said.</param>
/// <param name="RearLayout">How the rear is suspended; null where nobody said.</param>
/// <param name="SetsAlignment">Whether an angle is set or may have moved.</param>
/// <param name="Torques">The caller's own torques.</param>
public sealed record WorkCase(IReadOnlyList<SheetPart> Parts, SuspensionLayout? FrontLayout, SuspensionLayout? RearLayout, bool SetsAlignment, IReadOnlyList<StatedTorque> Torques)
{
    /// <summary>What the tyres of today ask for before any of it, as sentences; null where nothing.</summary>
    public string? Lead { get; init; }

    /// <summary>Codes of the cautions that go with <see cref="Lead"/>.</summary>
    public IReadOnlyList<string> LeadCodes { get; init; } = [];

    /// <summary>True where the cold pressures of the sheet are for the track alone, and the road has its own.</summary>
    public bool HasTrackPressures { get; init; }

    /// <summary>True where nothing is fitted and nothing set: the sheets are of the car as it stands.</summary>
    public bool IsAsItStands => Parts.Count == 0 && !SetsAlignment;

    /// <summary>True where a part of one of these kinds is fitted at an axle; null = parts whose axle nobody told.</summary>
    public bool Has(CarAxle? axle, params ReadOnlySpan<PartKind> kinds)
    {
        foreach (var one in Parts)
        {
            if (one.IsAt(axle) && kinds.Contains(one.Part.Kind)) return true;
        }

        return false;
    }

    /// <summary>True where a part of one of these kinds is among them, wherever it is fitted.</summary>
    public bool HasAnywhere(params ReadOnlySpan<PartKind> kinds)
    {
        foreach (var one in Parts)
        {
            if (kinds.Contains(one.Part.Kind)) return true;
        }

        return false;
    }

    /// <summary>How an axle is suspended; null where nobody said.</summary>
    public SuspensionLayout? Layout(CarAxle? axle) => axle switch { CarAxle.Front => FrontLayout, CarAxle.Rear => RearLayout, _ => null };
}

/// <summary>A torque the caller gives: out of the vehicle maker's or part maker's papers.</summary>
/// <param name="Fastener">What is tightened.</param>
/// <param name="Axle">At which axle; null = at both.</param>
/// <param name="TorqueNm">The torque, N m.</param>
public readonly record struct StatedTorque(Fastener Fastener, CarAxle? Axle, double TorqueNm);

/// <summary>What is tightened on a car.</summary>
public enum Fastener
{
    /// <summary>Wheel bolts or nuts.</summary>
    WheelFasteners,

    /// <summary>The top mount at the body.</summary>
    TopMountToBody,

    /// <summary>The nut of the damper's rod, in the top mount.</summary>
    DamperRod,

    /// <summary>A strut at the wheel carrier.</summary>
    StrutToCarrier,

    /// <summary>The lower end of a damper, in rubber as a rule.</summary>
    DamperLowerEnd,

    /// <summary>An eccentric bolt, or the one it takes the place of.</summary>
    EccentricBolt,

    /// <summary>An arm or link at the body or subframe.</summary>
    ArmToBody,

    /// <summary>A ball joint, at the wheel carrier or in its arm.</summary>
    BallJoint,

    /// <summary>The clamps of an anti-roll bar.</summary>
    AntiRollBarClamps,

    /// <summary>The links of an anti-roll bar.</summary>
    AntiRollBarLinks,

    /// <summary>The brake caliper or its carrier.</summary>
    BrakeCaliper,

    /// <summary>The stub axle or hub carrier at the beam or arm.</summary>
    StubAxle,
}

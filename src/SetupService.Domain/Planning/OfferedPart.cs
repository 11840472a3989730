namespace SetupService.Domain.Planning;

/// <summary>A part on offer, as the search for packages sees it.</summary>
public sealed record OfferedPart
{
    /// <summary>What the caller calls it.</summary>
    public required string Id { get; init; }

    /// <summary>What it is.</summary>
    public required PartKind Kind { get; init; }

    /// <summary>Price, in the currency of the plan, not negative.</summary>
    public double Price { get; init; }

    /// <summary>Hours of labour to fit it, not negative.</summary>
    public double LabourHours { get; init; }

    /// <summary>Whether it may be used on the road; null = nobody said.</summary>
    public bool? IsRoadLegal { get; init; }

    /// <summary>Whether the car can be put back as it was; null = nobody said.</summary>
    public bool? IsReversible { get; init; }

    /// <summary>What takes up its movement at its ends; null = nobody said.</summary>
    public PartJoint? Joint { get; init; }

    /// <summary>Noise outside the car on the label of a tyre, dB; null = nobody said.</summary>
    public double? NoiseDb { get; init; }

    /// <summary>Places of the parts it cannot be fitted without, those it comes in a pair with among them, in the list of parts.</summary>
    public IReadOnlyList<int> Needs { get; init; } = [];

    /// <summary>Places of the parts it cannot be fitted beside; it need be said of one of the two only.</summary>
    public IReadOnlyList<int> Excludes { get; init; } = [];

    /// <summary>Parts on the same strip-down, with the labour that fitting both at once saves.</summary>
    public IReadOnlyList<SharedLabour> ApartWith { get; init; } = [];

    /// <summary>Parts of one number change the car alike; −1 = it changes nothing the model knows and only renews something.</summary>
    public int ChangeNumber { get; init; } = -1;

    /// <summary>Why it gives this car nothing, as a sentence; null where it may give something.</summary>
    public string? GivesNothing { get; init; }

    /// <summary>True where it changes the car in something a plan is judged by.</summary>
    public bool Changes => ChangeNumber >= 0 && GivesNothing is null;

    /// <summary>True for parts whose work leaves toe and camber to be set anew: all that holds, carries or springs the wheel.</summary>
    public static bool MovesAngles(PartKind kind) => kind is PartKind.TopMount or PartKind.Spring or PartKind.Damper or PartKind.BumpStop or PartKind.Bush or PartKind.BallJoint or PartKind.Arm or PartKind.EccentricBolt or PartKind.Shim;

    /// <summary>True for parts whose ends are soft or hard, so that the road is heard the less or the more.</summary>
    public static bool HasJoint(PartKind kind) => kind is PartKind.TopMount or PartKind.Bush or PartKind.Arm;

    /// <summary>True for parts that wear and may be renewed without changing the car.</summary>
    public static bool IsWearPart(PartKind kind) => kind is PartKind.Bush or PartKind.BallJoint or PartKind.Pad or PartKind.Disc or PartKind.Tyre;
}

/// <summary>Labour saved where two parts are fitted at once.</summary>
/// <param name="Part">Place of the other part in the list.</param>
/// <param name="SavedHours">Hours saved, not negative.</param>
public readonly record struct SharedLabour(int Part, double SavedHours);

/// <summary>What takes up the movement at the ends of a part, the quietest first.</summary>
public enum PartJoint
{
    /// <summary>Rubber as soft as on the car as made.</summary>
    Rubber,

    /// <summary>Firmer rubber or polyurethane.</summary>
    Firm,

    /// <summary>A metal joint without anything soft.</summary>
    Solid,
}

/// <summary>What a part is.</summary>
public enum PartKind
{
    /// <summary>The upper end of a strut or spring at the body.</summary>
    TopMount,

    /// <summary>A main spring.</summary>
    Spring,

    /// <summary>A damper.</summary>
    Damper,

    /// <summary>An anti-roll bar.</summary>
    AntiRollBar,

    /// <summary>A bump stop.</summary>
    BumpStop,

    /// <summary>A bush of the suspension.</summary>
    Bush,

    /// <summary>A ball joint, or what moves one.</summary>
    BallJoint,

    /// <summary>An arm or link.</summary>
    Arm,

    /// <summary>An eccentric bolt, as between strut and knuckle.</summary>
    EccentricBolt,

    /// <summary>A shim, as between a beam and its stub axle.</summary>
    Shim,

    /// <summary>A wheel.</summary>
    Wheel,

    /// <summary>A tyre.</summary>
    Tyre,

    /// <summary>A spacer between hub and wheel.</summary>
    Spacer,

    /// <summary>Brake pads.</summary>
    Pad,

    /// <summary>A brake disc.</summary>
    Disc,
}

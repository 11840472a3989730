using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>What a change of a car says beside the values it sets: which members it names, what it takes off, whether the car is to stand as before.</summary>
public sealed record CarChange
{
    /// <summary>JSON Pointer within the vehicle to a front bump stop.</summary>
    public const string FrontBumpStop = "/front/bumpStop";

    /// <summary>JSON Pointer within the vehicle to a rear bump stop.</summary>
    public const string RearBumpStop = "/rear/bumpStop";

    /// <summary>Whether the change names a member, by its JSON Pointer within the vehicle: what it names holds, and does not follow the parts around it.</summary>
    public required Predicate<string> States { get; init; }

    /// <summary>Parts taken off that no value of the vehicle tells, by their JSON Pointers within it.</summary>
    public IReadOnlySet<string> Removed { get; init; } = new HashSet<string>();

    /// <summary>True where the spring seats are trimmed so that the car stands as before.</summary>
    public bool KeepsRideHeight { get; init; }

    /// <summary>This change and a later one, made one after the other; a part taken off and named again later is fitted again.</summary>
    public CarChange And(CarChange later)
    {
        ArgumentNullException.ThrowIfNull(later);
        return new()
        {
            States = place => States(place) || later.States(place),
            Removed = new HashSet<string>([.. Removed.Where(part => !later.States(part)), .. later.Removed]),
            KeepsRideHeight = later.KeepsRideHeight,
        };
    }

    /// <summary>The JSON Pointer within the vehicle to one axle.</summary>
    public static string PlaceOf(CarAxle at) => at == CarAxle.Front ? "/front" : "/rear";
}

/// <summary>A figure that a change moves by an amount nobody can tell.</summary>
/// <param name="At">Of which axle.</param>
/// <param name="Figure">Which.</param>
/// <param name="Reason">Why.</param>
/// <param name="Needs">JSON Pointers within the vehicle to what would settle it.</param>
public sealed record ChangeGap(CarAxle At, FollowingFigure Figure, string Reason, IReadOnlyList<string> Needs);

/// <summary>A figure that follows the wheels and tyres fitted.</summary>
public enum FollowingFigure
{
    /// <summary>Distance between the contact centres.</summary>
    Track,

    /// <summary>Unsprung mass of a wheel.</summary>
    UnsprungMass,

    /// <summary>Height of the body over the ground.</summary>
    RideHeight,
}

/// <summary>Why a changed car cannot stand.</summary>
/// <param name="At">At which axle.</param>
/// <param name="Reason">Why.</param>
/// <param name="HeightMm">How much higher its springs would stand it than before, mm; 0 where no spring moves it.</param>
/// <param name="RoomMm">Travel to full droop it had, mm; null where that is not why, or not known.</param>
public sealed record StandingFault(CarAxle At, StandingReason Reason, double HeightMm = 0, double? RoomMm = null)
{
    /// <summary>The same as a sentence, with what to do about it.</summary>
    public string Describe(UnitSystem units)
    {
        var name = At == CarAxle.Front ? "front" : "rear";
        const string Remedy = "Set keepRideHeight to trim the spring seats, or state the new spring's freeLengthMm or installedLengthMm.";
        return Reason switch
        {
            StandingReason.BeyondDroop => Prose.Write(units, $"On these springs the {name} would stand {HeightMm:gap} higher, more than the {RoomMm ?? 0:gap} of travel it has left to full droop. {Remedy}"),
            StandingReason.BeyondSuspension => Prose.Write(units, $"On these springs the {name} would stand {Math.Abs(HeightMm):gap} {(HeightMm < 0 ? "lower" : "higher")}, where its suspension does not reach. {Remedy}"),
            StandingReason.NoLeverage => $"At this ride height the {name} spring has no leverage that holds the car up.",
            StandingReason.NothingSprung => $"With these masses nothing is left on the {name} springs: the unsprung masses weigh as much as the wheels carry.",
            _ => $"The points of the {name} suspension do not hold its wheel: at this ride height they do not close, or leave it a free movement.",
        };
    }
}

/// <summary>Why a changed car cannot stand.</summary>
public enum StandingReason
{
    /// <summary>The points of a suspension do not close at the stated ride height, or leave the wheel free.</summary>
    PointsDoNotHold,

    /// <summary>Its springs would lift it beyond full droop.</summary>
    BeyondDroop,

    /// <summary>Its springs would stand it where its suspension does not reach.</summary>
    BeyondSuspension,

    /// <summary>A spring has no leverage that holds the car up.</summary>
    NoLeverage,

    /// <summary>The unsprung masses weigh as much as the wheels carry.</summary>
    NothingSprung,
}

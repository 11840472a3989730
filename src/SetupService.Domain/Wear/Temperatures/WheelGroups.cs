using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>The readings of two sets of wheels that are held against each other; both sets are whole.</summary>
/// <param name="First">Those of the first named.</param>
/// <param name="Second">Those of the second named.</param>
public sealed record WheelGroups(IReadOnlyList<TreadReading> First, IReadOnlyList<TreadReading> Second)
{
    /// <summary>Both together.</summary>
    public IEnumerable<TreadReading> All => First.Concat(Second);

    /// <summary>
    /// The two sets; null where a wheel of them was not read. An axle of which one wheel was read is not held against the other axle: left and right differ on
    /// any track.
    /// </summary>
    public static WheelGroups? Create(WheelPairs pairs, IReadOnlyList<TreadReading> treads)
    {
        ArgumentNullException.ThrowIfNull(treads);
        return pairs switch
        {
            WheelPairs.FrontLessRear => Create(treads, [WheelPosition.FrontLeft, WheelPosition.FrontRight], [WheelPosition.RearLeft, WheelPosition.RearRight]),
            WheelPairs.FrontLeftLessRight => Create(treads, [WheelPosition.FrontLeft], [WheelPosition.FrontRight]),
            _ => Create(treads, [WheelPosition.RearLeft], [WheelPosition.RearRight]),
        };
    }

    private static WheelGroups? Create(IReadOnlyList<TreadReading> treads, WheelPosition[] first, WheelPosition[] second)
    {
        TreadReading[] ofFirst = [.. treads.Where(tread => first.Contains(tread.Position))];
        TreadReading[] ofSecond = [.. treads.Where(tread => second.Contains(tread.Position))];
        return ofFirst.Length == first.Length && ofSecond.Length == second.Length ? new WheelGroups(ofFirst, ofSecond) : null;
    }
}

/// <summary>Which wheels are held against each other.</summary>
public enum WheelPairs
{
    /// <summary>Front axle less rear axle.</summary>
    FrontLessRear,

    /// <summary>Front left less front right.</summary>
    FrontLeftLessRight,

    /// <summary>Rear left less rear right.</summary>
    RearLeftLessRight,
}

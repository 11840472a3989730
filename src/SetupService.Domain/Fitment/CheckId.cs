using System.Numerics;

namespace SetupService.Domain.Fitment;

/// <summary>The checks of a fitment, in the order they are answered.</summary>
public enum CheckId
{
    /// <summary>Room inboard, straight ahead.</summary>
    InboardClearance,

    /// <summary>Room to the arch lip.</summary>
    OutboardClearance,

    /// <summary>Room over the tread.</summary>
    RadialClearance,

    /// <summary>Room inboard at the worse steering lock.</summary>
    FullLockClearance,

    /// <summary>Room under the spring seat or coil.</summary>
    SpringSeatClearance,

    /// <summary>Tyre and rim of one diameter.</summary>
    RimDiameter,

    /// <summary>A rim as wide as the tyre permits.</summary>
    RimWidth,

    /// <summary>The tyre carries the axle's greatest load at its pressure and the car's speed.</summary>
    LoadCapacity,

    /// <summary>The tyre's speed symbol against the car's top speed.</summary>
    SpeedRating,

    /// <summary>The wheel carries the axle's greatest load.</summary>
    WheelLoadRating,

    /// <summary>Holes on the hub's bolt circle.</summary>
    BoltCircle,

    /// <summary>The bore centres on the hub.</summary>
    CentreBore,

    /// <summary>Thread engaged and seat form.</summary>
    Fastener,

    /// <summary>Room over the brake caliper.</summary>
    BrakeClearance,

    /// <summary>Front and rear roll alike.</summary>
    AxleDiameterMatch,

    /// <summary>Overall diameter against the speedometer.</summary>
    OverallDiameter,

    /// <summary>The arch covers the tyre.</summary>
    ArchCover,
}

/// <summary>A set of checks, as bits; the default is the empty set.</summary>
/// <param name="Bits">Bit n stands for the check of ordinal n.</param>
public readonly record struct CheckIdSet(uint Bits)
{
    /// <summary>Number of checks there are.</summary>
    public const int CheckCount = (int)CheckId.ArchCover + 1;

    /// <summary>Number of clearance checks; they come first.</summary>
    public const int ClearanceCount = (int)CheckId.SpringSeatClearance + 1;

    /// <summary>Every check.</summary>
    public static CheckIdSet All => new((1u << CheckCount) - 1);

    /// <summary>The checks without which a fitment is not known to fit, unless the caller names others.</summary>
    public static CheckIdSet RequiredByDefault => default(CheckIdSet)
        .With(CheckId.InboardClearance).With(CheckId.OutboardClearance)
        .With(CheckId.RimDiameter).With(CheckId.RimWidth)
        .With(CheckId.LoadCapacity).With(CheckId.SpeedRating)
        .With(CheckId.BoltCircle).With(CheckId.CentreBore);

    /// <summary>Number of checks in the set.</summary>
    public int Count => BitOperations.PopCount(Bits);

    /// <summary>True when the check is in the set.</summary>
    public bool Contains(CheckId id) => (Bits & (1u << (int)id)) != 0;

    /// <summary>The set with the check.</summary>
    public CheckIdSet With(CheckId id) => new(Bits | (1u << (int)id));

    /// <summary>The set without the check.</summary>
    public CheckIdSet Without(CheckId id) => new(Bits & ~(1u << (int)id));

    /// <summary>The checks in their order, as a list.</summary>
    public CheckId[] ToArray()
    {
        var list = new CheckId[Count];
        var next = 0;
        foreach (var id in this) list[next++] = id;
        return list;
    }

    /// <summary>The checks in their order.</summary>
    public Enumerator GetEnumerator() => new(Bits);

    /// <summary>Walks through a set.</summary>
    /// <param name="bits">The set's bits.</param>
    public struct Enumerator(uint bits)
    {
        private uint _left = bits;

        /// <summary>The check reached.</summary>
        public CheckId Current { get; private set; }

        /// <summary>Goes to the next check; false where there is none.</summary>
        public bool MoveNext()
        {
            if (_left == 0) return false;
            Current = (CheckId)BitOperations.TrailingZeroCount(_left);
            _left &= _left - 1;
            return true;
        }
    }
}

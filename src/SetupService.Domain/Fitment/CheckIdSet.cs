using System.Numerics;

namespace SetupService.Domain.Fitment;

/// <summary>A set of checks, as bits; the default is the empty set.</summary>
/// <param name="Bits">Bit n stands for the check of ordinal n.</param>
public readonly record struct CheckIdSet(uint Bits)
{
    /// <summary>Number of checks there are.</summary>
    public const int CheckCount = (int)CheckId.ArchCover + 1;

    /// <summary>Number of checks that measure room around the wheel; they come first.</summary>
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

    /// <summary>Whether the check is in the set.</summary>
    public bool Contains(CheckId id) => (Bits & (1u << (int)id)) != 0;

    /// <summary>The set with the check.</summary>
    public CheckIdSet With(CheckId id) => new(Bits | (1u << (int)id));

    /// <summary>The set without the check.</summary>
    public CheckIdSet Without(CheckId id) => new(Bits & ~(1u << (int)id));
}

using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>
/// One tyre of an axle worn at a shoulder beside one worn evenly: something of that corner, no setting of the axle and no matter of which tyre is where. A setting, or use, wears both
/// sides alike (derived); a track that turns one way wears both axles to the same side, which is taken out.
/// </summary>
/// <param name="Worn">The tyre that is worn at one shoulder.</param>
/// <param name="IsInner">True where it is the inner shoulder.</param>
internal sealed record OneSidedWear(WheelPosition Worn, bool IsInner)
{
    /// <summary>Finds it; null where both tyres are worn alike, or were not read closely enough to tell.</summary>
    public static OneSidedWear? Find(WearStudy study, CarAxle at)
    {
        if (ShouldersApart.Compute(study, at) is not { } sides) return null;
        var (left, right) = sides;
        return (ShouldersApart.IsOrdinary(left), ShouldersApart.IsOrdinary(right)) switch
        {
            (false, true) => new(at == CarAxle.Front ? WheelPosition.FrontLeft : WheelPosition.RearLeft, !ShouldersApart.IsOuter(left)),
            (true, false) => new(at == CarAxle.Front ? WheelPosition.FrontRight : WheelPosition.RearRight, !ShouldersApart.IsOuter(right)),
            _ => null,
        };
    }

    /// <summary>What to do about it: look at the corner before anything is set or swapped.</summary>
    public WearAction Action() => new(
        $"Have the {CorneringWords.Name(Worn)} corner inspected first: only its tyre is worn at the {(IsInner ? "inner" : "outer")} shoulder, and the opposite one is even. " +
        "Look for a bent knuckle, arm or strut, worn bushes and joints, and unequal springs, and measure camber, caster and toe on both sides. " +
        "Replace bent parts, never bend them back. Do not set the axle or swap its tyres before that: the worn one shows where the fault is.");
}

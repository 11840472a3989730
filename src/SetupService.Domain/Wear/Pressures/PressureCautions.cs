using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>The cautions that go with reading hot tyres and setting their pressure.</summary>
public static class PressureCautions
{
    private static readonly Caution BelowLoad = new(
        "belowLoad",
        "Do not drive on a tyre with less pressure than its load needs: it runs hot inside and can burst or leave its rim. The pressure on the car's plate and local law go before any aim.");

    private static readonly Caution BeyondTyre = new(
        "tyresBeyondRating",
        "Do not drive on a tyre under more load than it is rated for: it can burst without warning, at any pressure.");

    private static readonly Caution LostAir = new(
        "losesAir",
        "Have tyre, valve and rim checked by a tyre professional before driving again: a tyre whose pressure fell as it warmed may be losing air.");

    private static readonly Caution LoadUnchecked = new(
        "loadNotChecked",
        "Never go below the pressure the car's plate or the tyre's maker states for the load: for some tyres the load was not checked; why stands beside the least pressure that is unknown.");

    private static readonly Caution HotParts = new(
        "hotParts",
        "Tyres, rims and brakes burn the skin right after a lap. Secure the car against rolling, keep hands off discs and calipers, and let somebody else watch the traffic.");

    private static readonly Caution BledHot = new(
        "bledHot",
        "What is let out of a hot tyre is missing when it is cold: it can then be too low to drive on. Check it cold before the next run.");

    private static readonly Caution RoadPressure = new(
        "roadPressure",
        "Before driving home set the pressures of the car's plate with the tyres cold, never less; local law and the makers of car and tyre decide.");

    /// <summary>Those of some tyres, the gravest first.</summary>
    public static IReadOnlyList<Caution> For(IReadOnlyList<TyrePressure> tyres)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        var list = new List<Caution>();
        if (tyres.Any(tyre => tyre.Need.Gap == LoadGap.BeyondLoad)) list.Add(BeyondTyre);
        if (tyres.Any(tyre => tyre.IsColdBelowLoad || tyre.Reading.AimColdKpa < tyre.Need.LeastColdKpa)) list.Add(BelowLoad);
        if (tyres.Any(tyre => tyre.Contradiction == PressureContradiction.HotBelowCold)) list.Add(LostAir);
        if (tyres.Any(tyre => tyre.Need is { FloorKpa: null, Gap: not LoadGap.BeyondLoad })) list.Add(LoadUnchecked);
        list.Add(HotParts);
        if (tyres.Count > 0)
        {
            list.Add(BledHot);
            list.Add(RoadPressure);
        }

        return list;
    }
}

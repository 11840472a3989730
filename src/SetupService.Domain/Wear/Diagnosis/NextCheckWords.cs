namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Says how a check is done.</summary>
public static class NextCheckWords
{
    /// <summary>The check as an instruction.</summary>
    public static string Describe(WearCheck check) => check switch
    {
        WearCheck.DepthsAcross => "Read the depth in the outer, middle and inner groove of every tyre, with the same gauge, and note the depth they had when new.",
        WearCheck.DepthsRound => "Read the depth across the tread at four to six places round each tyre: unequal depths round it tell balance, dampers and flat spots from alignment.",
        WearCheck.LookAndFeel => "Look over each tread and stroke it across and along with the flat hand, wheel still and car safely on stands: feathered edges and which way they are sharp, hollows, flat spots, grains, blisters. Mind cords and glass.",
        WearCheck.TreadTemperatures => "Read outer, middle and inner tread temperature of every tyre within a minute of coming in, with a needle probe, always in the same order; note the seconds. Treads and brakes are hot.",
        WearCheck.Pressures => "Read the pressures cold before, and hot straight after driving, with the pressure they should have.",
        WearCheck.Toe => "Have the toe of each wheel measured, left and right apart, with the car loaded as driven.",
        WearCheck.Camber => "Have the camber of each wheel measured, left and right apart, with the car loaded as driven.",
        WearCheck.TyreHistory => "Note where each tyre was before, whether it was turned on its rim, and read the four figures of its week of making from the sidewall.",
        WearCheck.RimWidth => "Read the rim's width on the wheel and the tyre's size on its sidewall.",
        _ => "Note the clocks, drive another session or some thousand kilometres without changing anything, and read the same places again: only what was worn since tells the present setting.",
    };
}

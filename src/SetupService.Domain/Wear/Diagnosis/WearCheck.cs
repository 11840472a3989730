namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Something a person can measure or look at next.</summary>
public enum WearCheck
{
    /// <summary>Depth at three or more places across each tyre.</summary>
    DepthsAcross,

    /// <summary>Depth at several places round the tyre.</summary>
    DepthsRound,

    /// <summary>Eye and hand over the tread.</summary>
    LookAndFeel,

    /// <summary>Tread temperatures straight after driving.</summary>
    TreadTemperatures,

    /// <summary>Pressures cold and hot, with what they should be.</summary>
    Pressures,

    /// <summary>Toe of each wheel.</summary>
    Toe,

    /// <summary>Camber of each wheel.</summary>
    Camber,

    /// <summary>Where each tyre was before, and when it was made.</summary>
    TyreHistory,

    /// <summary>Rim width against the tyre's permitted ones.</summary>
    RimWidth,

    /// <summary>All of it again after some more driving: the wear since then shows the present setting.</summary>
    NextSession,
}

/// <summary>Says how a check is done.</summary>
public static class NextCheckWords
{
    /// <summary>The check as an instruction.</summary>
    public static string Describe(WearCheck check) => check switch
    {
        WearCheck.DepthsAcross => "Read the depth in the outer, middle and inner groove of every tyre with the same gauge, and note the depths when new.",
        WearCheck.DepthsRound => "Read the depth across the tread at four to six places round each tyre: differences round it separate balance, dampers and flat spots from alignment.",
        WearCheck.LookAndFeel => "Look over each tread and stroke it across and along with a flat hand, wheel still and car safely on stands: feathered edges and which way they are sharp, hollows, flat spots, graining, blisters. Beware of cords and glass.",
        WearCheck.TreadTemperatures => "Read the outer, middle and inner tread temperature of every tyre within a minute of coming in, with a needle probe, always in the same order; note the seconds. Treads and brakes are hot.",
        WearCheck.Pressures => "Read the pressures cold before and hot straight after driving, and note what they should be.",
        WearCheck.Toe => "Have the toe of each wheel measured, left and right separately, with the car loaded as driven.",
        WearCheck.Camber => "Have the camber of each wheel measured, left and right separately, with the car loaded as driven.",
        WearCheck.TyreHistory => "Note where each tyre ran before and whether it was turned on its rim, and read the four digits of its week of manufacture from the sidewall.",
        WearCheck.RimWidth => "Read the rim's width on the wheel and the tyre's size on its sidewall.",
        _ => "Note the clocks, drive another session or a few weeks on the road without changing anything, and read the same places again: only the wear since then shows the present setting.",
    };
}

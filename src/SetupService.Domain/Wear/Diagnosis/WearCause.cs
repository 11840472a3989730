using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Why tyres wear as they do. Each but the last holds of one axle, and several may hold at once.</summary>
public enum WearCause
{
    /// <summary>The camber is too little negative for the cornering done: half a degree or more short of what keeps the outer tread flat.</summary>
    LowNegativeCamber,

    /// <summary>The camber is more negative than the cornering needs, by a degree or more, and the road wears the inner shoulder.</summary>
    HighNegativeCamber,

    /// <summary>The wheels toe in by more than 0.15° each.</summary>
    ToeIn,

    /// <summary>The wheels toe out by more than 0.15° each.</summary>
    ToeOut,

    /// <summary>The pressure is a tenth or more below what the load and use want.</summary>
    UnderInflation,

    /// <summary>The pressure is a tenth or more above what the load and use want.</summary>
    OverInflation,

    /// <summary>A damper has lost half its damping or never had enough.</summary>
    WeakDamping,

    /// <summary>A wheel is out of balance or does not run true.</summary>
    Imbalance,

    /// <summary>A wheel is often locked in braking, or was once until a flat place showed.</summary>
    WheelLocking,

    /// <summary>The driven wheels are often spun.</summary>
    Wheelspin,

    /// <summary>The front tyres are steered beyond what they hold: driven over the front.</summary>
    FrontOverdriven,

    /// <summary>Tyres of an axle differ, or came from another place or side.</summary>
    MixedTyres,

    /// <summary>Something on one side is bent or worn, so that its wheel has other angles than the opposite one.</summary>
    SideDifference,

    /// <summary>The axle is out of square: its wheels point to one side of the car's centre line.</summary>
    AxleMisaligned,

    /// <summary>The tread works colder than it should.</summary>
    BelowTemperatureWindow,

    /// <summary>The tread works hotter than it should.</summary>
    AboveTemperatureWindow,

    /// <summary>The rim is too narrow or too wide for the tyre, or the tyre too narrow for the work.</summary>
    RimWidthMismatch,

    /// <summary>None of these: the tyres wear as tyres do.</summary>
    Normal,
}

/// <summary>Says what a cause is.</summary>
public static class CauseWords
{
    /// <summary>The cause as a clause without capital and full stop: "the front has too much toe-in".</summary>
    /// <param name="cause">The cause.</param>
    /// <param name="at">The axle it is on; null for <see cref="WearCause.Normal"/>.</param>
    public static string Describe(WearCause cause, CarAxle? at)
    {
        var end = at == CarAxle.Rear ? "rear" : "front";
        return cause switch
        {
            WearCause.LowNegativeCamber => $"the {end} has too little negative camber for how hard the car corners",
            WearCause.HighNegativeCamber => $"the {end} has more negative camber than its cornering needs",
            WearCause.ToeIn => $"the {end} has too much toe-in",
            WearCause.ToeOut => $"the {end} has too much toe-out",
            WearCause.UnderInflation => $"the {end} tyres are under-inflated for their load and use",
            WearCause.OverInflation => $"the {end} tyres are over-inflated for their load and use",
            WearCause.WeakDamping => $"a {end} damper is worn or weak",
            WearCause.Imbalance => $"a {end} wheel is out of balance or out of true",
            WearCause.WheelLocking => $"the {end} wheels lock under braking",
            WearCause.Wheelspin => $"the {end} wheels spin under power",
            WearCause.FrontOverdriven => "the front tyres are over-driven",
            WearCause.MixedTyres => $"the two {end} tyres differ, or came from another position",
            WearCause.SideDifference => $"something is bent or worn on one side of the {end}",
            WearCause.AxleMisaligned => $"the {end} wheels do not point straight along the car",
            WearCause.BelowTemperatureWindow => $"the {end} tyres run too cold",
            WearCause.AboveTemperatureWindow => $"the {end} tyres are overheating",
            WearCause.RimWidthMismatch => $"the {end} rims are too narrow or too wide for the tyres, or the tyres too narrow for the work",
            _ => "no fault found; the tyres wear normally",
        };
    }
}

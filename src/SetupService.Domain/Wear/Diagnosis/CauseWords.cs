using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Says what a cause is.</summary>
public static class CauseWords
{
    /// <summary>The cause at an axle in a few words.</summary>
    public static string Describe(WearCause cause, CarAxle? at)
    {
        var axle = at switch { CarAxle.Front => " at the front", null => "", _ => " at the rear" };
        return cause switch
        {
            WearCause.LowNegativeCamber => $"too little negative camber{axle} for the cornering done",
            WearCause.HighNegativeCamber => $"more negative camber{axle} than the cornering needs, worn off on the road",
            WearCause.ToeIn => $"too much toe-in{axle}",
            WearCause.ToeOut => $"too much toe-out{axle}",
            WearCause.UnderInflation => $"too little pressure{axle} for the load and the use",
            WearCause.OverInflation => $"too much pressure{axle} for the load and the use",
            WearCause.WeakDamping => $"a worn or weak damper{axle}",
            WearCause.Imbalance => $"a wheel out of balance or not running true{axle}",
            WearCause.WheelLocking => $"wheels locked in braking{axle}",
            WearCause.Wheelspin => $"wheels spun by the engine{axle}",
            WearCause.FrontOverdriven => "the front tyres steered beyond what they hold",
            WearCause.MixedTyres => $"tyres{axle} that differ, or came from another place or side",
            WearCause.SideDifference => $"something bent or worn on one side{axle}",
            WearCause.AxleMisaligned => $"wheels{axle} that do not stand square to the car",
            WearCause.BelowTemperatureWindow => $"treads{axle} colder than they work best",
            WearCause.AboveTemperatureWindow => $"treads{axle} hotter than they stand",
            WearCause.RimWidthMismatch => $"a rim too narrow or too wide for the tyre{axle}, or a tyre too narrow for the work",
            _ => "none of the causes told apart here: the tyres wear as tyres do",
        };
    }
}

using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>What one tyre's pressures tell; figures that cannot be told are null.</summary>
public sealed record TyrePressure
{
    /// <summary>What was read and is wanted.</summary>
    public required TyrePressures Reading { get; init; }

    /// <summary>What the load needs.</summary>
    public required LoadNeed Need { get; init; }

    /// <summary>Why cold and hot do not go together.</summary>
    public PressureContradiction Contradiction { get; init; }

    /// <summary>Temperature of the gas when hot, °C.</summary>
    public Estimate? HotGasC { get; init; }

    /// <summary>The cold pressure to set for the hot aim on a day like this.</summary>
    public ColdSetting? ColdNow { get; init; }

    /// <summary>The same on the next day.</summary>
    public ColdSetting? ColdNext { get; init; }

    /// <summary>What the gauge reads cold on the next day where nothing is done, kPa.</summary>
    public Uncertainty? UntouchedColdKpa { get; init; }

    /// <summary>What it then reads hot, kPa.</summary>
    public Uncertainty? UntouchedHotKpa { get; init; }

    /// <summary>What to do while the tyre is hot.</summary>
    public HotAdjustment? HotNow { get; init; }

    /// <summary>What the cold aim comes to hot on a day like this, kPa.</summary>
    public Estimate? HotOnColdAimKpa { get; init; }

    /// <summary>Whether the cold pressure is below what the load needs.</summary>
    public bool IsColdBelowLoad => Reading.ColdKpa < Need.LeastColdKpa;

    /// <summary>Whether the aims cold and hot are further apart than the gauge explains.</summary>
    public bool AimsDisagree => HotOnColdAimKpa is { } hot && Reading.AimHotKpa is { } aim && (aim < hot.Ninety.Lower || aim > hot.Ninety.Upper);
}

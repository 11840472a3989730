using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>Figures from one tyre's pressures; null where they cannot be known.</summary>
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

    /// <summary>What the cold aim reaches hot on a day like this, kPa.</summary>
    public Estimate? HotOnColdAimKpa { get; init; }

    /// <summary>True when only the hot pressure was read, so that what it leaves cold rests on the usual rise.</summary>
    public bool IsRiseAssumed => Reading.ColdKpa is null && HotNow is not null;

    /// <summary>True when the cold pressure is below what the load needs.</summary>
    public bool IsColdBelowLoad => Reading.ColdKpa < Need.LeastColdKpa;

    /// <summary>True when the aims cold and hot are further apart than the gauge explains.</summary>
    public bool AimsDisagree => HotOnColdAimKpa is { } hot && Reading.AimHotKpa is { } aim && (aim < hot.Ninety.Lower || aim > hot.Ninety.Upper);
}

/// <summary>Why cold and hot pressure cannot be of one filling that got warm.</summary>
public enum PressureContradiction
{
    /// <summary>They can.</summary>
    None,

    /// <summary>Hot is below cold by more than the gauge's error, although nothing says that the tyre is colder.</summary>
    HotBelowCold,

    /// <summary>Hot is no more than cold, within the gauge's error, although the tread is hot.</summary>
    HotAsCold,

    /// <summary>The gas would be outside the plausible range of temperatures.</summary>
    GasBeyondReason,
}

/// <summary>The gauge pressures that are plausible; what comes out beyond them is no setting for a car's tyre.</summary>
public static class PlausiblePressures
{
    /// <summary>The least, kPa.</summary>
    public const double LeastKpa = 80;

    /// <summary>The most, kPa.</summary>
    public const double MostKpa = 500;

    /// <summary>True when a pressure is known.</summary>
    public static bool Include(double kpa) => kpa is >= LeastKpa and <= MostKpa;
}

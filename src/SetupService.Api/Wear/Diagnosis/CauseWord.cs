using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Why tyres wear as they do; each but the last holds of one axle, and several may hold at once.</summary>
[JsonConverter(typeof(WordConverter<CauseWord>))]
public enum CauseWord
{
    /// <summary>The camber is too little negative for the cornering done: half a degree or more short of what stands the outer tread flat.</summary>
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

    /// <summary>Something on one side is bent or worn, so that its wheel stands otherwise than the other.</summary>
    SideDifference,

    /// <summary>The axle does not stand square: it steers the car from behind or drags at an angle.</summary>
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

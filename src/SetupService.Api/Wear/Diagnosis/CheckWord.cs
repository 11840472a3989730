using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Something a person can measure or look at next.</summary>
[JsonConverter(typeof(WordConverter<CheckWord>))]
public enum CheckWord
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

    /// <summary>All of it again after some more driving: what was worn since then tells the present setting.</summary>
    NextSession,
}

using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Damage of a tyre that can make it burst.</summary>
[JsonConverter(typeof(WordConverter<DamageWord>))]
public enum DamageWord
{

    /// <summary>Cords show through tread or sidewall.</summary>
    CordsVisible,

    /// <summary>Tread or ply comes away.</summary>
    Separation,

    /// <summary>The sidewall bulges.</summary>
    Bulge,

    /// <summary>A cut.</summary>
    Cut,

    /// <summary>The sidewall is cracked.</summary>
    CrackedSidewall,
}

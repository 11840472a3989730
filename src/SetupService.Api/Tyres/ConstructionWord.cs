using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Tyres;

/// <summary>How a tyre's carcass is built.</summary>
[JsonConverter(typeof(WordConverter<ConstructionWord>))]
public enum ConstructionWord
{
    /// <summary>Cords run radially: R.</summary>
    Radial,

    /// <summary>Cords cross: D or a dash.</summary>
    Diagonal,

    /// <summary>Crossing cords under a belt: B.</summary>
    BiasBelted,
}

using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>What eye and hand find on a tread.</summary>
[JsonConverter(typeof(WordConverter<PatternWord>))]
public enum PatternWord
{
    /// <summary>Edges of ribs or blocks feel sharp towards the car's centre.</summary>
    FeatheredSharpInboard,

    /// <summary>Edges of ribs or blocks feel sharp away from the car.</summary>
    FeatheredSharpOutboard,

    /// <summary>Hollows at several places round the tyre.</summary>
    Cupping,

    /// <summary>Each block worn more at one end along the way it rolls.</summary>
    HeelAndToe,

    /// <summary>One flat place.</summary>
    FlatSpot,

    /// <summary>Rubber of the outer shoulder rolled up or torn into grains.</summary>
    ShoulderGraining,

    /// <summary>Bubbles or pits where the rubber boiled.</summary>
    Blistering,

    /// <summary>Pieces of tread torn out.</summary>
    Chunking,

    /// <summary>Scuffed beyond the edge of the tread onto the sidewall.</summary>
    WornPastShoulder,

    /// <summary>Patches worn at an angle across the tread.</summary>
    DiagonalScallop,
}

using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Fitment;

/// <summary>The checks of a fitment.</summary>
[JsonConverter(typeof(WordConverter<CheckName>))]
public enum CheckName
{
    /// <summary>Room inboard, straight ahead.</summary>
    InboardClearance,

    /// <summary>Room to the arch lip.</summary>
    OutboardClearance,

    /// <summary>Room over the tread.</summary>
    RadialClearance,

    /// <summary>Room inboard at the worse steering lock.</summary>
    FullLockClearance,

    /// <summary>Room under the spring seat or coil.</summary>
    SpringSeatClearance,

    /// <summary>Tyre and rim of one diameter.</summary>
    RimDiameter,

    /// <summary>A rim as wide as the tyre permits.</summary>
    RimWidth,

    /// <summary>The tyre carries the axle's greatest load at its pressure and the car's speed.</summary>
    LoadCapacity,

    /// <summary>The tyre's speed symbol against the car's top speed.</summary>
    SpeedRating,

    /// <summary>The wheel carries the axle's greatest load.</summary>
    WheelLoadRating,

    /// <summary>Holes on the hub's bolt circle.</summary>
    BoltCircle,

    /// <summary>The bore centres on the hub.</summary>
    CentreBore,

    /// <summary>Thread engaged and seat form.</summary>
    Fastener,

    /// <summary>Room over the brake caliper.</summary>
    BrakeClearance,

    /// <summary>Front and rear roll alike.</summary>
    AxleDiameterMatch,

    /// <summary>Overall diameter against the speedometer rule.</summary>
    OverallDiameter,

    /// <summary>The arch covers the tyre.</summary>
    ArchCover,
}

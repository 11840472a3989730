using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Handling.Cornering;

/// <summary>How the car stands in one turn. Written before what a call adds.</summary>
public record TurnRow
{
    /// <summary>Lateral acceleration.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(0.9)]
    public required double LateralG { get; init; }

    /// <summary>Speed.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(82.8)]
    public required double SpeedKmh { get; init; }

    /// <summary>Radius of the centre of gravity's path; null where it runs as good as straight.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(60.0)]
    public required double? CornerRadiusM { get; init; }

    /// <summary>Roll of the body; positive = leaning out of the turn.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(3.1)]
    public required double RollDeg { get; init; }

    /// <summary>Change of roll per g at this turn, radius held; null where there is no turn a little harder.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(3.5)]
    public required double? RollDegPerG { get; init; }

    /// <summary>Mean steer of the front wheels, give left out; positive = left.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(3.4)]
    public required double SteerDeg { get; init; }

    /// <summary>Angle of the steering wheel; positive = left. Null where steeringRatio is not given.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(48.3)]
    public required double? SteeringWheelDeg { get; init; }

    /// <summary>By what the peak of all four tyres is scaled; 1 = not.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(1.08)]
    public required double TyrePeakScale { get; init; }

    /// <summary>Each wheel.</summary>
    [JsonPropertyOrder(-1)]
    public required WheelsPart Wheels { get; init; }

    /// <summary>Each axle.</summary>
    [JsonPropertyOrder(-1)]
    public required AxlesPart Axles { get; init; }

    /// <summary>Front axle's share of both axles' roll stiffness at ride height: springs and bar, tyres in series.</summary>
    [JsonPropertyOrder(-1)]
    [Sample(58.0)]
    public required double RollStiffnessFrontPct { get; init; }

    /// <summary>Which end gives way first.</summary>
    [JsonPropertyOrder(-1)]
    public required BalancePart Balance { get; init; }
}

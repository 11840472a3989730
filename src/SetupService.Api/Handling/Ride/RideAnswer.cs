using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Handling.Ride;

/// <summary>How the car rides: after the change where there is one, else as it is.</summary>
public sealed record RideAnswer
{
    /// <summary>The front axle.</summary>
    public required RideAxlePart Front { get; init; }

    /// <summary>The rear axle.</summary>
    public required RideAxlePart Rear { get; init; }

    /// <summary>Both ends against each other.</summary>
    public required FlatRidePart FlatRide { get; init; }

    /// <summary>The car before the change; left out where nothing was changed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public RideBeforePart? Before { get; init; }

    /// <summary>What is null above, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>Key of the method page.</summary>
    [Sample("ride")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was used although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

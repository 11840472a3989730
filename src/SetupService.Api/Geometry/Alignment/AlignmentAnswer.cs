using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>What follows from the alignment measured; null where a reading is missing.</summary>
public sealed record AlignmentAnswer
{
    /// <summary>Front axle.</summary>
    public required AxleAlignmentPart Front { get; init; }

    /// <summary>Rear axle.</summary>
    public required AxleAlignmentPart Rear { get; init; }

    /// <summary>Thrust angle: where the rear wheels push the car to, against its centre plane; positive = points left.</summary>
    [Sample(-0.05)]
    public required double? ThrustAngleDeg { get; init; }

    /// <summary>Mean heading of the front wheels against the thrust line: how far they stand from where the car runs straight; positive = to the left.</summary>
    [Sample(0.05)]
    public required double? SteerAheadDeg { get; init; }

    /// <summary>Toe of the front left wheel against the thrust line.</summary>
    public required ToePart? FrontLeftToeToThrustLine { get; init; }

    /// <summary>Toe of the front right wheel against the thrust line.</summary>
    public required ToePart? FrontRightToeToThrustLine { get; init; }

    /// <summary>Angle of the line through both front wheel centres against square to the car; positive = right wheel further back, a sign of this service's own.</summary>
    [Sample(0.11)]
    public required double? SetbackAngleDeg { get; init; }

    /// <summary>The diameter every toe in mm is told at.</summary>
    [Sample(450.0)]
    public required double MeasuringDiameterMm { get; init; }

    /// <summary>The figures left null, each by its JSON Pointer in this answer, and the readings it lacks by theirs in the request.</summary>
    public required UnknownResponse[] Unknown { get; init; }

    /// <summary>The page under /docs/methods that derives every figure.</summary>
    [Sample("alignment")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although nobody gave it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

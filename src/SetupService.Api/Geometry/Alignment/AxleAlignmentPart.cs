using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>What follows from the readings of an axle; null where one is missing.</summary>
public sealed record AxleAlignmentPart
{
    /// <summary>Total toe: the sum of both wheels'.</summary>
    public required ToePart? TotalToe { get; init; }

    /// <summary>Camber, left less right.</summary>
    [Sample(0.1)]
    public required double? CrossCamberDeg { get; init; }

    /// <summary>Caster, left less right.</summary>
    [Sample(0.2)]
    public required double? CrossCasterDeg { get; init; }

    /// <summary>Steering-axis inclination, left less right.</summary>
    [Sample(0.1)]
    public required double? CrossSteeringAxisInclinationDeg { get; init; }

    /// <summary>Included angle, left less right.</summary>
    [Sample(0.2)]
    public required double? CrossIncludedAngleDeg { get; init; }

    /// <summary>What the sides' difference in inclination and included angle hints at.</summary>
    public required IncludedAngleHintPart? IncludedAngleHint { get; init; }

    /// <summary>Left wheel.</summary>
    public required WheelAlignmentPart Left { get; init; }

    /// <summary>Right wheel.</summary>
    public required WheelAlignmentPart Right { get; init; }
}

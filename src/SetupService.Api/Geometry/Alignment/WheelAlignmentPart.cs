using SetupService.Api.Http.Contract;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>What follows from the readings of one wheel; null where one is missing.</summary>
public sealed record WheelAlignmentPart
{
    /// <summary>Toe of this wheel against the car's centre plane.</summary>
    public required ToePart? Toe { get; init; }

    /// <summary>Inclination and camber together: the angle between steering axis and wheel plane in front view, which only the parts between joint and hub decide.</summary>
    [Sample(12.4)]
    public required double? IncludedAngleDeg { get; init; }
}

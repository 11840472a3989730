using SetupService.Api.Http.Contract;
using SetupService.Domain.Numerics;

namespace SetupService.Api.Geometry;

/// <summary>A point worked out, in the axes of the points given: x forward, y left, z up.</summary>
public sealed record PointPart
{
    /// <summary>Forward.</summary>
    [Sample(27.7)]
    public required double XMm { get; init; }

    /// <summary>To the left of the car's centre plane.</summary>
    [Sample(756.8)]
    public required double YMm { get; init; }

    /// <summary>Up.</summary>
    [Sample(3.0)]
    public required double ZMm { get; init; }

    /// <summary>The part of a point.</summary>
    internal static PointPart Of(in Vector3 point) => new() { XMm = point.X, YMm = point.Y, ZMm = point.Z };
}

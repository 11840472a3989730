using SetupService.Domain.Numerics;

namespace SetupService.Api.Drawings.Corners;

/// <summary>A point of a corner, numbered in the views and named in the key under them.</summary>
/// <param name="Name">What it is, "lower ball joint".</param>
/// <param name="Position">Where it is, mm, in the axes of the geometry: x forward, y left with the centre plane at 0, z up.</param>
/// <param name="IsOnBody">Whether it stands still when the wheel moves.</param>
public sealed record CornerPoint(string Name, Vector3 Position, bool IsOnBody);

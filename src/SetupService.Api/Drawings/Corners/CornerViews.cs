using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Drawings.Corners;

/// <summary>A left corner to be drawn from behind and from its side, at one position of the wheel. All points in the same axes, mm.</summary>
public sealed record CornerViews
{
    /// <summary>What the picture shows, in a few words.</summary>
    public required string Heading { get; init; }

    /// <summary>Lines under the heading: the kind of suspension in words, the position. Broken where they do not fit.</summary>
    public IReadOnlyList<string> Lines { get; init; } = [];

    /// <summary>The points in the order they are numbered; every end of a link is one of them.</summary>
    public required IReadOnlyList<CornerPoint> Points { get; init; }

    /// <summary>What joins what.</summary>
    public required IReadOnlyList<CornerLink> Links { get; init; }

    /// <summary>Wheel centre and spin axis.</summary>
    public required WheelPlane Wheel { get; init; }

    /// <summary>Radius down to the ground, mm; contact centre and ground follow from it.</summary>
    public required double LoadedRadiusMm { get; init; }

    /// <summary>Width of the tyre, mm; null draws an indicative one and says so.</summary>
    public double? TyreWidthMm { get; init; }

    /// <summary>The line the wheel steers about; null where it has none. Scrub radius and trail follow from it.</summary>
    public SteeringAxis? Axis { get; init; }

    /// <summary>Instant centre of the view from behind; null where the wheel moves parallel or it is not known.</summary>
    public ViewPoint? FrontInstantCentre { get; init; }

    /// <summary>Instant centre of the view from the side; null where the wheel moves parallel or it is not known.</summary>
    public ViewPoint? SideInstantCentre { get; init; }

    /// <summary>Roll centre above the ground, mm; null where it is not known.</summary>
    public double? RollCentreHeightMm { get; init; }

    /// <summary>Sentences under the views.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}

/// <summary>A point of a corner, numbered in the views and named in the key under them.</summary>
/// <param name="Name">What it is, "lower ball joint".</param>
/// <param name="Position">Where it is, mm, in the axes of the geometry: x forward, y left with the centre plane at 0, z up.</param>
/// <param name="IsOnBody">Whether it stands still when the wheel moves.</param>
public sealed record CornerPoint(string Name, Vector3 Position, bool IsOnBody);

/// <summary>A line between two points of a corner.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Part">What the line is part of.</param>
public sealed record CornerLink(CornerPoint From, CornerPoint To, CornerPart Part);

/// <summary>What a line of a corner is part of; it decides how the line is drawn.</summary>
public enum CornerPart
{
    /// <summary>An arm or link.</summary>
    Arm,

    /// <summary>Tie rod or toe link.</summary>
    TieRod,

    /// <summary>A strut.</summary>
    Strut,

    /// <summary>A spring or damper.</summary>
    Spring,

    /// <summary>The upright, or the part of an arm that carries the wheel.</summary>
    Upright,

    /// <summary>The line an arm turns about.</summary>
    PivotAxis,
}

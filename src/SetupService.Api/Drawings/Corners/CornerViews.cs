using SetupService.Domain.Suspension.Kinematics;
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

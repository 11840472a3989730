namespace SetupService.Domain.Wear.TreadWear;

/// <summary>What wears one tyre: how it stands on the straight and in the corners of the track.</summary>
public sealed record WheelUse
{
    /// <summary>The corners of the track.</summary>
    public required IReadOnlyList<BendLoad> Corners { get; init; }

    /// <summary>Static camber, degrees.</summary>
    public required double CamberDeg { get; init; }

    /// <summary>Toe, degrees.</summary>
    public required double ToeDeg { get; init; }

    /// <summary>Static load, N.</summary>
    public required double LoadN { get; init; }

    /// <summary>Vertical rate of the tyre, N/mm.</summary>
    public required double TyreRateNPerMm { get; init; }

    /// <summary>Width of the tread on the road, mm.</summary>
    public required double TreadWidthMm { get; init; }

    /// <summary>Loaded radius, mm.</summary>
    public required double RadiusMm { get; init; }
}

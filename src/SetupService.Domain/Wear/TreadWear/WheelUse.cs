namespace SetupService.Domain.Wear.TreadWear;

/// <summary>What wears one tyre: its attitude on the straight and in the corners of the track.</summary>
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

    /// <summary>The same with another static camber, to first order: its inclinations move with it, loads and work stay.</summary>
    /// <param name="camberChangeDeg">Change of the static camber, degrees; negative = more negative.</param>
    public WheelUse Leaned(double camberChangeDeg) => this with
    {
        CamberDeg = CamberDeg + camberChangeDeg,
        Corners = [.. Corners.Select(bend => bend with { InclinationAngleDeg = bend.InclinationAngleDeg + (bend.PerCamber * camberChangeDeg) })],
    };
}

/// <summary>One wheel in one kind of bend.</summary>
/// <param name="Work">Share of this corner in what a kilometre of track takes, by side force times slip; all corners of both wheels of an axle make 2 together.</param>
/// <param name="LoadN">Load on the road, N.</param>
/// <param name="InclinationAngleDeg">Inclination to the road, degrees; negative = top towards the car's centre.</param>
/// <param name="PerCamber">Change of the inclination by a degree of static camber.</param>
/// <param name="IsOuter">True when it is the outer wheel there.</param>
public readonly record struct BendLoad(double Work, double LoadN, double InclinationAngleDeg, double PerCamber, bool IsOuter);

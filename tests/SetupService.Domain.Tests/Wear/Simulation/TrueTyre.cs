namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>How the tyres of an axle bear and wear. The figures are judgement unless a source stands by them.</summary>
internal sealed record TrueTyre
{
    public required double WidthMm { get; init; }

    public required double RadiusMm { get; init; }

    /// <summary>Friction at the static load.</summary>
    public required double Friction { get; init; }

    /// <summary>Slip at which the whole contact slides, rad; 3 x friction x load / this is the cornering stiffness of a brush tyre.</summary>
    public double SlidingSlipRad { get; init; } = 0.17;

    /// <summary>How much more than the mean the inner edge bears per degree of negative camber to the road.</summary>
    public double CamberTiltPerDeg { get; init; } = 0.16;

    /// <summary>Negative camber to the road that evens out a side force as great as the load, degrees.</summary>
    public double SideForceCamberDeg { get; init; } = 1.6;

    /// <summary>
    /// Bulge of the middle per share of over-inflation. 1.4 makes the shoulders wear as US rule-making has it: life falls 1.78 % per psi
    /// of under-inflation at 35 psi (TPMS).
    /// </summary>
    public double BulgePerPressureShare { get; init; } = 1.4;

    /// <summary>Bulge of the middle the tyre has of itself, its rim included.</summary>
    public double OwnBulge { get; init; }

    /// <summary>
    /// How much more than the mean the outer edge wears for no fault of the car; well aligned cars wore outer grooves 10 to 50 % more than
    /// inner ones (ROSAP5836).
    /// </summary>
    public double OuterBias { get; init; } = 0.19;

    /// <summary>Share of a rigid drum's difference of rolling radii that the belt does not take up.</summary>
    public double CamberDrumShare { get; init; } = 0.22;

    /// <summary>Side slip at the edge per degree of camber, rad.</summary>
    public double CamberSideSlipRadPerDeg { get; init; } = 0.0011;

    /// <summary>How much more the edge slips that leads in a slow side drag.</summary>
    public double LeadingEdge { get; init; } = 0.25;

    /// <summary>Wear per metre by frictional work as a share of the static load, mm.</summary>
    public required double WearMmPerM { get; init; }

    /// <summary>Power of the force by which a track wears: 2 to 4; the road has 2 (KIT23 found powers up to the fourth).</summary>
    public double TrackPower { get; init; } = 3;

    /// <summary>Track wear by work against the road's.</summary>
    public double TrackFactor { get; init; } = 2.5;

    /// <summary>Marking, such as "225/45R17 91W".</summary>
    public string Marking { get; init; } = "225/45R17 91W";

    /// <summary>Rim it sits on, inches.</summary>
    public double RimWidthIn { get; init; } = 7.5;

    /// <summary>Depth when new, mm.</summary>
    public double NewDepthMm { get; init; } = 8;

    /// <summary>Between which tread temperatures it works, °C.</summary>
    public (double FromC, double ToC) WindowC { get; init; } = (70, 100);
}

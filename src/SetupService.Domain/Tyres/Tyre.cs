namespace SetupService.Domain.Tyres;

/// <summary>A tyre on the car: what its sidewall says, and what the owner knows beyond that. Unknown figures are null.</summary>
/// <param name="Marking">The sidewall marking.</param>
public sealed record Tyre(TyreMarking Marking)
{
    /// <summary>Mass of the tyre alone, in kg.</summary>
    public double? MassKg { get; init; }

    /// <summary>Cold gauge pressure, in kPa.</summary>
    public double? PressureKpa { get; init; }

    /// <summary>How far the rim protector stands out beyond the section width at each side, in mm.</summary>
    public double? RimProtectorMm { get; init; }

    /// <summary>Vertical rate at the working load and pressure, in N/mm.</summary>
    public double? VerticalRateNPerMm { get; init; }

    /// <summary>Side force per degree of slip angle at the working load, in N/deg.</summary>
    public double? CorneringStiffnessNPerDeg { get; init; }

    /// <summary>What the tyre is made for, which tells roughly how much grip it has.</summary>
    public TyreCategory? Category { get; init; }
}

/// <summary>What a tyre is made for, by grip on a dry road.</summary>
public enum TyreCategory
{
    /// <summary>For every day and long life.</summary>
    Touring,

    /// <summary>A sporting road tyre for the warm months.</summary>
    Summer,

    /// <summary>A road tyre of soft rubber that lasts a track day.</summary>
    TrackDay,

    /// <summary>Legal on the road where local law says so, with hardly any tread pattern.</summary>
    SemiSlick,

    /// <summary>A racing tyre without pattern, not for the road.</summary>
    Slick,
}

/// <summary>How the cords of a tyre's carcass lie.</summary>
public enum TyreConstruction
{
    /// <summary>Cords square to the rim; marked R, ZR, RF or ZRF.</summary>
    Radial,

    /// <summary>Cords crossing at an angle (also called bias or cross-ply); marked D or with a dash.</summary>
    Diagonal,

    /// <summary>Crossing cords under a belt; marked B.</summary>
    BiasBelted,
}

/// <summary>Which load version of its size a tyre is; it fixes the pressure its load index belongs to.</summary>
public enum LoadVersion
{
    /// <summary>Standard load: no mark, or SL.</summary>
    StandardLoad,

    /// <summary>Extra load: XL, RF or REINFORCED.</summary>
    ExtraLoad,

    /// <summary>Light load: LL.</summary>
    LightLoad,

    /// <summary>High load, above extra load: HL.</summary>
    HighLoad,

    /// <summary>Light commercial: C after the rim diameter.</summary>
    Commercial,

    /// <summary>Commercial for motor caravans: CP.</summary>
    CommercialCamper,

    /// <summary>Light truck in the American family: LT before or after the size.</summary>
    LightTruck,
}

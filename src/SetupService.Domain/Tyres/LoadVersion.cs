namespace SetupService.Domain.Tyres;

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

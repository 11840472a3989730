namespace SetupService.Domain.Tyres;

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

namespace SetupService.Domain.Wear.Cautions;

/// <summary>Damage that the eye finds on a tyre.</summary>
public enum TyreDamage
{
    /// <summary>Cords show through tread or sidewall.</summary>
    CordsVisible,

    /// <summary>Tread or ply comes away.</summary>
    Separation,

    /// <summary>The sidewall bulges.</summary>
    Bulge,

    /// <summary>A cut.</summary>
    Cut,

    /// <summary>The sidewall is cracked.</summary>
    CrackedSidewall,
}

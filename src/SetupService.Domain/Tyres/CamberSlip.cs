namespace SetupService.Domain.Tyres;

/// <summary>
/// How far a strip of a leaned tread slides along the straight because it rolls on its own radius. The belt hardly grows shorter where it is pressed in, so the strip's rolling radius falls by a
/// share of what its loaded radius does.
/// </summary>
public static class CamberSlip
{
    /// <summary>
    /// Share of the change of a strip's loaded radius by which its rolling radius changes. A tread of fixed length laid flat over an arc rolls on R − δ/3 where it stands on R − δ (Phillips, 2000,
    /// as vehicle-dynamics textbooks quote it); by rule a radial rolls on 3.05/π = 0.971 of half its diameter (ETRTO, by a textbook) where it stands on 0.91 to 0.94, a share of 0.32 to 0.48.
    /// </summary>
    public const double Share = 1 / 3.0;

    /// <summary>The least plausible: the slope of the rolling radius over deflection at nominal load in a public set of coefficients of a 205/60R15 (0.10).</summary>
    public const double LeastShare = 0.1;

    /// <summary>The largest plausible: what is left of camber as spin in the usual default of public sets of coefficients (one less a reduction of 0.5).</summary>
    public const double LargestShare = 0.5;

    /// <summary>Slip of the strip along the road, signed as the lean and the side of the tread are.</summary>
    /// <param name="acrossMm">Distance of the strip from the tread's middle, mm.</param>
    /// <param name="camberDeg">Camber, degrees.</param>
    /// <param name="radiusMm">Loaded radius of the middle, mm, above zero.</param>
    /// <param name="share">As <see cref="Share"/>.</param>
    public static double Along(double acrossMm, double camberDeg, double radiusMm, double share) => share * acrossMm * Math.Sin(double.DegreesToRadians(camberDeg)) / radiusMm;
}

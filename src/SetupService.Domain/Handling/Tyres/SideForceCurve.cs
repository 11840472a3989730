namespace SetupService.Domain.Handling.Tyres;

/// <summary>
/// Side force of one tyre over its slip angle at one load and inclination: D sin(C atan(B x − E (B x − atan B x))) with x = tan(slip) + shift. Positive slip and force are
/// towards the turn.
/// </summary>
public readonly record struct SideForceCurve
{
    private const double RadPerDeg = Math.PI / 180;

    private readonly double _shape;
    private readonly double _curvature;
    private readonly double _shift;

    internal SideForceCurve(double peakN, double shape, double slopeNPerDeg, double curvature, double shift)
    {
        PeakN = peakN;
        _shape = shape;
        StiffnessFactor = peakN > 0 ? slopeNPerDeg / (RadPerDeg * shape * peakN) : 0;
        _curvature = curvature;
        _shift = shift;
    }

    /// <summary>The most the tyre gives, N, whatever its slip.</summary>
    public double PeakN { get; private init; }

    private double StiffnessFactor { get; init; }

    /// <summary>Side force, N, at a slip angle in degrees.</summary>
    public double ForceN(double slipDeg) => ForceN(slipDeg, out _, out _);

    /// <summary>Side force, N, at a slip angle in degrees, and its change per degree.</summary>
    public double ForceN(double slipDeg, out double slopeNPerDeg) => ForceN(slipDeg, out slopeNPerDeg, out _);

    /// <summary>Side force, N, at a slip angle in degrees within ±90, its change per degree, and the change of that per degree.</summary>
    public double ForceN(double slipDeg, out double slopeNPerDeg, out double bendNPerDeg2)
    {
        if (!(StiffnessFactor > 0))
        {
            slopeNPerDeg = bendNPerDeg2 = 0;
            return 0;
        }

        var tangent = Math.Tan(slipDeg * RadPerDeg);
        var scaled = StiffnessFactor * (tangent + _shift);
        var perSquare = 1 / (1 + (scaled * scaled));
        var bent = ((1 - _curvature) * scaled) + (_curvature * Math.Atan(scaled));
        var perBentSquare = 1 / (1 + (bent * bent));
        var (sin, cos) = Math.SinCos(_shape * Math.Atan(bent));

        // The chain from slip to angle, once and twice.
        var bentChange = (1 - _curvature) + (_curvature * perSquare);
        var bentBend = -2 * _curvature * scaled * perSquare * perSquare;
        var angleChange = _shape * perBentSquare * bentChange;
        var angleBend = _shape * perBentSquare * (bentBend - (2 * bent * bentChange * bentChange * perBentSquare));
        var perScaled = PeakN * cos * angleChange;
        var scaledChange = StiffnessFactor * RadPerDeg * (1 + (tangent * tangent));
        slopeNPerDeg = perScaled * scaledChange;
        bendNPerDeg2 = (PeakN * ((cos * angleBend) - (sin * angleChange * angleChange)) * scaledChange * scaledChange) + (slopeNPerDeg * 2 * tangent * RadPerDeg);
        return PeakN * sin;
    }

    /// <summary>The curve with its peak scaled, its slope as it was.</summary>
    public SideForceCurve WithPeak(double factor) => this with { PeakN = PeakN * factor, StiffnessFactor = StiffnessFactor / factor };
}

namespace SetupService.Domain.Handling.Tyres;

/// <summary>Side force of one tyre over its slip angle at one load and inclination. Positive slip and force are towards the turn.</summary>
public readonly record struct SideForceCurve
{
    private readonly double _shape;
    private readonly double _curvature;
    private readonly double _shiftDeg;
    private readonly double _offsetN;

    internal SideForceCurve(double peakN, double shape, double slopeNPerDeg, double curvature, double shiftDeg, double offsetN)
    {
        PeakN = peakN;
        _shape = shape;
        StiffnessFactor = peakN > 0 ? slopeNPerDeg / (shape * peakN) : 0;
        _curvature = curvature;
        _shiftDeg = shiftDeg;
        _offsetN = offsetN;
    }

    private double PeakN { get; init; }

    private double StiffnessFactor { get; init; }

    /// <summary>The most the tyre can give, N, whatever its slip.</summary>
    public double MostN => PeakN + _offsetN;

    /// <summary>Side force, N, at a slip angle in degrees.</summary>
    public double ForceN(double slipDeg) => ForceN(slipDeg, out _);

    /// <summary>Side force, N, at a slip angle in degrees, and its change per degree.</summary>
    public double ForceN(double slipDeg, out double slopeNPerDeg) => ForceN(slipDeg, out slopeNPerDeg, out _);

    /// <summary>Side force, N, at a slip angle in degrees, its change per degree, and the change of that per degree.</summary>
    public double ForceN(double slipDeg, out double slopeNPerDeg, out double bendNPerDeg2)
    {
        if (!(StiffnessFactor > 0))
        {
            slopeNPerDeg = bendNPerDeg2 = 0;
            return 0;
        }

        var scaled = StiffnessFactor * (slipDeg + _shiftDeg);
        var perSquare = 1 / (1 + (scaled * scaled));
        var bent = ((1 - _curvature) * scaled) + (_curvature * Math.Atan(scaled));
        var perBentSquare = 1 / (1 + (bent * bent));
        var (sin, cos) = Math.SinCos(_shape * Math.Atan(bent));

        // The chain from slip to angle, once and twice.
        var bentChange = (1 - _curvature) + (_curvature * perSquare);
        var bentBend = -2 * _curvature * scaled * perSquare * perSquare;
        var angleChange = _shape * perBentSquare * bentChange;
        var angleBend = _shape * perBentSquare * (bentBend - (2 * bent * bentChange * bentChange * perBentSquare));
        slopeNPerDeg = PeakN * StiffnessFactor * cos * angleChange;
        bendNPerDeg2 = PeakN * StiffnessFactor * StiffnessFactor * ((cos * angleBend) - (sin * angleChange * angleChange));
        return (PeakN * sin) + _offsetN;
    }

    /// <summary>The curve with its peak scaled, its slope as it was; what camber adds stays.</summary>
    public SideForceCurve WithPeak(double factor) => this with { PeakN = PeakN * factor, StiffnessFactor = StiffnessFactor / factor };
}

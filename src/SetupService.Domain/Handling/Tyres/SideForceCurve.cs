namespace SetupService.Domain.Handling.Tyres;

/// <summary>Side force of one tyre over its slip angle at one load and inclination. Positive slip and force are towards the turn.</summary>
public readonly record struct SideForceCurve
{
    private readonly double _peakN;
    private readonly double _shape;
    private readonly double _stiffnessFactor;
    private readonly double _curvature;
    private readonly double _shiftDeg;
    private readonly double _offsetN;

    internal SideForceCurve(double peakN, double shape, double slopeNPerDeg, double curvature, double shiftDeg, double offsetN)
    {
        _peakN = peakN;
        _shape = shape;
        _stiffnessFactor = peakN > 0 ? slopeNPerDeg / (shape * peakN) : 0;
        _curvature = curvature;
        _shiftDeg = shiftDeg;
        _offsetN = offsetN;
    }

    /// <summary>The most the tyre can give, N, whatever its slip.</summary>
    public double MostN => _peakN + _offsetN;

    /// <summary>Side force, N, at a slip angle in degrees.</summary>
    public double ForceN(double slipDeg) => ForceN(slipDeg, out _);

    /// <summary>Side force, N, at a slip angle in degrees, and its change per degree.</summary>
    public double ForceN(double slipDeg, out double slopeNPerDeg)
    {
        if (!(_stiffnessFactor > 0))
        {
            slopeNPerDeg = 0;
            return 0;
        }

        var slip = slipDeg + _shiftDeg;
        var scaled = _stiffnessFactor * slip;
        var bent = ((1 - _curvature) * scaled) + (_curvature * Math.Atan(scaled));
        var (sin, cos) = Math.SinCos(_shape * Math.Atan(bent));
        var perScaled = (1 - _curvature) + (_curvature / (1 + (scaled * scaled)));
        slopeNPerDeg = _peakN * cos * _shape * _stiffnessFactor * perScaled / (1 + (bent * bent));
        return (_peakN * sin) + _offsetN;
    }
}

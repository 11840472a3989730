using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using SetupService.Domain.Numerics;

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
        StiffnessFactor = peakN > 0 && slopeNPerDeg > 0 ? slopeNPerDeg / (RadPerDeg * shape * peakN) : 0;
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
        var force = ForcesN(this, this, Vector128.Create(slipDeg), out var slopes, out var bends);
        (slopeNPerDeg, bendNPerDeg2) = (slopes.ToScalar(), bends.ToScalar());
        return force.ToScalar();
    }

    /// <summary>The same of two tyres at once, which costs little more than of one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector128<double> ForcesN(in SideForceCurve one, in SideForceCurve other, Vector128<double> slipDeg, out Vector128<double> slopeNPerDeg, out Vector128<double> bendNPerDeg2)
    {
        var unit = Vector128<double>.One;
        var curvature = Vector128.Create(one._curvature, other._curvature);
        var factor = Vector128.Create(one.StiffnessFactor, other.StiffnessFactor);
        var peak = Vector128.Create(one.PeakN, other.PeakN);
        var shape = Vector128.Create(one._shape, other._shape);
        var (sinSlip, cosSlip) = Vector128.SinCos(slipDeg * RadPerDeg);
        var tangent = sinSlip / cosSlip;
        var scaled = factor * (tangent + Vector128.Create(one._shift, other._shift));
        var perSquare = unit / (unit + (scaled * scaled));
        var bent = Vector128.MultiplyAddEstimate(curvature, Arctangent.Of(scaled), (unit - curvature) * scaled);
        var perBentSquare = unit / (unit + (bent * bent));
        var (sin, cos) = Vector128.SinCos(shape * Arctangent.Of(bent));

        // The chain from slip to angle, once and twice.
        var bentChange = (unit - curvature) + (curvature * perSquare);
        var bentBend = -2 * curvature * scaled * perSquare * perSquare;
        var angleChange = shape * perBentSquare * bentChange;
        var angleBend = shape * perBentSquare * (bentBend - (2 * bent * bentChange * bentChange * perBentSquare));
        var scaledChange = factor * RadPerDeg * (unit + (tangent * tangent));
        slopeNPerDeg = peak * cos * angleChange * scaledChange;
        bendNPerDeg2 = (peak * ((cos * angleBend) - (sin * angleChange * angleChange)) * scaledChange * scaledChange) + (slopeNPerDeg * 2 * tangent * RadPerDeg);
        return peak * sin;
    }

    /// <summary>The curve with its peak scaled, its slope as it was.</summary>
    public SideForceCurve WithPeak(double factor) => this with { PeakN = PeakN * factor, StiffnessFactor = StiffnessFactor / factor };
}

using SetupService.Domain.Numerics.LeastSquares;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>
/// Camber over steer of a wheel on a fixed axis, with caster, inclination and the camber straight ahead as its unknowns, radians.
/// Derivation in docs/methods/caster-from-readings.md.
/// </summary>
internal readonly ref struct CasterModel(ReadOnlySpan<SteerReading> readings, WheelSide side) : IFittedModel
{
    // No wheel that rolls has an axis beyond; it keeps a hopeless fit from running away.
    private const double GreatestLean = 80 * Math.PI / 180;

    private readonly ReadOnlySpan<SteerReading> _readings = readings;

    // A left wheel's toe is the opposite of its steer, a right wheel's is its steer.
    private readonly double _toePerSteerDeg = double.DegreesToRadians(side == WheelSide.Left ? -1 : 1);

    public int UnknownCount => 3;

    public int ReadingCount => _readings.Length;

    public bool TryEvaluate(int reading, scoped ReadOnlySpan<double> unknowns, scoped Span<double> gradient, out double residual)
    {
        residual = double.NaN;
        if (Math.Abs(unknowns[0]) > GreatestLean || Math.Abs(unknowns[1]) > GreatestLean) return false;
        var caster = Math.Tan(unknowns[0]);
        var inclination = Math.Tan(unknowns[1]);
        var (sinAhead, cosAhead) = Math.SinCos(unknowns[2]);
        var (sinToe, cosToe) = Math.SinCos(_toePerSteerDeg * _readings[reading].SteerDeg);

        // sin camber + lean cos camber stays what it is straight ahead.
        var lean = (caster * sinToe) + (inclination * cosToe);
        var kept = sinAhead + (inclination * cosAhead);
        var length = Math.Sqrt(1 + (lean * lean));
        var sine = kept / length;
        if (!(Math.Abs(sine) < 1)) return false;

        residual = double.DegreesToRadians(_readings[reading].CamberDeg) - (Math.Asin(sine) - Math.Atan(lean));
        var perKept = 1 / (length * Math.Sqrt(1 - (sine * sine)));
        var perLean = -((perKept * kept * lean) + 1) / (length * length);
        gradient[0] = perLean * sinToe * (1 + (caster * caster));
        gradient[1] = ((perLean * cosToe) + (perKept * cosAhead)) * (1 + (inclination * inclination));
        gradient[2] = perKept * (cosAhead - (inclination * sinAhead));
        return true;
    }
}

using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Tyres;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>
/// The most side force both tyres of an axle give at one slip angle, over the static camber and the bends of a demand, each bend weighted as for the tread that is to be flat. Loads and lean
/// are those of the car as set; another camber leans both wheels by so much more or less, and loads stay (held to solving the turns again by a test). Method page:
/// docs/methods/camber-target.
/// </summary>
public sealed class CamberGrip
{
    // The best camber is looked for in coarse steps, then closer; told in half degrees.
    private const double CoarseDeg = 2.5;
    private const double ClosestDeg = 0.005;
    private const double ToldDeg = 0.5;
    private const double GoldenShare = 0.6180339887498949;
    private const double UsualPeakDeg = 14;

    private readonly Bend[] _bends;
    private readonly AxleTyre _tyre;
    private readonly (AxleTyre Lower, AxleTyre Upper) _byGain;
    private readonly (AxleTyre Lower, AxleTyre Upper) _byBest;
    private readonly double _setDeg;

    internal CamberGrip(ResolvedHandlingCar reading, CarAxle at, IReadOnlyList<BendWork> works)
    {
        var car = reading.Car;
        _setDeg = HandlingInputs.For(at).Camber.Read(car);
        _tyre = car.TyreOf(car.At(at));
        (_byGain, _byBest) = (Ends(HandlingInputs.LeanGain), Ends(HandlingInputs.BestLean));
        _bends = new Bend[works.Count];
        for (var i = 0; i < _bends.Length; i++)
        {
            var (outer, inner, axle) = (works[i].Attitude.Outer(at), works[i].Attitude.Inner(at), works[i].Attitude.At(at));
            _bends[i] = new(outer.LoadN, inner.LoadN, -outer.InclinationAngleDeg, inner.InclinationAngleDeg, outer.SlipDeg - axle.SlipDeg, inner.SlipDeg - axle.SlipDeg, works[i].Work);
        }

        (AxleTyre, AxleTyre) Ends(HandlingInput input)
        {
            var error = Uncertainty.StandardErrorsAtNinetyPct * reading.ErrorOf(input);
            var value = input.Read(car);
            var (lower, upper) = reading.AssumedFor(input) is { } assumed ? (assumed.Lower, assumed.Upper) : (value - error, value + error);
            return (With(lower), With(upper));

            AxleTyre With(double end)
            {
                var other = input.Put(car, end);
                return other.TyreOf(other.At(at));
            }
        }
    }

    /// <summary>Change of the axle's grip in these bends against the camber as set, percent, with the range that tyre and car leave.</summary>
    /// <param name="camberDeg">Static camber, degrees.</param>
    /// <param name="flat">The camber that gives the inclination wanted; its range tells how closely the wheels' lean is known.</param>
    /// <param name="draws">Room for <see cref="JointDraws.Count"/> numbers.</param>
    internal Uncertainty ChangePct(double camberDeg, in Uncertainty flat, Span<double> draws)
    {
        var value = Pct(_tyre, 0);
        draws.Clear();
        JointDraws.Add(0, Pct(_byGain.Lower, 0) - value, Pct(_byGain.Upper, 0) - value, draws);
        JointDraws.Add(1, Pct(_byBest.Lower, 0) - value, Pct(_byBest.Upper, 0) - value, draws);

        // Where the tread needs more negative camber to be flat, the wheel leans out by as much more.
        JointDraws.Add(2, Pct(_tyre, flat.Value - flat.Lower) - value, Pct(_tyre, flat.Value - flat.Upper) - value, draws);
        var (lower, upper) = JointDraws.Ends(draws);
        return new(value, value + Math.Min(0, lower), value + Math.Max(0, upper), Uncertainty.NinetyPct);

        double Pct(in AxleTyre tyre, double leansOutDeg) => 100 * Gain(camberDeg - _setDeg, leansOutDeg, tyre);
    }

    /// <summary>
    /// The camber of most grip, degrees, told in half degrees, ends outward. What moves the flat camber moves it by as much; at which lean a tyre grips best comes on top, and is judgement.
    /// </summary>
    /// <param name="sensitivities">What moves the flat camber.</param>
    internal Uncertainty Best(IReadOnlyList<CamberSensitivity> sensitivities)
    {
        var value = Best(_tyre);
        var draws = new double[JointDraws.Count];
        JointDraws.Add(0, Best(_byBest.Lower) - value, Best(_byBest.Upper) - value, draws);
        JointDraws.Add(1, Best(_byGain.Lower) - value, Best(_byGain.Upper) - value, draws);
        for (var i = 0; i < sensitivities.Count; i++)
        {
            if (!sensitivities[i].Place.StartsWith("/vehicle/tyreModel", StringComparison.Ordinal)) JointDraws.Add(i + 2, sensitivities[i].AtLowerDeg, sensitivities[i].AtUpperDeg, draws);
        }

        var (lower, upper) = JointDraws.Ends(draws);
        return new(
            ToldDeg * Math.Round(value / ToldDeg, MidpointRounding.AwayFromZero),
            ToldDeg * Math.Floor((value + lower) / ToldDeg),
            ToldDeg * Math.Ceiling((value + upper) / ToldDeg),
            Uncertainty.NinetyPct);
    }

    // The share of grip gained by a camber added to both wheels, their tops leaning out by so much more than solved, with these tyres.
    private double Gain(double addedDeg, double leansOutDeg, in AxleTyre tyre)
    {
        var sum = 0.0;
        foreach (ref readonly var bend in _bends.AsSpan()) sum += bend.Weight * ((bend.PeakN(addedDeg + leansOutDeg, tyre) / bend.PeakN(leansOutDeg, tyre)) - 1);
        return sum;
    }

    private double Best(in AxleTyre tyre)
    {
        Span<double> asSet = stackalloc double[_bends.Length];
        for (var i = 0; i < _bends.Length; i++) asSet[i] = _bends[i].PeakN(0, tyre) / _bends[i].Weight;
        var (bestDeg, most) = (-CamberTargetSearch.LargestDeg, double.NegativeInfinity);
        for (var deg = -CamberTargetSearch.LargestDeg; deg <= CamberTargetSearch.LargestDeg; deg += CoarseDeg)
        {
            if (At(deg, tyre, asSet) is var grip && grip > most) (bestDeg, most) = (deg, grip);
        }

        // Golden section between the neighbours.
        var (low, high) = (Math.Max(bestDeg - CoarseDeg, -CamberTargetSearch.LargestDeg), Math.Min(bestDeg + CoarseDeg, CamberTargetSearch.LargestDeg));
        var (left, right) = (high - (GoldenShare * (high - low)), low + (GoldenShare * (high - low)));
        var (atLeft, atRight) = (At(left, tyre, asSet), At(right, tyre, asSet));
        while (high - low > ClosestDeg)
        {
            if (atLeft > atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - (GoldenShare * (high - low));
                atLeft = At(left, tyre, asSet);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + (GoldenShare * (high - low));
                atRight = At(right, tyre, asSet);
            }
        }

        return (low + high) / 2;
    }

    private double At(double camberDeg, in AxleTyre tyre, ReadOnlySpan<double> asSet)
    {
        var sum = 0.0;
        for (var i = 0; i < _bends.Length; i++) sum += _bends[i].PeakN(camberDeg - _setDeg, tyre) / asSet[i];
        return sum;
    }

    /// <summary>Both wheels in a bend: loads, N; lean into the turn and slip beyond the axle's, degrees; and the bend's share of the work.</summary>
    private readonly record struct Bend(double OuterN, double InnerN, double OuterLeanDeg, double InnerLeanDeg, double OuterTurnDeg, double InnerTurnDeg, double Weight)
    {
        public double PeakN(double addedDeg, in AxleTyre tyre)
        {
            var slipDeg = UsualPeakDeg;
            return new TyrePair(PassengerTyre.At(OuterN, OuterLeanDeg - addedDeg, tyre), PassengerTyre.At(InnerN, InnerLeanDeg + addedDeg, tyre), OuterTurnDeg, InnerTurnDeg).PeakN(ref slipDeg);
        }
    }
}

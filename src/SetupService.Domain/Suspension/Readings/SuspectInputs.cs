using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>
/// Finds signs turned or typed wrong in what was measured of a corner: inputs that can hardly both be right. Each reading is compared with
/// the curve through all others and the stated camber. Method and trials in docs/methods/measured-corner.md.
/// </summary>
public static class SuspectInputs
{
    /// <summary>A reading further from the curve through the others than this many joint standard errors is suspect (a judgement).</summary>
    public const double ErrorsOff = 5;

    /// <summary>With its sign turned it must lie within this many.</summary>
    public const double ErrorsWithin = 2.5;

    // Readings looked at one by one: those furthest from the straight line through their neighbours. It bounds the work of long lists.
    private const int MostLookedAt = 12;

    // What rounding to the digits people type leaves, degrees; no gauge is taken to be better here.
    private const double RoundingDeg = 0.005;

    // Least travel between the first and the last reading for a word on the direction of camber gain, mm (a judgement).
    private const double LeastSpanMm = 20;

    /// <summary>All, the gravest first; empty where nothing contradicts.</summary>
    public static IReadOnlyList<SuspectInput> Find(CornerReadings readings, MeasuredCorner corner)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(corner);
        var found = new List<SuspectInput>();
        var turned = TurnedReading(readings, corner);
        if (turned is { } one) found.Add(one);
        if (corner.StatedCamber is { IsContradiction: true } stated)
        {
            var isTurned = turned is null && Math.Abs(stated.StatedDeg + stated.ReadDeg.Value) <= stated.AllowedDeg;
            found.Add(new(SuspectInputKind.StatedCamber, null, stated.StatedDeg, stated.ReadDeg.Value, stated.AllowedDeg, isTurned));
        }

        AddAxis(found, readings);
        if (turned is null && Gain(corner, readings) is { } gain) found.Add(gain);
        return found;
    }

    /// <summary>The reading that agrees least with all others, where a turned sign explains it; null where there is none.</summary>
    private static SuspectInput? TurnedReading(CornerReadings readings, MeasuredCorner corner)
    {
        var errorDeg = Math.Max(readings.GaugeErrorDeg, RoundingDeg);
        var isStatedUsed = corner.StatedCamber is { IsContradiction: false };
        var (furthest, most) = (-1, ErrorsOff);
        TravelCurve? through = null;
        foreach (var index in LookedAt(readings.Travel))
        {
            var others = readings.Travel.Where((_, i) => i != index).Select(one => (one.TravelMm, one.CamberDeg));
            if (isStatedUsed) others = others.Append((0, readings.StatedCamberDeg!.Value));
            if (TravelCurve.ForCamber(others, readings.GaugeErrorDeg) is not { } curve) continue;
            var off = ErrorsApart(curve, readings.Travel[index].TravelMm, readings.Travel[index].CamberDeg, errorDeg);
            if (off > most) (furthest, most, through) = (index, off, curve);
        }

        if (through is null) return null;
        var reading = readings.Travel[furthest];
        var isCamber = ErrorsApart(through, reading.TravelMm, -reading.CamberDeg, errorDeg) <= ErrorsWithin;
        var isTravel = ErrorsApart(through, -reading.TravelMm, reading.CamberDeg, errorDeg) <= ErrorsWithin;
        if (!isCamber && !isTravel) return null;
        var kind = !isTravel ? SuspectInputKind.CamberSign : isCamber ? SuspectInputKind.CamberOrTravelSign : SuspectInputKind.TravelSign;
        var there = through.Anywhere(reading.TravelMm).AngleDeg;
        return new(kind, furthest, reading.CamberDeg, there.Value, ErrorsOff * double.Hypot(errorDeg, there.StandardError), true);
    }

    private static double ErrorsApart(TravelCurve curve, double travelMm, double camberDeg, double errorDeg)
    {
        var there = curve.Anywhere(travelMm).AngleDeg;
        return Math.Abs(camberDeg - there.Value) / double.Hypot(errorDeg, there.StandardError);
    }

    private static IEnumerable<int> LookedAt(IReadOnlyList<TravelReading> readings)
    {
        if (readings.Count <= MostLookedAt) return Enumerable.Range(0, readings.Count);
        int[] ordered = [.. Enumerable.Range(0, readings.Count).OrderBy(i => readings[i].TravelMm)];
        return Enumerable.Range(0, ordered.Length).OrderByDescending(OffNeighboursDeg).Take(MostLookedAt).Select(place => ordered[place]);

        double OffNeighboursDeg(int place)
        {
            var first = Math.Clamp(place - 1, 0, ordered.Length - 3);
            var (low, high) = (readings[ordered[place == first ? first + 1 : first]], readings[ordered[place == first + 2 ? first + 1 : first + 2]]);
            var at = readings[ordered[place]];
            var widthMm = high.TravelMm - low.TravelMm;
            var slope = widthMm > 0 ? (high.CamberDeg - low.CamberDeg) / widthMm : 0;
            return Math.Abs(at.CamberDeg - low.CamberDeg - (slope * (at.TravelMm - low.TravelMm)));
        }
    }

    private static void AddAxis(List<SuspectInput> found, CornerReadings readings)
    {
        if (readings.Steer.Count == 0 || (readings.CasterDeg ?? readings.SteeringAxisInclinationDeg) is null) return;
        var errorDeg = Math.Max(readings.GaugeErrorDeg, RoundingDeg);
        if (CasterReadings.From([.. readings.Steer], WheelSide.Left, errorDeg).Fit is not { } fit) return;
        Add(SuspectInputKind.Caster, readings.CasterDeg, fit.CasterDeg, fit.CasterStandardErrorDeg);
        Add(SuspectInputKind.Inclination, readings.SteeringAxisInclinationDeg, fit.SteeringAxisInclinationDeg, fit.InclinationStandardErrorDeg);

        void Add(SuspectInputKind kind, double? given, double readDeg, double standardErrorDeg)
        {
            var allowedDeg = StatedCamber.StandardErrorsAllowed * double.Hypot(errorDeg, standardErrorDeg);
            if (given is { } statedDeg && Math.Abs(statedDeg - readDeg) > allowedDeg)
                found.Add(new(kind, null, statedDeg, readDeg, allowedDeg, Math.Abs(statedDeg + readDeg) <= allowedDeg));
        }
    }

    /// <summary>
    /// Camber that grows more positive in bump from the first to the last reading. Struts and wishbones go negative in bump over most of
    /// their travel (common practice, no source).
    /// </summary>
    private static SuspectInput? Gain(MeasuredCorner corner, CornerReadings readings)
    {
        if (corner.LastMm - corner.FirstMm < LeastSpanMm) return null;
        if (corner.CamberAt(corner.FirstMm) is not { } first || corner.CamberAt(corner.LastMm) is not { } last) return null;
        var changeDeg = last.AngleDeg.Value - first.AngleDeg.Value;
        var errorDeg = double.Hypot(Larger(first.AngleDeg), Larger(last.AngleDeg));
        if (changeDeg <= StatedCamber.StandardErrorsAllowed * errorDeg) return null;
        foreach (var reading in readings.Travel)
        {
            if (corner.CamberAt(reading.TravelMm) is { SlopeDegPerMm.Value: < 0 }) return null;
        }

        return new(SuspectInputKind.CamberGain, null, changeDeg, 0, StatedCamber.StandardErrorsAllowed * errorDeg, true);

        static double Larger(Estimate angleDeg) => Math.Max(angleDeg.StandardError, RoundingDeg);
    }
}

namespace SetupService.Domain.Suspension.Readings;

/// <summary>
/// Camber against wheel travel as somebody measured it: straight between the readings, and carried on by the end
/// slope for <see cref="ExtensionMm"/> beyond them. Camber in degrees against the body, negative = top inboard;
/// travel in mm, positive = bump.
/// </summary>
public sealed class CamberCurve
{
    /// <summary>How far the end slopes are trusted beyond the last reading, mm (a stated assumption, no source).</summary>
    public const double ExtensionMm = 20;

    /// <summary>Heights closer than this cannot be told apart with a ruler, mm (common practice, no source).</summary>
    public const double SameHeightMm = 1;

    /// <summary>How far readings at one height may lie apart, degrees (common practice, no source).</summary>
    public const double GaugeScatterDeg = 1;

    private readonly double[] _travelMm;
    private readonly double[] _camberDeg;

    private CamberCurve(double[] travelMm, double[] camberDeg)
    {
        _travelMm = travelMm;
        _camberDeg = camberDeg;
    }

    /// <summary>
    /// Makes a curve of readings in any order; null where fewer than two different heights were read, since one reading has
    /// no slope. Readings within <see cref="SameHeightMm"/> are one height and averaged.
    /// </summary>
    public static CamberCurve? From(IEnumerable<(double TravelMm, double CamberDeg)> readings)
    {
        var heights = new List<List<(double TravelMm, double CamberDeg)>>();
        foreach (var reading in readings.OrderBy(reading => reading.TravelMm))
        {
            if (heights.Count > 0 && reading.TravelMm - heights[^1][0].TravelMm < SameHeightMm) heights[^1].Add(reading);
            else heights.Add([reading]);
        }

        return heights.Count < 2
            ? null
            : new(
                [.. heights.Select(height => height.Average(reading => reading.TravelMm))],
                [.. heights.Select(height => height.Average(reading => reading.CamberDeg))]);
    }

    /// <summary>Whether no two readings at one height are further apart than a gauge's scatter.</summary>
    public static bool AreConsistent(IEnumerable<(double TravelMm, double CamberDeg)> readings)
    {
        var ordered = readings.OrderBy(reading => reading.TravelMm).ToArray();
        for (var i = 0; i < ordered.Length; i++)
        {
            for (var k = i + 1; k < ordered.Length && ordered[k].TravelMm - ordered[i].TravelMm < SameHeightMm; k++)
            {
                if (Math.Abs(ordered[k].CamberDeg - ordered[i].CamberDeg) > GaugeScatterDeg) return false;
            }
        }

        return true;
    }

    /// <summary>Whether the travel, mm, lies between the readings.</summary>
    public bool Holds(double travelMm) => travelMm >= _travelMm[0] && travelMm <= _travelMm[^1];

    /// <summary>Whether the curve, with its extension, reaches the travel.</summary>
    public bool Reaches(double travel) =>
        travel >= _travelMm[0] - ExtensionMm && travel <= _travelMm[^1] + ExtensionMm;

    /// <summary>
    /// The greatest change of camber from ride height to anywhere up to <paramref name="toTravelMm"/>, towards
    /// negative (top inboard) and towards positive (top outboard), both as sizes in degrees; null where the
    /// curve does not reach so far.
    /// </summary>
    public (double Inboard, double Outboard)? ExtremesDeg(double toTravelMm)
    {
        if (!Reaches(0) || !Reaches(toTravelMm)) return null;
        var atRide = AtDeg(0);
        var inboard = 0.0;
        var outboard = 0.0;
        Widen(AtDeg(toTravelMm));
        for (var i = 0; i < _travelMm.Length; i++)
        {
            if (_travelMm[i] > Math.Min(0, toTravelMm) && _travelMm[i] < Math.Max(0, toTravelMm)) Widen(_camberDeg[i]);
        }

        return (inboard, outboard);

        void Widen(double camber)
        {
            inboard = Math.Max(inboard, atRide - camber);
            outboard = Math.Max(outboard, camber - atRide);
        }
    }

    /// <summary>Camber at a travel the curve reaches, degrees.</summary>
    public double AtDeg(double travel)
    {
        var upper = 1;
        while (upper < _travelMm.Length - 1 && _travelMm[upper] < travel) upper++;
        var slope = (_camberDeg[upper] - _camberDeg[upper - 1]) / (_travelMm[upper] - _travelMm[upper - 1]);
        return _camberDeg[upper - 1] + (slope * (travel - _travelMm[upper - 1]));
    }
}

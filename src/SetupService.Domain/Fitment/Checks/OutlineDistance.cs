using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>
/// The least distance between the outlines of a brake caliper and of the inside of a wheel, both as sections of revolution: points of
/// station and radius joined straight, ascending in station, steps allowed. The caliper fills what lies below its outline, the wheel what
/// lies above its own. Allocates nothing.
/// </summary>
internal readonly ref struct OutlineDistance
{
    private readonly ReadOnlySpan<ProfilePoint> _caliper;
    private readonly ReadOnlySpan<ProfilePoint> _wheel;
    private readonly double _inboardMm;
    private readonly double _outboardMm;

    /// <summary>Two outlines with stations from the same face.</summary>
    /// <param name="caliper">Outline of the caliper, at least one point.</param>
    /// <param name="wheel">Outline of the wheel's inside, at least one point.</param>
    /// <param name="inboardMm">How far the caliper may move inboard from where it was measured, mm, at least 0.</param>
    /// <param name="outboardMm">How far it may move outboard, mm, at least 0.</param>
    public OutlineDistance(ReadOnlySpan<ProfilePoint> caliper, ReadOnlySpan<ProfilePoint> wheel, double inboardMm, double outboardMm)
    {
        _caliper = caliper;
        _wheel = wheel;
        _inboardMm = inboardMm;
        _outboardMm = outboardMm;
    }

    /// <summary>
    /// The least distance with the caliper as measured, mm, and with it moved to where it comes nearest. Negative = a point of one lies so deep in the
    /// other, the deepest such point counting (of the caliper its end faces are part); the moved distance is 0 where only the movement brings them together.
    /// </summary>
    public (double MeasuredMm, double MovedMm) Least()
    {
        if (Overlap()) return (-DepthMm(), -DepthMm());
        var (measured, moved) = (double.PositiveInfinity, double.PositiveInfinity);
        for (var i = 0; i < _caliper.Length; i++)
        {
            var point = _caliper[i];
            for (var k = Math.Min(1, _wheel.Length - 1); k < _wheel.Length; k++)
            {
                Narrow(point, _inboardMm, _outboardMm, _wheel[Math.Max(0, k - 1)], _wheel[k], ref measured, ref moved);
            }
        }

        for (var k = 0; k < _wheel.Length; k++)
        {
            var point = _wheel[k];
            for (var i = Math.Min(1, _caliper.Length - 1); i < _caliper.Length; i++)
            {
                // The caliper moving inboard is the wheel moving outboard.
                Narrow(point, _outboardMm, _inboardMm, _caliper[Math.Max(0, i - 1)], _caliper[i], ref measured, ref moved);
            }
        }

        return (Math.Sqrt(measured), Math.Sqrt(moved));
    }

    /// <summary>Narrows the squares of both distances by one point, which may move along the axis, and one straight piece of the other outline.</summary>
    private static void Narrow(
        ProfilePoint point, double inboardMm, double outboardMm, ProfilePoint from, ProfilePoint to, ref double measured, ref double moved)
    {
        var low = Math.Min(from.RadiusMm, to.RadiusMm) - point.RadiusMm;
        var high = point.RadiusMm - Math.Max(from.RadiusMm, to.RadiusMm);
        var apart = Math.Max(low, high);
        if (apart > 0 && apart * apart >= measured) return;

        var (first, last) = (point.StationMm - inboardMm, point.StationMm + outboardMm);
        measured = Math.Min(measured, SquareTo(point.StationMm, point.RadiusMm, from, to));
        if (apart <= 0 && Crosses(first, last, point.RadiusMm, from, to))
        {
            moved = 0;
            return;
        }

        moved = Math.Min(moved, Math.Min(SquareTo(first, point.RadiusMm, from, to), SquareTo(last, point.RadiusMm, from, to)));
        moved = Math.Min(moved, Math.Min(SquareToLevel(from, first, last, point.RadiusMm), SquareToLevel(to, first, last, point.RadiusMm)));
    }

    private static double SquareTo(double stationMm, double radiusMm, ProfilePoint from, ProfilePoint to)
    {
        var (alongMm, upMm) = (to.StationMm - from.StationMm, to.RadiusMm - from.RadiusMm);
        var (x, y) = (stationMm - from.StationMm, radiusMm - from.RadiusMm);
        var length = (alongMm * alongMm) + (upMm * upMm);
        var share = length > 0 ? Math.Clamp(((x * alongMm) + (y * upMm)) / length, 0, 1) : 0;
        var (dx, dy) = (x - (share * alongMm), y - (share * upMm));
        return (dx * dx) + (dy * dy);
    }

    private static double SquareToLevel(ProfilePoint point, double firstMm, double lastMm, double radiusMm)
    {
        var dx = point.StationMm - Math.Clamp(point.StationMm, firstMm, lastMm);
        var dy = point.RadiusMm - radiusMm;
        return (dx * dx) + (dy * dy);
    }

    private static bool Crosses(double firstMm, double lastMm, double radiusMm, ProfilePoint from, ProfilePoint to)
    {
        var upMm = to.RadiusMm - from.RadiusMm;
        if (upMm == 0) return Math.Max(firstMm, from.StationMm) <= Math.Min(lastMm, to.StationMm);
        var atMm = from.StationMm + ((radiusMm - from.RadiusMm) / upMm * (to.StationMm - from.StationMm));
        return atMm >= firstMm && atMm <= lastMm;
    }

    private bool Overlap()
    {
        var (highest, lowest) = (0.0, double.PositiveInfinity);
        foreach (var point in _caliper) highest = Math.Max(highest, point.RadiusMm);
        foreach (var point in _wheel) lowest = Math.Min(lowest, point.RadiusMm);
        if (highest <= lowest) return false;

        foreach (var point in _caliper)
        {
            if (IsInWheel(point)) return true;
        }

        foreach (var point in _wheel)
        {
            if (IsInCaliper(point)) return true;
        }

        return false;
    }

    private bool IsInWheel(ProfilePoint point) => RadiusAt(_wheel, point.StationMm, largest: false) < point.RadiusMm;

    private bool IsInCaliper(ProfilePoint point) => RadiusAt(_caliper, point.StationMm, largest: true) > point.RadiusMm;

    private double DepthMm()
    {
        var deepest = 0.0;
        foreach (var point in _caliper)
        {
            if (IsInWheel(point)) deepest = Math.Max(deepest, SquareTo(point, _wheel));
        }

        foreach (var point in _wheel)
        {
            if (!IsInCaliper(point)) continue;

            // Out of the caliper a point comes through its outline or through either face at its ends.
            var toFaceMm = Math.Min(point.StationMm - _caliper[0].StationMm, _caliper[^1].StationMm - point.StationMm);
            deepest = Math.Max(deepest, Math.Min(SquareTo(point, _caliper), toFaceMm * toFaceMm));
        }

        return Math.Sqrt(deepest);
    }

    private static double SquareTo(ProfilePoint point, ReadOnlySpan<ProfilePoint> outline)
    {
        var least = double.PositiveInfinity;
        for (var k = Math.Min(1, outline.Length - 1); k < outline.Length; k++)
        {
            least = Math.Min(least, SquareTo(point.StationMm, point.RadiusMm, outline[Math.Max(0, k - 1)], outline[k]));
        }

        return least;
    }

    /// <summary>
    /// The radius of an outline at a station, mm; not a number beyond its ends. Where it steps, the one of its two points that leaves less room:
    /// the largest of a caliper, the smallest of a wheel.
    /// </summary>
    private static double RadiusAt(ReadOnlySpan<ProfilePoint> outline, double stationMm, bool largest)
    {
        var radiusMm = double.NaN;
        for (var i = 0; i < outline.Length && outline[i].StationMm <= stationMm; i++)
        {
            if (outline[i].StationMm == stationMm) Take(outline[i].RadiusMm);
            else if (i + 1 < outline.Length && outline[i + 1].StationMm > stationMm)
            {
                var (from, to) = (outline[i], outline[i + 1]);
                Take(from.RadiusMm + ((stationMm - from.StationMm) / (to.StationMm - from.StationMm) * (to.RadiusMm - from.RadiusMm)));
            }
        }

        return radiusMm;

        void Take(double mm) => radiusMm = double.IsNaN(radiusMm) ? mm : largest ? Math.Max(radiusMm, mm) : Math.Min(radiusMm, mm);
    }
}

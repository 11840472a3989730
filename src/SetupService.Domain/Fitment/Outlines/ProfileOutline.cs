using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment.Outlines;

/// <summary>An outline given point by point, as far as it lies within the wheel and tyre.</summary>
public static class ProfileOutline
{
    /// <summary>
    /// The points above the axis, joined straight; points further from the axis than the tyre or outside its edges by more than
    /// its radius are left out, and null is the answer where fewer than two remain.
    /// </summary>
    /// <param name="profile">The points.</param>
    /// <param name="faceMm">Station of the face they are measured from, mm from the hub face.</param>
    /// <param name="envelope">The wheel and tyre around them.</param>
    public static Outline? Create(IReadOnlyList<ProfilePoint> profile, double faceMm, in Envelope envelope)
    {
        var points = new List<OutlinePoint>(profile.Count);
        foreach (var point in profile)
        {
            var stationMm = faceMm + point.StationMm;
            var isNear = Math.Abs(stationMm - envelope.CentrePlaneMm) <= envelope.HalfWidthMm + envelope.RadiusMm;
            if (isNear && point.RadiusMm >= 0 && point.RadiusMm <= envelope.RadiusMm) points.Add(new(stationMm, point.RadiusMm));
        }

        return points.Count < 2 ? null : new Outline(points[0], [.. points.Skip(1).Select(OutlineStep.Line)]);
    }
}

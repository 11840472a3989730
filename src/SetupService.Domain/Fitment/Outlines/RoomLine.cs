using SetupService.Domain.Fitment.Checks;

namespace SetupService.Domain.Fitment.Outlines;

/// <summary>
/// The nearest part of the car at one place around the candidate, as a line: drawn after travel and a change of camber, so that its
/// distance from the candidate's edge is the nominal margin.
/// </summary>
/// <param name="Place">Inboard, outboard or radial.</param>
/// <param name="EdgeMm">The candidate's edge: a station, or over the tread a height; mm.</param>
/// <param name="NominalMm">Nominal margin, mm; negative = the line lies within the candidate.</param>
/// <param name="TakenMm">What travel and camber change use of the gap together, mm; negative = they add room.</param>
public readonly record struct RoomLine(CheckId Place, double EdgeMm, double NominalMm, double TakenMm)
{
    /// <summary>Where the line is: a station, or over the tread a height; mm.</summary>
    public double PositionMm => EdgeMm + (Away * NominalMm);

    /// <summary>Where it was measured, before travel and camber change; mm.</summary>
    public double MeasuredMm => EdgeMm + (Away * (NominalMm + TakenMm));

    /// <summary>True when travel or a camber change moved it from where it was measured.</summary>
    public bool HasMoved => TakenMm != 0;

    private int Away => Place == CheckId.InboardClearance ? -1 : 1;

    /// <summary>The line at a place; null where the margin is not known or the place is none of the three that can be drawn.</summary>
    public static RoomLine? Create(FitmentContext car, in Envelope candidate, CheckSheet sheet, CheckId place)
    {
        if (place > CheckId.RadialClearance || !sheet.Applicable.Contains(place) || sheet[place].Margin is not { } margin) return null;
        var edgeMm = place switch
        {
            CheckId.InboardClearance => candidate.InboardMm,
            CheckId.OutboardClearance => candidate.OutboardMm,
            _ => candidate.RadiusMm,
        };
        var takenMm = ClearanceChecks.TryBudget(car, candidate, place, out var budget, out _) ? budget.CamberMm + budget.TravelMm : 0;
        return new RoomLine(place, edgeMm, margin.NominalMm, takenMm);
    }

    /// <summary>
    /// The part of an outline that lies beyond the line, as a polygon; empty where there is none. Cut by one edge of the
    /// Sutherland-Hodgman algorithm.
    /// </summary>
    public IReadOnlyList<OutlinePoint> Beyond(Outline outline, int piecesPerCurve)
    {
        var polygon = outline.Polygon(piecesPerCurve);
        var kept = new List<OutlinePoint>();
        for (var i = 0; i < polygon.Count; i++)
        {
            var (from, to) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            var (fromPast, toPast) = (PastMm(from), PastMm(to));
            if (fromPast > 0) kept.Add(from);
            if (fromPast > 0 != toPast > 0) kept.Add(from.Towards(to, fromPast / (fromPast - toPast)));
        }

        return kept;
    }

    private double PastMm(OutlinePoint point) => Place == CheckId.RadialClearance
        ? point.HeightMm - PositionMm
        : Away * (point.StationMm - PositionMm);
}

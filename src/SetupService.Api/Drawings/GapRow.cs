using SetupService.Domain.Fitment;

namespace SetupService.Api.Drawings;

/// <summary>One row of the schedule of gaps.</summary>
/// <param name="Place">Where.</param>
/// <param name="Nominal">Nominal margin, with its unit.</param>
/// <param name="WorstCase">Worst-case margin, with its unit.</param>
/// <param name="Status">The word for it.</param>
/// <param name="Ink">The word's colour.</param>
internal sealed record GapRow(string Place, string Nominal, string WorstCase, string Status, InkRole Ink)
{
    /// <summary>A row for every gap whose margin is known, also for those that have no direction to be drawn in.</summary>
    public static IReadOnlyList<GapRow> All(CornerView view)
    {
        var rows = new List<GapRow>(CheckIdSet.ClearanceCount);
        for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++)
        {
            ref readonly var result = ref view.Sheet[place];
            if (!view.Sheet.Applicable.Contains(place) || result.Margin is not { } margin) continue;
            rows.Add(new(
                DrawingWords.Place(place),
                DrawingWords.Length(margin.NominalMm, view.Units),
                DrawingWords.Length(margin.WorstCaseMm, view.Units),
                DrawingWords.Status(result),
                DrawingWords.StatusInk(result.Status)));
        }

        return rows;
    }
}

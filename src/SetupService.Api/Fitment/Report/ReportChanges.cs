using SetupService.Api.Fitment.Compare;
using SetupService.Api.Http.Pages;
using SetupService.Domain.Answers;

namespace SetupService.Api.Fitment.Report;

/// <summary>What changes against the wheel and tyre fitted now, as a table of the report.</summary>
internal static class ReportChanges
{
    public static void Write(HtmlWriter page, ComparisonResponse comparison, UnitSystem units) =>
        ReportPage.Table(page, "What changes", "changes", ["", "By"], () =>
        {
            Row("Outer edge", Moved(comparison.OutboardChangeMm, "outboard", "inboard"));
            Row("Inner edge", Moved(comparison.InboardChangeMm, "inboard", "outboard"));
            Row("Track of the axle", Moved(comparison.TrackChangeMm, "wider", "narrower"));
            if (comparison.ScrubRadiusChangeMm is { } scrubMm) Row("Scrub radius", Moved(scrubMm, "more positive", "more negative"));
            Row("Overall diameter", Moved(comparison.OverallDiameterChangeMm, "more", "less"));
            Row("Ride height", Moved(comparison.RideHeightChangeMm, "higher", "lower"));
            Row("Gearing", Same(comparison.GearingChangePct, 0.05) ? "no change" : Prose.Write(units, $"{Math.Abs(comparison.GearingChangePct):pct} {(comparison.GearingChangePct > 0 ? "longer" : "shorter")}"));
            if (comparison.MassChangeKg is { } massKg) Row("Mass of each wheel with its tyre", Same(massKg, 0.05) ? "no change" : Prose.Write(units, $"{Math.Abs(massKg):kg} {(massKg > 0 ? "more" : "less")}"));
            Row("Speedometer", Prose.Write(units, $"shows {comparison.Speedometer.IndicatedKmh:kmh} at a true {comparison.Speedometer.TrueKmh:kmh}, if it reads exactly now"));

            void Row(string what, string by)
            {
                page.Open("tr");
                page.Element("th", what, ("scope", "row"));
                page.Element("td", by);
                page.Close();
            }

            string Moved(double byMm, string positive, string negative) =>
                Same(byMm, 0.05) ? "no change" : Prose.Write(units, $"{Math.Abs(byMm):gap} {(byMm > 0 ? positive : negative)}");
        });

    /// <summary>True for a change too small to be written.</summary>
    private static bool Same(double change, double least) => Math.Abs(change) < least;
}

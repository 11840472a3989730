using SetupService.Api.Fitment.Report;
using SetupService.Api.Http.Pages;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans.Sheets;

/// <summary>The sheet of alignment and pressures.</summary>
internal static partial class SheetPage
{
    private static void Alignment(HtmlWriter page, AlignmentSheetResponse alignment, UnitSystem units)
    {
        page.Element("p", alignment.Loaded);
        ReportPage.Table(page, "Alignment", "fill angles", ["", "As stated", "Found L", "Found R", "Set to", "Within", "After L", "After R"], () =>
        {
            foreach (var pair in alignment.Lines.GroupBy(line => (line.Axle, line.Angle)))
            {
                var (line, isTotal) = (pair.First(), pair.Key.Angle == AlignmentAngle.TotalToe);
                var tolerance = line.Angle is AlignmentAngle.Toe or AlignmentAngle.TotalToe ? Prose.Write(units, $"{line.ToleranceDeg:deg}") : Prose.Write(units, $"{line.ToleranceDeg:angle}");
                var target = Sides([.. pair.Select(one => one.Text)]);
                page.Open("tr", ("class", line.Task == AlignmentTask.Read ? "only" : ""));
                page.Element("th", Capital(SheetWords.Name(line.Axle, null, line.Angle)), ("scope", "row"));
                page.Element("td", Sides([.. pair.Select(one => SheetWords.Angle(one.Angle, one.NowDeg, units))]) ?? "–");
                Boxes(isTotal);
                page.Element("td", target is null ? "read only" : target + (line.Task == AlignmentTask.Read ? ", read only" : ""), ("class", target is null ? "none" : "goal"));
                page.Element("td", "± " + tolerance);
                Boxes(isTotal);
                page.Close();
            }

            foreach (var height in alignment.RideHeights)
            {
                page.Open("tr", ("class", height.TargetMm is null ? "only" : ""));
                page.Element("th", $"{Capital(CorneringWords.Name(height.Axle))} ride height", ("scope", "row"));
                page.Element("td", height.NowMm is { } now ? Prose.Write(units, $"{now:gap}") : "–");
                Boxes(false);
                page.Element("td", Height(height, units), ("class", height.TargetMm is null && height.ChangeMm is null ? "none" : "goal"));
                page.Element("td", "± " + Prose.Write(units, $"{height.ToleranceMm:gap}"));
                Boxes(false);
                page.Close();
            }
        });
        page.Element("p", "Ride height: ground to arch lip above the wheel centre, mean of left and right. Order: " + string.Join("; ", alignment.Order) + ".", ("class", "note"));
        foreach (var line in alignment.Lines.Where(line => line.AimDeg != line.TargetDeg && line.Side == Domain.Suspension.Steering.WheelSide.Left))
            page.Element("p", $"{Capital(CorneringWords.Name(line.Axle))} camber is a first step: {Prose.Write(units, $"{line.AimDeg!.Value:angle}")} comes later, if the treads then still ask for it.", ("class", "note"));

        void Boxes(bool isTotal)
        {
            if (isTotal) page.Element("td", "", ("class", "box"), ("colspan", "2"));
            else for (var i = 0; i < 2; i++) Box(page);
        }
    }

    // One text where both sides are alike.
    private static string? Sides(string?[] texts) => texts.Distinct().Count() == 1 ? texts[0] : $"L {texts[0] ?? "–"}, R {texts[1] ?? "–"}";

    private static string Height(RideHeightResponse height, UnitSystem units)
    {
        if (height.TargetMm is { } target) return Prose.Write(units, $"{Math.Round(target):gap}");
        if (height.ChangeMm is not { } change) return "read only";
        return Math.Abs(change) < 0.5 ? "as found" : Prose.Write(units, $"as found {(change < 0 ? "less" : "plus")} {Math.Round(Math.Abs(change)):gap}");
    }

    private static void Pressures(HtmlWriter page, PressureSheetResponse[] pressures, UnitSystem units)
    {
        var isSplit = pressures.Any(one => one.ColdKpa < one.RoadColdKpa);
        ReportPage.Table(page, "Pressures", isSplit ? "fill cold split" : "fill cold", ["", .. isSplit ? ["Road, cold", "Track, cold"] : (string[])["Set cold"], "Comes to hot", "Hot aim", "Never below", "Read cold", "Read hot"], () =>
        {
            foreach (var one in pressures)
            {
                page.Open("tr");
                page.Element("th", Capital(CorneringWords.Name(one.Position)), ("scope", "row"));
                if (isSplit) page.Element("td", Up(one.RoadColdKpa), ("class", one.RoadColdKpa is null ? "none" : "goal"));
                page.Element("td", Up(one.ColdKpa), ("class", one.ColdKpa is null ? "none" : "goal"));
                page.Element("td", Kpa(one.HotKpa));
                page.Element("td", Kpa(one.AimHotKpa));
                page.Element("td", Up(one.LeastColdKpa ?? one.PlateKpa));
                Box(page);
                Box(page);
                page.Close();
            }
        });
        foreach (var group in pressures.Where(one => one.ColdKpa is null).GroupBy(one => one.Text))
            page.Element("p", $"{Capital(string.Join(", ", group.Select(one => CorneringWords.Name(one.Position))))}: {group.Key}", ("class", "note"));

        string[] plates = [.. pressures.Where(one => one.PlateKpa is not null).Select(one => $"{CorneringWords.Name(WheelPositions.AxleOf(one.Position))} {Up(one.PlateKpa)}").Distinct()];
        if (plates.Length > 0) page.Element("p", $"On the road the car's plate comes first, from the first drive on: {string.Join(", ", plates)}.", ("class", "note"));

        string Up(double? kpa) => kpa is { } value ? Prose.Write(units, $"{value:kPaUp}") : "–";

        string Kpa(double? kpa) => kpa is { } value ? Prose.Write(units, $"{value:kPa}") : "–";
    }
}

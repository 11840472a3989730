using SetupService.Api.Drawings.Charts;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Wear.Diagnosis.Advice;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Draws the depth across each tread: the readings, a curve through them, the wear model's prediction and the legal limit.</summary>
internal static class TreadChart
{
    private const string Read = "reading";
    private const string Curve = "curve fitted to the readings";
    private const string Predicted = "wear model";
    private const string New = "depth when new";
    private const string Limit = "usual legal limit";
    private const int CurvePoints = 25;
    private const double MillimetresPerInch = 25.4;

    /// <summary>The picture.</summary>
    public static string Draw(DiagnosedCar car, UnitSystem units, double widthPx)
    {
        var (unit, scale) = units == UnitSystem.Us ? ("1/32 in", MillimetresPerInch / 32) : ("mm", 1.0);
        return ChartDrawing.Draw(new Chart
        {
            Heading = "Tread depth across each tyre",
            Lines = [DiagnosisWords.Summary(WearAdvice.Create(car.Study, car.Conditions, units))],
            Across = new ChartAxis("position across the tread", "%") { Low = "outer edge", High = "inner edge" },
            Panels = [.. car.Study.Case.Tyres.Select(tyre => Panel(car, tyre, unit, scale))],
            Notes = Notes(car),
        }, widthPx);
    }

    private static ChartPanel Panel(DiagnosedCar car, TyreReading tyre, string unit, double scale)
    {
        var name = CorneringWords.Name(tyre.Position);
        if (TreadFigures.Compute(tyre) is not { } figures) return new(name, unit, []);
        var series = new List<ChartSeries>
        {
            new(Curve, Line(figures.DepthMm, tyre.Zones.Min(zone => zone.DepthMm))),
            new(Read, [.. tyre.Zones.Select(zone => new ChartPoint(zone.AcrossPct, zone.DepthMm / scale))]) { IsJoined = false },
        };
        if (car.Study.At(tyre.Axle) is { ReadingCount: > 0 } learned)
        {
            var freshMm = tyre.NewDepthMm ?? TreadFigures.UsualNewDepthMm.Value;
            series.Add(new(Predicted, Line(learned.WornMm(learned.Axle.At(tyre.IsLeft)).Select(worn => freshMm - worn))));
        }

        if (tyre.NewDepthMm is { } newMm) series.Add(new(New, Level(newMm)) { IsMain = false });
        series.Add(new(Limit, Level(TreadDepths.LegalLeastMm)) { IsMain = false });
        return new(name, unit, series) { LeastSpan = 1 };

        // A parabola through the depths at the three places, in the unit of the chart; from the outermost reading to the innermost, and no shallower than the
        // least depth read, so that it reaches the limit where the cautions say so.
        ChartPoint[] Line(AcrossTread<double> depthMm, double leastMm = 0) => [.. Enumerable.Range(0, CurvePoints).Select(i =>
        {
            var acrossPct = tyre.Zones[0].AcrossPct + ((tyre.Zones[^1].AcrossPct - tyre.Zones[0].AcrossPct) * i / (CurvePoints - 1));
            var at = (acrossPct - TreadZone.UsualPct.Centre) / (TreadZone.UsualPct.Inner - TreadZone.UsualPct.Centre);
            var slope = (depthMm.Inner - depthMm.Outer) / 2;
            var bend = ((depthMm.Inner + depthMm.Outer) / 2) - depthMm.Centre;
            return new ChartPoint(acrossPct, Math.Max(leastMm, depthMm.Centre + (slope * at) + (bend * at * at)) / scale);
        })];

        ChartPoint[] Level(double depthMm) => [.. Enumerable.Range(0, CurvePoints).Select(i => new ChartPoint(100.0 * i / (CurvePoints - 1), depthMm / scale))];
    }

    private static string[] Notes(DiagnosedCar car)
    {
        string[] unread = [.. car.Study.Case.Tyres.Where(tyre => tyre.Zones.Count == 0).Select(tyre => CorneringWords.Name(tyre.Position))];
        const string law = "Local law says which depth is legal and where across the tread it is measured.";
        return unread.Length > 0 ? [$"Not read: {string.Join(", ", unread)}.", law] : [law];
    }
}

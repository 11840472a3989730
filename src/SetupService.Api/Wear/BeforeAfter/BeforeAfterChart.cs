using SetupService.Api.Drawings.Charts;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Api.Wear.BeforeAfter;

/// <summary>Draws how fast each tyre wore across its tread before and after a change, with the 90 % ranges of the rates.</summary>
internal static class BeforeAfterChart
{
    private const double MmPerInch = 25.4;
    private const double KmPerMile = 1.609344;
    private const double Laps = 100;

    /// <summary>The picture.</summary>
    public static string Draw(IReadOnlyList<TyreComparison> tyres, UnitSystem units, double widthPx) => ChartDrawing.Draw(new Chart
    {
        Heading = "Wear across the tread, before and after",
        Lines = [ComparisonWords.Summary(tyres, units)],
        Across = new ChartAxis("position across the tread", "%") { Low = "outer edge", High = "inner edge" },
        Panels = [.. tyres.Select(tyre => Panel(tyre, units))],
        Notes = ["Bands are 90 % ranges of the rates in the sessions read; what sessions vary with nothing changed comes on top when before and after are compared."],
    }, widthPx);

    private static ChartPanel Panel(TyreComparison tyre, UnitSystem units)
    {
        var name = CorneringWords.Name(tyre.Position);
        var (unit, scale) = Unit(tyre.Wear.Clock, units);
        if (tyre.Wear.Zones is not { } zones) return new(name, unit, []);
        return new(name, unit, [Line("before", rate => rate.BeforeMm), Line("after", rate => rate.AfterMm)]) { LeastSpan = 0.01 };

        ChartSeries Line(string label, Func<RateChange, Uncertainty?> rate) => new(label, [Point(TreadPlace.Outer, rate), Point(TreadPlace.Centre, rate), Point(TreadPlace.Inner, rate)]) { BandName = "90 % range" };

        ChartPoint Point(TreadPlace place, Func<RateChange, Uncertainty?> rate)
        {
            var value = zones.At(place).Main is { } main ? rate(main) : null;
            return new(TreadZone.UsualPct.At(place), value?.Value * scale) { Lower = value?.Lower * scale, Upper = value?.Upper * scale };
        }
    }

    /// <summary>The unit of a rate, and what a rate by the compared clock is multiplied by.</summary>
    private static (string Unit, double Scale) Unit(ComparedClock clock, UnitSystem units) => (clock, units) switch
    {
        (ComparedClock.Road, UnitSystem.Us) => ("1/32 in per 1000 miles", 32 * KmPerMile / MmPerInch),
        (ComparedClock.Road, _) => ("mm per 1000 km", 1),
        (_, UnitSystem.Us) => ("1/32 in per 100 laps", 32 * Laps / MmPerInch),
        _ => ("mm per 100 laps", Laps),
    };
}

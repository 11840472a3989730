using SetupService.Api.Drawings.Charts;
using SetupService.Api.Vehicles.Suspensions;
using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Readings;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry.TravelSweeps;

/// <summary>Draws a travel sweep: over the wheel's travel, or over the rack where only the rack moves.</summary>
internal static class TravelSweepChart
{
    // Of a sweep over both, the curves at the ends and in the middle of the rack; more cannot be told apart.
    private const int MostRacks = 3;
    private const string AsRead = "as read";
    private const string GaugeError = "the gauge's error, 90 %";

    /// <summary>The picture.</summary>
    public static string Draw(TravelSweepRequest request, TravelSweepAnswer answer, UnitSystem units, double widthPx)
    {
        var isOverRack = request.RackMm is { } rack && rack.ToRange().Count > 1 && request.TravelMm.ToRange().Count == 1;
        var positions = Positions(answer);
        return ChartDrawing.Draw(new Chart
        {
            Heading = isOverRack ? "What the wheels do over rack travel" : "What the wheel does over its travel",
            Lines = TravelSweepChartText.Lines(request, answer, units),
            Across = isOverRack
                ? new ChartAxis("rack travel", Length(units)) { Zero = "middle", Low = "right", High = "left" }
                : new ChartAxis("wheel travel", Length(units)) { Zero = "stated position", Low = "droop", High = "bump" },
            Panels = isOverRack ? OverRack(positions, units) : OverTravel(positions, (SuspensionMapper.Model(request.Suspension, null) as MeasuredSuspension)?.Readings, request.AxleDocument?.RideHeightChangeMm ?? 0, units),
            Notes = TravelSweepChartText.Notes(answer, units),
        }, widthPx);
    }

    private static string Length(UnitSystem units) => units == UnitSystem.Us ? "in" : "mm";

    private static double InUnits(double lengthMm, UnitSystem units) => units == UnitSystem.Us ? lengthMm / 25.4 : lengthMm;

    /// <summary>Every position asked for in order, its row null where it was not reached.</summary>
    private static List<(double TravelMm, double RackMm, TravelSweepRow? Row)> Positions(TravelSweepAnswer answer) =>
    [
        .. answer.Rows.Select(row => (row.TravelMm, row.RackMm, (TravelSweepRow?)row))
            .Concat(answer.Unreachable.Select(missed => (missed.TravelMm, missed.RackMm, (TravelSweepRow?)null)))
            .OrderBy(one => one.Item1).ThenBy(one => one.Item2),
    ];

    private static List<ChartPanel> OverTravel(List<(double TravelMm, double RackMm, TravelSweepRow? Row)> positions, CornerReadings? readings, double rideHeightChangeMm, UnitSystem units)
    {
        var racks = Racks([.. positions.Select(one => one.RackMm).Distinct().Order()]);
        return
        [
            With(Read(one => one.CamberDeg, readings?.GaugeErrorDeg ?? 0), Panel("camber", "°", "negative = top inboard", row => row.CamberDeg, 0.05, row => row.Ranges?.CamberDeg is { Lower: { } lower, Upper: { } upper } ? (lower, upper) : null)),
            With(racks.Count > 1 ? [] : Read(one => one.ToeDeg, readings?.ToeErrorDeg ?? readings?.GaugeErrorDeg ?? 0), Panel(racks.Count > 1 ? "steer of the left wheel" : "toe", "°", racks.Count > 1 ? "positive = to the left" : "positive = toe-in", row => racks.Count > 1 ? row.SteerDeg : row.ToeDeg, 0.05)),
            Panel("caster", "°", null, row => row.CasterDeg, 0.05),
            Panel("roll centre height", Length(units), "above the ground", row => row.RollCentreHeightMm is { } height ? InUnits(height, units) : null, 1),
            Panel("half-track change", Length(units), "positive = wider", row => row.HalfTrackChangeMm is { } change ? InUnits(change, units) : null, 0.1),
            Panel("spring motion ratio", "", "spring per wheel travel", row => row.SpringMotionRatio, 0.005),
        ];

        static ChartPanel With(ChartPoint[] read, ChartPanel panel) =>
            Array.Exists(read, point => point.Y is not null) ? panel with { Series = [.. panel.Series, new(AsRead, read) { IsJoined = false, IsMain = false, BandName = GaugeError }] } : panel;

        // Readings are of the height they were taken at; travel counts from the height the car stands at now.
        ChartPoint[] Read(Func<TravelReading, double?> value, double errorDeg)
        {
            var (from, to) = (positions.Min(one => one.TravelMm), positions.Max(one => one.TravelMm));
            var wideDeg = Uncertainty.StandardErrorsAtNinetyPct * errorDeg;
            return
            [
                .. (readings?.Travel ?? []).Select(one => (TravelMm: one.TravelMm + rideHeightChangeMm, Deg: value(one))).Where(one => one.TravelMm >= from && one.TravelMm <= to)
                    .Select(one => new ChartPoint(InUnits(one.TravelMm, units), one.Deg) { Lower = one.Deg - wideDeg, Upper = one.Deg + wideDeg }),
            ];
        }

        ChartPanel Panel(
            string name, string unit, string? signs, Func<TravelSweepRow, double?> value, double leastSpan, Func<TravelSweepRow, (double Lower, double Upper)?>? band = null) =>
            new(name, unit, [.. racks.Select(rack => Series(rack, value, band))]) { Signs = signs, LeastSpan = leastSpan };

        ChartSeries Series(double rackMm, Func<TravelSweepRow, double?> value, Func<TravelSweepRow, (double Lower, double Upper)?>? band)
        {
            ChartPoint[] points = [.. positions.Where(one => one.RackMm == rackMm).Select(one => Point(InUnits(one.TravelMm, units), one.Row, value, band))];
            return new ChartSeries(TravelSweepChartText.Rack(rackMm, units), points)
            {
                IsMain = racks.Count == 1 || rackMm == racks.MinBy(Math.Abs),
                BandName = Array.Exists(points, point => point.Lower is not null) ? "90 % range" : null,
            };
        }
    }

    private static List<ChartPanel> OverRack(List<(double TravelMm, double RackMm, TravelSweepRow? Row)> positions, UnitSystem units)
    {
        return
        [
            new("steer", "°", [Series("left wheel", row => row.SteerDeg), Series("right wheel", row => row.OtherSteerDeg, isMain: false)]) { Signs = "positive = to the left" },
            Panel("Ackermann", "%", "0 = parallel, 100 = one turning centre", row => row.AckermannPct, 1),
            Panel("camber of the left wheel", "°", "negative = top inboard", row => row.CamberDeg, 0.05),
            Panel("scrub radius", Length(units), null, row => row.ScrubRadiusMm is { } scrub ? InUnits(scrub, units) : null, 0.5),
            Panel("mechanical trail", Length(units), null, row => row.MechanicalTrailMm is { } trail ? InUnits(trail, units) : null, 0.5),
        ];

        ChartPanel Panel(string name, string unit, string? signs, Func<TravelSweepRow, double?> value, double leastSpan) =>
            new(name, unit, [Series("left wheel", value)]) { Signs = signs, LeastSpan = leastSpan };

        ChartSeries Series(string name, Func<TravelSweepRow, double?> value, bool isMain = true) =>
            new(name, [.. positions.Select(one => Point(InUnits(one.RackMm, units), one.Row, value, null))]) { IsMain = isMain };
    }

    private static ChartPoint Point(double across, TravelSweepRow? row, Func<TravelSweepRow, double?> value, Func<TravelSweepRow, (double Lower, double Upper)?>? band)
    {
        if (row is null) return new(across, null);
        var range = band?.Invoke(row);
        return new(across, value(row)) { Lower = range?.Lower, Upper = range?.Upper };
    }

    private static List<double> Racks(List<double> racks) =>
        racks.Count <= MostRacks ? racks : [.. new[] { racks[0], racks.MinBy(Math.Abs), racks[^1] }.Distinct()];
}

/// <summary>The words of a travel sweep's picture.</summary>
internal static class TravelSweepChartText
{
    /// <summary>Of what, and at which setting.</summary>
    public static IReadOnlyList<string> Lines(TravelSweepRequest request, TravelSweepAnswer answer, UnitSystem units)
    {
        var lines = new List<string> { $"{SuspensionLayoutWords.Describe(SuspensionMapper.Model(request.Suspension, null).Layout)}, left corner{Axle(request.Axle)}" };
        if (request.AxleDocument?.Alignment is { CamberDeg: { } camber, ToeDeg: { } toe })
            lines.Add(Prose.Write(units, $"stated position: camber {camber:deg}, toe {toe:deg}"));
        if (request.RackMm?.ToRange() is { Count: > 1 } && request.TravelMm.ToRange() is { Count: 1 } travel)
            lines.Add(Prose.Write(units, $"at {travel.From:mm} of wheel travel"));
        if (answer.ReachableTravelMm is { } reachable)
            lines.Add(Prose.Write(units, $"reachable: {reachable.From:mm} to {reachable.To:mm} of wheel travel"));
        return lines;
    }

    /// <summary>The line of one rack travel.</summary>
    public static string Rack(double rackMm, UnitSystem units) => rackMm == 0 ? "rack in the middle" : Prose.Write(units, $"rack {rackMm:mm}");

    /// <summary>Under the panels.</summary>
    public static IReadOnlyList<string> Notes(TravelSweepAnswer answer, UnitSystem units)
    {
        var notes = new List<string>();
        if (answer.Unreachable.Length > 0)
        {
            var first = answer.Unreachable[0];
            var (missing, all) = (answer.Unreachable.Length, answer.Unreachable.Length + answer.Rows.Length);
            notes.Add(Prose.Write(units, $"{missing} of {all} positions {(missing == 1 ? "is" : "are")} not reached. At {first.TravelMm:mm} of travel {first.Reason}"));
        }

        return notes;
    }

    private static string Axle(CarAxle axle) => axle == CarAxle.Front ? ", front" : ", rear";
}

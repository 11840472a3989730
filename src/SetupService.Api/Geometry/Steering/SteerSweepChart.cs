using SetupService.Api.Drawings.Charts;
using SetupService.Domain.Answers;
using SetupService.Domain.Geometry;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Shows a steer sweep as curves: the wheel asked about, the one across the car with the same angles, and the approximation.</summary>
internal static class SteerSweepChart
{
    private const string Approximation = "approximation";

    /// <summary>The chart of a request of which at least one heading is reached.</summary>
    public static Chart Build(SteerSweepRequest request, UnitSystem units)
    {
        var side = SteerSweepMapper.Side(request.Side);
        var sweep = SteerSweep.Create(SteerSweepMapper.Wheel(request));
        var asked = Turned(request, sweep, side);
        var across = Turned(request, sweep, side == WheelSide.Left ? WheelSide.Right : WheelSide.Left);
        var (askedName, acrossName) = side == WheelSide.Left ? ("left wheel", "right wheel") : ("right wheel", "left wheel");

        ChartPanel Both(string name, string unit, string? signs, Func<SteerRow, double?> figure) =>
            new(name, unit, [Series(askedName, asked, figure), Series(acrossName, across, figure) with { IsMain = false }]) { Signs = signs };

        var exact = Both("camber", "°", "negative = top inboard", row => row.CamberDeg);
        var approximation = Series(Approximation, asked, row => row.CamberApproximationDeg) with { IsMain = false };
        List<ChartPanel> panels =
        [
            exact with { Series = [.. exact.Series, approximation] },
            new("error of the approximation", "°", [Series(Approximation, asked, row => row.CamberApproximationDeg - row.CamberDeg) with { IsMain = false }]),
        ];
        if (SteerSweepMapper.Missing(request).Length == 0)
        {
            var (unit, sizeMm) = units == UnitSystem.Us ? ("in", 25.4) : ("mm", 1);
            panels.Add(Both("contact centre height", unit, "change, negative = lifts the car", row => row.ContactHeightChangeMm / sizeMm));
            panels.Add(Both("scrub radius", unit, null, row => row.ScrubRadiusMm / sizeMm));
            panels.Add(Both("mechanical trail", unit, null, row => row.MechanicalTrailMm / sizeMm));
        }

        return new Chart
        {
            Heading = "What steering does to the wheels",
            Lines = Lines(request, askedName),
            Across = new ChartAxis("steer", "°") { Zero = "straight ahead", Low = "right", High = "left" },
            Panels = panels,
            Notes = Notes(request, asked, side, acrossName),
        };
    }

    private static (double SteerDeg, SteerRow? Row)[] Turned(SteerSweepRequest request, in SteerSweep sweep, WheelSide side)
    {
        var range = request.SteerDeg.ToRange();
        var rows = new (double, SteerRow?)[range.Count];
        for (var i = 0; i < rows.Length; i++) rows[i] = (range[i], sweep.At(range[i], side));
        return rows;
    }

    private static ChartSeries Series(string name, (double SteerDeg, SteerRow? Row)[] rows, Func<SteerRow, double?> figure) =>
        new(name, Array.ConvertAll(rows, one => new ChartPoint(one.SteerDeg, one.Row is { } row ? figure(row) : null)));

    private static string[] Lines(SteerSweepRequest request, string askedName) =>
    [
        Prose.Write(
            UnitSystem.Metric,
            $"{askedName}: caster {request.CasterDeg:deg}, steering-axis inclination {request.SteeringAxisInclinationDeg:deg}, camber {request.CamberDeg:deg}, toe {request.ToeDeg:deg} before steering"),
    ];

    private static List<string> Notes(SteerSweepRequest request, (double SteerDeg, SteerRow? Row)[] asked, WheelSide side, string acrossName)
    {
        var largestDeg = asked.Max(one => one.Row is { } row ? Math.Abs(row.CamberApproximationDeg - row.CamberDeg) : 0);
        var sign = side == WheelSide.Left ? '+' : '−';
        var notes = new List<string>
        {
            $"The {acrossName} is drawn with the same angles, each wheel over its own steer.",
            Prose.Write(UnitSystem.Metric, $"Approximation: camber {sign.ToString()} caster · sin(steer) + inclination · (1 − cos(steer)); here its error is at most {largestDeg:deg}."),
        };
        var missed = Array.FindIndex(asked, one => one.Row is null);
        if (missed >= 0)
            notes.Add("Not reached: " + SteerWords.Unreachable(SteerLimits.Find(SteerSweepMapper.Wheel(request))?.For(side), asked[missed].SteerDeg));
        notes.AddRange(SteeringCautions.ForSweep.Select(caution => caution.Text));
        return notes;
    }
}

using SetupService.Api.Drawings.Charts;
using SetupService.Api.Handling.Turns;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.CorneringSweep;

/// <summary>Draws a sweep over turns: the whole car's roll, steer and load transfer, and each wheel's load, inclination and travel, and the grip each axle uses.</summary>
internal static class CorneringChart
{
    private const string WholeCar = "whole car";
    private const string Upright = "0°: upright on the road";
    private const string Stop = "bump or droop stop";
    private const string AllGrip = "all the grip of an axle";
    private const double AllGripPct = 100;
    private const int LevelPoints = 20;
    private const double NewtonsPerPound = 4.4482216152605;

    // A stop further off than this many times what the wheels travel would press their curves flat.
    private const double FurthestStop = 2.5;

    /// <summary>The picture.</summary>
    public static string Draw(CorneringSweepRequest request, CorneringEvaluation car, CorneringSweepAnswer answer, UnitSystem units, double widthPx)
    {
        List<(double LateralG, TurnRow? Row)> turns =
        [
            .. answer.Rows.Select(row => (row.LateralG, (TurnRow?)row))
                .Concat(answer.Unreachable.Select(missed => (missed.LateralG, (TurnRow?)null))).OrderBy(one => one.Item1),
        ];
        var (length, mm) = units == UnitSystem.Us ? ("in", 25.4) : ("mm", 1);
        var (force, newtons) = units == UnitSystem.Us ? ("lbf", NewtonsPerPound) : ("N", 1);
        return ChartDrawing.Draw(new Chart
        {
            Heading = "The car in a turn",
            Lines = CorneringChartWords.Lines(request, answer, units),
            Across = new ChartAxis("lateral acceleration", "g"),
            Panels =
            [
                Car("roll", "°", "positive = out of the turn", row => row.RollDeg),

                // Beyond the limit the tyres are given more than they have so that a turn exists; their slip, and the steer with it, is no longer the car's.
                Car("mean steer of the front wheels", "°", "positive = to the left", row => IsBeyond(row) ? null : row.SteerDeg),
                Wheels("wheel load", force, null, wheel => wheel.LoadN / newtons),
                Wheels("inclination to the road", "°", "negative = top inboard", wheel => wheel.InclinationDeg, Level(Upright, 0)),
                Wheels("wheel travel", length, "positive = bump", wheel => wheel.TravelMm / mm, [.. Stops(car, answer).Select(stop => Level(Stop, stop / mm)[0])]),
                Car("front share of the load transfer", "%", null, row => row.Balance.FrontLoadTransferPct) with { LeastSpan = 1 },
                new("grip used", "%",
                [
                    new("front axle", Points(row => row.Axles.Front.GripUsedPct)),
                    new("rear axle", Points(row => row.Axles.Rear.GripUsedPct)),
                    .. Level(AllGrip, AllGripPct),
                ]) { LeastSpan = 1 },
            ],
            Notes = [.. answer.Rows.Any(IsBeyond) ? ["No steer is drawn beyond the limit: there the tyres cannot hold the car in the turn."] : Array.Empty<string>(), .. CorneringChartWords.Notes(answer)],
        }, widthPx);

        static bool IsBeyond(TurnRow row) => Math.Max(row.Axles.Front.GripUsedPct, row.Axles.Rear.GripUsedPct) > AllGripPct;

        ChartPanel Car(string name, string unit, string? signs, Func<TurnRow, double?> value) =>
            new(name, unit, [new(WholeCar, Points(value))]) { Signs = signs, LeastSpan = 0.05 };

        ChartPanel Wheels(string name, string unit, string? signs, Func<TurnWheelResponse, double?> value, params ChartSeries[] levels) =>
            new(name, unit, [.. Enum.GetValues<WheelPosition>().Select(wheel => new ChartSeries(Name(wheel), Points(row => value(At(row, wheel))))), .. levels])
            {
                Signs = signs,
                LeastSpan = 0.05,
            };

        ChartPoint[] Points(Func<TurnRow, double?> value) => [.. turns.Select(one => new ChartPoint(one.LateralG, one.Row is { } row ? value(row) : null))];

        // Over what is reached only, or nothing would be missing; of enough points that none is dotted.
        ChartSeries[] Level(string name, double value)
        {
            var (from, to) = (answer.Rows.Min(row => row.LateralG), answer.Rows.Max(row => row.LateralG));
            return [new(name, [.. Enumerable.Range(0, LevelPoints).Select(i => new ChartPoint(from + ((to - from) * i / (LevelPoints - 1)), value))]) { IsMain = false }];
        }

        string Name(WheelPosition wheel) => $"{CorneringWords.Name(wheel)} ({(At(answer.Rows[0], wheel).IsOuter ? "outer" : "inner")})";
    }

    private static TurnWheelResponse At(TurnRow row, WheelPosition wheel) => wheel switch
    {
        WheelPosition.FrontLeft => row.Wheels.FrontLeft,
        WheelPosition.FrontRight => row.Wheels.FrontRight,
        WheelPosition.RearLeft => row.Wheels.RearLeft,
        _ => row.Wheels.RearRight,
    };

    /// <summary>Travel to the stops of both axles, mm, as far as they are near enough to be shown.</summary>
    private static IEnumerable<double> Stops(CorneringEvaluation car, CorneringSweepAnswer answer)
    {
        var mostMm = answer.Rows.SelectMany(row => Enum.GetValues<WheelPosition>().Select(wheel => Math.Abs(At(row, wheel).TravelMm))).Max();
        var all = ((CarAxle[])[CarAxle.Front, CarAxle.Rear]).Select(car.Reading.Car.At).SelectMany(axle => new[] { axle.BumpLeftMm, -axle.DroopLeftMm });
        return all.OfType<double>().Distinct().Where(stop => Math.Abs(stop) <= FurthestStop * mostMm);
    }
}

/// <summary>The words of a sweep's picture.</summary>
internal static class CorneringChartWords
{
    /// <summary>Of what, and in which turns.</summary>
    public static IReadOnlyList<string> Lines(CorneringSweepRequest request, CorneringSweepAnswer answer, UnitSystem units)
    {
        var turn = $"{(request.Turn == TurnDirection.Left ? "left" : "right")} turn";
        var path = request.CornerRadiusM is { } radiusM
            ? Prose.Write(units, $"{turn} of {radiusM:m} radius")
            : Prose.Write(units, $"{turn} at {request.SpeedKmh!.Value:kmh}");
        var hardest = answer.Rows.MaxBy(row => row.LateralG)!;
        var lines = new List<string> { path, Prose.Write(units, $"at {CorneringWords.G(hardest.LateralG)}: roll {hardest.RollDeg:deg}") };
        if (request.Vehicle.Label is { Length: > 0 } label) lines.Insert(0, label);
        return lines;
    }

    /// <summary>Under the panels.</summary>
    public static IReadOnlyList<string> Notes(CorneringSweepAnswer answer)
    {
        var notes = new List<string>();
        if (answer.Unreachable is [var first, ..]) notes.Add($"No equilibrium: {first.Reason}");
        if (answer.Assumptions.Length > 0)
            notes.Add($"{answer.Assumptions.Length} inputs are assumed; the answer in JSON lists each with how far the curves move.");
        notes.AddRange(answer.Cautions.Select(caution => caution.Text));
        return notes;
    }
}

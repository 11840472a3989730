using SetupService.Api.Drawings.Charts;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Envelope;

/// <summary>Draws an envelope: what the car holds over longitudinal acceleration, what of it each axle's own, and how hard the tyres brake or drive there.</summary>
internal static class EnvelopeChart
{
    private const string WholeCar = "the car";
    private const string FrontAxle = "front axle";
    private const string RearAxle = "rear axle";
    private const string AllGrip = "100 %: all they hold";
    private const int LevelPoints = 20;

    /// <summary>The picture.</summary>
    public static string Draw(EnvelopeRequest request, EnvelopeAnswer answer, UnitSystem units, double widthPx)
    {
        EnvelopeRow[] rows = [.. answer.Rows.OrderBy(row => row.LongitudinalG)];
        var path = request.CornerRadiusM is { } radiusM
            ? Prose.Write(units, $"turn of {radiusM:m} radius")
            : Prose.Write(units, $"turn at {request.SpeedKmh ?? EnvelopeEndpoint.UsualSpeedKmh:kmh}");
        var side = (request.Turn ?? TurnDirection.Left) == TurnDirection.Left ? "left " : "right ";
        return ChartDrawing.Draw(new Chart
        {
            Heading = "Grip while braking and driving",
            Lines = [.. request.Vehicle.Label is { Length: > 0 } label ? [label] : Array.Empty<string>(), side + path],
            Across = new ChartAxis("longitudinal acceleration", "g") { Low = "braking", High = "driving" },
            Panels =
            [
                new("most lateral acceleration", "g",
                [
                    new(WholeCar, Points(row => row.LateralG)),
                    new(FrontAxle, Points(row => row.FrontLimitG)) { IsMain = false },
                    new(RearAxle, Points(row => row.RearLimitG)) { IsMain = false },
                ]) { LeastSpan = 0.1 },
                new("grip used lengthwise there", "%",
                [
                    new(FrontAxle, Points(row => row.FrontLongitudinalUsedPct)),
                    new(RearAxle, Points(row => row.RearLongitudinalUsedPct)),
                    new(AllGrip, Level(100)) { IsMain = false },
                ]) { LeastSpan = 1 },
                new("pitch there", "°", [new(WholeCar, Points(row => row.PitchDeg))]) { Signs = "positive = nose down", LeastSpan = 0.05 },
            ],
            Notes = Notes(answer),
        }, widthPx);

        ChartPoint[] Points(Func<EnvelopeRow, double?> value) => [.. rows.Select(row => new ChartPoint(row.LongitudinalG, value(row)))];

        // Over what the car reaches only, or nothing would be missing.
        ChartPoint[] Level(double value)
        {
            EnvelopeRow[] reached = [.. rows.Where(row => row.LateralG is not null)];
            if (reached.Length == 0) reached = rows;
            var (from, to) = (reached[0].LongitudinalG, reached[^1].LongitudinalG);
            return [.. Enumerable.Range(0, LevelPoints).Select(i => new ChartPoint(from + ((to - from) * i / (LevelPoints - 1)), value))];
        }
    }

    private static List<string> Notes(EnvelopeAnswer answer)
    {
        var notes = new List<string> { answer.Text };
        notes.AddRange(answer.Rows.Where(row => row.LateralG is null).GroupBy(row => row.LimitedBy).Select(missed => missed.First().Text));
        if (answer.Assumptions.Length > 0) notes.Add($"{answer.Assumptions.Length} inputs are assumed; the answer in JSON lists them.");
        notes.AddRange(answer.Cautions.Select(caution => caution.Text));
        return notes;
    }
}

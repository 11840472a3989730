using SetupService.Api.Drawings.Charts;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling.Ride;

/// <summary>Draws each end of the car pushed down and let go, before and after a change: what its springs and dampers do together.</summary>
internal static class RideChart
{
    private const double LastS = 1.6;
    private const int Points = 121;

    /// <summary>The picture.</summary>
    /// <param name="car">The car, after the change where there is one.</param>
    /// <param name="before">The car before it; null without one.</param>
    /// <param name="label">What the car is called; null where nobody said.</param>
    /// <param name="range">The damping ratios that serve.</param>
    /// <param name="units">Units of the words.</param>
    /// <param name="widthPx">The width it will be shown at.</param>
    public static string Draw(RideEvaluation car, RideEvaluation? before, string? label, DampingRange range, UnitSystem units, double widthPx)
    {
        return ChartDrawing.Draw(new Chart
        {
            Heading = "Pushed down and let go",
            Lines = [.. label is { Length: > 0 } ? [label] : Array.Empty<string>(), Frequencies(car, before)],
            Across = new ChartAxis("time", "s") { Zero = "let go" },
            Panels = [Panel("front", car.Front, before?.Front), Panel("rear", car.Rear, before?.Rear)],
            Notes =
            [
                $"Front: {RideWords.Dampers(car.Front, before?.Front, range, car.Reading.AssumedFor(HandlingInputs.Front.DamperMotionRatio))}",
                $"Rear: {RideWords.Dampers(car.Rear, before?.Rear, range, car.Reading.AssumedFor(HandlingInputs.Rear.DamperMotionRatio))}",
                .. Stops(car, CarAxle.Front, units), .. Stops(car, CarAxle.Rear, units),
                car.FlatRideText,
                .. RideCautions.Build(car.Front, car.Rear, car.HeightMm, units).Select(caution => caution.Text),
            ],
        }, widthPx);

        ChartPanel Panel(string name, RideAxle axle, RideAxle? was)
        {
            List<ChartSeries> lines = [new(was is null ? "as it is" : "after the change", Swing(axle))];
            if (was is not null) lines.Add(new("before", Swing(was)) { IsMain = false });
            return new($"{name}: height of the body", "%", lines) { Signs = "of the push; 0 = at rest", LeastSpan = 1 };
        }
    }

    private static ChartPoint[] Swing(RideAxle axle)
    {
        var body = ReleasedBody.From(axle);
        return [.. Enumerable.Range(0, Points).Select(i => LastS * i / (Points - 1)).Select(timeS => new ChartPoint(timeS, 100 * body?.Height(timeS)))];
    }

    private static string Frequencies(RideEvaluation car, RideEvaluation? before)
    {
        var now = FormattableString.Invariant($"ride frequency {car.Front.RideFrequencyHz:0.00} Hz in front, {car.Rear.RideFrequencyHz:0.00} Hz behind");
        return before is null ? now : now + FormattableString.Invariant($"; before {before.Front.RideFrequencyHz:0.00} and {before.Rear.RideFrequencyHz:0.00} Hz");
    }

    private static IEnumerable<string> Stops(RideEvaluation car, CarAxle at, UnitSystem units)
    {
        var (name, axle) = at == CarAxle.Front ? ("front", car.Front) : ("rear", car.Rear);
        if (axle.BumpLeftMm is not { } leftMm) yield break;
        yield return car.StopMetAtLateralG(at) is { } g
            ? Prose.Write(units, $"The {name} has {leftMm:mm} of travel left to its bump stop; in a turn its outer wheel meets it at {FormattableString.Invariant($"{g:0.00}")} g.")
            : Prose.Write(units, $"The {name} has {leftMm:mm} of travel left to its bump stop; in a steady turn it does not meet it.");
    }
}

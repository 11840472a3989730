using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Geometry.Sweeps;

/// <summary>The words of a travel sweep's picture.</summary>
internal static class SweepChartWords
{
    /// <summary>Of what, and at which setting.</summary>
    public static IReadOnlyList<string> Lines(TravelSweepRequest request, TravelSweepAnswer answer, UnitSystem units)
    {
        var lines = new List<string> { $"{SuspensionWords.Kind(request.Suspension)}, left corner{Axle(request.Axle)}" };
        if (request.Alignment is { CamberDeg: { } camber, ToeDeg: { } toe })
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

    private static string Axle(CarAxle? axle) => axle switch { CarAxle.Front => ", front", CarAxle.Rear => ", rear", _ => "" };
}

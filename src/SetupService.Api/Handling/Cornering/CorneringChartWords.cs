using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Cornering;

/// <summary>The words of a sweep's picture.</summary>
internal static class CorneringChartWords
{
    /// <summary>Of what, and in which turns.</summary>
    public static IReadOnlyList<string> Lines(CorneringSweepRequest request, CorneringSweepAnswer answer, UnitSystem units)
    {
        var turn = $"{(request.Turn == TurnDirection.Left ? "left" : "right")} turn";
        var path = request.CornerRadiusM is { } radiusM
            ? units == UnitSystem.Us ? Prose.Write(units, $"{turn} of {radiusM / 0.3048:n} ft radius") : Prose.Write(units, $"{turn} of {radiusM:n} m radius")
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

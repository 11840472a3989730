using System.Globalization;

namespace SetupService.Domain.Suspension.Readings;

/// <summary>
/// Readings as a person types or pastes them: a line each, wheel travel in mm (positive = bump), camber in degrees and, where read, toe in
/// degrees (positive = toe-in). Blanks, tabs, commas or semicolons separate. A comma is a decimal comma where something else separates; where
/// nothing else does, commas separate, and a line of three or more numbers needs a decimal point in one of them to be told apart.
/// </summary>
public static class TravelTable
{
    /// <summary>The longest text read, in characters.</summary>
    public const int MaximumLength = 8_000;

    /// <summary>The most readings of one table.</summary>
    public const int MostReadings = 200;

    /// <summary>The largest wheel travel of a reading, mm to either side.</summary>
    public const double MostTravelMm = 500;

    /// <summary>The largest camber of a reading, degrees to either side.</summary>
    public const double MostCamberDeg = 15;

    /// <summary>The largest toe of a reading, degrees to either side.</summary>
    public const double MostToeDeg = 5;

    private static readonly (string Name, double Most, string Unit)[] Columns =
        [("the travel", MostTravelMm, "mm"), ("the camber", MostCamberDeg, "°"), ("the toe", MostToeDeg, "°")];

    /// <summary>The readings of a text in its order; lines without anything are skipped.</summary>
    /// <param name="text">The text.</param>
    /// <param name="faults">A sentence for every line that is no reading, with its number from 1, and one where there are too few or too many; empty where all are sound.</param>
    public static IReadOnlyList<TravelReading> Read(string text, out IReadOnlyList<string> faults)
    {
        ArgumentNullException.ThrowIfNull(text);
        var readings = new List<TravelReading>();
        var found = new List<string>();
        var lines = text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            if (string.IsNullOrWhiteSpace(lines[i])) continue;
            if (ReadLine(lines[i].Trim(), out var why) is { } reading) readings.Add(reading);
            else found.Add(FormattableString.Invariant($"line {i + 1}: {why}"));
        }

        if (found.Count == 0 && readings.Count is < 2 or > MostReadings)
            found.Add(FormattableString.Invariant($"table has {readings.Count} readings; 2 to {MostReadings} are needed."));
        faults = found;
        return readings;
    }

    private static TravelReading? ReadLine(string line, out string why)
    {
        var cells = Cells(line);
        why = "travel in mm and camber in degrees are needed, and toe in degrees may follow.";
        if (cells.Length is < 2 or > 3) return null;
        if (cells.Length == 3 && IsOfCommasAlone(line) && !line.Contains('.', StringComparison.Ordinal))
        {
            why = "its commas may separate numbers or be decimal commas; separate the numbers by a semicolon.";
            return null;
        }

        Span<double> values = stackalloc double[3];
        for (var i = 0; i < cells.Length; i++)
        {
            var (name, most, unit) = Columns[i];
            if (ReadNumber(cells[i]) is not { } value)
            {
                why = $"{name}, \u201c{(cells[i].Length > 20 ? cells[i][..20] : cells[i])}\u201d, is no number.";
                return null;
            }

            if (!(Math.Abs(value) <= most))
            {
                why = FormattableString.Invariant($"{name} is {value} {unit}; it must be from -{most} to {most} {unit}.");
                return null;
            }

            values[i] = value;
        }

        return new TravelReading(values[0], values[1], cells.Length == 3 ? values[2] : null);
    }

    private static bool IsOfCommasAlone(string line) => line.IndexOfAny([' ', '\t', ';']) < 0;

    private static string[] Cells(string line)
    {
        const StringSplitOptions Trimmed = StringSplitOptions.TrimEntries;
        if (line.Contains(';', StringComparison.Ordinal)) return line.Split(';', Trimmed);
        if (line.Contains('\t', StringComparison.Ordinal)) return line.Split('\t', Trimmed | StringSplitOptions.RemoveEmptyEntries);
        if (IsOfCommasAlone(line)) return line.Split(',');
        return line.Split([", ", " "], Trimmed | StringSplitOptions.RemoveEmptyEntries);
    }

    private static double? ReadNumber(string cell)
    {
        var plain = cell.Contains('.', StringComparison.Ordinal) ? cell : cell.Replace(',', '.');
        return double.TryParse(plain.Replace('\u2212', '-'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            ? value
            : null;
    }
}

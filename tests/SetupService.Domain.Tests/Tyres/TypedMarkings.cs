using System.Text.RegularExpressions;

namespace SetupService.Domain.Tests.Tyres;

/// <summary>
/// The tables of markings as typed. The last column is the text itself, which may hold commas; characters that do not show stand as \uXXXX, and in a row
/// that is refused the part the refusal names follows an arrow.
/// </summary>
internal static partial class TypedMarkings
{
    private const char Arrow = '\u2192';

    public static IReadOnlyList<TypedMarking> Rows(string fileName)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "TestData", fileName)).Where(line => !line.StartsWith('#')).ToArray();
        var header = lines[0].Split(',');
        return [.. lines[1..].Select(line =>
        {
            var cells = line.Split(',', header.Length);
            Assert.Equal(header.Length, cells.Length);
            var text = Escape().Replace(cells[^1], match => ((char)Convert.ToInt32(match.Groups[1].Value, 16)).ToString());
            var isRefused = cells[0] == "refused";
            var arrow = isRefused ? text.LastIndexOf(Arrow) : text.Length;
            return new TypedMarking(
                text[..arrow],
                isRefused ? null : cells[0],
                isRefused ? text[(arrow + 1)..] : null,
                header.Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second));
        })];
    }

    [GeneratedRegex(@"\\u([0-9a-fA-F]{4})")]
    private static partial Regex Escape();
}

/// <summary>A marking as typed, and what it means.</summary>
/// <param name="Text">As typed.</param>
/// <param name="Standard">Its usual spelling; null where it is refused.</param>
/// <param name="RefusedPart">The part the refusal names; null where it is read.</param>
/// <param name="Cells">The other columns.</param>
internal sealed record TypedMarking(string Text, string? Standard, string? RefusedPart, IReadOnlyDictionary<string, string> Cells)
{
    /// <summary>A cell that must be a number, or empty for null.</summary>
    public double? Number(string column) => Cells[column].Length == 0 ? null : double.Parse(Cells[column], System.Globalization.CultureInfo.InvariantCulture);
}

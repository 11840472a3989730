using System.Text;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>Reads and writes tables by RFC 4180, independently of the service.</summary>
internal static class CsvText
{
    public static string[][] Read(string text, char separator = ',')
    {
        List<string[]> rows = [];
        List<string> cells = [];
        StringBuilder cell = new();
        var isQuoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            var letter = text[i];
            if (isQuoted && letter == '"' && i + 1 < text.Length && text[i + 1] == '"')
                cell.Append(text[i++]);
            else if (letter == '"')
                isQuoted = !isQuoted;
            else if (letter == separator && !isQuoted)
                EndCell(cells, cell);
            else if (letter == '\r' && !isQuoted && i + 1 < text.Length && text[i + 1] == '\n')
                continue;
            else if (letter == '\n' && !isQuoted)
                EndRow(rows, cells, cell);
            else
                cell.Append(letter);
        }

        Assert.False(isQuoted, "A quote is left open.");
        if (cell.Length > 0 || cells.Count > 0)
            EndRow(rows, cells, cell);
        return [.. rows];
    }

    public static string Row(params IEnumerable<string> cells) => string.Join(',', cells.Select(Cell)) + "\r\n";

    private static string Cell(string text) =>
        text.AsSpan().ContainsAny("\",\r\n") ? "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : text;

    private static void EndRow(List<string[]> rows, List<string> cells, StringBuilder cell)
    {
        EndCell(cells, cell);
        rows.Add([.. cells]);
        cells.Clear();
    }

    private static void EndCell(List<string> cells, StringBuilder cell)
    {
        cells.Add(cell.ToString());
        cell.Clear();
    }
}

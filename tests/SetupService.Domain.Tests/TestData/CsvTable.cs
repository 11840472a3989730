using System.Globalization;

namespace SetupService.Domain.Tests.TestData;

/// <summary>A table of published figures from this folder. Lines that begin with # are comments; there is no quoting.</summary>
public static class CsvTable
{
    /// <summary>Every row of a file as a map from column name to text.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string fileName)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "TestData", fileName))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(','))
            .ToArray();
        var header = lines[0];
        return [.. lines[1..].Select(cells =>
        {
            Assert.Equal(header.Length, cells.Length);
            return header.Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second);
        })];
    }

    /// <summary>A cell as a number.</summary>
    public static double Number(this IReadOnlyDictionary<string, string> row, string column) =>
        double.Parse(row[column], NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>A cell as a number, null where it is empty.</summary>
    public static double? NumberOrNull(this IReadOnlyDictionary<string, string> row, string column) =>
        row[column].Length == 0 ? null : row.Number(column);
}

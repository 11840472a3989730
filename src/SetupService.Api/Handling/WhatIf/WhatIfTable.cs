using System.Globalization;
using System.Text;
using SetupService.Domain.Answers;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>Writes the comparison as plain text in columns: the car as given by its values, each change by how far it moves them.</summary>
internal static class WhatIfTable
{
    private const int MostLabel = 30;
    private const int Column = 11;
    private const string Nothing = "–";

    public static string Write(WhatIfFiguresPart asGiven, IReadOnlyList<WhatIfStatePart> alone, WhatIfStatePart together, UnitSystem units)
    {
        var columns = FigureColumn.All.Where(column => column.Read(asGiven) is not null || alone.Any(one => column.Read(one.Figures) is not null)).ToArray();
        var text = new StringBuilder();
        Row(text, "", columns.Select(column => column.Short));
        Row(text, "", columns.Select(column => column.UnitIn(units)));
        Row(text, "as given", columns.Select(column => Number(column.ValueIn(asGiven, units), column.DecimalsIn(units), isChange: false)));
        foreach (var one in alone) Row(text, one.Label, columns.Select(column => Number(column.ValueIn(one.Change, units), column.DecimalsIn(units), isChange: true)));
        Row(text, "all together", columns.Select(column => Number(column.ValueIn(together.Change, units), column.DecimalsIn(units), isChange: true)));
        return text.ToString();
    }

    private static void Row(StringBuilder text, string label, IEnumerable<string> cells)
    {
        var line = new StringBuilder(Fitted(label).PadRight(MostLabel));
        foreach (var cell in cells) line.Append(cell.PadLeft(Column));
        text.Append(line.ToString().TrimEnd()).Append('\n');
    }

    private static string Fitted(string label)
    {
        var plain = string.Concat(label.Select(letter => char.IsControl(letter) ? ' ' : letter));
        return plain.Length < MostLabel ? plain : plain[..(MostLabel - 2)] + "…";
    }

    private static string Number(double? value, int decimals, bool isChange)
    {
        if (value is not { } number) return Nothing;
        var rounded = Math.Round(number, decimals, MidpointRounding.AwayFromZero);
        var text = Math.Abs(rounded).ToString("F" + decimals, CultureInfo.InvariantCulture);
        return rounded < 0 ? "−" + text : isChange && rounded > 0 ? "+" + text : text;
    }
}

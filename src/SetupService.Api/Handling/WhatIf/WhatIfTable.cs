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

    public static string Write(WhatIfFiguresResponse before, IReadOnlyList<WhatIfChangeResponse> changes, WhatIfTogetherResponse? together, UnitSystem units)
    {
        var columns = FigureColumn.All.Where(column => column.Read(before) is not null || changes.Any(one => one.After is { } after && column.Read(after) is not null)).ToArray();
        var text = new StringBuilder();
        Row(text, "", columns.Select(column => column.Short));
        Row(text, "", columns.Select(column => column.UnitIn(units)));
        Row(text, "as given", columns.Select(column => Number(column.ValueIn(before, units), column.DecimalsIn(units), isChange: false)));
        foreach (var one in changes) Row(text, one.Label, one.Change is { } moved ? columns.Select(column => Number(column.ValueIn(moved, units), column.DecimalsIn(units), isChange: true)) : ["not answered"]);
        Row(text, "all together", together is { } all ? columns.Select(column => Number(column.ValueIn(all.Change, units), column.DecimalsIn(units), isChange: true)) : ["not answered"]);
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

/// <summary>One figure as people read it: its name, unit and decimals.</summary>
/// <param name="Short">Over a column.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Decimals">Decimals shown.</param>
/// <param name="IsLength">Whether it is a length in mm, told in inches where asked.</param>
/// <param name="Read">Its value.</param>
internal sealed record FigureColumn(string Short, string Unit, int Decimals, bool IsLength, Func<WhatIfFiguresResponse, double?> Read)
{
    private const double MmPerInch = 25.4;

    public static IReadOnlyList<FigureColumn> All { get; } =
    [
        new("roll", "°", 2, false, one => one.RollDeg),
        new("incl.front", "°", 2, false, one => one.FrontInclinationDeg),
        new("incl.rear", "°", 2, false, one => one.RearInclinationDeg),
        new("transfer", "%", 1, false, one => one.FrontLoadTransferPct),
        new("hold front", "g", 3, false, one => one.FrontLimitG),
        new("hold rear", "g", 3, false, one => one.RearLimitG),
        new("margin", "g", 3, false, one => one.LimitMarginG),
        new("understeer", "°/g", 2, false, one => one.UndersteerDegPerG),
        new("left front", "mm", 1, true, one => one.FrontBumpLeftMm),
        new("left rear", "mm", 1, true, one => one.RearBumpLeftMm),
        new("ride front", "Hz", 2, false, one => one.FrontRideFrequencyHz),
        new("ride rear", "Hz", 2, false, one => one.RearRideFrequencyHz),
        new("damp.front", "", 2, false, one => one.FrontDampingRatio),
        new("damp.rear", "", 2, false, one => one.RearDampingRatio),
        new("height fr.", "mm", 1, true, one => one.FrontRideHeightChangeMm),
        new("height re.", "mm", 1, true, one => one.RearRideHeightChangeMm),
        new("camber fr.", "°", 2, false, one => one.FrontCamberDeg),
        new("camber re.", "°", 2, false, one => one.RearCamberDeg),
        new("rc front", "mm", 1, true, one => one.FrontRollCentreHeightMm),
        new("rc rear", "mm", 1, true, one => one.RearRollCentreHeightMm),
        new("track fr.", "mm", 1, true, one => one.FrontTrackMm),
        new("track re.", "mm", 1, true, one => one.RearTrackMm),
        new("scrub", "mm", 1, true, one => one.FrontScrubRadiusMm),
        new("unspr.fr.", "kg", 1, false, one => one.FrontUnsprungMassKg),
        new("unspr.re.", "kg", 1, false, one => one.RearUnsprungMassKg),
    ];

    public string UnitIn(UnitSystem units) => IsLength && units == UnitSystem.Us ? "in" : Unit;

    public double? ValueIn(WhatIfFiguresResponse figures, UnitSystem units) => IsLength && units == UnitSystem.Us ? Read(figures) / MmPerInch : Read(figures);

    public int DecimalsIn(UnitSystem units) => IsLength && units == UnitSystem.Us ? Decimals + 1 : Decimals;
}

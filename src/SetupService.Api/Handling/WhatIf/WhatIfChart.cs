using SetupService.Api.Drawings.Tornado;
using SetupService.Domain.Answers;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>Draws the comparison as a tornado: of each figure, what each change does to it.</summary>
internal static class WhatIfChart
{
    public static string Draw(WhatIfRequest request, WhatIfAnswer answer, UnitSystem units) => TornadoDrawing.Draw(new Tornado
    {
        Heading = "What each change does",
        Lines = Lines(request, units),
        Panels = [.. FigureColumn.All.Select(column => Panel(column, answer, units)).OfType<TornadoPanel>()],
        Notes = ["Solid bars: one change alone. A change without a bar does not move that figure. Outlined bar: all changes together, which need not equal their sum.", .. answer.Unknown.Select(gap => $"{gap.Id[1..]}: {gap.Reason}")],
    });

    private static string[] Lines(WhatIfRequest request, UnitSystem units)
    {
        var turn = FormattableString.Invariant($"a {request.Turn.ToString().ToLowerInvariant()} turn at {request.LateralG} g");
        var how = request.CornerRadiusM is { } radius
            ? Prose.Write(units, $"{radius:m} radius")
            : Prose.Write(units, $"{request.SpeedKmh!.Value:kmh}");
        var line = $"{turn}, {how}; compared with the car as given";
        return request.Vehicle.Label is { Length: > 0 } label ? [label, line] : [line];
    }

    private static TornadoPanel? Panel(FigureColumn column, WhatIfAnswer answer, UnitSystem units)
    {
        if (column.ValueIn(answer.Before, units) is not { } given) return null;
        var decimals = column.DecimalsIn(units);
        var bars = new List<TornadoBar>();
        foreach (var one in answer.Changes)
        {
            if (one.Change is { } moved && column.ValueIn(moved, units) is { } change && Shows(change)) bars.Add(new TornadoBar(one.Label, change));
        }

        var all = answer.Together is null ? null : column.ValueIn(answer.Together.Change, units);
        if (bars.Count == 0 && !(all is { } sum && Shows(sum))) return null;
        if (all is { } together) bars.Add(new TornadoBar("all together", together, IsTogether: true));
        return new TornadoPanel(column.Name, column.UnitIn(units), given, bars);

        // What would read 0 is left out: a bar nobody can see.
        bool Shows(double change) => Math.Abs(change) >= 0.5 * Math.Pow(10, -decimals);
    }
}

using SetupService.Domain.Answers;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>One figure as people read it: its name, unit and decimals.</summary>
/// <param name="Name">In a chart.</param>
/// <param name="Short">Over a column.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Decimals">Decimals shown.</param>
/// <param name="IsLength">Whether it is a length in mm, told in inches where asked.</param>
/// <param name="Read">Its value.</param>
internal sealed record FigureColumn(string Name, string Short, string Unit, int Decimals, bool IsLength, Func<WhatIfFiguresPart, double?> Read)
{
    private const double MmPerInch = 25.4;

    public static IReadOnlyList<FigureColumn> All { get; } =
    [
        new("roll of the body", "roll", "°", 2, false, one => one.RollDeg),
        new("inclination, outer front", "incl.front", "°", 2, false, one => one.FrontInclinationDeg),
        new("inclination, outer rear", "incl.rear", "°", 2, false, one => one.RearInclinationDeg),
        new("front share of load transfer", "transfer", "%", 1, false, one => one.FrontLoadTransferPct),
        new("understeer", "understeer", "°/g", 2, false, one => one.UndersteerDegPerG),
        new("travel left, outer front", "left front", "mm", 1, true, one => one.FrontBumpLeftMm),
        new("travel left, outer rear", "left rear", "mm", 1, true, one => one.RearBumpLeftMm),
        new("ride frequency, front", "ride front", "Hz", 2, false, one => one.FrontRideFrequencyHz),
        new("ride frequency, rear", "ride rear", "Hz", 2, false, one => one.RearRideFrequencyHz),
        new("damping ratio, front", "damp.front", "", 2, false, one => one.FrontDampingRatio),
        new("damping ratio, rear", "damp.rear", "", 2, false, one => one.RearDampingRatio),
        new("ride height, front", "height fr.", "mm", 1, true, one => one.FrontRideHeightChangeMm),
        new("ride height, rear", "height re.", "mm", 1, true, one => one.RearRideHeightChangeMm),
    ];

    public string UnitIn(UnitSystem units) => IsLength && units == UnitSystem.Us ? "in" : Unit;

    public double? ValueIn(WhatIfFiguresPart figures, UnitSystem units) => IsLength && units == UnitSystem.Us ? Read(figures) / MmPerInch : Read(figures);

    public int DecimalsIn(UnitSystem units) => IsLength && units == UnitSystem.Us ? Decimals + 1 : Decimals;
}

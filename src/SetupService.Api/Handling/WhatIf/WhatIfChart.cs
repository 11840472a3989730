using System.Globalization;
using SetupService.Api.Drawings.Comparison;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.WhatIf;

namespace SetupService.Api.Handling.WhatIf;

/// <summary>Draws what a person buys by first: what both axles can hold and their margin, lean of the outer tyres, travel left, ride frequency, roll.</summary>
internal static class WhatIfChart
{
    private const double MmPerInch = 25.4;

    // What a driver or a fitter notices, and what fills a bar (judgement): a hundredth of a g is a fifth of it.
    private static readonly Scale Grip = new(0.005, 0.05, 3);
    private static readonly Scale Lean = new(0.1, 1.5, 1);
    private static readonly Scale Travel = new(1, 20, 0);
    private static readonly Scale Frequency = new(0.03, 0.3, 2);
    private static readonly Scale Roll = new(0.1, 1.5, 1);

    public static string Draw(WhatIfRequest request, WhatIfAnswer answer, UnitSystem units, double widthPx)
    {
        var length = units == UnitSystem.Us ? "in" : "mm";
        return ComparisonDrawing.Draw(new ComparisonChart
        {
            Heading = "What each change does",
            Lines = Lines(request, units),
            Columns = [("can hold", "g"), ("tyre leans", "°"), ("travel left", length), ("rides", "Hz"), ("margin, g", "roll, °")],
            Rows = ("front", "rear"),
            Blocks =
            [
                AsGiven(answer.Before, units),
                .. answer.Changes.Select(one => one is { Change: { } moved, After: { } after }
                    ? Block(one.Label, answer.Before, after, moved, one.Ranges, units, isAll: false)
                    : new ComparisonBlock(one.Label, [], [], "not answered: " + one.Problem!.Detail)),
                answer.Together is { } all
                    ? Block("all together", answer.Before, all.After, all.Change, all.Ranges, units, isAll: true)
                    : new ComparisonBlock("all together", [], [], answer.Unknown.First(gap => gap.Id == "/together").Reason, StandsApart: true),
            ],
            Notes =
            [
                $"Each number is how far the change moves the figure of the car as given. A full bar is 0.05 g, 1.5° of lean or roll, {(units == UnitSystem.Us ? "0.8 in" : "20 mm")} of travel, 0.3 Hz; an arrow goes beyond. Without a bar: too little to notice, or to tell.",
                "Margin is what the rear can hold more than the front: above 0 the front gives up first. More margin, roll or frequency is neither better nor worse by itself. The tyre is that of the outer wheel.",
                "All together need not be the sum.",
            ],
        }, widthPx);
    }

    private static string[] Lines(WhatIfRequest request, UnitSystem units)
    {
        var turn = FormattableString.Invariant($"a {request.Turn.ToString().ToLowerInvariant()} turn at {request.LateralG} g");
        var how = request.CornerRadiusM is { } radius
            ? Prose.Write(units, $"{radius:m} radius")
            : Prose.Write(units, $"{request.SpeedKmh!.Value:kmh}");
        var line = $"{turn}, {how}; compared with the car as given";
        return request.Vehicle.Label is { Length: > 0 } label ? [label, line] : [line];
    }

    private static ComparisonBlock AsGiven(WhatIfFiguresResponse given, UnitSystem units) => new(
        "as given",
        [Value(given.FrontLimitG, 2), Value(given.FrontInclinationDeg, 1), Value(InUnits(given.FrontBumpLeftMm, units), TravelDecimals(units)), Value(given.FrontRideFrequencyHz, 2), Value(given.LimitMarginG, 3)],
        [Value(given.RearLimitG, 2), Value(given.RearInclinationDeg, 1), Value(InUnits(given.RearBumpLeftMm, units), TravelDecimals(units)), Value(given.RearRideFrequencyHz, 2), Value(given.RollDeg, 1)]);

    private static ComparisonBlock Block(string name, WhatIfFiguresResponse before, WhatIfFiguresResponse after, WhatIfFiguresResponse moved, LimitChangeResponse? ranges, UnitSystem units, bool isAll) => new(
        name,
        [
            Limit(moved.FrontLimitG, ranges?.FrontLimitG, isMoreBetter: true), Leaning(before.FrontInclinationDeg, after.FrontInclinationDeg),
            Left(moved.FrontBumpLeftMm, units), Cell(moved.FrontRideFrequencyHz, Frequency, null), Limit(moved.LimitMarginG, ranges?.LimitMarginG, isMoreBetter: false),
        ],
        [
            Limit(moved.RearLimitG, ranges?.RearLimitG, isMoreBetter: true), Leaning(before.RearInclinationDeg, after.RearInclinationDeg),
            Left(moved.RearBumpLeftMm, units), Cell(moved.RearRideFrequencyHz, Frequency, null), Cell(moved.RollDeg, Roll, null),
        ],
        StandsApart: isAll);

    // What the tyres leave open is no bar.
    private static ComparisonCell Limit(double? change, UncertaintyResponse? range, bool isMoreBetter) =>
        change is { } moved && range is { Lower: { } lower, Upper: { } upper } && WhatIfWords.IsShown(new(moved, lower, upper, Uncertainty.NinetyPct))
            ? Cell(moved, Grip, isMoreBetter ? true : null)
            : new(Signed(change, Grip.Decimals));

    // Upright is best of what leans out; how much lean into the turn is best nobody has published.
    private static ComparisonCell Leaning(double? before, double? after) => Cell(after - before, Lean, before > 0 || after > 0 ? Math.Abs(after ?? 0) < Math.Abs(before ?? 0) == after > before : null);

    private static ComparisonCell Left(double? changeMm, UnitSystem units)
    {
        var cell = Cell(changeMm, Travel, true);
        return units == UnitSystem.Us ? cell with { Text = Signed(changeMm / MmPerInch, 2) } : cell;
    }

    /// <summary>A change with its bar.</summary>
    /// <param name="change">The change.</param>
    /// <param name="scale">What is noticed of it.</param>
    /// <param name="isMoreBetter">True where more is better, false where less is; null where neither.</param>
    private static ComparisonCell Cell(double? change, Scale scale, bool? isMoreBetter)
    {
        var text = Signed(change, scale.Decimals);
        if (change is not { } moved || Math.Abs(moved) < scale.Noticed) return new(text);
        var tone = isMoreBetter is not { } more ? ComparisonTone.Neutral : moved > 0 == more ? ComparisonTone.Better : ComparisonTone.Worse;
        return new(text, moved / scale.Full, tone);
    }

    private static ComparisonCell Value(double? value, int decimals) => new(value is { } number ? Number(number, decimals) : "–");

    private static double? InUnits(double? mm, UnitSystem units) => units == UnitSystem.Us ? mm / MmPerInch : mm;

    private static int TravelDecimals(UnitSystem units) => units == UnitSystem.Us ? 2 : 0;

    private static string Signed(double? change, int decimals)
    {
        if (change is not { } moved) return "–";
        var text = Number(moved, decimals);
        return moved > 0 && text.Any(letter => letter is >= '1' and <= '9') ? "+" + text : text;
    }

    private static string Number(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("F" + decimals, CultureInfo.InvariantCulture).Replace('-', '−');
    }

    /// <summary>What of a figure is noticed.</summary>
    /// <param name="Noticed">From where on, in its unit.</param>
    /// <param name="Full">What fills a bar.</param>
    /// <param name="Decimals">Decimals shown.</param>
    private readonly record struct Scale(double Noticed, double Full, int Decimals);
}

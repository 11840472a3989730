using System.Text.RegularExpressions;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>
/// Reads a bolt circle: the number of holes and the diameter in either order, in mm or, told by its size, in inches: 5x108, 5×114.3, 5/112, LK 112/5,
/// 5x4.5. A wheel drilled for two has both: 4x100/4x108, or 8x100/108, where the eight holes are four on each. All common practice, no source.
/// </summary>
public static partial class BoltCircleReader
{
    /// <summary>The longest text that is read, in characters, without spaces at either end.</summary>
    public const int MaximumLength = 20;

    /// <summary>The fewest holes read.</summary>
    public const int MinimumHoleCount = 3;

    /// <summary>The most holes read.</summary>
    public const int MaximumHoleCount = 10;

    /// <summary>The smallest circle read, in mm.</summary>
    public const double MinimumDiameterMm = 80;

    /// <summary>The largest circle read, in mm.</summary>
    public const double MaximumDiameterMm = 300;

    private const double MmPerInch = 25.4;

    /// <summary>Eight holes or more with two diameters below this are half on each; wheels of trucks have eight on circles above it.</summary>
    private const double LargestSharedMm = 150;

    /// <summary>Reads the text whole. Never throws on any text.</summary>
    public static ParseResult<BoltCircle> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (TextLength.Check(text, MaximumLength) is { } tooLong)
        {
            return Failed(tooLong);
        }

        var scanner = new MarkingScanner(text);
        if (scanner.TryTake(Piece(), out var piece) && scanner.AtEnd)
        {
            return Read(piece) is { Fault: { } fault } ? Failed(MarkingScanner.AsTyped(fault, text)) : Read(piece);
        }

        return Failed(MarkingScanner.NotRead(text, "a bolt circle such as 5x108, 5x114.3 or 4x100/4x108"));
    }

    /// <summary>The bolt circle found by <see cref="Piece"/>, or the fault where it is out of range.</summary>
    internal static ParseResult<BoltCircle> Read(Match piece)
    {
        var third = piece.Groups["third"];
        var first = Circle(piece.Groups["one"], piece.Groups["two"]);
        if (!third.Success || first.Value is not { } circle)
        {
            return first;
        }

        var count = piece.Groups["again"];
        var second = count.Success ? Circle(count, third) : Circle(circle.HoleCount, third);
        if (second.Value is not { } other)
        {
            return second;
        }

        // Two circles on one pattern of holes share them out.
        var areShared = !count.Success && circle.HoleCount >= 8 && circle.HoleCount % 2 == 0
            && circle.DiameterMm < LargestSharedMm && other.DiameterMm < LargestSharedMm;
        return ParseResult.Success(areShared
            ? new BoltCircle(circle.HoleCount / 2, circle.DiameterMm) { Second = new BoltCircle(circle.HoleCount / 2, other.DiameterMm) }
            : circle with { Second = other });
    }

    private static ParseResult<BoltCircle> Circle(Group one, Group two)
    {
        var (first, second) = (Value(one), Value(two));

        // The count is whole and small; where the first number is none, it is the diameter: 112/5, 4.5x5.
        var isTurned = (first > MaximumHoleCount || first != Math.Floor(first)) && second <= MaximumHoleCount && second == Math.Floor(second);
        var (holes, diameter) = isTurned ? (two, one) : (one, two);
        var count = Value(holes);
        return count is >= MinimumHoleCount and <= MaximumHoleCount && count == Math.Floor(count)
            ? Circle((int)count, diameter)
            : Failed(MarkingScanner.Refused(holes, WheelMarkingNumber.Range("is not a number of holes", MinimumHoleCount, MaximumHoleCount, "holes")));
    }

    private static ParseResult<BoltCircle> Circle(int holeCount, Group diameter)
    {
        var value = Value(diameter);
        var diameterMm = value * MmPerInch is >= MinimumDiameterMm and <= MaximumDiameterMm ? Math.Round(value * MmPerInch, 2) : value;
        return diameterMm is >= MinimumDiameterMm and <= MaximumDiameterMm
            ? ParseResult.Success(new BoltCircle(holeCount, diameterMm))
            : Failed(MarkingScanner.Refused(diameter, WheelMarkingNumber.Range("is not a bolt circle", MinimumDiameterMm, MaximumDiameterMm, "mm")));
    }

    private static double Value(Group number)
    {
        var parts = Fraction().Match(number.Value);
        return parts.Success
            ? WheelMarkingNumber.Decimal(parts.Groups["whole"].Value) + WheelMarkingNumber.Fraction(parts.Groups["part"].Value)
            : WheelMarkingNumber.Decimal(number.Value);
    }

    private static ParseResult<BoltCircle> Failed(ParseFault fault) =>
        ParseResult.Failure<BoltCircle>(fault.Part, fault.Position, fault.Message);

    [GeneratedRegex(@"^(?<whole>[0-9]+)\s*(?<part>[¼½¾]|[13]/4|1/2)$", RegexOptions.CultureInvariant)]
    private static partial Regex Fraction();

    [GeneratedRegex(
        @"\G(?:(?i:LK|PCD|BCD|BC)\s*)?(?<one>[0-9]{1,4}(?:[.,][0-9]{1,3}|\s?[¼½¾]|\s(?:[13]/4|1/2))?)(?:\s*(?i:mm))?\s*[xX*/\-]\s*(?<two>[0-9]{1,4}(?:\s(?:[13]/4|1/2)(?![0-9])|\s?[¼½¾]|[.,][0-9]{1,3})?)"
        + @"(?:(?:\s*[/&]\s*(?:(?<again>[0-9]{1,2})\s*[xX]\s*)?|\s*\+\s*(?<again>[0-9]{1,2})\s*[xX]\s*)(?<third>[0-9]{1,3}(?:[.,][0-9]{1,3})?))?(?:\s*(?i:mm|inch|in))?(?![\p{L}0-9./]|,[0-9])",
        RegexOptions.CultureInvariant)]
    internal static partial Regex Piece();
}

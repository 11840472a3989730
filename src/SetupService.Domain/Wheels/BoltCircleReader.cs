using System.Globalization;
using System.Text.RegularExpressions;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>Reads a bolt circle: the number of holes, then the diameter in mm, as in 5x108, 5×114.3, 5/112 or 4 x 100.</summary>
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
            return Read(piece);
        }

        return Failed(MarkingScanner.NotRead(text, "a bolt circle such as 5x108 or 5x114.3"));
    }

    /// <summary>The bolt circle found by <see cref="Piece"/>, or the fault where it is out of range.</summary>
    internal static ParseResult<BoltCircle> Read(Match piece)
    {
        var holes = piece.Groups["holes"];
        var diameter = piece.Groups["diameter"];
        var holeCount = int.Parse(holes.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);
        var diameterMm = WheelMarkingNumber.Decimal(diameter.Value);
        if (holeCount is < MinimumHoleCount or > MaximumHoleCount)
        {
            return Failed(MarkingScanner.Refused(
                holes, WheelMarkingNumber.Range("is not a number of holes", MinimumHoleCount, MaximumHoleCount, "holes")));
        }

        if (diameterMm is < MinimumDiameterMm or > MaximumDiameterMm)
        {
            return Failed(MarkingScanner.Refused(
                diameter, WheelMarkingNumber.Range("is not a bolt circle", MinimumDiameterMm, MaximumDiameterMm, "mm")));
        }

        return ParseResult.Success(new BoltCircle(holeCount, diameterMm));
    }

    private static ParseResult<BoltCircle> Failed(ParseFault fault) =>
        ParseResult.Failure<BoltCircle>(fault.Part, fault.Position, fault.Message);

    [GeneratedRegex(@"\G(?<holes>[0-9]{1,2})\s*[xX×*/\-–]\s*(?<diameter>[0-9]{1,4}(?:[.,][0-9]{1,3})?)(?:\s*(?i:mm))?(?![\p{L}0-9.,/])", RegexOptions.CultureInvariant)]
    internal static partial Regex Piece();
}

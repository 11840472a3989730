using System.Text.RegularExpressions;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>
/// Reads one mark beside the rim size: hump, offset, bolt circle, centre bore or load rating. The same mark may stand twice, as pasted texts have it; two
/// that contradict each other are refused.
/// </summary>
internal static partial class WheelMarkReader
{
    private const string Expected =
        "a hump (H2), an offset (ET44, +44, IS44, OS12), a bolt circle (5x112), a centre bore (CB66.6) or a load rating (690 kg)";

    /// <summary>The smallest and largest bore read, mm.</summary>
    private const double MinimumBoreMm = 30;

    private const double MaximumBoreMm = 250;

    /// <summary>The lowest and highest load rating read, kg.</summary>
    private const double MinimumLoadKg = 50;

    private const double MaximumLoadKg = 5000;

    public static ParseFault? Read(MarkingScanner scanner, WheelMarkingParts parts)
    {
        if (scanner.TryTake(Separator(), out _))
        {
            return null;
        }

        if (scanner.TryTake(Hump(), out var hump))
        {
            var mark = hump.Value.ToUpperInvariant();
            var isAgain = parts.Hump is null || parts.Hump == mark;
            parts.Hump = mark;
            return isAgain ? null : MarkingScanner.Refused(hump, "is a second hump; a marking has one");
        }

        if (scanner.TryTake(Load(), out var load))
        {
            return ReadLoad(load, parts);
        }

        if (scanner.TryTake(BoltCircleReader.Piece(), out var circle))
        {
            return ReadBoltCircle(circle, parts);
        }

        if (scanner.TryTake(Bore(), out var bore))
        {
            return ReadBore(bore, parts);
        }

        return scanner.TryTake(Offset(), out var offset) || scanner.TryTake(OffsetBefore(), out offset)
            ? ReadOffset(offset, parts)
            : scanner.NotRead(scanner.Position, Expected);
    }

    private static ParseFault? ReadBoltCircle(Match piece, WheelMarkingParts parts)
    {
        var reading = BoltCircleReader.Read(piece);
        if (parts.BoltCircle is { } earlier && reading.Value is { } circle && circle != earlier)
        {
            return MarkingScanner.Refused(piece, "is a second bolt circle; a wheel drilled for two is written as 4x100/4x108");
        }

        parts.BoltCircle = reading.Value;
        return reading.Fault;
    }

    private static ParseFault? ReadBore(Match piece, WheelMarkingParts parts)
    {
        var boreMm = WheelMarkingNumber.Decimal(piece.Groups["size"].Value);
        if (boreMm is < MinimumBoreMm or > MaximumBoreMm)
        {
            return MarkingScanner.Refused(piece, WheelMarkingNumber.Range("is not a centre bore", MinimumBoreMm, MaximumBoreMm, "mm"));
        }

        var isAgain = parts.CentreBoreMm is null || parts.CentreBoreMm == boreMm;
        parts.CentreBoreMm = boreMm;
        return isAgain ? null : MarkingScanner.Refused(piece, "is a second centre bore; a wheel has one");
    }

    private static ParseFault? ReadLoad(Match piece, WheelMarkingParts parts)
    {
        var loadKg = WheelMarkingNumber.Decimal(piece.Groups["size"].Value);
        if (loadKg is < MinimumLoadKg or > MaximumLoadKg)
        {
            return MarkingScanner.Refused(piece, WheelMarkingNumber.Range("is not a load rating", MinimumLoadKg, MaximumLoadKg, "kg"));
        }

        var isAgain = parts.LoadRatingKg is null || parts.LoadRatingKg == loadKg;
        parts.LoadRatingKg = loadKg;
        return isAgain ? null : MarkingScanner.Refused(piece, "is a second load rating; a wheel has one");
    }

    private static ParseFault? ReadOffset(Match piece, WheelMarkingParts parts)
    {
        var kind = piece.Groups["kind"].Value.ToUpperInvariant();
        var isOutset = kind is "OS" or "OUTSET";
        var isWordForSide = isOutset || kind is "IS" or "INSET";
        var sign = piece.Groups["sign"].Value;
        if (isWordForSide && sign.Length > 0)
        {
            return MarkingScanner.Refused(piece, "has a sign; inset (IS) and outset (OS) say the side themselves and take none");
        }

        var size = WheelMarkingNumber.Decimal(piece.Groups["size"].Value);
        var isNegative = isOutset || sign is "-";
        if (size > WheelMarkingReader.MaximumOffsetMm)
        {
            return MarkingScanner.Refused(
                piece, WheelMarkingNumber.Range("is not an offset", -WheelMarkingReader.MaximumOffsetMm, WheelMarkingReader.MaximumOffsetMm, "mm"));
        }

        var offsetMm = isNegative && size > 0 ? -size : size;
        if (parts.OffsetMm is { } earlier && earlier != offsetMm)
        {
            return MarkingScanner.Refused(piece, "is a second offset; a marking has one");
        }

        parts.OffsetMm = offsetMm;
        return null;
    }

    [GeneratedRegex(@"\G[,/|]", RegexOptions.CultureInvariant)]
    private static partial Regex Separator();

    [GeneratedRegex(@"\G(?i:EH2\+|EH2|EH|FH2|FH|CH|H2|H)(?![\p{L}0-9+])", RegexOptions.CultureInvariant)]
    private static partial Regex Hump();

    [GeneratedRegex(@"\G(?:(?i:MAXIMUM|MAX\.?)\s*)?(?:(?i:LOAD)\s*)?(?<size>[0-9]{2,5})\s*(?i:KGS|KG)(?![\p{L}0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex Load();

    [GeneratedRegex(@"\G(?:(?i:CBORE|CB|C/B|DIA|MZ|ML|(?:centre|center|hub)\s*bore|bore|hub)\.?|[Øø⌀])\s*(?<size>[0-9]+(?:[.,][0-9]+)?)(?:\s*(?i:mm))?(?![\p{L}0-9./]|,[0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex Bore();

    [GeneratedRegex(@"\G(?:(?<kind>(?i:ET|INSET|IS|OUTSET|OS|OFFSET|OFF))\.?\s*(?<sign>[+\-])?|(?<sign>[+\-]))\s*(?<size>[0-9]+(?:[.,][0-9]+)?)(?:\s*(?i:mm))?(?:\s*(?i:offset))?(?![\p{L}0-9./]|,[0-9](?![0-9]*[xX]))", RegexOptions.CultureInvariant)]
    private static partial Regex Offset();

    // 44mm offset, 44 ET: the word behind the number.
    [GeneratedRegex(@"\G(?<size>[0-9]+(?:[.,][0-9]+)?)\s*(?:(?i:mm)\s*)?(?<kind>(?i:OFFSET|INSET|OUTSET|ET))(?![\p{L}0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex OffsetBefore();
}

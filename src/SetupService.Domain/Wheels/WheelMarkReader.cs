using System.Text.RegularExpressions;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>Reads one mark beside the rim size: hump, offset or bolt circle, each at most once.</summary>
internal static partial class WheelMarkReader
{
    private const string Expected = "a hump (H2), an offset (ET44, +44, IS44, OS12) or a bolt circle (5x112)";

    public static ParseFault? Read(MarkingScanner scanner, WheelMarkingParts parts)
    {
        if (scanner.TryTake(Hump(), out var hump))
        {
            var isFirst = parts.Hump is null;
            parts.Hump = hump.Value.ToUpperInvariant();
            return isFirst ? null : MarkingScanner.Refused(hump, "is a second hump; a marking has one");
        }

        if (scanner.TryTake(BoltCircleReader.Piece(), out var circle))
        {
            return ReadBoltCircle(circle, parts);
        }

        return scanner.TryTake(Offset(), out var offset)
            ? ReadOffset(offset, parts)
            : scanner.NotRead(scanner.Position, Expected);
    }

    private static ParseFault? ReadBoltCircle(Match piece, WheelMarkingParts parts)
    {
        if (parts.BoltCircle is not null)
        {
            return MarkingScanner.Refused(piece, "is a second bolt circle; a marking has one");
        }

        var reading = BoltCircleReader.Read(piece);
        parts.BoltCircle = reading.Value;
        return reading.Fault;
    }

    private static ParseFault? ReadOffset(Match piece, WheelMarkingParts parts)
    {
        if (parts.OffsetMm is not null)
        {
            return MarkingScanner.Refused(piece, "is a second offset; a marking has one");
        }

        var kind = piece.Groups["kind"].Value;
        var isOutset = kind.Equals("OS", StringComparison.OrdinalIgnoreCase);
        var isWordForSide = isOutset || kind.Equals("IS", StringComparison.OrdinalIgnoreCase);
        var sign = piece.Groups["sign"].Value;
        if (isWordForSide && sign.Length > 0)
        {
            return MarkingScanner.Refused(piece, "has a sign; inset (IS) and outset (OS) say the side themselves and take none");
        }

        var size = WheelMarkingNumber.Decimal(piece.Groups["size"].Value);
        var isNegative = isOutset || sign is not ("" or "+");
        if (size > WheelMarkingReader.MaximumOffsetMm)
        {
            return MarkingScanner.Refused(
                piece, WheelMarkingNumber.Range("is not an offset", -WheelMarkingReader.MaximumOffsetMm, WheelMarkingReader.MaximumOffsetMm, "mm"));
        }

        parts.OffsetMm = isNegative && size > 0 ? -size : size;
        return null;
    }

    [GeneratedRegex(@"\G(?i:EH2\+|EH2|EH|FH2|FH|CH|H2|H)(?![\p{L}0-9+])", RegexOptions.CultureInvariant)]
    private static partial Regex Hump();

    [GeneratedRegex(@"\G(?:(?<kind>(?i:ET|IS|OS))\s*(?<sign>[+\-–−])?|(?<sign>[+\-–−]))\s*(?<size>[0-9]+(?:[.,][0-9]+)?)(?:\s*(?i:mm))?(?![\p{L}0-9.,/])", RegexOptions.CultureInvariant)]
    private static partial Regex Offset();
}

using System.Text.RegularExpressions;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>
/// Reads the rim's width and diameter in either order: 8.5Jx18 (DIN 7817), 15 x 6 J (ISO 4000-2), 18x8.5, 8.5J18. The number beside a
/// contour letter is the width; without a letter the larger number is the diameter.
/// </summary>
internal static partial class RimSizeReader
{
    private const string Expected = "a rim size such as 8.5Jx18 or 18x8.5";

    public static ParseFault? Read(MarkingScanner scanner, WheelMarkingParts parts)
    {
        if (!scanner.TryTake(Inches(), out var first))
        {
            return scanner.NotRead(scanner.Position, Expected);
        }

        // The contour letter parts the two numbers already: 8.5J18, 6J-15.
        var isLetterAfterFirst = scanner.TryTake(ContourLetter(), out var letter);
        var isParted = scanner.TryTake(isLetterAfterFirst ? CrossOrDash() : Cross(), out _) || isLetterAfterFirst;
        if (!isParted || !scanner.TryTake(Inches(), out var second))
        {
            return scanner.NotRead(first.Index, Expected);
        }

        var isLetterAfterSecond = scanner.TryTake(ContourLetter(), out var letterAfterSecond);
        if (isLetterAfterFirst && isLetterAfterSecond)
        {
            return MarkingScanner.Refused(letterAfterSecond, $"is a second contour letter after “{letter.Value}”; a rim has one");
        }

        parts.Contour = isLetterAfterFirst ? Capitals(letter) : isLetterAfterSecond ? Capitals(letterAfterSecond) : null;
        var isWidthFirst = isLetterAfterFirst || (!isLetterAfterSecond && InchesOf(first) < InchesOf(second));
        return isWidthFirst ? Set(parts, width: first, diameter: second) : Set(parts, width: second, diameter: first);
    }

    private static ParseFault? Set(WheelMarkingParts parts, Match width, Match diameter)
    {
        parts.RimWidthIn = InchesOf(width);
        parts.RimDiameterIn = InchesOf(diameter);
        if (parts.RimWidthIn is < WheelMarkingReader.MinimumRimWidthIn or > WheelMarkingReader.MaximumRimWidthIn)
        {
            return MarkingScanner.Refused(
                width,
                WheelMarkingNumber.Range("is not a rim width", WheelMarkingReader.MinimumRimWidthIn, WheelMarkingReader.MaximumRimWidthIn, "in"));
        }

        var isWholeOrHalf = parts.RimDiameterIn * 2 == Math.Floor(parts.RimDiameterIn * 2);
        return isWholeOrHalf
            && parts.RimDiameterIn is >= WheelMarkingReader.MinimumRimDiameterIn and <= WheelMarkingReader.MaximumRimDiameterIn
            ? null
            : MarkingScanner.Refused(
                diameter,
                WheelMarkingNumber.Range(
                    "is not a rim diameter", WheelMarkingReader.MinimumRimDiameterIn, WheelMarkingReader.MaximumRimDiameterIn, "whole or half inches"));
    }

    private static double InchesOf(Match number) =>
        WheelMarkingNumber.Decimal(number.Groups["number"].Value) + WheelMarkingNumber.Fraction(number.Groups["fraction"].Value);

    private static string Capitals(Match letter) => letter.Value.ToUpperInvariant();

    [GeneratedRegex(@"\G(?:(?<number>[0-9]+)(?:\s*(?<fraction>[¼½¾])|\s+(?<fraction>[13]/4|1/2))|(?<number>[0-9]+(?:[.,][0-9]+)?))(?:\s*(?i:inches|inch|in)(?!\p{L}))?", RegexOptions.CultureInvariant)]
    private static partial Regex Inches();

    [GeneratedRegex(@"\G(?i:JJ|JK|J|B|K|L)(?![\p{L}-[xX]])", RegexOptions.CultureInvariant)]
    private static partial Regex ContourLetter();

    [GeneratedRegex(@"\G[xX*]", RegexOptions.CultureInvariant)]
    private static partial Regex Cross();

    [GeneratedRegex(@"\G[xX*\-]", RegexOptions.CultureInvariant)]
    private static partial Regex CrossOrDash();
}

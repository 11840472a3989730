using System.Globalization;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>
/// Reads a tyre's sidewall marking as people type it: letters in either case (unknown marks in capitals only), spaces or none,
/// decimal point or comma. Never throws on any text; what cannot be read is named in the fault.
/// </summary>
public static class TyreMarkingReader
{
    /// <summary>The longest text that is read, in characters, without spaces at either end.</summary>
    public const int MaximumLength = 60;

    /// <summary>The narrowest nominal section read, in mm.</summary>
    public const double MinimumSectionWidthMm = 80;

    /// <summary>The widest nominal section read, in mm.</summary>
    public const double MaximumSectionWidthMm = 455;

    /// <summary>The lowest aspect ratio read, in percent.</summary>
    public const double MinimumAspectPct = 20;

    /// <summary>The highest aspect ratio read, in percent.</summary>
    public const double MaximumAspectPct = 100;

    /// <summary>The smallest rim diameter read, in inches.</summary>
    public const double MinimumRimDiameterIn = 8;

    /// <summary>The largest rim diameter read, in inches.</summary>
    public const double MaximumRimDiameterIn = 26;

    /// <summary>
    /// Reads a marking such as "225/45R17 94W XL", "LT265/70R17 121/118S", "215/65R16C 109/107T", "31x10.50R15LT 109Q" or
    /// "195R14C 106/104S". Positions in a fault count from the start of <paramref name="text"/>.
    /// </summary>
    public static ParseResult<TyreMarking> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var trimmed = text.AsSpan().Trim();
        if (trimmed.Length > MaximumLength)
        {
            // The excess is named by its beginning; it may be very long.
            return ParseResult.Failure<TyreMarking>(
                trimmed.Slice(MaximumLength, Math.Min(20, trimmed.Length - MaximumLength)).ToString(),
                text.Length - text.AsSpan().TrimStart().Length + MaximumLength,
                string.Create(CultureInfo.InvariantCulture, $"The marking is {trimmed.Length} characters long; at most {MaximumLength} are read."));
        }

        var parts = new TyreMarkingParts();
        var cursor = new MarkingCursor(text.AsSpan().TrimEnd());
        cursor.SkipSpaces();
        var fault = TyreSizeReader.Read(ref cursor, parts) ?? ReadBesideSize(ref cursor, parts);
        return fault is null
            ? ParseResult.Success(new TyreMarking(trimmed.ToString(), parts))
            : ParseResult.Failure<TyreMarking>(fault.Part, fault.Position, fault.Message);
    }

    private static ParseFault? ReadBesideSize(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        cursor.SkipSpaces();
        while (!cursor.AtEnd)
        {
            if (!TyreMarkReader.TryReadMountain(ref cursor, parts))
            {
                var fault = cursor.AtDigit || cursor.Current == '('
                    ? ServiceDescriptionReader.Read(ref cursor, parts)
                    : TyreMarkReader.Read(ref cursor, parts);
                if (fault is not null)
                {
                    return fault;
                }
            }

            cursor.SkipSpaces();
        }

        return null;
    }
}

/// <summary>What has been read of a marking so far; the reader fills it part by part.</summary>
internal sealed class TyreMarkingParts
{
    /// <summary>Section width in mm where the size is metric, in inches where an outer diameter is marked.</summary>
    public double SectionWidth { get; set; }

    /// <summary>Outer diameter in inches, only on high-flotation sizes.</summary>
    public double? OverallDiameterIn { get; set; }

    /// <summary>Aspect ratio as marked, in percent.</summary>
    public double? MarkedAspectPct { get; set; }

    public TyreConstruction Construction { get; set; }

    public double RimDiameterIn { get; set; }

    public bool IsZr { get; set; }

    public bool IsPMetric { get; set; }

    public LoadVersion? LoadVersion { get; set; }

    public int? LoadIndex { get; set; }

    public int? LoadIndexDual { get; set; }

    public SpeedSymbol? SpeedSymbol { get; set; }

    public bool IsSpeedOpenEnded { get; set; }

    public bool IsRunFlat { get; set; }

    public bool HasMudAndSnowMark { get; set; }

    public bool HasMountainMark { get; set; }

    public List<string> UnreadMarks { get; } = [];
}

/// <summary>A number found in a marking.</summary>
/// <param name="Value">Its value.</param>
/// <param name="Start">Index of its first digit in the text.</param>
/// <param name="End">Index after its last digit.</param>
internal readonly record struct TyreMarkingNumber(double Value, int Start, int End)
{
    public bool IsWhole => Value == Math.Floor(Value);

    public bool IsWholeOrHalf => Value * 2 == Math.Floor(Value * 2);

    public bool IsWithin(double minimum, double maximum) => Value >= minimum && Value <= maximum;
}

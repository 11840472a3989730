using System.Globalization;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>
/// Reads a tyre's sidewall marking as people type and paste it: letters in either case (unknown marks in capitals only), spaces or none, decimal
/// point or comma, any dash, quotes and separators. Never throws on any text; what cannot be read is named in the fault.
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

    /// <summary>The smallest rim diameter read in mm, for tyres of millimetre rims; our choice, well below the 365 mm in use.</summary>
    public const double MinimumRimDiameterMm = 280;

    /// <summary>The largest rim diameter read in mm; our choice, above every size in use.</summary>
    public const double MaximumRimDiameterMm = 660;

    /// <summary>
    /// Reads a marking such as "225/45R17 94W XL", "LT265/70R17 121/118S LRE", "215/65R16C 109/107T (112N)", "31x10.50R15LT 109Q", "T125/70D17 98M",
    /// "155SR13" or "6.00-16 6PR". Positions in a fault count from the start of <paramref name="text"/>.
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
        var cursor = new MarkingCursor(TypedText.Plain(text).AsSpan().TrimEnd(), text);
        cursor.SkipSpaces();
        var fault = TyreSizeReader.Read(ref cursor, parts) ?? ReadBesideSize(ref cursor, parts);
        if (fault is not null)
        {
            return ParseResult.Failure<TyreMarking>(fault.Part, fault.Position, fault.Message);
        }

        parts.Conclude();
        return ParseResult.Success(new TyreMarking(trimmed.ToString(), parts));
    }

    private static ParseFault? ReadBesideSize(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        cursor.SkipSpaces();
        while (!cursor.AtEnd)
        {
            if (!TryTakeSeparator(ref cursor, parts) && ReadPart(ref cursor, parts) is { } fault)
            {
                return fault;
            }

            cursor.SkipSpaces();
        }

        return null;
    }

    // Commas, slashes between marks (XL/FR), and brackets round a mark: (XL).
    private static bool TryTakeSeparator(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var next = cursor.Ahead(1);
        var isSeparator = cursor.Current switch
        {
            ',' => true,
            '/' => char.IsAsciiLetterOrDigit(next),
            '(' => char.IsAsciiLetter(next),
            ')' => parts.IsBracketOpen,
            _ => false,
        };
        if (!isSeparator)
        {
            return false;
        }

        parts.IsBracketOpen = cursor.Current == '(' || (parts.IsBracketOpen && cursor.Current != ')');
        cursor.MoveTo(cursor.Position + 1);
        return true;
    }

    private static ParseFault? ReadPart(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        if (TyreMarkReader.TryReadMountain(ref cursor, parts))
        {
            return null;
        }

        if (!cursor.AtDigit && cursor.Current != '(')
        {
            return TyreMarkReader.Read(ref cursor, parts);
        }

        return LoadRangeReader.TryReadPly(ref cursor, parts, out var fault) ? fault : ServiceDescriptionReader.Read(ref cursor, parts);
    }
}

/// <summary>What has been read of a marking so far; the reader fills it part by part.</summary>
internal sealed class TyreMarkingParts
{
    /// <summary>Section width in mm where the size is metric, in inches where it is not.</summary>
    public double SectionWidth { get; set; }

    /// <summary>True where the width is in inches and nothing tells the height (6.00-16).</summary>
    public bool IsInchWidth { get; set; }

    /// <summary>Outer diameter in inches, only on high-flotation sizes.</summary>
    public double? OverallDiameterIn { get; set; }

    /// <summary>Aspect ratio as marked, in percent.</summary>
    public double? MarkedAspectPct { get; set; }

    public TyreConstruction Construction { get; set; }

    public double RimDiameterIn { get; set; }

    /// <summary>Rim diameter in mm where it is marked so (R390).</summary>
    public double? RimDiameterMm { get; set; }

    public bool IsZr { get; set; }

    /// <summary>The speed letter before the R of an old size (155SR13); null without one. Z has its own flag.</summary>
    public char? SizeSpeedLetter { get; set; }

    public bool IsPMetric { get; set; }

    public bool IsTemporarySpare { get; set; }

    public LoadVersion? LoadVersion { get; set; }

    public int? LoadIndex { get; set; }

    public int? LoadIndexDual { get; set; }

    public SpeedSymbol? SpeedSymbol { get; set; }

    public bool IsSpeedOpenEnded { get; set; }

    public ServiceDescription? SecondServiceDescription { get; set; }

    public char? LoadRange { get; set; }

    public int? PlyRating { get; set; }

    public bool? IsTubeless { get; set; }

    public bool IsRunFlat { get; set; }

    public bool HasMudAndSnowMark { get; set; }

    public bool HasMountainMark { get; set; }

    public List<string> UnreadMarks { get; } = [];

    /// <summary>True after a bracket that opens round a mark, until it closes.</summary>
    public bool IsBracketOpen { get; set; }

    /// <summary>True where no published rule gives the tyre's height: a width in inches alone, or a rim in mm without an aspect ratio.</summary>
    public bool LacksHeight => IsInchWidth || (RimDiameterMm is not null && MarkedAspectPct is null);

    /// <summary>Settles what only the whole marking tells: a single letter on a light-truck tyre is its load range, also where LT comes after it.</summary>
    public void Conclude()
    {
        if (LoadVersion != Tyres.LoadVersion.LightTruck)
        {
            return;
        }

        if (LoadRange is null && PlyRating is null && UnreadMarks.Find(static mark => mark is "C" or "D" or "E") is { } letter)
        {
            LoadRange = letter[0];
        }

        UnreadMarks.RemoveAll(mark => mark is "C" or "D" or "E" && mark[0] == LoadRange);
    }
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

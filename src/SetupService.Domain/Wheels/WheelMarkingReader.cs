using SetupService.Domain.Answers;

namespace SetupService.Domain.Wheels;

/// <summary>
/// Reads a wheel's stamped marking as people type it, in either case, with decimal point, comma or fraction. Never throws on
/// any text; what cannot be read is named in the fault.
/// </summary>
public static class WheelMarkingReader
{
    /// <summary>The longest text that is read, in characters, without spaces at either end.</summary>
    public const int MaximumLength = 60;

    /// <summary>The smallest rim diameter read, in inches.</summary>
    public const double MinimumRimDiameterIn = 8;

    /// <summary>The largest rim diameter read, in inches.</summary>
    public const double MaximumRimDiameterIn = 26;

    /// <summary>The narrowest rim read, in inches.</summary>
    public const double MinimumRimWidthIn = 3;

    /// <summary>The widest rim read, in inches.</summary>
    public const double MaximumRimWidthIn = 16;

    /// <summary>The largest offset read, in mm, to either side.</summary>
    public const double MaximumOffsetMm = 150;

    /// <summary>
    /// Reads a marking such as "8.5Jx18 H2 ET44 5x112 CB66.6", "8 1/2 J x 18", "18x8.5 +44 LK 112/5", "15 x 6 J" or "7½Jx17 ET-12". The marks
    /// after the size may stand in any order. Positions in a fault count from the start of <paramref name="text"/>.
    /// </summary>
    public static ParseResult<WheelMarking> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var parts = new WheelMarkingParts();
        if (TextLength.Check(text, MaximumLength) is { } tooLong)
        {
            return ParseResult.Failure<WheelMarking>(tooLong.Part, tooLong.Position, tooLong.Message);
        }

        if (ReadParts(new MarkingScanner(text), parts) is { } found)
        {
            var fault = MarkingScanner.AsTyped(found, text);
            return ParseResult.Failure<WheelMarking>(fault.Part, fault.Position, fault.Message);
        }

        return ParseResult.Success(new WheelMarking
        {
            Text = text.Trim(),
            RimDiameterIn = parts.RimDiameterIn,
            RimWidthIn = parts.RimWidthIn,
            Contour = parts.Contour,
            Hump = parts.Hump,
            OffsetMm = parts.OffsetMm,
            BoltCircle = parts.BoltCircle,
            CentreBoreMm = parts.CentreBoreMm,
            LoadRatingKg = parts.LoadRatingKg,
        });
    }

    private static ParseFault? ReadParts(MarkingScanner scanner, WheelMarkingParts parts)
    {
        var fault = RimSizeReader.Read(scanner, parts);
        while (fault is null && !scanner.AtEnd)
        {
            fault = WheelMarkReader.Read(scanner, parts);
        }

        return fault;
    }
}

/// <summary>What has been read of a wheel's marking so far.</summary>
internal sealed class WheelMarkingParts
{
    public double RimDiameterIn { get; set; }

    public double RimWidthIn { get; set; }

    public string? Contour { get; set; }

    public string? Hump { get; set; }

    public double? OffsetMm { get; set; }

    public BoltCircle? BoltCircle { get; set; }

    public double? CentreBoreMm { get; set; }

    public double? LoadRatingKg { get; set; }
}

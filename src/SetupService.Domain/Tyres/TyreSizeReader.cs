using System.Globalization;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>
/// Reads the size: P, LT, HL or T, then 225/45R17, 185R14 or 155SR13 (no aspect ratio marked), 190/65R390 (rim in mm), 31x10.50R15 (outer diameter
/// in inches) or 6.00-16 (width in inches, no rule for the height). Each method answers the fault, or null where it read its part.
/// </summary>
internal static class TyreSizeReader
{
    private const string SizeExample = "a tyre size such as 225/45R17, 185R14C, 31x10.50R15LT or 6.00-16";

    public static ParseFault? Read(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        if (ReadPrefix(ref cursor, parts) is { } fault)
        {
            return fault;
        }

        if (!cursor.TryTakeNumber(out var first))
        {
            return cursor.NotRead(first.Start, SizeExample);
        }

        cursor.SkipSpaces();
        if (cursor.TryTakeAnyOf("xX×"))
        {
            return ReadFlotation(ref cursor, parts, first);
        }

        const string expected = "a width, construction and rim diameter such as 225/45R17 or 185R14";
        if (first.Value < TyreMarkingReader.MinimumAspectPct)
        {
            return ReadInches(ref cursor, parts, first, expected);
        }

        if (CheckSectionWidth(cursor, first) is { } widthFault)
        {
            return widthFault;
        }

        parts.SectionWidth = first.Value;
        return cursor.TryTakeAnyOf("/") || IsAtAspectWithoutSlash(ref cursor, first.End)
            ? ReadAspectAndRim(ref cursor, parts)
            : ReadConstructionAndRim(ref cursor, parts, first.Start, expected);
    }

    private static ParseFault? ReadInches(ref MarkingCursor cursor, TyreMarkingParts parts, TyreMarkingNumber width, string expected)
    {
        if (CheckInches(cursor, width) is { } fault)
        {
            return fault;
        }

        if (parts.IsPMetric || parts.IsTemporarySpare || parts.LoadVersion == LoadVersion.HighLoad)
        {
            return cursor.Refused(width, "is a width in inches, which no P, T or HL size has");
        }

        parts.SectionWidth = width.Value;
        parts.IsInchWidth = true;
        return ReadConstructionAndRim(ref cursor, parts, width.Start, expected);
    }

    private static ParseFault? CheckInches(MarkingCursor cursor, TyreMarkingNumber width)
    {
        var widthMm = width.Value * TyreDimensions.MmPerInch;
        return widthMm >= TyreMarkingReader.MinimumSectionWidthMm && widthMm <= TyreMarkingReader.MaximumSectionWidthMm
            ? null
            : cursor.Refused(width, "is not a section width from 3.15 to 17.91 in (80 to 455 mm)");
    }

    // 225 45 R17, 225-45 R17: a space or dash for the slash, read only where the letters of the construction follow the second number.
    private static bool IsAtAspectWithoutSlash(ref MarkingCursor cursor, int widthEnd)
    {
        var start = cursor.Position;
        cursor.SkipSpaces();
        cursor.TryTakeAnyOf("-");
        cursor.SkipSpaces();
        var aspectStart = cursor.Position;
        var isAspect = aspectStart > widthEnd && cursor.TryTakeNumber(out var aspect)
            && aspect.IsWithin(TyreMarkingReader.MinimumAspectPct, TyreMarkingReader.MaximumAspectPct)
            && cursor.AfterSpaces is 'R' or 'r' or 'Z' or 'z';
        cursor.MoveTo(isAspect ? aspectStart : start);
        return isAspect;
    }

    private static ParseFault? ReadPrefix(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        var start = cursor.Position;
        var letters = cursor.PeekLetters();
        if (letters.IsEmpty)
        {
            return null;
        }

        if (letters.Equals("P", StringComparison.OrdinalIgnoreCase))
        {
            parts.IsPMetric = true;
        }
        else if (letters.Equals("LT", StringComparison.OrdinalIgnoreCase))
        {
            parts.LoadVersion = LoadVersion.LightTruck;
        }
        else if (letters.Equals("HL", StringComparison.OrdinalIgnoreCase))
        {
            parts.LoadVersion = LoadVersion.HighLoad;
        }
        else if (letters.Equals("T", StringComparison.OrdinalIgnoreCase) || letters.Equals("S", StringComparison.OrdinalIgnoreCase))
        {
            parts.IsTemporarySpare = true;
        }
        else if (letters.Equals("ST", StringComparison.OrdinalIgnoreCase))
        {
            return cursor.Refused(start, start + letters.Length, "marks a tyre for trailers, which must not go on a car");
        }
        else
        {
            return cursor.NotRead(start, $"{SizeExample}; before the width only P, LT, HL and T are read");
        }

        cursor.MoveTo(start + letters.Length);
        cursor.SkipSpaces();
        return null;
    }

    private static ParseFault? CheckSectionWidth(MarkingCursor cursor, TyreMarkingNumber width)
    {
        return width.IsWhole && width.IsWithin(TyreMarkingReader.MinimumSectionWidthMm, TyreMarkingReader.MaximumSectionWidthMm)
            ? null
            : cursor.Refused(
                width,
                Range("is not a section width", TyreMarkingReader.MinimumSectionWidthMm, TyreMarkingReader.MaximumSectionWidthMm, "whole mm"));
    }

    private static ParseFault? ReadAspectAndRim(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        const string expected = "an aspect ratio, construction and rim diameter such as 45R17";
        cursor.SkipSpaces();
        if (!cursor.TryTakeNumber(out var aspect))
        {
            return cursor.NotRead(aspect.Start, expected);
        }

        if (!aspect.IsWhole || !aspect.IsWithin(TyreMarkingReader.MinimumAspectPct, TyreMarkingReader.MaximumAspectPct))
        {
            return cursor.Refused(
                aspect,
                Range("is not an aspect ratio", TyreMarkingReader.MinimumAspectPct, TyreMarkingReader.MaximumAspectPct, "whole percent"));
        }

        parts.MarkedAspectPct = aspect.Value;
        return ReadConstructionAndRim(ref cursor, parts, aspect.Start, expected);
    }

    private static ParseFault? ReadFlotation(ref MarkingCursor cursor, TyreMarkingParts parts, TyreMarkingNumber overallDiameter)
    {
        const string expected = "a width, construction and rim diameter in inches such as 10.50R15";
        cursor.SkipSpaces();
        if (!cursor.TryTakeNumber(out var width))
        {
            return cursor.NotRead(width.Start, expected);
        }

        if (CheckInches(cursor, width) is { } widthFault)
        {
            return widthFault;
        }

        parts.OverallDiameterIn = overallDiameter.Value;
        parts.SectionWidth = width.Value;
        if (ReadConstructionAndRim(ref cursor, parts, width.Start, expected) is { } fault)
        {
            return fault;
        }

        // The marked inches must leave a sidewall that a tyre can have: the aspect ratios a metric size may have.
        var lowestIn = parts.RimDiameterIn + (2 * width.Value * TyreMarkingReader.MinimumAspectPct / 100);
        var highestIn = parts.RimDiameterIn + (2 * width.Value * TyreMarkingReader.MaximumAspectPct / 100);
        return overallDiameter.IsWithin(lowestIn, highestIn)
            ? null
            : cursor.Refused(
                overallDiameter, Range("is not an outer diameter for this width and rim", lowestIn, highestIn, "in"));
    }

    private static ParseFault? ReadConstructionAndRim(
        ref MarkingCursor cursor, TyreMarkingParts parts, int partStart, string expected)
    {
        cursor.SkipSpaces();
        if (!TryReadConstruction(ref cursor, parts))
        {
            return cursor.NotRead(partStart, expected);
        }

        cursor.SkipSpaces();
        if (!cursor.TryTakeNumber(out var rim))
        {
            return cursor.NotRead(partStart, expected);
        }

        // 225/45R17,94W: a comma that makes no half inch parts the size from what follows.
        if (!rim.IsWholeOrHalf && cursor.TryReadAgainBeforeComma(rim, out var whole))
        {
            rim = whole;
        }

        return TrySetRim(parts, rim) ? null : cursor.Refused(
            rim,
            Range("is not a rim diameter", TyreMarkingReader.MinimumRimDiameterIn, TyreMarkingReader.MaximumRimDiameterIn, "whole or half inches, or 280 to 660 whole mm"));
    }

    private static bool TrySetRim(TyreMarkingParts parts, TyreMarkingNumber rim)
    {
        if (rim.IsWholeOrHalf && rim.IsWithin(TyreMarkingReader.MinimumRimDiameterIn, TyreMarkingReader.MaximumRimDiameterIn))
        {
            parts.RimDiameterIn = rim.Value;
            return true;
        }

        var isMm = rim.IsWhole && rim.IsWithin(TyreMarkingReader.MinimumRimDiameterMm, TyreMarkingReader.MaximumRimDiameterMm)
            && !parts.IsInchWidth && parts.OverallDiameterIn is null;
        if (isMm)
        {
            parts.RimDiameterMm = rim.Value;
            parts.RimDiameterIn = rim.Value / TyreDimensions.MmPerInch;
        }

        return isMm;
    }

    private static bool TryReadConstruction(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        // 225/45-R17: the dash only parts the letters from the number.
        if (cursor.TryTakeAnyOf("-") && cursor.AfterSpaces is not ('R' or 'r' or 'Z' or 'z'))
        {
            parts.Construction = TyreConstruction.Diagonal;
            return true;
        }

        cursor.SkipSpaces();

        var letters = cursor.PeekLetters();
        Span<char> capitals = stackalloc char[3];
        if (letters.IsEmpty || letters.Length > capitals.Length)
        {
            return false;
        }

        capitals = capitals[..letters.ToUpperInvariant(capitals)];
        TyreConstruction? construction = capitals switch
        {
            "R" or "ZR" or "RF" or "ZRF" => TyreConstruction.Radial,
            "SR" or "TR" or "UR" or "HR" or "VR" or "QR" => TyreConstruction.Radial,
            "D" => TyreConstruction.Diagonal,
            "B" => TyreConstruction.BiasBelted,
            _ => null,
        };
        if (construction is not { } known)
        {
            return false;
        }

        // F after the R marks a tyre that runs flat (from memory, UN Regulation No. 30).
        parts.Construction = known;
        parts.IsZr = capitals[0] == 'Z';
        parts.SizeSpeedLetter = capitals.Length == 2 && capitals[1] == 'R' && capitals[0] != 'Z' ? capitals[0] : null;
        parts.IsRunFlat = capitals[^1] == 'F';
        cursor.MoveTo(cursor.Position + letters.Length);
        return true;
    }

    private static string Range(string what, double minimum, double maximum, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} from {minimum:0.##} to {maximum:0.##} {unit}");
}

using System.Globalization;
using SetupService.Domain.Answers;

namespace SetupService.Domain.Tyres;

/// <summary>
/// Reads the size: P, LT or HL, then 225/45R17, 185R14 (no aspect ratio marked) or 31x10.50R15 (outer diameter in inches).
/// Each method answers the fault, or null where it read its part.
/// </summary>
internal static class TyreSizeReader
{
    private const string SizeExample = "a tyre size such as 225/45R17, 185R14C or 31x10.50R15LT";

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

        if (CheckSectionWidth(cursor, first) is { } widthFault)
        {
            return widthFault;
        }

        parts.SectionWidth = first.Value;
        return cursor.TryTakeAnyOf("/")
            ? ReadAspectAndRim(ref cursor, parts)
            : ReadConstructionAndRim(ref cursor, parts, first.Start, "a width, construction and rim diameter such as 225/45R17 or 185R14");
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
        else
        {
            return cursor.NotRead(start, $"{SizeExample}; before the width only P, LT and HL are read");
        }

        cursor.MoveTo(start + letters.Length);
        cursor.SkipSpaces();
        return null;
    }

    private static ParseFault? CheckSectionWidth(MarkingCursor cursor, TyreMarkingNumber width)
    {
        if (width.Value < TyreMarkingReader.MinimumAspectPct)
        {
            return cursor.Refused(
                width,
                "looks like a width in inches; that is read only after an outer diameter, as in 31x10.50R15LT, because such sizes have no rule for their height");
        }

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

        var widthMm = width.Value * TyreDimensions.MmPerInch;
        if (!(widthMm >= TyreMarkingReader.MinimumSectionWidthMm && widthMm <= TyreMarkingReader.MaximumSectionWidthMm))
        {
            return cursor.Refused(width, "is not a section width from 3.15 to 17.91 in (80 to 455 mm)");
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

        if (!rim.IsWholeOrHalf || !rim.IsWithin(TyreMarkingReader.MinimumRimDiameterIn, TyreMarkingReader.MaximumRimDiameterIn))
        {
            return cursor.Refused(
                rim,
                Range("is not a rim diameter", TyreMarkingReader.MinimumRimDiameterIn, TyreMarkingReader.MaximumRimDiameterIn, "whole or half inches"));
        }

        parts.RimDiameterIn = rim.Value;
        return null;
    }

    private static bool TryReadConstruction(ref MarkingCursor cursor, TyreMarkingParts parts)
    {
        if (cursor.TryTakeAnyOf("-‐‑–−"))
        {
            parts.Construction = TyreConstruction.Diagonal;
            return true;
        }

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
        parts.IsRunFlat = capitals[^1] == 'F';
        cursor.MoveTo(cursor.Position + letters.Length);
        return true;
    }

    private static string Range(string what, double minimum, double maximum, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} from {minimum:0.##} to {maximum:0.##} {unit}");
}

using System.Globalization;
using System.Text;

namespace SetupService.Domain.Tyres;

/// <summary>Writes a marking in its usual spelling. Reading what it writes gives the same marking again.</summary>
internal static class TyreMarkingWriter
{
    public static string Write(TyreMarkingParts parts)
    {
        var text = new StringBuilder();
        WriteSize(text, parts);
        WriteServiceDescription(text, parts);
        if (parts.SecondServiceDescription is { } second)
        {
            text.Append(CultureInfo.InvariantCulture, $" ({second.LoadIndex}{Dual(second.LoadIndexDual)}{second.SpeedSymbol.Letter})");
        }

        WriteMark(text, parts.LoadVersion == LoadVersion.ExtraLoad, "XL");
        WriteMark(text, parts.LoadVersion == LoadVersion.LightLoad, "LL");
        WriteMark(text, parts.LoadVersion == LoadVersion.HighLoad && parts.IsPMetric, "HL");
        WriteMark(text, parts.LoadRange is not null, $"LR{parts.LoadRange}");
        WriteMark(text, parts.PlyRating is not null, string.Create(CultureInfo.InvariantCulture, $"{parts.PlyRating}PR"));
        WriteMark(text, parts.IsTubeless is not null, parts.IsTubeless == true ? "TL" : "TT");
        WriteMark(text, parts.IsRunFlat, "RFT");
        WriteMark(text, parts.HasMudAndSnowMark, "M+S");
        WriteMark(text, parts.HasMountainMark, "3PMSF");
        foreach (var mark in parts.UnreadMarks)
        {
            WriteMark(text, true, mark);
        }

        return text.ToString();
    }

    private static void WriteSize(StringBuilder text, TyreMarkingParts parts)
    {
        var isLightTruck = parts.LoadVersion == LoadVersion.LightTruck;
        text.Append(parts.IsPMetric ? "P" : string.Empty);
        text.Append(parts.IsTemporarySpare ? "T" : string.Empty);
        text.Append(parts.LoadVersion == LoadVersion.HighLoad && !parts.IsPMetric ? "HL" : string.Empty);
        if (parts.OverallDiameterIn is { } overallDiameterIn)
        {
            text.Append(CultureInfo.InvariantCulture, $"{overallDiameterIn:0.##}x{parts.SectionWidth:0.00}");
        }
        else if (parts.IsInchWidth)
        {
            text.Append(CultureInfo.InvariantCulture, $"{parts.SectionWidth:0.00}");
        }
        else
        {
            text.Append(isLightTruck ? "LT" : string.Empty);
            text.Append(CultureInfo.InvariantCulture, $"{parts.SectionWidth:0}");
        }

        if (parts.MarkedAspectPct is { } aspectPct)
        {
            text.Append(CultureInfo.InvariantCulture, $"/{aspectPct:0}");
        }

        text.Append(ConstructionMark(parts));
        text.Append(CultureInfo.InvariantCulture, $"{parts.RimDiameterMm ?? parts.RimDiameterIn:0.#}");
        text.Append(parts.LoadVersion switch
        {
            LoadVersion.Commercial => "C",
            LoadVersion.CommercialCamper => "CP",
            LoadVersion.LightTruck when parts.OverallDiameterIn is not null || parts.IsInchWidth => "LT",
            _ => string.Empty,
        });
    }

    private static string ConstructionMark(TyreMarkingParts parts) => parts.Construction switch
    {
        TyreConstruction.Radial => parts.IsZr ? "ZR" : $"{parts.SizeSpeedLetter}R",
        TyreConstruction.BiasBelted => "B",
        _ => parts.IsTemporarySpare ? "D" : "-",
    };

    private static void WriteServiceDescription(StringBuilder text, TyreMarkingParts parts)
    {
        if (parts.SpeedSymbol is not { } symbol)
        {
            return;
        }

        var (open, close) = parts.IsSpeedOpenEnded ? ("(", ")") : (string.Empty, string.Empty);
        text.Append(CultureInfo.InvariantCulture, $" {open}{parts.LoadIndex}{Dual(parts.LoadIndexDual)}{symbol.Letter}{close}");
    }

    private static string Dual(int? index) => index is { } twin ? string.Create(CultureInfo.InvariantCulture, $"/{twin}") : string.Empty;

    private static void WriteMark(StringBuilder text, bool isThere, string mark)
    {
        if (isThere)
        {
            text.Append(' ').Append(mark);
        }
    }
}

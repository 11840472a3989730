namespace SetupService.Domain.Tyres;

/// <summary>
/// A tyre's sidewall marking, read. Immutable; everything that follows from the marking alone is worked out once. Made by
/// <see cref="TyreMarkingReader"/>. Two markings are equal when their <see cref="StandardText"/> is.
/// </summary>
public sealed class TyreMarking : IEquatable<TyreMarking>
{
    internal TyreMarking(string text, TyreMarkingParts parts)
    {
        Text = text;
        Construction = parts.Construction;
        RimDiameterIn = parts.RimDiameterIn;
        LoadIndex = parts.LoadIndex;
        LoadIndexDual = parts.LoadIndexDual;
        SpeedSymbol = parts.SpeedSymbol;
        IsSpeedOpenEnded = parts.IsSpeedOpenEnded;
        IsZr = parts.IsZr;
        IsLoadVersionMarked = parts.LoadVersion is not null;
        LoadVersion = parts.LoadVersion ?? LoadVersion.StandardLoad;
        IsPMetric = parts.IsPMetric;
        IsRunFlat = parts.IsRunFlat;
        HasMudAndSnowMark = parts.HasMudAndSnowMark;
        HasMountainMark = parts.HasMountainMark;
        UnreadMarks = parts.UnreadMarks.AsReadOnly();
        LoadCapacityKg = LoadIndex is { } index ? LoadIndexTable.CapacityKg(index) : null;
        if (parts.OverallDiameterIn is { } overallDiameterIn)
        {
            NominalSectionWidthMm = parts.SectionWidth * TyreDimensions.MmPerInch;
            Dimensions = TyreDimensionRules.ForFlotation(
                overallDiameterIn, parts.SectionWidth, RimDiameterIn, Construction, IsSnowTyre);
        }
        else
        {
            NominalSectionWidthMm = parts.SectionWidth;
            AspectRatioPct = parts.MarkedAspectPct;
            Dimensions = TyreDimensionRules.ForMetric(
                parts.SectionWidth,
                parts.MarkedAspectPct ?? TyreDimensionRules.UnmarkedAspectRatioPct,
                RimDiameterIn,
                Construction,
                IsSnowTyre);
        }

        PermittedRimWidth = PermittedRimWidthTable.For(
            NominalSectionWidthMm, AspectRatioPct, RimDiameterIn, Dimensions.MeasuringRimWidthIn);
        RollingCircumferenceMm = RollingCircumference.Mm(Dimensions, Construction);
        StandardText = TyreMarkingWriter.Write(parts);
    }

    /// <summary>The marking as typed, without spaces at either end.</summary>
    public string Text { get; }

    /// <summary>The marking in its usual spelling, such as "225/45R17 94W XL".</summary>
    public string StandardText { get; }

    /// <summary>Nominal section width in mm; of a high-flotation size, the marked inches in mm.</summary>
    public double NominalSectionWidthMm { get; }

    /// <summary>
    /// Section height in percent of the width, as marked; null where none is marked: high-flotation sizes, and sizes such as
    /// 185R14C, whose dimensions are worked out with <see cref="TyreDimensionRules.UnmarkedAspectRatioPct"/>.
    /// </summary>
    public double? AspectRatioPct { get; }

    /// <summary>How the carcass is built.</summary>
    public TyreConstruction Construction { get; }

    /// <summary>Rim diameter code in inches, whole or half.</summary>
    public double RimDiameterIn { get; }

    /// <summary>Load index in single fitment, 0 to 200; null where the marking has no service description.</summary>
    public int? LoadIndex { get; }

    /// <summary>Load index in twin fitment; null where only one is marked.</summary>
    public int? LoadIndexDual { get; }

    /// <summary>Speed symbol; null where the marking has no service description.</summary>
    public SpeedSymbol? SpeedSymbol { get; }

    /// <summary>True for a symbol in brackets, "(94Y)": the tyre is made for speeds above the symbol's.</summary>
    public bool IsSpeedOpenEnded { get; }

    /// <summary>True where the size carries ZR, a capability above 240 km/h (French order of 24 October 1994, Annex I).</summary>
    public bool IsZr { get; }

    /// <summary>The load version; standard load where none is marked.</summary>
    public LoadVersion LoadVersion { get; }

    /// <summary>True where the load version stands on the tyre; false where standard load is taken because no mark says otherwise.</summary>
    public bool IsLoadVersionMarked { get; }

    /// <summary>True for a size with P before it, of the American family of car tyres.</summary>
    public bool IsPMetric { get; }

    /// <summary>True for a tyre marked to run without air for a limited distance.</summary>
    public bool IsRunFlat { get; }

    /// <summary>True for a tyre marked M+S.</summary>
    public bool HasMudAndSnowMark { get; }

    /// <summary>True for a tyre with the mountain and snowflake mark, written 3PMSF.</summary>
    public bool HasMountainMark { get; }

    /// <summary>True where either snow mark stands on the tyre.</summary>
    public bool IsSnowTyre => HasMudAndSnowMark || HasMountainMark;

    /// <summary>Marks that stand in the text and mean nothing here, in capitals and in order.</summary>
    public IReadOnlyList<string> UnreadMarks { get; }

    /// <summary>Design dimensions and their limits.</summary>
    public TyreDimensions Dimensions { get; }

    /// <summary>The rim widths the tyre may be fitted to.</summary>
    public PermittedRimWidth PermittedRimWidth { get; }

    /// <summary>The load the index stands for, in kg; null without one.</summary>
    public double? LoadCapacityKg { get; }

    /// <summary>The speed the symbol stands for, in km/h; null without one. For a bracketed symbol the tyre's own limit is higher.</summary>
    public double? MaximumSpeedKmh => SpeedSymbol?.MaximumKmh;

    /// <summary>Distance covered in one turn in mm, at maximum load, specified pressure and 60 km/h.</summary>
    public double RollingCircumferenceMm { get; }

    /// <inheritdoc/>
    public bool Equals(TyreMarking? other) => other is not null && StandardText == other.StandardText;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as TyreMarking);

    /// <inheritdoc/>
    public override int GetHashCode() => StandardText.GetHashCode(StringComparison.Ordinal);

    /// <summary>The marking in its usual spelling.</summary>
    public override string ToString() => StandardText;
}

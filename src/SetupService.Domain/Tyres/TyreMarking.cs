using System.Diagnostics.CodeAnalysis;

namespace SetupService.Domain.Tyres;

/// <summary>
/// A tyre's sidewall marking, read. Immutable; everything that follows from the marking alone is worked out once. Made by
/// <see cref="TyreMarkingReader"/>. Two markings are equal when their <see cref="StandardText"/> is.
/// </summary>
public sealed class TyreMarking : IEquatable<TyreMarking>
{
    /// <summary>Speed above which a tyre is marked ZR, km/h (note to Annex I of the French order of 24 October 1994).</summary>
    public const double ZrAboveKmh = 240;

    /// <summary>Speed above which a tyre was marked VR, km/h ("Automotive Engineering: Powertrain, Chassis System and Vehicle Body", p. 289).</summary>
    public const double VrAboveKmh = 210;

    private readonly TyreDimensions _dimensions;
    private readonly PermittedRimWidth _permittedRimWidth;
    private readonly double _rollingCircumferenceMm;

    internal TyreMarking(string text, TyreMarkingParts parts)
    {
        Text = text;
        Construction = parts.Construction;
        RimDiameterIn = parts.RimDiameterIn;
        RimDiameterMm = parts.RimDiameterMm;
        LoadIndex = parts.LoadIndex;
        LoadIndexDual = parts.LoadIndexDual;
        SpeedSymbol = parts.SpeedSymbol ?? SymbolInSize(parts.SizeSpeedLetter);
        SecondServiceDescription = parts.SecondServiceDescription;
        SpeedInSize = parts.IsZr ? "ZR" : parts.SizeSpeedLetter is { } letter ? $"{letter}R" : null;
        SpeedAboveKmh = SpeedSymbol is not null ? null : parts.IsZr ? ZrAboveKmh : parts.SizeSpeedLetter is 'V' ? VrAboveKmh : null;
        LoadRange = parts.LoadRange ?? (parts.PlyRating is { } plies ? Tyres.LoadRange.Letter(plies) : null);
        PlyRating = parts.PlyRating ?? (parts.LoadRange is { } range ? Tyres.LoadRange.PlyRating(range) : null);
        IsTubeless = parts.IsTubeless;
        IsTemporarySpare = parts.IsTemporarySpare;
        IsSpeedOpenEnded = parts.IsSpeedOpenEnded;
        IsZr = parts.IsZr;
        IsLoadVersionMarked = parts.LoadVersion is not null;
        LoadVersion = parts.LoadVersion ?? LoadVersion.StandardLoad;
        IsPMetric = parts.IsPMetric;
        IsRunFlat = parts.IsRunFlat ? true : parts.UnreadMarks.Exists(static mark => char.IsAsciiLetter(mark[^1])) ? null : false;
        HasMudAndSnowMark = parts.HasMudAndSnowMark;
        HasMountainMark = parts.HasMountainMark;
        UnreadMarks = parts.UnreadMarks.AsReadOnly();
        LoadCapacityKg = LoadIndex is { } index ? LoadIndexTable.CapacityKg(index) : null;
        AspectRatioPct = parts.MarkedAspectPct;
        NominalSectionWidthMm = parts.IsInchWidth || parts.OverallDiameterIn is not null ? parts.SectionWidth * TyreDimensions.MmPerInch : parts.SectionWidth;
        HasDimensions = !parts.LacksHeight;
        if (HasDimensions)
        {
            _dimensions = DesignDimensions(parts);
            _permittedRimWidth = PermittedRimWidthTable.For(NominalSectionWidthMm, AspectRatioPct, RimDiameterIn, _dimensions.MeasuringRimWidthIn);
            _rollingCircumferenceMm = RollingCircumference.Mm(_dimensions, Construction);
        }

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

    /// <summary>Rim diameter code in inches, whole or half; of a rim marked in mm, the same in inches.</summary>
    public double RimDiameterIn { get; }

    /// <summary>Rim diameter in mm where it is marked so (190/65R390); such a tyre fits no rim of an inch code. Null on inch rims.</summary>
    public double? RimDiameterMm { get; }

    /// <summary>Load index in single fitment, 0 to 200; null where the marking has no service description.</summary>
    public int? LoadIndex { get; }

    /// <summary>Load index in twin fitment; null where only one is marked.</summary>
    public int? LoadIndexDual { get; }

    /// <summary>Speed symbol; null where the marking has no service description.</summary>
    public SpeedSymbol? SpeedSymbol { get; }

    /// <summary>True for a symbol in brackets, "(94Y)": the tyre is made for speeds above the symbol's.</summary>
    public bool IsSpeedOpenEnded { get; }

    /// <summary>A second service description beside the first, for another use; null without one. Load and speed are judged by the first.</summary>
    public ServiceDescription? SecondServiceDescription { get; }

    /// <summary>The speed letters within the size (SR, HR, VR, ZR); null without them.</summary>
    public string? SpeedInSize { get; }

    /// <summary>The speed in km/h that VR or ZR promises more than, without saying how much; null where a speed symbol says it, or nothing does.</summary>
    public double? SpeedAboveKmh { get; }

    /// <summary>Load range, A to N, as marked or by the ply rating; null without either.</summary>
    public char? LoadRange { get; }

    /// <summary>Ply rating as marked or by the load range, 2 to 24; null without either.</summary>
    public int? PlyRating { get; }

    /// <summary>True for a tyre marked to be used without a tube, false with one; null where no mark says so.</summary>
    public bool? IsTubeless { get; }

    /// <summary>True for a temporary spare, marked T before the size.</summary>
    public bool IsTemporarySpare { get; }

    /// <summary>True where the size carries ZR, a capability above 240 km/h (French order of 24 October 1994, Annex I).</summary>
    public bool IsZr { get; }

    /// <summary>The load version; standard load where none is marked.</summary>
    public LoadVersion LoadVersion { get; }

    /// <summary>True where the load version stands on the tyre; false where standard load is taken because no mark says otherwise.</summary>
    public bool IsLoadVersionMarked { get; }

    /// <summary>True for a size with P before it, of the American family of car tyres.</summary>
    public bool IsPMetric { get; }

    /// <summary>
    /// True for a tyre marked to run without air for a limited distance; null where groups of letters stand unread, since makers have codes of their own
    /// for it; false where nothing says so.
    /// </summary>
    public bool? IsRunFlat { get; }

    /// <summary>True for a tyre marked M+S.</summary>
    public bool HasMudAndSnowMark { get; }

    /// <summary>True for a tyre with the mountain and snowflake mark, written 3PMSF.</summary>
    public bool HasMountainMark { get; }

    /// <summary>True where either snow mark stands on the tyre.</summary>
    public bool IsSnowTyre => HasMudAndSnowMark || HasMountainMark;

    /// <summary>Marks that stand in the text and mean nothing here, in capitals and in order.</summary>
    public IReadOnlyList<string> UnreadMarks { get; }

    /// <summary>
    /// True where the tyre's dimensions follow from its size. False for widths in inches alone (6.00-16) and for rims in mm without an aspect ratio
    /// (165-380): no rule for their height could be read.
    /// </summary>
    public bool HasDimensions { get; }

    /// <summary>Design dimensions and their limits. Only where <see cref="HasDimensions"/>.</summary>
    /// <exception cref="InvalidOperationException">The size has no rule for its height.</exception>
    public TyreDimensions Dimensions
    {
        get
        {
            if (!HasDimensions) RefuseDimensions();
            return _dimensions;
        }
    }

    /// <summary>The rim widths the tyre may be fitted to. Only where <see cref="HasDimensions"/>.</summary>
    /// <exception cref="InvalidOperationException">The size has no rule for its height.</exception>
    public PermittedRimWidth PermittedRimWidth
    {
        get
        {
            if (!HasDimensions) RefuseDimensions();
            return _permittedRimWidth;
        }
    }

    /// <summary>The load the index stands for, in kg; null without one.</summary>
    public double? LoadCapacityKg { get; }

    /// <summary>The speed the symbol stands for, in km/h; null without one. For a bracketed symbol the tyre's own limit is higher.</summary>
    public double? MaximumSpeedKmh => SpeedSymbol?.MaximumKmh;

    /// <summary>Distance covered in one turn in mm, at maximum load, specified pressure and 60 km/h. Only where <see cref="HasDimensions"/>.</summary>
    /// <exception cref="InvalidOperationException">The size has no rule for its height.</exception>
    public double RollingCircumferenceMm
    {
        get
        {
            if (!HasDimensions) RefuseDimensions();
            return _rollingCircumferenceMm;
        }
    }

    /// <summary>True when the tyre goes on a rim of this diameter code. A hundredth of an inch is allowed for rims in mm, which inches write unevenly.</summary>
    public bool FitsRimDiameter(double rimDiameterIn) => Math.Abs(RimDiameterIn - rimDiameterIn) < 0.01;

    /// <inheritdoc/>
    public bool Equals(TyreMarking? other) => other is not null && StandardText == other.StandardText;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as TyreMarking);

    /// <inheritdoc/>
    public override int GetHashCode() => StandardText.GetHashCode(StringComparison.Ordinal);

    /// <summary>The marking in its usual spelling.</summary>
    public override string ToString() => StandardText;

    // What VR allows has no upper end, so it is no symbol.
    private static SpeedSymbol? SymbolInSize(char? letter) =>
        letter is { } known and not 'V' && SpeedSymbolTable.TryGet(known, out var symbol) ? symbol : null;

    private TyreDimensions DesignDimensions(TyreMarkingParts parts) => parts.OverallDiameterIn is { } overallDiameterIn
        ? TyreDimensionRules.ForFlotation(overallDiameterIn, parts.SectionWidth, RimDiameterIn, Construction, IsSnowTyre)
        : TyreDimensionRules.ForMetric(
            parts.SectionWidth, parts.MarkedAspectPct ?? TyreDimensionRules.UnmarkedAspectRatioPct, RimDiameterIn, Construction, IsSnowTyre);

    // Apart from the getters, so that these stay small enough to be inlined.
    [DoesNotReturn]
    private void RefuseDimensions() => throw new InvalidOperationException($"The size of {StandardText} has no rule for its height; ask HasDimensions first.");
}

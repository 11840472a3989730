using System.Globalization;

namespace SetupService.Domain.Wheels;

/// <summary>A wheel's stamped marking, read by <see cref="WheelMarkingReader"/>.</summary>
public sealed record WheelMarking
{
    /// <summary>The marking as typed, without spaces at either end.</summary>
    public required string Text { get; init; }

    /// <summary>Rim diameter code in inches, whole or half.</summary>
    public required double RimDiameterIn { get; init; }

    /// <summary>Rim width code in inches.</summary>
    public required double RimWidthIn { get; init; }

    /// <summary>Flange contour as stamped (B, J, JJ, JK, K or L); null where none is.</summary>
    public string? Contour { get; init; }

    /// <summary>Hump as stamped (H, H2, FH, FH2, CH, EH, EH2 or EH2+); null where none is.</summary>
    public string? Hump { get; init; }

    /// <summary>Offset in mm, positive = mounting face outboard of the centre plane; null where none is stamped.</summary>
    public double? OffsetMm { get; init; }

    /// <summary>The holes' circle; null where none is stamped.</summary>
    public BoltCircle? BoltCircle { get; init; }

    /// <summary>Diameter of the centre bore in mm; null where none is stamped.</summary>
    public double? CentreBoreMm { get; init; }

    /// <summary>The load the wheel is rated for, in kg; null where none is stamped.</summary>
    public double? LoadRatingKg { get; init; }

    /// <summary>
    /// The marking in its usual spelling, such as "8.5Jx18 H2 ET44 5x112 CB66.6". Reading it gives the same marking again.
    /// </summary>
    public string StandardText => string.Join(' ', new[]
    {
        string.Create(CultureInfo.InvariantCulture, $"{RimWidthIn:0.#########}{Contour}x{RimDiameterIn:0.#}"),
        Hump,
        OffsetMm is { } offsetMm ? string.Create(CultureInfo.InvariantCulture, $"ET{offsetMm:0.#########}") : null,
        BoltCircle?.ToString(),
        CentreBoreMm is { } boreMm ? string.Create(CultureInfo.InvariantCulture, $"CB{boreMm:0.#########}") : null,
        LoadRatingKg is { } loadKg ? string.Create(CultureInfo.InvariantCulture, $"{loadKg:0}kg") : null,
    }.Where(static part => part is not null));

    /// <summary>
    /// The flange whose width is counted: that of the stamped contour, or J where none is stamped or the standard's table does
    /// not have it.
    /// </summary>
    public RimFlange Flange => StampedFlange ?? RimFlangeTable.J;

    /// <summary>True where <see cref="Flange"/> is J by common modern practice (no source) and not by the stamp.</summary>
    public bool IsFlangeAssumed => StampedFlange is null;

    /// <summary>The wheel from flange edge to flange edge, in mm.</summary>
    public double OverFlangesMm => RimWidth.OverFlangesMm(RimWidthIn, Flange);

    /// <summary>Mounting face to the inboard flange edge in mm; null without an offset.</summary>
    public double? BackspacingMm => OffsetMm is { } offset ? RimWidth.BackspacingMm(OverFlangesMm, offset) : null;

    /// <summary>Mounting face to the outboard flange edge in mm; null without an offset.</summary>
    public double? FrontspacingMm => OffsetMm is { } offset ? RimWidth.FrontspacingMm(OverFlangesMm, offset) : null;

    /// <summary>The flange of the stamped contour; null where none is stamped or the standard's table does not have it.</summary>
    public RimFlange? StampedFlange => Contour is null ? null : RimFlangeTable.Find(Contour);
}

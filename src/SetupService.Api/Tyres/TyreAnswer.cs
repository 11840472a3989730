using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>What a tyre's marking says, and what follows from it.</summary>
public sealed record TyreAnswer
{
    /// <summary>The marking as sent.</summary>
    [Sample("225/45R17 94W XL")]
    public required string Marking { get; init; }

    /// <summary>The marking in its usual spelling.</summary>
    [Sample("225/45R17 94W XL")]
    public required string StandardMarking { get; init; }

    /// <summary>Nominal section width.</summary>
    [Sample(225.0)]
    public required double NominalSectionWidthMm { get; init; }

    /// <summary>Section height as a share of the width; null where none is marked.</summary>
    [Sample(45.0)]
    public required double? AspectRatioPct { get; init; }

    /// <summary>How the carcass is built.</summary>
    [Sample("radial")]
    public required TyreConstruction Construction { get; init; }

    /// <summary>Nominal rim diameter code.</summary>
    [Sample(17.0)]
    public required double RimDiameterIn { get; init; }

    /// <summary>Load index in single fitment; null where none is marked.</summary>
    [Sample(94)]
    public required int? LoadIndex { get; init; }

    /// <summary>Load index in twin fitment; null where only one is marked.</summary>
    [Sample(92)]
    public required int? LoadIndexDual { get; init; }

    /// <summary>The load the index stands for; null without one.</summary>
    [Sample(670.0)]
    public required double? LoadCapacityKg { get; init; }

    /// <summary>Speed symbol; null where none is marked.</summary>
    [Sample("W")]
    public required string? SpeedSymbol { get; init; }

    /// <summary>The speed the symbol stands for; null without one.</summary>
    [Sample(270.0)]
    public required double? MaximumSpeedKmh { get; init; }

    /// <summary>Whether brackets around the service description mark the tyre for more than the symbol's speed.</summary>
    [Sample(false)]
    public required bool SpeedOpenEnded { get; init; }

    /// <summary>Load version, as the trade marks it; SL where none is marked.</summary>
    [Sample("XL")]
    public required string LoadVersion { get; init; }

    /// <summary>Whether the tyre is marked to run without air for a limited distance.</summary>
    [Sample(false)]
    public required bool RunFlat { get; init; }

    /// <summary>Snow marks on the tyre: M+S, 3PMSF.</summary>
    [Sample("M+S")]
    public required string[] SnowMarks { get; init; }

    /// <summary>Overall diameter, new and unloaded, by the standard's rule.</summary>
    [Sample(634.0)]
    public required double OverallDiameterMm { get; init; }

    /// <summary>The largest overall diameter in service.</summary>
    [Sample(642.1)]
    public required double MaximumOverallDiameterMm { get; init; }

    /// <summary>Section height.</summary>
    [Sample(101.0)]
    public required double SectionHeightMm { get; init; }

    /// <summary>Diameter of the rim at the bead seat.</summary>
    [Sample(432.0)]
    public required double RimDiameterMm { get; init; }

    /// <summary>Section width on the measuring rim.</summary>
    [Sample(225.0)]
    public required double DesignSectionWidthMm { get; init; }

    /// <summary>The largest section width in service on the measuring rim.</summary>
    [Sample(234.0)]
    public required double MaximumSectionWidthMm { get; init; }

    /// <summary>The rim on which the section width is measured.</summary>
    [Sample(7.5)]
    public required double MeasuringRimWidthIn { get; init; }

    /// <summary>The rim widths the tyre may be fitted to, in inches.</summary>
    public required PermittedRimWidthPart PermittedRimWidthIn { get; init; }

    /// <summary>Distance rolled in one turn at 60 km/h.</summary>
    [Sample(1933.7)]
    public required double RollingCircumferenceMm { get; init; }

    /// <summary>Turns per kilometre at 60 km/h.</summary>
    [Sample(517.1)]
    public required double RevolutionsPerKm { get; init; }

    /// <summary>What the marking gives on a given rim, pressure, speed or load; null where none was asked for.</summary>
    public required TyreInUsePart? InUse { get; init; }

    /// <summary>Marks in the text that mean nothing here, in order.</summary>
    [Sample("FR")]
    public required string[] UnreadMarks { get; init; }

    /// <summary>The page under /docs/methods that says how markings are read; dimensions and loads have their own.</summary>
    [Sample("tyre-marking")]
    public required string Method { get; init; }

    /// <summary>Edition of model and tables.</summary>
    [Sample("2026.11")]
    public required string Edition { get; init; }

    /// <summary>What was taken although the marking does not say it.</summary>
    public required AssumptionResponse[] Assumptions { get; init; }

    /// <summary>What can hurt somebody who acts on the answer.</summary>
    public required CautionResponse[] Cautions { get; init; }
}

using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Shared;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>A tyre, with what is known of it beyond its marking.</summary>
public sealed record TyreDocument
{
    /// <summary>The size and service description on the sidewall.</summary>
    [JsonRequired]
    [StringLength(TyreMarkingReader.MaximumLength)]
    [Sample("225/45R17 91W")]
    public string Marking { get; set; } = "";

    /// <summary>Mass of the tyre.</summary>
    [Range(1, 150)]
    [Sample(9.9)]
    public double? MassKg { get; set; }

    /// <summary>Inflation pressure, gauge, cold.</summary>
    [Range(80, 500)]
    [Sample(230.0)]
    public double? PressureKpa { get; set; }

    /// <summary>How far the tyre's rim protector stands out beyond its section width, at each side; none where left out.</summary>
    [Range(0, 30)]
    [Sample(0.0)]
    public double? RimProtectorMm { get; set; }

    /// <summary>Vertical stiffness at that pressure near the working load.</summary>
    [Range(20, 2000)]
    [Sample(210.0)]
    public double? VerticalRateNPerMm { get; set; }

    /// <summary>Cornering stiffness of one tyre at its static load.</summary>
    [Range(50, 20000)]
    [Sample(1050.0)]
    public double? CorneringStiffnessNPerDeg { get; set; }

    /// <summary>What the tyre is made for: it tells roughly how much it grips on a dry road.</summary>
    [Sample("summer")]
    public TyreCategory? Category { get; set; }
}

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

    /// <summary>Nominal rim diameter code; of a rim marked in mm (190/65R390), the same in inches.</summary>
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
    public required bool IsSpeedOpenEnded { get; init; }

    /// <summary>The speed letters within the size (SR, HR, VR, ZR); null without them. VR stands for more than 210 km/h and ZR for more than 240, without saying how much.</summary>
    [Sample("ZR")]
    public required string? SpeedInSize { get; init; }

    /// <summary>A second service description beside the first, for another use of a commercial tyre; null without one. The checks go by the first.</summary>
    public required SecondServiceDescriptionResponse? SecondServiceDescription { get; init; }

    /// <summary>Load range, A to N, as marked or as the ply rating stands for; null without either. It does not fix the pressure.</summary>
    [Sample("E")]
    public required string? LoadRange { get; init; }

    /// <summary>Ply rating, as marked or as the load range stands for; null without either.</summary>
    [Sample(10)]
    public required int? PlyRating { get; init; }

    /// <summary>Load version, as the trade marks it; SL where none is marked.</summary>
    [Sample("XL")]
    public required string LoadVersion { get; init; }

    /// <summary>Whether the tyre is marked to run without air for a limited distance; null where letters stand unread that may be a maker's code for it.</summary>
    [Sample(false)]
    public required bool? IsRunFlat { get; init; }

    /// <summary>Whether the tyre is marked for use without a tube (TL) or with one (TT); null where it says neither.</summary>
    [Sample(true)]
    public required bool? IsTubeless { get; init; }

    /// <summary>Whether this is a temporary spare, marked T before the size.</summary>
    [Sample(false)]
    public required bool IsTemporarySpare { get; init; }

    /// <summary>What owners' manuals usually say of temporary spares; null for other tyres.</summary>
    public required TemporarySpareResponse? TemporarySpare { get; init; }

    /// <summary>Snow marks on the tyre: M+S, 3PMSF.</summary>
    [Sample("M+S")]
    public required string[] SnowMarks { get; init; }

    /// <summary>Overall diameter, new and unloaded, by the standard's rule; null, as every dimension that goes by the height, where no rule for the size is known: <c>unknown</c> then says so.</summary>
    [Sample(634.0)]
    public required double? OverallDiameterMm { get; init; }

    /// <summary>The largest overall diameter in service.</summary>
    [Sample(642.1)]
    public required double? MaximumOverallDiameterMm { get; init; }

    /// <summary>Section height.</summary>
    [Sample(101.0)]
    public required double? SectionHeightMm { get; init; }

    /// <summary>Diameter of the rim at the bead seat.</summary>
    [Sample(432.0)]
    public required double RimDiameterMm { get; init; }

    /// <summary>Section width on the measuring rim.</summary>
    [Sample(225.0)]
    public required double? DesignSectionWidthMm { get; init; }

    /// <summary>The largest section width in service on the measuring rim.</summary>
    [Sample(234.0)]
    public required double? MaximumSectionWidthMm { get; init; }

    /// <summary>The rim on which the section width is measured.</summary>
    [Sample(7.5)]
    public required double? MeasuringRimWidthIn { get; init; }

    /// <summary>The rim widths the tyre may be fitted to, in inches.</summary>
    public required PermittedRimWidthResponse? PermittedRimWidthIn { get; init; }

    /// <summary>Distance rolled in one turn at 60 km/h.</summary>
    [Sample(1933.7)]
    public required double? RollingCircumferenceMm { get; init; }

    /// <summary>Turns per kilometre at 60 km/h.</summary>
    [Sample(517.1)]
    public required double? RevolutionsPerKm { get; init; }

    /// <summary>What the marking gives on a given rim, pressure, speed or load; null where none was asked for.</summary>
    public required TyreInUseResponse? InUse { get; init; }

    /// <summary>Marks in the text that mean nothing here, in order: a vehicle maker's mark of approval, groups of capitals.</summary>
    [Sample("FR")]
    public required string[] UnreadMarks { get; init; }

    /// <summary>What the marking does not tell, and why.</summary>
    public required UnknownResponse[] Unknown { get; init; }

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

/// <summary>A second service description of a commercial tyre.</summary>
public sealed record SecondServiceDescriptionResponse
{
    /// <summary>Load index in single fitment.</summary>
    [Sample(115)]
    public required int LoadIndex { get; init; }

    /// <summary>Load index in twin fitment; null where only one is marked.</summary>
    [Sample(113)]
    public required int? LoadIndexDual { get; init; }

    /// <summary>The load the index stands for.</summary>
    [Sample(1215.0)]
    public required double LoadCapacityKg { get; init; }

    /// <summary>Speed symbol.</summary>
    [Sample("N")]
    public required string SpeedSymbol { get; init; }

    /// <summary>The speed the symbol stands for.</summary>
    [Sample(140.0)]
    public required double MaximumSpeedKmh { get; init; }
}

/// <summary>What owners' manuals usually say of temporary spares. The sidewall and the car's own handbook decide.</summary>
public sealed record TemporarySpareResponse
{
    /// <summary>The usual cold pressure.</summary>
    [Sample(420.0)]
    public required double UsualPressureKpa { get; init; }

    /// <summary>The usual top speed, whatever the speed symbol says.</summary>
    [Sample(80.0)]
    public required double UsualMaximumSpeedKmh { get; init; }

    /// <summary>About how far the tread lasts.</summary>
    [Sample(5000.0)]
    public required double UsualTreadLifeKm { get; init; }

    /// <summary>Where the figures come from.</summary>
    [Sample("vehicle owners' manuals, five on pressure")]
    public required string Source { get; init; }
}

/// <summary>The rim widths a tyre may be fitted to.</summary>
public sealed record PermittedRimWidthResponse
{
    /// <summary>The narrowest rim, inches.</summary>
    [Sample(7.0)]
    public required double From { get; init; }

    /// <summary>The widest rim, inches.</summary>
    [Sample(8.5)]
    public required double To { get; init; }

    /// <summary>Where the two come from.</summary>
    [Sample("listed, from memory")]
    public required string Source { get; init; }
}

/// <summary>A tyre on a given rim, at a given pressure, speed or load. What was not asked for is null.</summary>
public sealed record TyreInUseResponse
{
    /// <summary>Section width on the rim asked about.</summary>
    [Sample(230.1)]
    public required double? SectionWidthOnRimMm { get; init; }

    /// <summary>The largest section width in service on that rim.</summary>
    [Sample(239.3)]
    public required double? MaximumSectionWidthOnRimMm { get; init; }

    /// <summary>The top speed these figures are for: the one asked about, else the speed symbol's own; null without either.</summary>
    [Sample(228.0)]
    public required double? TopSpeedKmh { get; init; }

    /// <summary>What the tyre carries at the pressure and top speed asked about; null below 150 kPa, where the standard's table begins, where it ties the load to a pressure only the maker states, and beyond the symbol's speed.</summary>
    [Sample(556.8)]
    public required double? LoadCapacityAtPressureKg { get; init; }

    /// <summary>Cold pressure that carries the load asked about, 150 kPa or more; null where none does.</summary>
    [Sample(196.2)]
    public required double? PressureForLoadKpa { get; init; }

    /// <summary>What the handbook adds to that pressure for sustained speed; null where it does not say.</summary>
    [Sample(30.0)]
    public required double? SpeedPressureAdditionKpa { get; init; }

    /// <summary>Radius under the load asked about: from the vertical rate where given, else a static estimate; null where the rate would press the tyre onto its rim.</summary>
    [Sample(307.9)]
    public required double? LoadedRadiusMm { get; init; }

    /// <summary>Distance rolled in one turn at the speed asked about.</summary>
    [Sample(1952.9)]
    public required double? RollingCircumferenceAtSpeedMm { get; init; }
}

namespace SetupService.Domain.Tyres;

/// <summary>What has been read of a marking so far; the reader fills it part by part.</summary>
internal sealed class TyreMarkingParts
{
    /// <summary>Section width in mm where the size is metric, in inches where an outer diameter is marked.</summary>
    public double SectionWidth { get; set; }

    /// <summary>Outer diameter in inches, only on high-flotation sizes.</summary>
    public double? OverallDiameterIn { get; set; }

    /// <summary>Aspect ratio as marked, in percent.</summary>
    public double? MarkedAspectPct { get; set; }

    public TyreConstruction Construction { get; set; }

    public double RimDiameterIn { get; set; }

    public bool IsZr { get; set; }

    public bool IsPMetric { get; set; }

    public LoadVersion? LoadVersion { get; set; }

    public int? LoadIndex { get; set; }

    public int? LoadIndexDual { get; set; }

    public SpeedSymbol? SpeedSymbol { get; set; }

    public bool IsSpeedOpenEnded { get; set; }

    public bool IsRunFlat { get; set; }

    public bool HasMudAndSnowMark { get; set; }

    public bool HasMountainMark { get; set; }

    public List<string> UnreadMarks { get; } = [];
}

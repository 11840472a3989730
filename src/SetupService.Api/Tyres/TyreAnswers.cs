using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>Turns a marking that was read into the answer of the call.</summary>
internal static class TyreAnswers
{
    private static readonly CautionResponse Rating = new()
    {
        Code = "tyresBeyondRating",
        Text = "Load index and speed symbol are the most a sound tyre may carry and run at, at its reference pressure. A tyre beyond them, worn, damaged or old can burst; local law and a tyre professional decide what may be fitted.",
    };

    private static readonly AssumptionResponse Dimensions = new()
    {
        Input = "/marking",
        Value = null,
        Text = "measuring rim, permitted rims and in-service limits",
        Source = "from memory; the standard's tables were not read",
        Reason = "They follow from the size by the standard's pattern; the tyre's maker states the permitted rims.",
    };

    private static readonly AssumptionResponse Radius = new()
    {
        Input = "verticalRateNPerMm",
        Value = null,
        Text = "a vertical rate estimated from size, pressure and load",
        Source = "published formula of 2005 for a radial's vertical rate, from memory; docs/methods/tyre-dimensions",
        Reason = "The loaded radius of the standing tyre depends on its vertical rate, which was not given; against one published set of rates the formula is 1 to 13 % low.",
    };

    public static TyreAnswer Create(TyreMarking marking, TyreInUseResponse? inUse, double? verticalRateNPerMm) => new()
    {
        Marking = marking.Text,
        StandardMarking = marking.StandardText,
        NominalSectionWidthMm = marking.NominalSectionWidthMm,
        AspectRatioPct = marking.AspectRatioPct,
        Construction = marking.Construction,
        RimDiameterIn = marking.RimDiameterIn,
        LoadIndex = marking.LoadIndex,
        LoadIndexDual = marking.LoadIndexDual,
        LoadCapacityKg = marking.LoadCapacityKg,
        SpeedSymbol = marking.SpeedSymbol?.Letter.ToString(),
        MaximumSpeedKmh = marking.MaximumSpeedKmh,
        IsSpeedOpenEnded = marking.IsSpeedOpenEnded,
        LoadVersion = Mark(marking.LoadVersion),
        IsRunFlat = marking.IsRunFlat,
        SnowMarks = SnowMarks(marking),
        OverallDiameterMm = marking.Dimensions.OverallDiameterMm,
        MaximumOverallDiameterMm = marking.Dimensions.MaximumOverallDiameterMm,
        SectionHeightMm = marking.Dimensions.SectionHeightMm,
        RimDiameterMm = marking.Dimensions.RimDiameterMm,
        DesignSectionWidthMm = marking.Dimensions.DesignSectionWidthMm,
        MaximumSectionWidthMm = marking.Dimensions.MaximumSectionWidthOnRimMm(marking.Dimensions.MeasuringRimWidthIn),
        MeasuringRimWidthIn = marking.Dimensions.MeasuringRimWidthIn,
        PermittedRimWidthIn = new PermittedRimWidthResponse
        {
            From = marking.PermittedRimWidth.MinimumIn,
            To = marking.PermittedRimWidth.MaximumIn,
            Source = marking.PermittedRimWidth.Source,
        },
        RollingCircumferenceMm = marking.RollingCircumferenceMm,
        RevolutionsPerKm = RollingCircumference.RevolutionsPerKm(marking.RollingCircumferenceMm),
        InUse = inUse,
        UnreadMarks = [.. marking.UnreadMarks],
        Method = "tyre-marking",
        Edition = Edition.Current,
        Assumptions = inUse is not null && verticalRateNPerMm is null ? [Dimensions, Radius] : [Dimensions],
        Cautions = [Rating],
    };

    /// <summary>A load version as the trade marks it.</summary>
    private static string Mark(LoadVersion version) => version switch
    {
        LoadVersion.StandardLoad => "SL",
        LoadVersion.ExtraLoad => "XL",
        LoadVersion.LightLoad => "LL",
        LoadVersion.HighLoad => "HL",
        LoadVersion.Commercial => "C",
        LoadVersion.CommercialCamper => "CP",
        _ => "LT",
    };

    private static string[] SnowMarks(TyreMarking marking) => (marking.HasMudAndSnowMark, marking.HasMountainMark) switch
    {
        (true, true) => ["M+S", "3PMSF"],
        (true, false) => ["M+S"],
        (false, true) => ["3PMSF"],
        _ => [],
    };
}

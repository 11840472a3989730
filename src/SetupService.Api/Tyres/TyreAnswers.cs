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

    private static CautionResponse Spare(UnitSystem units) => new()
    {
        Code = "temporarySpare",
        Text = Prose.Write(
            units,
            $"A temporary spare is made for the way to a workshop. Its sidewall and the car's handbook give its pressure, usually {TemporarySpare.UsualPressure(units)} cold, and its speed, usually {TemporarySpare.UsualMaximumSpeedKmh:kmh}; put the proper wheel back at once."),
    };

    public static TyreAnswer Create(TyreMarking marking, TyreInUseResponse? inUse, double? verticalRateNPerMm, UnitSystem units)
    {
        TyreDimensions? dimensions = marking.HasDimensions ? marking.Dimensions : null;
        double? rollingMm = marking.HasDimensions ? marking.RollingCircumferenceMm : null;
        return Create(marking, dimensions, rollingMm, inUse, verticalRateNPerMm, units);
    }

    private static TyreAnswer Create(TyreMarking marking, TyreDimensions? dimensions, double? rollingMm, TyreInUseResponse? inUse, double? verticalRateNPerMm, UnitSystem units) => new()
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
        SpeedInSize = marking.SpeedInSize,
        SecondServiceDescription = marking.SecondServiceDescription is { } second ? Second(second) : null,
        LoadRange = marking.LoadRange?.ToString(),
        PlyRating = marking.PlyRating,
        LoadVersion = Mark(marking.LoadVersion),
        IsRunFlat = marking.IsRunFlat,
        IsTubeless = marking.IsTubeless,
        IsTemporarySpare = marking.IsTemporarySpare,
        TemporarySpare = marking.IsTemporarySpare ? UsualOfSpares : null,
        SnowMarks = SnowMarks(marking),
        OverallDiameterMm = dimensions?.OverallDiameterMm,
        MaximumOverallDiameterMm = dimensions?.MaximumOverallDiameterMm,
        SectionHeightMm = dimensions?.SectionHeightMm,
        RimDiameterMm = TyreDimensionRules.RimDiameterMm(marking.RimDiameterIn),
        DesignSectionWidthMm = dimensions?.DesignSectionWidthMm,
        MaximumSectionWidthMm = dimensions is { } widest ? widest.MaximumSectionWidthOnRimMm(widest.MeasuringRimWidthIn) : null,
        MeasuringRimWidthIn = dimensions?.MeasuringRimWidthIn,
        PermittedRimWidthIn = dimensions is null ? null : new PermittedRimWidthResponse
        {
            From = marking.PermittedRimWidth.MinimumIn,
            To = marking.PermittedRimWidth.MaximumIn,
            Source = marking.PermittedRimWidth.Source,
        },
        RollingCircumferenceMm = rollingMm,
        RevolutionsPerKm = rollingMm is { } circumferenceMm ? RollingCircumference.RevolutionsPerKm(circumferenceMm) : null,
        InUse = inUse,
        UnreadMarks = [.. marking.UnreadMarks],
        Unknown = dimensions is null ? [UnknownResponse.Create("overallDiameterMm", $"{SizeWithoutRule(marking)}; its maker's table has its diameter, width and rims.")] : [],
        Method = "tyre-marking",
        Edition = Edition.Current,
        Assumptions = dimensions is null ? [] : inUse is not null && verticalRateNPerMm is null ? [Dimensions, Radius] : [Dimensions],
        Cautions = marking.IsTemporarySpare ? [Spare(units), Rating] : [Rating],
    };

    /// <summary>Why a size has no dimensions, without a full stop.</summary>
    public static string SizeWithoutRule(TyreMarking marking) =>
        $"No rule that could be read says how high and wide a tyre {marking.StandardText} is";

    private static TemporarySpareResponse UsualOfSpares { get; } = new()
    {
        UsualPressureKpa = TemporarySpare.UsualPressureKpa,
        UsualMaximumSpeedKmh = TemporarySpare.UsualMaximumSpeedKmh,
        UsualTreadLifeKm = TemporarySpare.UsualTreadLifeKm,
        Source = TemporarySpare.Source,
    };

    private static SecondServiceDescriptionResponse Second(ServiceDescription second) => new()
    {
        LoadIndex = second.LoadIndex,
        LoadIndexDual = second.LoadIndexDual,
        LoadCapacityKg = second.LoadCapacityKg,
        SpeedSymbol = second.SpeedSymbol.Letter.ToString(),
        MaximumSpeedKmh = second.SpeedSymbol.MaximumKmh,
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

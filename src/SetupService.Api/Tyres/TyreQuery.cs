using SetupService.Api.Http.Queries;
using SetupService.Domain.Tyres;

namespace SetupService.Api.Tyres;

/// <summary>What a caller may ask of a tyre beyond its marking.</summary>
internal static class TyreQuery
{
    public static TextParameter Marking { get; } = new(
        "marking", "The size and service description on the sidewall, as people type it.", TyreMarkingReader.MaximumLength, "225/45R17 94W XL")
    {
        IsRequired = true,
        Judge = static text => TyreMarkingReader.Read(text).Fault,
    };

    public static NumberParameter RimWidthIn { get; } = new("rimWidthIn", "Rim width on which the section width is wanted.", 3, 16, 8);

    public static NumberParameter PressureKpa { get; } = new("pressureKpa", "Cold gauge pressure at which the load capacity is wanted.", 80, 500, 230);

    public static NumberParameter TopSpeedKmh { get; } = new("topSpeedKmh", "Top speed of the car, which reduces what V, W and Y tyres carry.", 20, 500, 228);

    public static NumberParameter LoadKg { get; } = new("loadKg", "Load on the tyre, for the pressure that carries it and the loaded radius.", 10, 5000, 435);

    public static NumberParameter VerticalRateNPerMm { get; } = new("verticalRateNPerMm", "Vertical rate of the tyre, for the loaded radius.", 20, 2000, 210);

    public static QueryParameter[] All { get; } = [Marking, RimWidthIn, PressureKpa, TopSpeedKmh, LoadKg, VerticalRateNPerMm, QueryParameters.Units];

    /// <summary>The figures asked for; null where none is.</summary>
    public static TyreInUseResponse? Answer(TyreMarking marking, QueryReader query)
    {
        var rimWidthIn = query.Number(RimWidthIn);
        var pressureKpa = query.Number(PressureKpa);
        var topSpeedKmh = query.Number(TopSpeedKmh);
        var loadKg = query.Number(LoadKg);
        var rateNPerMm = query.Number(VerticalRateNPerMm);
        if (rimWidthIn is null && pressureKpa is null && topSpeedKmh is null && loadKg is null && rateNPerMm is null)
            return null;

        var inUse = TyreInUse.Compute(marking, rimWidthIn, pressureKpa, topSpeedKmh, loadKg, rateNPerMm);
        return new TyreInUseResponse
        {
            SectionWidthOnRimMm = inUse.SectionWidthOnRimMm,
            MaximumSectionWidthOnRimMm = inUse.MaximumSectionWidthOnRimMm,
            LoadCapacityAtPressureKg = inUse.LoadCapacityAtPressureKg,
            PressureForLoadKpa = inUse.PressureForLoadKpa,
            SpeedPressureAdditionKpa = inUse.SpeedPressureAdditionKpa,
            LoadedRadiusMm = inUse.LoadedRadiusMm,
            RollingCircumferenceAtSpeedMm = inUse.RollingCircumferenceAtSpeedMm,
            TopSpeedKmh = topSpeedKmh ?? marking.MaximumSpeedKmh,
        };
    }
}

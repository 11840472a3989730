using SetupService.Api.Vehicles;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>Reads what is adjusted into domain values.</summary>
internal static class AdjustmentReading
{
    private const double WidestMm = 100;
    private const double WidestDeg = 5;

    public static Adjustment[] Read(AdjustmentDocument[] documents) =>
        Array.ConvertAll(documents, one => What(one) with { Amount = one.AmountMm ?? one.AmountDeg ?? 0 });

    public static AdjusterRoom[] Read(AdjusterRoomDocument[] documents) => Array.ConvertAll(documents, one =>
    {
        var what = What(one);
        return what.IsAngle
            ? new AdjusterRoom(what, one.MinimumDeg ?? -WidestDeg, one.MaximumDeg ?? WidestDeg)
            : new AdjusterRoom(what, one.MinimumMm ?? -WidestOf(what), one.MaximumMm ?? WidestOf(what));
    });

    public static Adjustment[] Read(TopMountMoveDocument document) =>
        [new(Adjuster.StrutTopInboard, document.Inboard), new(Adjuster.StrutTopRearward, document.Rearward)];

    /// <summary>
    /// The room of a top mount. Inboard is the way to camber and rearward the way to caster: without a limit of its own each is used
    /// only where its angle is wanted, or the last hundredth of a degree of camber would be bought with a hand's breadth rearward.
    /// </summary>
    public static AdjusterRoom[] Read(TopMountLimitsDocument? document, AngleTargetDocument target) =>
    [
        Room(Adjuster.StrutTopInboard, document?.Inboard, isWanted: target.CamberDeg is not null),
        Room(Adjuster.StrutTopRearward, document?.Rearward, isWanted: target.CasterDeg is not null),
    ];

    private static AdjusterRoom Room(Adjuster adjuster, SlotDocument? slot, bool isWanted)
    {
        var widestMm = isWanted ? WidestMm : 0;
        return new(new(adjuster, 0), slot?.Minimum ?? -widestMm, slot?.Maximum ?? widestMm);
    }

    public static AngleTarget Read(AngleTargetDocument document) => new(document.CamberDeg, document.CasterDeg);

    private static Adjustment What(AdjusterDocument document) => new(document.Adjuster, 0)
    {
        LinkIndex = (document.Link ?? 1) - 1,
        BoltSpacingMm = document.BoltSpacingMm ?? 0,
        Pivot = document.Pivot is { } pivot ? SuspensionMapper.Read(pivot) : null,
    };

    private static double WidestOf(Adjustment what) => what.By == Adjuster.KnuckleEccentric ? AdjusterRules.MostThrow * what.BoltSpacingMm : WidestMm;
}

using SetupService.Domain.Suspension.Search;

namespace SetupService.Api.Geometry.Adjusting;

/// <summary>What either call asks: given adjustments, or a target and what may be adjusted for it.</summary>
/// <param name="Adjustments">The adjustments; null where there is a target.</param>
/// <param name="Rooms">What may be adjusted; null where adjustments are given.</param>
/// <param name="Target">The angles wanted; null where adjustments are given.</param>
/// <param name="ArchGapMm">Room to the arch, mm.</param>
/// <param name="ResetToe">Whether toe is reset.</param>
internal sealed record ChangeAsked(Adjustment[]? Adjustments, AdjusterRoom[]? Rooms, AngleTarget? Target, double? ArchGapMm, bool ResetToe)
{
    /// <summary>Everything that is or may be adjusted.</summary>
    public IEnumerable<Adjustment> Used => Adjustments ?? Rooms!.Where(room => room is not { Minimum: 0, Maximum: 0 }).Select(room => room.Adjustment with { Amount = 1 });

    public static ChangeAsked Of(TopMountMoveRequest request) => request.Target is { } target
        ? new(null, AdjustmentReading.Read(request.LimitsMm, target), AdjustmentReading.Read(target), request.LimitsMm?.ArchGap, request.ResetToe ?? false)
        : new(AdjustmentReading.Read(request.MoveMm!), null, null, null, request.ResetToe ?? false);

    public static ChangeAsked Of(AdjustmentRequest request) => request.Target is { } target
        ? new(null, AdjustmentReading.Read(request.Adjusters!), AdjustmentReading.Read(target), request.ArchGapMm, request.ResetToe ?? false)
        : new(AdjustmentReading.Read(request.Adjustments!), null, null, null, request.ResetToe ?? false);
}

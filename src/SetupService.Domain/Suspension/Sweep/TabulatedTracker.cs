using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Readings;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>Follows a wheel by readings: camber and toe over travel, the steering axis at the height it was read, nothing over the rack.</summary>
internal sealed class TabulatedTracker(MeasuredCorner corner, WheelSetup setup, WorkBudget? budget) : SuspensionTracker
{
    private readonly double _rideTravelMm = -setup.RideHeightChangeMm;
    private readonly double? _halfTrackMm = setup.TrackMm > 0 ? setup.TrackMm / 2 : null;

    // Toe is set after it was read, so its curve keeps its shape and goes through what is stated.
    private readonly double _toeShiftDeg = setup.ToeDeg - corner.ToeDegAt(0) ?? 0;

    /// <inheritdoc />
    public override SuspensionPosition? AtRide => TryReach(0, 0, out var position) ? position : null;

    /// <inheritdoc />
    public override bool TellsSteer => corner.ToeGap is null || setup.ToeDeg is not null;

    /// <inheritdoc />
    public override (double FromMm, double ToMm) Reach =>
        (corner.FirstMm - MeasuredSuspension.ExtensionMm - _rideTravelMm, corner.LastMm + MeasuredSuspension.ExtensionMm - _rideTravelMm);

    /// <inheritdoc />
    public override bool TryReach(double travelMm, double rackMm, out SuspensionPosition position)
    {
        position = default;
        var atMm = _rideTravelMm + travelMm;
        if ((budget is not null && !budget.TrySpend()) || rackMm != 0 || corner.CamberAt(atMm) is not { } camber) return false;
        var toe = corner.ToeAt(atMm);
        var toeDeg = toe is { } read ? read.AngleDeg with { Value = read.AngleDeg.Value + _toeShiftDeg } : StatedToe(atMm);
        position = new()
        {
            TravelMm = travelMm,
            RackMm = 0,
            CamberDeg = camber.AngleDeg.Value,
            CamberErrorDeg = camber.AngleDeg.StandardError,
            ToeDeg = toeDeg?.Value,
            ToeErrorDeg = toeDeg?.StandardError,
            CasterDeg = atMm == 0 ? corner.CasterDeg?.Value : null,
            SteeringAxisInclinationDeg = atMm == 0 ? corner.SteeringAxisInclinationDeg?.Value : null,
            HalfTrackMm = _halfTrackMm,
            CamberGainDegPerMm = camber.SlopeDegPerMm.Value,
            ToeGainDegPerMm = toe?.SlopeDegPerMm.Value,
        };
        return true;
    }

    /// <inheritdoc />
    public override UnreachablePosition WhyNot(double travelMm, double rackMm)
    {
        var reason = budget is { IsSpent: true } ? UnreachableReason.WorkSpent : rackMm != 0 ? UnreachableReason.RackNotRead : UnreachableReason.BeyondReadings;
        var (fromMm, toMm) = Reach;
        return new(travelMm, rackMm, reason, default, Math.Clamp(travelMm, fromMm, toMm), 0)
        {
            BeyondMm = reason == UnreachableReason.BeyondReadings ? Math.Max(fromMm - travelMm, travelMm - toMm) : 0,
            ReadFromMm = corner.FirstMm - _rideTravelMm,
            ReadToMm = corner.LastMm - _rideTravelMm,
        };
    }

    /// <inheritdoc />
    public override IReadOnlyList<FigureGap> Gaps(in AxleInputs axle) => TabulatedGaps.Of(corner, _halfTrackMm is not null);

    private Estimate? StatedToe(double atMm) => atMm == 0 && setup.ToeDeg is { } stated ? new Estimate(stated, 0) : null;
}

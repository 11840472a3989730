using SetupService.Domain.Fitment.Checks;
using SetupService.Domain.Tyres;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment;

/// <summary>The offsets at which a tyre on a rim of one width fails no check of room.</summary>
/// <remarks>
/// Every margin is a straight line in the offset with slope +1, 0 or −1 (the spring seat's falls by part of it), so the
/// ends are exact, not searched for; see docs/methods/fitment-window.md.
/// </remarks>
public readonly record struct OffsetWindow
{
    /// <summary>The rim width, inches.</summary>
    public required double RimWidthIn { get; init; }

    /// <summary>Pass when some offset fits, fail when none does, unknown where neither end is known.</summary>
    public required WindowStatus Status { get; init; }

    /// <summary>The least offset, mm: with any less the wheel is too far outboard; null where no outboard gap is known.</summary>
    public double? FromOffsetMm { get; init; }

    /// <summary>The greatest offset, mm: with any more the wheel is too far inboard; null where no inboard gap is known.</summary>
    public double? ToOffsetMm { get; init; }

    /// <summary>The place that sets the least offset.</summary>
    public CheckId? FromLimitedBy { get; init; }

    /// <summary>The place that sets the greatest offset.</summary>
    public CheckId? ToLimitedBy { get; init; }

    /// <summary>The place that no offset can clear, where nothing fits because of it.</summary>
    public CheckId? BlockedBy { get; init; }

    /// <summary>The window of one rim width, without a spacer.</summary>
    public static OffsetWindow Compute(FitmentContext car, Tyre tyre, double rimWidthIn)
    {
        var window = new OffsetWindow { RimWidthIn = rimWidthIn, Status = WindowStatus.Unknown };
        if (!tyre.Marking.HasDimensions) return window;
        var wheel = new Wheel { RimDiameterIn = tyre.Marking.RimDiameterIn, RimWidthIn = rimWidthIn, OffsetMm = 0 };
        var atZero = Envelope.Compute(new Fitting(wheel, tyre));
        var ends = window;
        for (var place = CheckId.InboardClearance; place <= CheckId.SpringSeatClearance; place++)
        {
            if (!car.Applicable.Contains(place) || !ClearanceChecks.TryBudget(car, atZero, place, out var budget, out _)) continue;
            var probableMm = Math.Max(budget.Margin.ProbableMm, InsideRoomMm(car, atZero, place));
            switch (place)
            {
                case CheckId.OutboardClearance:
                    ends = ends with { FromOffsetMm = -probableMm, FromLimitedBy = place };
                    break;
                case CheckId.RadialClearance:
                    if (probableMm < 0) return window with { Status = WindowStatus.Fail, BlockedBy = place };
                    break;
                case CheckId.SpringSeatClearance:
                    if (SeatLimit(car, atZero, probableMm) is not { } seatMm)
                    {
                        return window with { Status = WindowStatus.Fail, BlockedBy = place };
                    }

                    ends = ends.WithEnd(seatMm, place);
                    break;
                default:
                    ends = ends.WithEnd(probableMm, place);
                    break;
            }
        }

        if (ends.FromOffsetMm is null && ends.ToOffsetMm is null) return window;
        var empty = ends.FromOffsetMm > ends.ToOffsetMm;
        return ends with { Status = empty ? WindowStatus.Fail : WindowStatus.Pass };
    }

    /// <summary>How much less room than the present fitting it takes at a place, mm, which passes however small the gap; minus infinity where that cannot be told.</summary>
    private static double InsideRoomMm(FitmentContext car, in Envelope atZero, CheckId place) =>
        ClearanceChecks.MoreRoom(car, atZero, place) is { } more ? -(more.NominalMm + Math.Max(0, more.GrowthMm)) : double.NegativeInfinity;

    private OffsetWindow WithEnd(double offsetMm, CheckId place) =>
        ToOffsetMm <= offsetMm ? this : this with { ToOffsetMm = offsetMm, ToLimitedBy = place };

    /// <summary>
    /// The greatest offset at the spring seat, mm. Only movement inboard uses room there, and only a part of it; null where even a wheel
    /// no further inboard than the present one probably touches.
    /// </summary>
    private static double? SeatLimit(FitmentContext car, in Envelope atZero, double probableMm)
    {
        var inboardAtZeroMm = car.PresentEnvelope.InboardMm - atZero.InboardMm;
        var roomMm = probableMm + (ClearanceChecks.ObliqueShare * Math.Max(0, inboardAtZeroMm));
        return roomMm < 0 ? null : (roomMm / ClearanceChecks.ObliqueShare) - inboardAtZeroMm;
    }
}

/// <summary>Whether any offset fits.</summary>
public enum WindowStatus
{
    /// <summary>The offsets between the ends fit.</summary>
    Pass,

    /// <summary>No offset fits.</summary>
    Fail,

    /// <summary>Neither end is known.</summary>
    Unknown,
}

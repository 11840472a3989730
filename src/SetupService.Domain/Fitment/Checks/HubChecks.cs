using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>The checks of the wheel on the hub: bolt circle, centre bore, thread and seat.</summary>
public static class HubChecks
{
    /// <summary>Difference up to which a bore counts as the hub's own, mm: common practice, no source.</summary>
    private const double BoreToleranceMm = 0.1;

    /// <summary>How much deeper than now a bolt may reach before it must be checked, mm: common practice, no source.</summary>
    private const double DeeperBoltMm = 2;

    /// <summary>The wheel's bolt circle against the hub's, else against the present wheel's; mm.</summary>
    public static CheckResult BoltCircle(FitmentContext car, in Fitting candidate)
    {
        if (car.HubBoltCircle is not { } hub) return CheckResult.Unknown(UnknownReason.ValueMissing) with { Value = candidate.Wheel.BoltCircle?.DiameterMm };
        if (candidate.Wheel.BoltCircle is not { } wheel) return CheckResult.Unknown(UnknownReason.ValueMissing) with { Limit = hub.DiameterMm };
        var reason = car.Axle.Hub.BoltCircle is null ? UnknownReason.FromPresentWheel : UnknownReason.Computed;
        var (on, one) = wheel.Second is null && hub.Second is null ? (wheel, hub) : (wheel.For(hub), hub.For(wheel.For(hub)));
        return CheckResult.From(on.Matches(one), on.DiameterMm, one.DiameterMm) with { Reason = reason };
    }

    /// <summary>
    /// What centres the wheel: its bore against the hub's spigot; with a spacer, the spacer's bore against the hub's spigot and the wheel's bore
    /// against the spacer's. Smaller fails, larger needs rings; a spacer whose pilot is not known is a caution. mm.
    /// </summary>
    public static CheckResult CentreBore(FitmentContext car, in Fitting candidate)
    {
        var wheel = candidate.Wheel;
        var hubMm = car.Axle.Hub.CentreBoreMm;
        var unknown = CheckResult.Unknown(UnknownReason.ValueMissing) with { Value = wheel.CentreBoreMm, Limit = hubMm };
        if (!(wheel.SpacerMm > 0)) return Bore(wheel.CentreBoreMm, hubMm) ?? unknown;
        if (wheel.SpacerPilotBoreMm is { } spacerMm && spacerMm < hubMm)
        {
            return CheckResult.From(false, spacerMm, hubMm) with { Reason = UnknownReason.SpacerNotOnHub };
        }

        var onPilot = Bore(wheel.CentreBoreMm, wheel.SpacerPilotDiameterMm);
        if (onPilot is { Status: CheckStatus.Fail } fails) return fails with { Reason = UnknownReason.OnSpacerPilot };
        if (wheel.CentreBoreMm is null || hubMm is null) return unknown;
        if (onPilot is not { } sits || wheel.SpacerPilotBoreMm is not { } boreMm) return unknown with { Status = CheckStatus.Caution, Reason = UnknownReason.SpacerPilotMissing };
        if (boreMm > hubMm + BoreToleranceMm) return CheckResult.From(true, boreMm, hubMm) with { Status = CheckStatus.Caution, Reason = UnknownReason.RingsNeededOnSpacer };
        return sits.Reason == UnknownReason.RingsNeeded ? sits with { Reason = UnknownReason.RingsNeededOnSpacer } : sits with { Reason = UnknownReason.OnSpacerPilot };
    }

    private static CheckResult? Bore(double? boreMm, double? spigotMm)
    {
        if (boreMm is not { } bore || spigotMm is not { } spigot) return null;
        var result = CheckResult.From(bore >= spigot, bore, spigot);
        return bore > spigot + BoreToleranceMm ? result with { Status = CheckStatus.Caution, Reason = UnknownReason.RingsNeeded } : result;
    }

    /// <summary>
    /// Thread engaged (fastener length less pad less spacer) against one thread diameter, and the seats against
    /// each other; mm. One diameter is common practice, no source.
    /// </summary>
    public static CheckResult Fastener(FitmentContext car, in Fitting candidate)
    {
        var hub = car.Axle.Hub;
        var wheel = candidate.Wheel;
        var engagedMm = hub.FastenerLengthMm - wheel.PadThicknessMm - wheel.SpacerMm;
        var neededMm = hub.FastenerThread?.DiameterMm;
        var seatKnown = hub.FastenerSeat is not null && wheel.FastenerSeat is not null;
        if (wheel is { SpacerMm: > 0, SpacerHasOwnFasteners: true }) return CheckResult.Unknown(UnknownReason.SpacerOwnFasteners);
        var unknown = CheckResult.Unknown(UnknownReason.ValueMissing) with { Value = engagedMm, Limit = neededMm };
        if (seatKnown && hub.FastenerSeat != wheel.FastenerSeat)
        {
            return unknown with { Status = CheckStatus.Fail, Reason = UnknownReason.SeatMismatch };
        }

        if (engagedMm is null || neededMm is null) return unknown;
        if (engagedMm < neededMm) return CheckResult.From(false, engagedMm.Value, neededMm);
        if (!seatKnown) return unknown with { Reason = UnknownReason.SeatMissing };
        var result = CheckResult.From(true, engagedMm.Value, neededMm);
        return hub.FastenerKind is not FastenerKind.Nut && engagedMm > car.PresentEngagementMm + DeeperBoltMm
            ? result with { Status = CheckStatus.Caution, Reason = UnknownReason.BoltReachesDeeper }
            : result;
    }
}

using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Fitment.Checks;

/// <summary>Whether the wheel goes on the hub: bolt circle, centre bore, thread and seat.</summary>
public static class HubChecks
{
    /// <summary>Difference up to which a bore counts as the hub's own, mm: common practice, no source.</summary>
    private const double BoreToleranceMm = 0.1;

    /// <summary>How much deeper a bolt may reach before it is worth a look, mm: common practice, no source.</summary>
    private const double DeeperBoltMm = 2;

    /// <summary>The wheel's bolt circle against the hub's, else against the present wheel's; mm.</summary>
    public static CheckResult BoltCircle(AxleUnderCheck car, in Fitting candidate)
    {
        if (car.HubBoltCircle is not { } hub) return CheckResult.Unknown(Finding.ValueMissing) with { Value = candidate.Wheel.BoltCircle?.DiameterMm };
        if (candidate.Wheel.BoltCircle is not { } wheel) return CheckResult.Unknown(Finding.ValueMissing) with { Limit = hub.DiameterMm };
        var finding = car.Axle.Hub.BoltCircle is null ? Finding.FromPresentWheel : Finding.Computed;
        return CheckResult.Of(wheel.Matches(hub), wheel.DiameterMm, hub.DiameterMm) with { Finding = finding };
    }

    /// <summary>
    /// What centres the wheel: its bore against the hub's spigot; with a spacer, the spacer's bore against the hub's spigot and the wheel's bore
    /// against the spacer's. Smaller fails, larger needs rings; a spacer whose pilot is not known is a caution. mm.
    /// </summary>
    public static CheckResult CentreBore(AxleUnderCheck car, in Fitting candidate)
    {
        var wheel = candidate.Wheel;
        var hubMm = car.Axle.Hub.CentreBoreMm;
        var unknown = CheckResult.Unknown(Finding.ValueMissing) with { Value = wheel.CentreBoreMm, Limit = hubMm };
        if (!(wheel.SpacerMm > 0)) return Bore(wheel.CentreBoreMm, hubMm) ?? unknown;
        if (wheel.SpacerPilotBoreMm is { } spacerMm && spacerMm < hubMm)
        {
            return CheckResult.Of(false, spacerMm, hubMm) with { Finding = Finding.SpacerNotOnHub };
        }

        var onPilot = Bore(wheel.CentreBoreMm, wheel.SpacerPilotDiameterMm);
        if (onPilot is { Status: CheckStatus.Fail } fails) return fails with { Finding = Finding.OnSpacerPilot };
        if (wheel.CentreBoreMm is null || hubMm is null) return unknown;
        if (onPilot is not { } sits || wheel.SpacerPilotBoreMm is not { } boreMm) return unknown with { Status = CheckStatus.Caution, Finding = Finding.SpacerPilotMissing };
        if (boreMm > hubMm + BoreToleranceMm) return CheckResult.Of(true, boreMm, hubMm) with { Status = CheckStatus.Caution, Finding = Finding.RingsNeededOnSpacer };
        return sits.Finding == Finding.RingsNeeded ? sits with { Finding = Finding.RingsNeededOnSpacer } : sits with { Finding = Finding.OnSpacerPilot };
    }

    private static CheckResult? Bore(double? boreMm, double? spigotMm)
    {
        if (boreMm is not { } bore || spigotMm is not { } spigot) return null;
        var result = CheckResult.Of(bore >= spigot, bore, spigot);
        return bore > spigot + BoreToleranceMm ? result with { Status = CheckStatus.Caution, Finding = Finding.RingsNeeded } : result;
    }

    /// <summary>
    /// Thread engaged (fastener length less pad less spacer) against one thread diameter, and the seats against
    /// each other; mm. One diameter is common practice, no source.
    /// </summary>
    public static CheckResult Fastener(AxleUnderCheck car, in Fitting candidate)
    {
        var hub = car.Axle.Hub;
        var wheel = candidate.Wheel;
        var engagedMm = hub.FastenerLengthMm - wheel.PadThicknessMm - wheel.SpacerMm;
        var neededMm = hub.FastenerThread?.DiameterMm;
        var seatKnown = hub.FastenerSeat is not null && wheel.FastenerSeat is not null;
        if (wheel is { SpacerMm: > 0, SpacerHasOwnFasteners: true }) return CheckResult.Unknown(Finding.SpacerOwnFasteners);
        var unknown = CheckResult.Unknown(Finding.ValueMissing) with { Value = engagedMm, Limit = neededMm };
        if (seatKnown && hub.FastenerSeat != wheel.FastenerSeat)
        {
            return unknown with { Status = CheckStatus.Fail, Finding = Finding.SeatMismatch };
        }

        if (engagedMm is null || neededMm is null) return unknown;
        if (engagedMm < neededMm) return CheckResult.Of(false, engagedMm.Value, neededMm);
        if (!seatKnown) return unknown with { Finding = Finding.SeatMissing };
        var result = CheckResult.Of(true, engagedMm.Value, neededMm);
        return hub.FastenerKind is not FastenerKind.Nut && engagedMm > car.PresentEngagementMm + DeeperBoltMm
            ? result with { Status = CheckStatus.Caution, Finding = Finding.BoltReachesDeeper }
            : result;
    }
}

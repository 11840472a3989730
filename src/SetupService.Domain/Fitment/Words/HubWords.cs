using SetupService.Domain.Answers;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the hub checks.</summary>
internal static class HubWords
{
    public const string BoltCircleBasis = "Number of holes, and diameter of the circle through their centres.";

    public const string CentreBoreBasis = "Bore against the hub's spigot, with a spacer against the spacer's; rings for a larger bore are common practice, no source.";

    public const string FastenerBasis = "Fastener length less pad less spacer, at least one thread diameter: common practice, no source.";

    public static string BoltCircle(FitmentContext car, in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        if (candidate.Wheel.BoltCircle is not { } wheel) return "The wheel's bolt circle is not given.";
        if (car.HubBoltCircle is not { } hub) return Prose.Write(units, $"The wheel has {Circle(wheel, units)}; the hub's bolt circle is not given.");
        var hubSide = result.Reason == UnknownReason.FromPresentWheel ? "the wheel fitted now" : "the hub";
        return result.Status == CheckStatus.Pass
            ? Prose.Write(units, $"The wheel has {Circle(wheel, units)}, as {hubSide} has.")
            : Prose.Write(units, $"The wheel does not go on and must not be forced on: it has {Circle(wheel, units)}, {hubSide} has {Circle(hub, units)}.");
    }

    public static string CentreBore(FitmentContext car, in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        if (candidate.Wheel.SpacerMm > 0 && result.Reason != UnknownReason.ValueMissing) return OnSpacer(car, candidate.Wheel, result, units);
        if (candidate.Wheel.CentreBoreMm is not { } boreMm) return "The wheel's centre bore is not given.";
        if (car.Axle.Hub.CentreBoreMm is not { } hubMm) return Prose.Write(units, $"The wheel's bore is {boreMm:fit}; the hub's spigot is not given.");
        return result.Status switch
        {
            CheckStatus.Pass => Prose.Write(units, $"The bore of {boreMm:fit} sits on the hub's {hubMm:fit}."),
            CheckStatus.Caution => Prose.Write(units, $"Centring rings are needed, from {boreMm:fit} to {hubMm:fit}: the wheel's bore is larger than the hub's spigot."),
            _ => Prose.Write(units, $"The wheel does not go over the hub: its bore of {boreMm:fit} is smaller than the spigot of {hubMm:fit}."),
        };
    }

    private static string OnSpacer(FitmentContext car, Wheel wheel, in CheckResult result, UnitSystem units) => result.Reason switch
    {
        UnknownReason.SpacerPilotMissing => Prose.Write(
            units,
            $"Check what centres the wheel: with a spacer of {wheel.SpacerMm:fit} the hub's spigot of {car.Axle.Hub.CentreBoreMm ?? 0:fit} may not reach it, and the spacer's own bore and spigot are not both given. A wheel held by its fasteners alone can shake and come loose."),
        UnknownReason.SpacerNotOnHub => Prose.Write(units, $"The spacer does not go on: its bore of {result.Value ?? 0:fit} is smaller than the hub's spigot of {result.Limit ?? 0:fit}."),
        UnknownReason.RingsNeededOnSpacer => Prose.Write(units, $"Centring rings are needed at the spacer, from {result.Value ?? 0:fit} to {result.Limit ?? 0:fit}."),
        _ when result.Status == CheckStatus.Fail => Prose.Write(units, $"The wheel does not go on the spacer: its bore of {result.Value ?? 0:fit} is smaller than the spacer's spigot of {result.Limit ?? 0:fit}."),
        _ => Prose.Write(units, $"The spacer sits on the hub, and the wheel's bore of {result.Value ?? 0:fit} on the spacer's spigot of {result.Limit ?? 0:fit}."),
    };

    public static string Fastener(FitmentContext car, in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        var hub = car.Axle.Hub;
        var wheel = candidate.Wheel;
        if (result.Reason == UnknownReason.SeatMismatch)
        {
            return Prose.Write(units, $"The wheel can come off: it has {Seat(wheel.FastenerSeat)} and the fastener {Seat(hub.FastenerSeat)}, which will not hold its torque.");
        }

        if (result.Reason == UnknownReason.SpacerOwnFasteners)
        {
            return "The spacer is held by fasteners of its own, and the wheel by those of the spacer, which are not described: check their length, thread and seat by hand.";
        }

        if (result.Value is not { } engagedMm || result.Limit is not { } neededMm)
        {
            return "Fastener length, thread and the wheel's pad thickness are needed for the thread engaged, and not all are given.";
        }

        if (engagedMm <= 0)
        {
            return Prose.Write(
                units,
                $"No thread engages, and at least {neededMm:fit} must: {hub.FastenerLengthMm ?? 0:fit} of fastener does not reach through a pad of {wheel.PadThicknessMm ?? 0:fit} and a spacer of {wheel.SpacerMm:fit}.");
        }

        var sum = Prose.Write(
            units,
            $"{hub.FastenerLengthMm ?? 0:fit} of fastener less a pad of {wheel.PadThicknessMm ?? 0:fit} and a spacer of {wheel.SpacerMm:fit} leaves {engagedMm:fit} of thread engaged; one diameter is {neededMm:fit}.");
        return (result.Status, result.Reason) switch
        {
            (CheckStatus.Fail, _) => Prose.Write(units, $"Too little thread engages, and the wheel can come off. {sum}"),
            (_, UnknownReason.SeatMissing) => Prose.Write(units, $"{sum} Whether the seats match is not given."),
            (_, UnknownReason.BoltReachesDeeper) => Prose.Write(units, $"Check that the bolts touch nothing behind the hub: they reach deeper than the {car.PresentEngagementMm ?? 0:fit} of today. {sum}"),
            _ => Prose.Write(units, $"{sum} Both have {Seat(wheel.FastenerSeat)}."),
        };
    }

    private static string Circle(BoltCircle circle, UnitSystem units)
    {
        if (units == UnitSystem.Us) return $"a bolt circle of {circle.ToString(units)}";
        var first = Prose.Write(units, $"{circle.HoleCount} holes on {circle.DiameterMm:fit}");
        return circle.Second is { } second ? $"{first} and {Circle(second, units)}" : first;
    }

    private static string Seat(FastenerSeat? seat) => seat switch
    {
        FastenerSeat.Cone60 => "a 60° cone seat",
        FastenerSeat.Ball12 => "an R12 ball seat",
        FastenerSeat.Ball13 => "an R13 ball seat",
        FastenerSeat.Ball14 => "an R14 ball seat",
        _ => "a flat seat",
    };
}

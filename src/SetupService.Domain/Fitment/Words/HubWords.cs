using SetupService.Domain.Answers;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment.Words;

/// <summary>The sentences of the hub checks.</summary>
internal static class HubWords
{
    public const string BoltCircleBasis = "Number of holes, and diameter of the circle through their centres.";

    public const string CentreBoreBasis = "Bore against the hub's spigot; rings for a larger bore are common practice, no source.";

    public const string FastenerBasis = "Fastener length less pad less spacer, at least one thread diameter: common practice, no source.";

    public static string BoltCircle(AxleUnderCheck car, in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        if (candidate.Wheel.BoltCircle is not { } wheel) return "The wheel's bolt circle is not given.";
        if (car.HubBoltCircle is not { } hub) return Prose.Write(units, $"The wheel has {Circle(wheel)}; the hub's bolt circle is not given.");
        var hubSide = result.Finding == Finding.FromPresentWheel ? "the wheel fitted now" : "the hub";
        return result.Status == CheckStatus.Pass
            ? Prose.Write(units, $"The wheel has {Circle(wheel)}, as {hubSide} has.")
            : Prose.Write(units, $"The wheel has {Circle(wheel)} and {hubSide} has {Circle(hub)}: it does not go on, and must not be forced on.");
    }

    public static string CentreBore(AxleUnderCheck car, in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        if (candidate.Wheel.CentreBoreMm is not { } boreMm) return "The wheel's centre bore is not given.";
        if (car.Axle.Hub.CentreBoreMm is not { } hubMm) return Prose.Write(units, $"The wheel's bore is {boreMm:fit}; the hub's spigot is not given.");
        return result.Status switch
        {
            CheckStatus.Pass => Prose.Write(units, $"The bore of {boreMm:fit} sits on the hub's {hubMm:fit}."),
            CheckStatus.Caution => Prose.Write(units, $"The bore of {boreMm:fit} is larger than the hub's {hubMm:fit}: it needs centring rings from {boreMm:fit} to {hubMm:fit}."),
            _ => Prose.Write(units, $"The bore of {boreMm:fit} is smaller than the hub's {hubMm:fit}: the wheel does not go over it."),
        };
    }

    public static string Fastener(AxleUnderCheck car, in Fitting candidate, in CheckResult result, UnitSystem units)
    {
        var hub = car.Axle.Hub;
        var wheel = candidate.Wheel;
        if (result.Finding == Finding.SeatMismatch)
        {
            return Prose.Write(units, $"The wheel has {Seat(wheel.FastenerSeat)} and the fastener {Seat(hub.FastenerSeat)}: it will not hold its torque and the wheel can come off.");
        }

        if (result.Value is not { } engagedMm || result.Limit is not { } neededMm)
        {
            return "Fastener length, thread and the wheel's pad thickness are needed for the thread engaged, and not all are given.";
        }

        if (engagedMm <= 0)
        {
            return Prose.Write(
                units,
                $"{hub.FastenerLengthMm ?? 0:fit} of fastener does not reach through a pad of {wheel.PadThicknessMm ?? 0:fit} and a spacer of {wheel.SpacerMm:fit}: no thread engages, and at least {neededMm:fit} must.");
        }

        var sum = Prose.Write(
            units,
            $"{hub.FastenerLengthMm ?? 0:fit} of fastener less a pad of {wheel.PadThicknessMm ?? 0:fit} and a spacer of {wheel.SpacerMm:fit} leaves {engagedMm:fit} of thread engaged; one diameter is {neededMm:fit}.");
        return (result.Status, result.Finding) switch
        {
            (CheckStatus.Fail, _) => Prose.Write(units, $"{sum} That is too little: the wheel can come off."),
            (_, Finding.SeatMissing) => Prose.Write(units, $"{sum} Whether the seats match is not given."),
            (_, Finding.BoltReachesDeeper) => Prose.Write(units, $"{sum} Now it is {car.PresentEngagementMm ?? 0:fit}: check that the longer reach touches nothing behind the hub."),
            _ => Prose.Write(units, $"{sum} Both have {Seat(wheel.FastenerSeat)}."),
        };
    }

    private static string Circle(BoltCircle circle) => Prose.Write(UnitSystem.Metric, $"{circle.HoleCount} holes on {circle.DiameterMm:n} mm");

    private static string Seat(FastenerSeat? seat) => seat switch
    {
        FastenerSeat.Cone60 => "a 60° cone seat",
        FastenerSeat.Ball12 => "a ball seat of 12 mm",
        FastenerSeat.Ball13 => "a ball seat of 13 mm",
        FastenerSeat.Ball14 => "a ball seat of 14 mm",
        _ => "a flat seat",
    };
}


namespace SetupService.Domain.Handling.Ride;

/// <summary>Says what the figures of a ride mean.</summary>
public static class RideWords
{
    /// <summary>What the damping ratios say of keeping the dampers, with the ratio before where something was changed.</summary>
    public static string Dampers(RideAxle now, RideAxle? before, DampingRange range)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(range);
        if (now.MeanRatio is not { } ratio)
            return "The damper's bump and rebound figures are not given, so whether it serves these springs is not told.";
        var was = before?.MeanRatio is { } old ? FormattableString.Invariant($", before {old:0.00}") : "";
        var figures = FormattableString.Invariant(
            $"The mean damping ratio is {ratio:0.00}{was} (bump {now.BumpRatio:0.00}, rebound {now.ReboundRatio:0.00}); {range.Minimum:0.00} to {range.Maximum:0.00} serves a road car that also goes on track.");
        return range.Judge(ratio) switch
        {
            DamperVerdict.Keep => figures + " These dampers serve.",
            DamperVerdict.Borderline => figures + " These dampers serve, near the end of the range: a worn or weak one would not.",
            _ when ratio < range.Minimum => FormattableString.Invariant(
                $"{figures} These dampers are too soft for these springs; {100 * ((range.Minimum / ratio) - 1):0} % more damping is the least that serves."),
            _ => FormattableString.Invariant(
                $"{figures} These dampers are too hard for these springs; {100 * (1 - (range.Maximum / ratio)):0} % less damping is the most that serves."),
        };
    }

    /// <summary>What a person in the car would feel of it; null where the damper is not known.</summary>
    public static string? Feel(RideAxle now)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (now is not { MeanRatio: { } ratio, ReboundRatio: { } rebound }) return null;
        if (ratio >= 1) return "After a bump the body comes back without swinging over; over small bumps in a row it is hard, and the wheel is slow to follow the road.";
        var overshoot = 100 * Math.Exp(-Math.PI * ratio / Math.Sqrt(1 - (ratio * ratio)));
        var swing = FormattableString.Invariant($"Pushed down and let go, the body swings past its height by some {overshoot:0} % of the push, {now.SpringFrequencyHz:0.0} times a second at first. ");
        return swing + ratio switch
        {
            < 0.2 => "It floats on after bumps, and takes time to settle as it turns in.",
            < 0.35 => "It settles after a swing or two: comfortable, a little loose on track.",
            < 0.7 => "It settles at once and answers the wheel promptly.",
            _ => "It is held tight; short bumps come through to the seat.",
        } + (rebound > 1 ? " Rebound is so strong that over bumps in a row the wheel may not come down again in time and the body creeps lower." : "");
    }

    /// <summary>What the frequencies of both ends say.</summary>
    public static string Flat(FlatRide ride) => FormattableString.Invariant(
        $"The rear swings at {ride.FrequencyRatio:0.00} times the front's frequency; {FlatRide.Least:0.00} to {FlatRide.Most:0.00} lets both ends fall into step after a bump. ")
        + (ride.FrequencyRatio < FlatRide.Least ? "Here the car pitches on after bumps." : ride.FrequencyRatio > FlatRide.Most ? "Here the rear is much the livelier end." : "It rides flat.");

    /// <summary>Why the ride height after a change is not told.</summary>
    public const string HeightUnknown =
        "needs freeLengthMm of the spring before and after (or installedLengthMm, or preloadMm) to tell; until then the car is taken to stand as high as before";
}

using System.Globalization;
using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Handling.Ride;

/// <summary>Says what the figures of a ride mean.</summary>
public static class RideWords
{
    // From this share above the band on, the rear is called livelier; judgement.
    private const double MuchAbove = 1.05;

    /// <summary>What the damping ratios say of keeping the dampers, with the ratio before where something was changed.</summary>
    /// <param name="now">The axle.</param>
    /// <param name="before">It before the change; null where nothing was changed.</param>
    /// <param name="range">The damping ratios that suit.</param>
    /// <param name="assumed">The damper's motion ratio where nobody stated it: a verdict that hangs on it is not one to buy by. Null where it is known.</param>
    public static string Dampers(RideAxle now, RideAxle? before, DampingRange range, AssumedInput? assumed = null)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(range);
        if (now.MeanRatio is not { } ratio)
            return "The damper's bump and rebound figures are not given, so whether it suits these springs is unknown.";
        var was = before?.MeanRatio is { } old ? string.Create(CultureInfo.InvariantCulture, $", {old:0.00} before") : "";
        var figures = string.Create(
            CultureInfo.InvariantCulture,
            $"The mean damping ratio is {ratio:0.00}{was} (bump {now.BumpRatio:0.00}, rebound {now.ReboundRatio:0.00}); {range.From:0.00} to {range.To:0.00} {(range == DampingRange.RoadAndTrack ? "suits a road car that also goes on track" : "is the range asked for")}.");
        var isDoubtful = false;
        if (assumed is { Value: > 0 } motion)
        {
            var (least, most) = (Ratio(motion.Lower), Ratio(motion.Upper));
            isDoubtful = IsOut(least) != IsOut(ratio) || IsOut(most) != IsOut(ratio);
            if (isDoubtful)
            {
                figures += string.Create(
                    CultureInfo.InvariantCulture,
                    $" The damper's motion ratio is assumed as {motion.Value:0.00}; from {motion.Lower:0.00} to {motion.Upper:0.00} the mean would be {least:0.00} to {most:0.00}: measure it before you change a damper.");
            }

            bool IsOut(double one) => range.Judge(one) == DamperVerdict.Replace;

            double Ratio(double motionRatio) => ratio * (motionRatio / motion.Value) * (motionRatio / motion.Value);
        }

        return range.Judge(ratio) switch
        {
            DamperVerdict.Keep => "Keep these dampers. " + figures,
            DamperVerdict.Borderline => "These dampers are borderline: a worn or weak one would not do. " + figures,
            _ when ratio < range.From => $"These dampers {(isDoubtful ? "seem" : "are")} too soft for these springs: {Missing(range.From / ratio)}. {figures}",
            _ => string.Create(
                CultureInfo.InvariantCulture,
                $"These dampers {(isDoubtful ? "seem" : "are")} too hard for these springs: they need at least {100 * (1 - (range.To / ratio)):0} % less damping. {figures}"),
        };
    }

    /// <summary>By how much damping is too little.</summary>
    /// <param name="times">How many times as much is needed; infinite where there is none.</param>
    private static string Missing(double times) => times switch
    {
        <= 3 => string.Create(CultureInfo.InvariantCulture, $"they need at least {100 * (times - 1):0} % more damping"),
        <= 20 => string.Create(CultureInfo.InvariantCulture, $"they need at least {times:0} times the damping"),
        _ => "they hardly damp at all",
    };

    /// <summary>What a person in the car would feel of it; null where the damper is not known.</summary>
    public static string? Feel(RideAxle now)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (ReleasedBody.From(now) is not { } body || now is not { MeanRatio: { } ratio, ReboundRatio: { } rebound }) return null;
        return (body.Overshoot > 0
            ? string.Create(CultureInfo.InvariantCulture, $"Pushed down and let go, the body rises past its height by {100 * body.Overshoot:0} % of the push. ")
            : "Pushed down and let go, the body comes back without rising past its height. ") + ratio switch
            {
                < 0.2 => "It floats on after bumps, and takes time to settle as it turns in.",
                < 0.35 => "It settles after a swing or two: comfortable, a little loose on track.",
                < 0.7 => "It settles at once and answers the wheel promptly.",
                < 1 => "It is tightly damped; short bumps come through to the seat.",
                _ => "Over a row of small bumps it rides hard, and the wheel is slow to follow the road.",
            } + (rebound > 1 ? " Rebound damping is so strong that over a row of bumps the wheel may not return in time and the body sinks." : "");
    }

    /// <summary>What the frequencies of both ends say.</summary>
    /// <param name="ride">Both ends against each other.</param>
    /// <param name="isFrontAssumed">True where the front springs' motion ratio is assumed.</param>
    /// <param name="isRearAssumed">The same of the rear springs.</param>
    public static string Flat(FlatRide ride, bool isFrontAssumed, bool isRearAssumed) => string.Create(
        CultureInfo.InvariantCulture,
        $"The rear's ride frequency is {ride.FrequencyRatio:0.00} times the front's; from {FlatRide.Least:0.00} to {FlatRide.Most:0.00} both ends settle together after a bump. ")
        + (ride.FrequencyRatio < FlatRide.Least ? "Below the band: the car keeps pitching after bumps." : ride.FrequencyRatio > MuchAbove * FlatRide.Most ? "Above the band: the rear is livelier than the front." : ride.FrequencyRatio > FlatRide.Most ? "Slightly above the band." : "It rides flat.")
        + (isFrontAssumed || isRearAssumed ? $" The motion ratio of the {(isFrontAssumed ? isRearAssumed ? "springs at both ends" : "front springs" : "rear springs")} is assumed: with the measured one this may read otherwise." : "");

    /// <summary>Why the ride height after a change is not known.</summary>
    public const string HeightUnknown =
        "needs freeLengthMm of the spring before and after (or installedLengthMm, or preloadMm); until then the ride height is taken as unchanged";
}

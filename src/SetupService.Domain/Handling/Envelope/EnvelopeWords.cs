using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Domain.Handling.Envelope;

/// <summary>The sentences about a grip envelope.</summary>
public static class EnvelopeWords
{
    // Limits of both axles nearer to each other than this, g, are not told apart: what is assumed of a car leaves as much open of their margin and more (judgement; cornering tells it with ranges).
    private const double ApartG = 0.03;

    /// <summary>What ends a point, as a sentence.</summary>
    /// <param name="point">The point.</param>
    /// <param name="units">Units of the sentence.</param>
    public static string End(in EnvelopePoint point, UnitSystem units = UnitSystem.Metric)
    {
        var along = Along(point.LongitudinalG);
        return (point.LateralG, point.End) switch
        {
            ({ } g, EnvelopeEnd.Front or EnvelopeEnd.Rear) when Math.Abs(point.Limits.MarginG ?? ApartG) < ApartG => $"{along} it holds {G(g)}; then the front pushes wide or the rear slides, which of them first is too close to tell.",
            ({ } g, EnvelopeEnd.Front) => $"{along} it holds {G(g)}; then the front pushes wide.",
            ({ } g, EnvelopeEnd.Rear) => $"{along} it holds {G(g)}; then the rear slides.",
            ({ } g, EnvelopeEnd.FrontLongitudinal) => $"{along} it holds {G(g)}; in a harder turn the front wheels cannot {Act(point.LongitudinalG)} so hard.",
            ({ } g, EnvelopeEnd.RearLongitudinal) => $"{along} it holds {G(g)}; in a harder turn the rear wheels cannot {Act(point.LongitudinalG)} so hard.",
            ({ } g, EnvelopeEnd.Travel) when point.Reach is { } reach => $"{along} it holds {G(g)}; beyond, " + Prose.Write(
                units, $"the {CorneringWords.Name(reach.Position)} wheel would be at more than {reach.ReachMm:mm} of travel, further than {(reach.IsOfPoints ? "its suspension's points reach" : "its readings tell of")}."),
            ({ } g, EnvelopeEnd.Travel) => $"{along} it holds {G(g)}; beyond, a wheel would travel or steer further than its suspension, or its readings, reach.",
            ({ } g, _) => $"{along} it stands {G(g)}; beyond, it would roll over, or the model finds no balance.",
            (null, EnvelopeEnd.FrontLongitudinal) => $"{along} is more than the front tyres hold, even straight ahead.",
            (null, EnvelopeEnd.RearLongitudinal) => $"{along} is more than the rear tyres hold, even straight ahead.",
            (null, EnvelopeEnd.AxleUnloaded) => $"{along} an axle would carry nothing.",
            (null, EnvelopeEnd.DrivenAxleUnknown) => $"{along} needs /vehicle/drivenAxle: only the driven wheels can give it.",
            (null, EnvelopeEnd.WorkSpent) => $"{along} was not found with the work allowed for one request.",
            _ => $"{along} there is no balance, even straight ahead.",
        };
    }

    /// <summary>The whole in a few sentences: where it holds most, and how hard it brakes and drives straight ahead.</summary>
    /// <param name="points">The points.</param>
    /// <param name="braking">The most braking straight ahead.</param>
    /// <param name="driving">The most driving straight ahead.</param>
    /// <param name="units">Units of the sentences.</param>
    public static string Summary(
        IReadOnlyList<EnvelopePoint> points, (double? LongitudinalG, EnvelopeEnd End) braking, (double? LongitudinalG, EnvelopeEnd End) driving, UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(points);
        var known = points.Where(point => point.LateralG is not null).ToList();
        var most = known.Count > 0 ? "Most of all: " + Lower(End(known.MaxBy(point => point.LateralG), units)) + " " : "";
        var brakes = braking.LongitudinalG is { } brakesG ? $"Straight ahead it brakes {G(-brakesG)}, then {Axle(braking.End)}. " : "";
        return most + brakes + (driving.LongitudinalG is { } drivesG
            ? $"It could drive {G(drivesG)}, engine permitting, then {Axle(driving.End)}."
            : "How hard it drives is unknown: drivenAxle is not given.");
    }

    /// <summary>What braking straight ahead warns of.</summary>
    /// <param name="braking">The most braking straight ahead.</param>
    /// <param name="assumedFrontPct">What the front brakes are assumed to do of the whole, percent; null where that is stated.</param>
    public static IReadOnlyList<Caution> Cautions((double? LongitudinalG, EnvelopeEnd End) braking, double? assumedFrontPct) => braking is ({ } brakesG, EnvelopeEnd.RearLongitudinal)
        ? [new("rearLocksFirst", assumedFrontPct is { } pct
            ? Prose.Write(UnitSystem.Metric, $"If the front brakes do {pct:pct0} of the whole, as assumed, the rear wheels lock before the front beyond ") + $"{G(-brakesG)} straight ahead, sooner on a wet road or downhill, and the car may spin; only an anti-lock system in order prevents it. Nobody said what they do: give brakeShareFrontPct before anything is concluded from this. Leave brake balance to a licensed workshop."
            : $"Braked harder than {G(-brakesG)} straight ahead, sooner on a wet road or downhill, the rear wheels lock before the front and the car may spin; only an anti-lock system in order prevents it. Leave brake balance to a licensed workshop.")]
        : [];

    private static string Axle(EnvelopeEnd end) => end switch
    {
        EnvelopeEnd.FrontLongitudinal => "the front tyres give no more",
        EnvelopeEnd.RearLongitudinal => "the rear tyres give no more",
        _ => "an axle would carry nothing",
    };

    private static string Along(double longitudinalG) => longitudinalG switch
    {
        < 0 => $"Braking at {G(-longitudinalG)}",
        > 0 => $"Driving at {G(longitudinalG)}",
        _ => "Neither braked nor driven",
    };

    private static string Act(double longitudinalG) => longitudinalG < 0 ? "brake" : "drive";

    private static string Lower(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    private static string G(double g) => FormattableString.Invariant($"{g:0.00} g");
}

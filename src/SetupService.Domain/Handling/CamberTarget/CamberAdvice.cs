using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>The first step to take with the static camber, and what to read before the next.</summary>
/// <param name="CamberDeg">What to set both wheels to, degrees; the camber set now where it is to be left. Null where that was not measured or its sign is doubtful.</param>
/// <param name="StepDeg">Change from the camber set now, degrees; 0 = leave it. Null where that was not measured or its sign is doubtful.</param>
/// <param name="Text">What to do, what to read, and what limits it, in at most five sentences.</param>
public sealed record CamberAdvice(double? CamberDeg, double? StepDeg, string Text)
{
    /// <summary>The first sentence: what to do.</summary>
    public string Verdict => Text[..(Text.IndexOf(". ", StringComparison.Ordinal) is var end and > 0 ? end + 1 : Text.Length)];

    /// <summary>Largest step advised at once, degrees; common practice, no source.</summary>
    public const double LargestStepDeg = 1.5;

    /// <summary>Largest step where the ranges include what is set, degrees: one that shows at the tyres and spoils nothing; judgement.</summary>
    public const double TryingStepDeg = 0.5;

    /// <summary>Nearer to what is wanted than this, degrees, it is left: setting, load and tyre vary by as much; judgement.</summary>
    public const double MattersDeg = 0.5;

    /// <summary>The most negative camber advised to a car that is driven on the road, degrees; common practice, no source.</summary>
    public const double MostOnRoadDeg = -3.5;

    // Steps are told in tenths, toward the camber set; half of a thousandth takes up rounding.
    private const double ToldDeg = 0.1;
    private const double Slack = 5e-4;

    // Shorter of the adjuster's end than this, degrees, a step goes to the end: what is set may come of smoothed readings.
    private const double NearEndDeg = 0.02;

    /// <summary>Judges what is set against both answers.</summary>
    public static CamberAdvice Create(CamberCase one)
    {
        ArgumentNullException.ThrowIfNull(one);
        if (!one.IsSetMeasured)
            return new(null, null, $"Measure the {one.End} camber first: it was not given, so no step can be advised. {one.Wants()}");
        return CamberSign.IsDoubtful(one.SetDeg)
            ? new(null, null, $"Look first which way the {one.End} wheels lean: +{Deg(one.SetDeg)} was given, which is out at the top, as hardly any car's do. If they lean in, give it with a minus and ask again. {one.Wants()} If they do lean out: {Lowered(Step(one).Text)}")
            : Step(one);
    }

    private static string Lowered(string text) => char.ToLowerInvariant(text[0]) + text[1..(text.IndexOf(". ", StringComparison.Ordinal) + 1)];

    private static CamberAdvice Step(CamberCase one)
    {

        // Both answers must ask for the same direction; the nearer of the two is then gone to.
        var (flat, best) = (one.Flat.Value - one.SetDeg, one.Best.Value - one.SetDeg);
        if (Math.Abs(flat) <= MattersDeg)
            return Leave(one, $"Leave the {one.End} camber at {Deg(one.SetDeg)}. It is within half a degree of what {one.Purpose()} ({Deg(one.Flat.Value)}), closer than setting, load and tyre vary. {one.Included()}{ReadOn(one)}");
        if (Math.Sign(flat) != Math.Sign(best))
            return Leave(one, $"Leave the {one.End} camber at {Deg(one.SetDeg)}. It lies between what {one.Purpose()} ({Deg(one.Flat.Value)}) and what may grip best (about {Half(one.Best.Value)}, judgement). {one.Included()}{ReadOn(one)}");
        if (Math.Abs(best) <= MattersDeg)
            return Leave(one, $"Leave the {one.End} camber at {Deg(one.SetDeg)}. It is about what may grip best ({Half(one.Best.Value)}, judgement). {one.Wants()} {one.Included()}{ReadOn(one)}");
        if (one.Reach is { CanBeSet: false }) return Leave(one, $"{one.CannotBeSet()} {one.Wants()} {one.Enabler()}");

        var isMore = flat < 0;
        var nearerDeg = Math.Abs(flat) < Math.Abs(best) ? one.Flat.Value : one.Best.Value;
        var aimDeg = isMore ? Math.Max(nearerDeg, Math.Min(one.SetDeg, MostOnRoadDeg)) : Math.Min(nearerDeg, Math.Max(one.SetDeg, 0));
        var isRoadLimit = isMore && aimDeg > nearerDeg;
        if (Math.Abs(aimDeg - one.SetDeg) < ToldDeg)
        {
            return Leave(one, isMore
                ? $"Leave the {one.End} camber at {Deg(one.SetDeg)}. {one.Wants()} But beyond {Deg(MostOnRoadDeg)} the road wears the inner shoulder out unseen: less roll or, in front, more caster serve better. {ReadOn(one)}"
                : $"Leave the {one.End} camber at {Deg(one.SetDeg)}. {one.Wants()} A road car is not set to positive camber. {ReadOn(one)}");
        }

        var isIncluded = Holds(one.Flat, one.SetDeg);
        var way = Math.Min(isIncluded ? TryingStepDeg : LargestStepDeg, Math.Abs(aimDeg - one.SetDeg));
        var (isShort, begin, slack, most) = (false, 0.0, Slack, double.PositiveInfinity);
        if (one.Reach is { } reach)
        {
            var end = isMore ? one.SetDeg - reach.FromDeg : reach.ToDeg - one.SetDeg;
            begin = isMore ? one.SetDeg - reach.ToDeg : reach.FromDeg - one.SetDeg;
            if (end < ToldDeg || begin > way) return Leave(one, $"{AtItsEnd(one, reach, end)} {one.Wants()} {(Math.Abs(end) >= ToldDeg ? "" : isMore ? one.Beyond() : "Less negative needs another adjuster.")}");
            isShort = end + Slack < Math.Abs(aimDeg - one.SetDeg);
            if (end <= way) (way, slack, most) = (end, NearEndDeg, end);
        }

        // Told in tenths, but never short of where the adjuster begins.
        var step = Math.Max(Math.Min(most, ToldDeg * Math.Floor((way + slack) / ToldDeg)), begin) * (isMore ? -1 : 1);
        var camberDeg = one.SetDeg + step;
        var limits = isShort ? $" The adjuster ends at {Deg(isMore ? one.Reach!.Value.FromDeg : one.Reach!.Value.ToDeg)}."
            : isRoadLimit ? $" On the road stop at {Deg(MostOnRoadDeg)}: beyond it the inner shoulder wears out unseen{(one.Reach is null ? "; how far this axle can be set was not said" : "")}."
            : one.Reach is null ? " How far this axle can be set was not said: look for its adjuster first."
            : "";
        var (short_, other) = isMore ? ("outer", "inner") : ("inner", "outer");

        // Where the adjuster ends there is no next step with it.
        var isAtEnd = isShort && Math.Abs(step) > most - (ToldDeg / 2);
        var next = isAtEnd
            ? $"There the adjuster ends. Read depth or temperature across the tread after the same use: {one.BeyondWhile($"the {short_} shoulder is still more worn or hotter than the {other} one")} {Afterwards}"
            : $"Before the next step read depth or temperature across the tread after the same use, and go on only while the {short_} shoulder is more worn or hotter than the {other} one.{limits} {Afterwards}";
        var amount = $"{Size(step)} {(isMore ? "more" : "less")} negative";
        var text = isIncluded
            ? $"Read the {one.End} tyres first; if the {short_} shoulder is more worn or hotter than the {other} one, set {Deg(camberDeg)}, {amount}. {one.Wants()} Its range includes the {Deg(one.SetDeg)} set now, so the calculation alone asks for no change.{limits} {Afterwards}"
            : $"Set the {one.End} camber to {Deg(camberDeg)}, {amount} than now. {one.Wants()} {next}";
        return new(camberDeg, step, text);
    }

    private const string Afterwards = "Have toe reset and check the gaps around the wheels again.";

    private static CamberAdvice Leave(CamberCase one, string text) => new(one.SetDeg, 0, text.TrimEnd());

    private static string AtItsEnd(CamberCase one, in AngleReach reach, double leftDeg) => Math.Abs(leftDeg) < ToldDeg
        ? $"Leave the {one.End} camber at {Deg(one.SetDeg)}: the adjuster goes no further."
        : $"Leave the {one.End} camber at {Deg(one.SetDeg)} for now: it lies outside what the adjuster is said to reach ({Deg(reach.FromDeg)} to {Deg(reach.ToDeg)}), so measure both again.";

    private static string ReadOn(CamberCase one) =>
        $"Change it only if depth or temperature across the {one.End} treads says so: the outer shoulder more worn or hotter asks for more negative camber, the inner one for less.";

    internal static bool Holds(in Uncertainty range, double deg) => deg >= range.Lower && deg <= range.Upper;

    internal static string Deg(double deg) => Prose.Write(UnitSystem.Metric, $"{deg:angle}");

    internal static string Half(double deg) => FormattableString.Invariant($"{deg:0.#}°").Replace('-', '−');

    private static string Size(double deg) => Prose.Write(UnitSystem.Metric, $"{Math.Abs(deg):angle}");
}

/// <summary>What is set on an axle and what both answers want, for the advice on it.</summary>
public sealed record CamberCase
{
    /// <summary>Which axle.</summary>
    public required CarAxle Axle { get; init; }

    /// <summary>The camber set now, mean of both wheels, degrees.</summary>
    public required double SetDeg { get; init; }

    /// <summary>False where nobody measured it.</summary>
    public bool IsSetMeasured { get; init; } = true;

    /// <summary>The camber that gives the inclination wanted.</summary>
    public required Uncertainty Flat { get; init; }

    /// <summary>That inclination, degrees; 0 = flat on the road.</summary>
    public double TargetDeg { get; init; }

    /// <summary>The camber of most grip.</summary>
    public required Uncertainty Best { get; init; }

    /// <summary>How far camber can be set; null = nobody said.</summary>
    public AngleReach? Reach { get; init; }

    /// <summary>The kind of suspension; null = nobody said.</summary>
    public SuspensionLayout? Layout { get; init; }

    internal string End => Axle == CarAxle.Front ? "front" : "rear";

    private string Flatness => Math.Abs(TargetDeg) < 0.05 ? "flat on the road" : $"at the {CamberAdvice.Deg(TargetDeg)} to the road asked for";

    internal string Purpose() => $"keeps the outer tyre {Flatness}";

    internal string Wants() => $"The outer tyre is {Flatness} at {CamberAdvice.Deg(Flat.Value)} ({CamberAdvice.Deg(Flat.Lower)} to {CamberAdvice.Deg(Flat.Upper)}).";

    /// <summary>Which of the ranges include what is set, as a sentence; empty where neither does.</summary>
    internal string Included() => (CamberAdvice.Holds(Flat, SetDeg), CamberAdvice.Holds(Best, SetDeg)) switch
    {
        (true, true) => "The ranges of both answers include what is set. ",
        (true, false) => "Its range includes what is set. ",
        (false, true) => "The range of most grip includes what is set. ",
        _ => "",
    };

    internal string CannotBeSet() => Layout switch
    {
        SuspensionLayout.TwistBeam => $"Leave the {End} camber at {CamberAdvice.Deg(SetDeg)}: a twist beam has no camber to set.",
        SuspensionLayout.SemiTrailingArm => $"Leave the {End} camber at {CamberAdvice.Deg(SetDeg)}: a trailing arm without eccentrics has no camber to set.",
        _ => $"Leave the {End} camber at {CamberAdvice.Deg(SetDeg)}: it cannot be set as the car is.",
    };

    /// <summary>The part with which camber could be set; common practice, no source.</summary>
    internal string Enabler() => "It could be set with " + (Layout switch
    {
        SuspensionLayout.TwistBeam => "tapered shims between beam and stub axle",
        SuspensionLayout.SemiTrailingArm => "eccentric bushes where the arm is hinged to the body",
        SuspensionLayout.MacPhersonStrut => "adjustable top mounts, or an eccentric bolt between strut and knuckle",
        SuspensionLayout.DoubleWishbone => "eccentric bolts of an arm, or an upper arm of adjustable length",
        SuspensionLayout.FiveLink => "an upper link of adjustable length",
        _ => "an adjuster made for this car",
    }) + ", where local law allows it; room and toe must then be checked again.";

    internal string Beyond() => $"More needs {More}.";

    /// <summary>What more of the way needs, told for as long as the treads ask for it.</summary>
    internal string BeyondWhile(string reading) => $"while {reading}, {(Best.Value < SetDeg ? $"more needs {More}" : "it needs another adjuster")}.";

    private string More => Axle == CarAxle.Front ? "another adjuster, less roll (springs, bars) or more caster" : "another adjuster or less roll (springs, bars)";
}

using SetupService.Domain.Answers;

namespace SetupService.Domain.Planning;

/// <summary>
/// Which of the sound packages is recommended: the cheapest that delivers most of what any of them delivers. What a package delivers is told goal by goal: how far it moves the goal's
/// figure from that of the car as given, by the furthest any sound package moves it. Method page: docs/methods/plan.
/// </summary>
public sealed class PlanChoice
{
    /// <summary>"Most of it", as a share of the best; judgement.</summary>
    public const double MostOfIt = 0.8;

    /// <summary>The same where little money is among the goals; judgement.</summary>
    public const double MostOfItCheaply = 0.6;

    // Less than this nobody notices; a goal no package moves further is not for these parts to reach. Judgement, as what-if tells differences.
    private const double LeastLimitG = 0.01;
    private const double LeastLife = 0.03;
    private const double LeastLeanDeg = 0.2;
    private const double LeastRide = 0.03;
    private const double LeastNoise = 0.3;
    private const double LeastDelivered = 0.05;

    // What parts must deliver beyond what the car delivers without them before money is spent on them; judgement.
    private const double LeastWorth = 0.2;

    private const double Slack = 1e-12;

    private readonly PackageFigures _given;
    private readonly IReadOnlyList<WeightedGoal> _goals;
    private readonly double[] _scales;
    private readonly double _enough;

    private PlanChoice(PackageFigures given, IReadOnlyList<WeightedGoal> goals, double[] scales, double enough) => (_given, _goals, _scales, _enough) = (given, goals, scales, enough);

    /// <summary>The goals that are measured, in the order of what is delivered; money and keeping the car reversible decide among packages, and are not among them.</summary>
    public IReadOnlyList<WeightedGoal> Goals => _goals;

    /// <summary>The choice among packages.</summary>
    /// <param name="goals">What is wanted.</param>
    /// <param name="given">What the car as given reaches.</param>
    /// <param name="sound">What each package that may be recommended reaches.</param>
    public static PlanChoice Create(IReadOnlyList<WeightedGoal> goals, PackageFigures given, IReadOnlyList<PackageFigures> sound)
    {
        ArgumentNullException.ThrowIfNull(goals);
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(sound);
        WeightedGoal[] measured = [.. goals.Where(one => one.Goal is PlanGoal.Grip or PlanGoal.Wear or PlanGoal.Comfort or PlanGoal.Noise or PlanGoal.Wet)];
        var scales = new double[measured.Length];
        for (var i = 0; i < scales.Length; i++)
        {
            foreach (var figures in sound) scales[i] = Math.Max(scales[i], Math.Abs(Gain(measured[i].Goal, given, figures)));
            if (scales[i] < Least(measured[i].Goal, given)) scales[i] = 0;
        }

        return new(given, measured, scales, goals.Any(one => one.Goal == PlanGoal.Cost) ? MostOfItCheaply : MostOfIt);
    }

    /// <summary>How far a package moves each goal, from −1 to 1 of the furthest any sound one does; null where none moves it noticeably.</summary>
    public IReadOnlyList<double?> Shares(PackageFigures figures) => [.. _goals.Select((one, i) => _scales[i] > 0 ? Gain(one.Goal, _given, figures) / _scales[i] : (double?)null)];

    /// <summary>What a package delivers of the goals together, at most 1, by their weights; what is wanted on the road counts by the road's share of the use, grip by the track's.</summary>
    /// <param name="figures">What it reaches.</param>
    /// <param name="trackShare">The track's share of the use, 0 to 1.</param>
    public double Delivered(PackageFigures figures, double trackShare) => Delivered(figures, _given, trackShare);

    /// <summary>The same against another reading of the car as given.</summary>
    public double Delivered(PackageFigures figures, PackageFigures given, double trackShare)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(given);
        var (sum, weights) = (0.0, 0.0);
        for (var i = 0; i < _goals.Count; i++)
        {
            if (_scales[i] <= 0) continue;
            var weight = Weight(_goals[i], trackShare);
            sum += weight * Gain(_goals[i].Goal, given, figures) / _scales[i];
            weights += weight;
        }

        return weights > 0 ? sum / weights : 0;
    }

    /// <summary>A package as the choice among them sees it.</summary>
    /// <param name="one">The package.</param>
    /// <param name="trackShare">The track's share of the use, 0 to 1.</param>
    public Contender Contend(JudgedPackage one, double trackShare)
    {
        ArgumentNullException.ThrowIfNull(one);
        return new(one.Package.Cost.Total, Delivered(one.Figures, trackShare), one.Package.Count)
        {
            Unknown = UnknownOf(one.Figures, trackShare),
            AtFirst = one.Evaluated.FirstStep ?? one.Figures,
            First = one.Evaluated.FirstStep is { } first ? new(Delivered(first, trackShare), UnknownOf(first, trackShare)) : null,
        };
    }

    /// <summary>By how much one standard error of each independent unknown of the wear model moves what a package delivers; empty where wear is no goal that counts, or no treads tell its life.</summary>
    public double[] UnknownOf(PackageFigures figures, double trackShare)
    {
        ArgumentNullException.ThrowIfNull(figures);
        if (_given.TreadLifeFactor is null) return [];
        var (perLife, weights) = (0.0, 0.0);
        for (var i = 0; i < _goals.Count; i++)
        {
            if (_scales[i] <= 0) continue;
            var weight = Weight(_goals[i], trackShare);
            weights += weight;
            if (_goals[i].Goal == PlanGoal.Wear) perLife += weight / _scales[i];
        }

        return perLife > 0 ? [.. figures.TreadLifeEffects.Select(effect => perLife / weights * effect)] : [];
    }

    /// <summary>The place of the recommended one; −1 where there is none to choose from.</summary>
    /// <param name="contenders">All that may be recommended.</param>
    public int Recommended(ReadOnlySpan<Contender> contenders) => Recommended(contenders, new int?[contenders.Length]);

    /// <summary>The same, of a list of which shorter ones were asked before.</summary>
    /// <param name="contenders">All that may be recommended.</param>
    /// <param name="preferred">As <see cref="PreferredTo"/> fills it; it holds for a longer list whose further contenders are dearer.</param>
    public int Recommended(ReadOnlySpan<Contender> contenders, Span<int?> preferred)
    {
        var (best, without) = (-1, -1);
        do
        {
            best = -1;
            for (var i = 0; i < contenders.Length; i++)
            {
                if (contenders[i].PartCount == 0) without = i;
                if (preferred[i] is not >= 0 && (best < 0 || contenders[i].Delivered > contenders[best].Delivered)) best = i;
            }
        }
        while (best >= 0 && PreferredTo(contenders, preferred, best) >= 0);

        // Where nothing on offer helps, the cheapest is to change nothing: of several that deliver enough the cheapest, then the better, then fewer parts.
        var chosen = -1;
        for (var i = 0; i < contenders.Length; i++)
        {
            if (contenders[i].Delivered >= Enough(contenders[best].Delivered) - Slack && (chosen < 0 || IsCheaper(contenders[i], contenders[chosen])) && PreferredTo(contenders, preferred, i) < 0) chosen = i;
        }

        // What is recommended must itself be worth its price, and known to be, however much a dearer one would do.
        return without >= 0 && chosen >= 0 && (contenders[chosen].Delivered - contenders[without].Delivered < LeastWorth || IsWithinError(contenders[without], contenders[chosen])) ? without : chosen;
    }

    /// <summary>
    /// The place of a cheaper package for which a dearer one is not bought: one that takes the same first step, or beyond which the dearer one delivers nothing, or no more than the wear model's own
    /// error; −1 where there is none. It may give way to a cheaper one again. One not known to be better than nothing is preferred to none for that error.
    /// </summary>
    /// <param name="contenders">All that may be recommended.</param>
    /// <param name="preferred">What is preferred to each; null = not asked yet. What is asked is filled in.</param>
    /// <param name="place">Which is asked.</param>
    public static int PreferredTo(ReadOnlySpan<Contender> contenders, Span<int?> preferred, int place)
    {
        if (preferred[place] is { } known) return known;
        var without = -1;
        for (var i = 0; i < contenders.Length && without < 0; i++)
        {
            if (contenders[i].PartCount == 0) without = i;
        }

        for (var i = 0; i < contenders.Length; i++)
        {
            if (contenders[i].PartCount == 0 || contenders[i].Cost >= contenders[place].Cost) continue;
            if (IsSameFirstStep(contenders[i], contenders[place]) || (IsWithinError(contenders[i], contenders[place]) && !(without >= 0 && IsWithinError(contenders[without], contenders[i])))) return (preferred[place] = i).Value;
        }

        return (preferred[place] = -1).Value;
    }

    /// <summary>
    /// True where a cheaper package of parts takes the very first step of a dearer one, which goes on beyond it, and delivers most of what that does in the end: it is bought first, and the treads
    /// tell whether the rest is wanted.
    /// </summary>
    public static bool IsSameFirstStep(in Contender cheaper, in Contender dearer) =>
        dearer.First is not null && cheaper.PartCount > 0 && cheaper.Delivered > 0 && cheaper.Delivered >= MostOfItCheaply * dearer.Delivered && cheaper.AtFirst is { } one && dearer.AtFirst is { } other && IsSameCar(one, other);

    /// <summary>
    /// True where a dearer package delivers no more than a cheaper one, or what it delivers beyond it lies within the wear model's own error, at 90 %. What its first step gives surely counts: how far
    /// it goes on the treads then tell.
    /// </summary>
    public static bool IsWithinError(in Contender cheaper, in Contender dearer) =>
        IsWithinError(cheaper, dearer.Delivered, dearer.Unknown) && (dearer.First is not { } first || IsWithinError(cheaper, first.Delivered, first.Unknown));

    private static bool IsWithinError(in Contender cheaper, double delivered, IReadOnlyList<double> unknown)
    {
        if (delivered <= cheaper.Delivered) return true;
        var sum = 0.0;
        for (var i = 0; i < Math.Max(unknown.Count, cheaper.Unknown.Count); i++)
        {
            var differs = (i < unknown.Count ? unknown[i] : 0) - (i < cheaper.Unknown.Count ? cheaper.Unknown[i] : 0);
            sum += differs * differs;
        }

        return delivered - cheaper.Delivered <= Uncertainty.StandardErrorsAtNinetyPct * Math.Sqrt(sum);
    }

    // Alike in every figure told of it, and no louder.
    private static bool IsSameCar(PackageFigures one, PackageFigures other)
    {
        var (first, second) = (PackageFront.Compared(default, one with { NoiseSteps = 0 }), PackageFront.Compared(default, other with { NoiseSteps = 0 }));
        for (var i = 0; i < first.Length; i++)
        {
            // Steps are rounded: a neighbour may be the same figure.
            if (Math.Abs(first[i] - second[i]) > 1) return false;
        }

        return (one.NoiseSteps ?? PackageNoise.UntoldSteps) <= (other.NoiseSteps ?? PackageNoise.UntoldSteps);
    }

    private static bool IsCheaper(in Contender one, in Contender other) =>
        one.Cost < other.Cost || (one.Cost == other.Cost && (one.PartCount < other.PartCount || (one.PartCount == other.PartCount && one.Delivered > other.Delivered)));

    /// <summary>What a package must deliver to be enough, where the best delivers so much.</summary>
    public double Enough(double best) => best > LeastDelivered ? _enough * best : Math.Min(best, 0);

    /// <summary>True where what is changed moves a goal that is measured noticeably for the better.</summary>
    /// <param name="goals">What is wanted.</param>
    /// <param name="before">What is reached without it.</param>
    /// <param name="after">What is reached with it.</param>
    public static bool IsNoticed(IReadOnlyList<WeightedGoal> goals, PackageFigures before, PackageFigures after)
    {
        ArgumentNullException.ThrowIfNull(goals);
        ArgumentNullException.ThrowIfNull(before);
        return goals.Any(one => one.Goal is not (PlanGoal.Cost or PlanGoal.KeepReversible) && Gain(one.Goal, before, after) >= Least(one.Goal, before));
    }

    /// <summary>How far a package moves a goal's figure for the better, in the figure's own unit or as a share of it.</summary>
    public static double Gain(PlanGoal goal, PackageFigures given, PackageFigures figures)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(figures);
        return goal switch
        {
            PlanGoal.Grip => figures.LimitG - given.LimitG ?? 0,
            PlanGoal.Wear => given.TreadLifeFactor is { } before ? (figures.TreadLifeFactor ?? before) - before : given.OffFlatDeg - figures.OffFlatDeg,
            PlanGoal.Comfort => -Math.Max((figures.Front.RideFrequencyHz / given.Front.RideFrequencyHz) - 1, (figures.Rear.RideFrequencyHz / given.Rear.RideFrequencyHz) - 1),
            PlanGoal.Noise => (given.NoiseSteps ?? PackageNoise.UntoldSteps) - (figures.NoiseSteps ?? PackageNoise.UntoldSteps),
            PlanGoal.Wet => given.DryBias - figures.DryBias,
            _ => 0,
        };
    }

    private static double Weight(WeightedGoal one, double trackShare) => one.Weight * one.Goal switch { PlanGoal.Grip => trackShare, PlanGoal.Wear => 1, _ => 1 - trackShare };

    private static double Least(PlanGoal goal, PackageFigures given) => goal switch
    {
        PlanGoal.Grip => LeastLimitG,
        PlanGoal.Wear => given.TreadLifeFactor is not null ? LeastLife : LeastLeanDeg,
        PlanGoal.Comfort => LeastRide,
        PlanGoal.Noise => LeastNoise,
        _ => 0.5,
    };
}

/// <summary>A package as the choice among them sees it.</summary>
/// <param name="Cost">What it costs.</param>
/// <param name="Delivered">What it delivers of the goals, at most 1.</param>
/// <param name="PartCount">How many parts it has.</param>
public readonly record struct Contender(double Cost, double Delivered, int PartCount)
{
    /// <summary>By how much one standard error of each independent unknown of the wear model moves what it delivers, in the same order for all; empty where none does.</summary>
    public IReadOnlyList<double> Unknown { get; init; } = [];

    /// <summary>What it reaches after its first step; null = not known.</summary>
    public PackageFigures? AtFirst { get; init; }

    /// <summary>What it delivers after the first step alone; null where its camber goes no further.</summary>
    public FirstDelivery? First { get; init; }
}

/// <summary>What a package delivers after the first step of its camber alone.</summary>
/// <param name="Delivered">How much.</param>
/// <param name="Unknown">As <see cref="Contender.Unknown"/>.</param>
public sealed record FirstDelivery(double Delivered, IReadOnlyList<double> Unknown);

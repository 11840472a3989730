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
            var weight = _goals[i].Weight * _goals[i].Goal switch { PlanGoal.Grip => trackShare, PlanGoal.Wear => 1, _ => 1 - trackShare };
            sum += weight * Gain(_goals[i].Goal, given, figures) / _scales[i];
            weights += weight;
        }

        return weights > 0 ? sum / weights : 0;
    }

    /// <summary>The place of the recommended one; −1 where there is none to choose from.</summary>
    /// <param name="costs">What each costs.</param>
    /// <param name="delivered">What each delivers.</param>
    /// <param name="partCounts">How many parts each has.</param>
    public int Recommended(ReadOnlySpan<double> costs, ReadOnlySpan<double> delivered, ReadOnlySpan<int> partCounts)
    {
        var (best, without) = (double.NegativeInfinity, -1);
        for (var i = 0; i < costs.Length; i++)
        {
            best = Math.Max(best, delivered[i]);
            if (partCounts[i] == 0) without = i;
        }

        // Where nothing on offer helps, the cheapest is to change nothing: of several that deliver enough the cheapest, then the better, then fewer parts.
        var enough = Enough(best);
        var chosen = -1;
        for (var i = 0; i < costs.Length; i++)
        {
            if (delivered[i] < enough - 1e-12) continue;
            if (chosen < 0 || costs[i] < costs[chosen] || (costs[i] == costs[chosen] && (partCounts[i] < partCounts[chosen] || (partCounts[i] == partCounts[chosen] && delivered[i] > delivered[chosen])))) chosen = i;
        }

        // What is recommended must itself be worth its price, however much a dearer one would do.
        return without >= 0 && chosen >= 0 && delivered[chosen] - delivered[without] < LeastWorth ? without : chosen;
    }

    /// <summary>What a package must deliver to be enough, where the best delivers so much.</summary>
    public double Enough(double best) => best > LeastDelivered ? _enough * best : Math.Min(best, 0);

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

    private static double Least(PlanGoal goal, PackageFigures given) => goal switch
    {
        PlanGoal.Grip => LeastLimitG,
        PlanGoal.Wear => given.TreadLifeFactor is not null ? LeastLife : LeastLeanDeg,
        PlanGoal.Comfort => LeastRide,
        PlanGoal.Noise => LeastNoise,
        _ => 0.5,
    };
}

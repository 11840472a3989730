namespace SetupService.Domain.Planning;

/// <summary>
/// The packages worth choosing between: none is dominated, that is, no other is at least as good in cost and every figure of the three outcomes and better in one. Figures count as
/// they are told, so that less than anybody notices makes no difference. Method page: docs/methods/plan.
/// </summary>
public static class PackageFront
{
    // Steps in which figures are told and compared; judgement, as what-if tells differences.
    private const double LimitStepG = 0.005;
    private const double LeanStepDeg = 0.1;
    private const double FrequencyStepHz = 0.02;
    private const double ShoulderStep = 0.02;
    private const double LifeStep = 0.01;
    private const double DampingStep = 0.02;
    private const double CostStep = 0.01;
    private const double NoiseStep = 1 / PackageNoise.StepDb;

    /// <summary>Figures compared: cost, then those of the outcomes.</summary>
    public const int Count = 9;

    /// <summary>What a package is compared by, each in told steps, less = better; a figure that is not known is alike in all, or counts as a bad one.</summary>
    public static long[] Compared(in PackageCost cost, PackageFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return
        [
            Steps(cost.Total, CostStep),
            -Steps(figures.LimitG ?? 0, LimitStepG),
            Steps(figures.OffFlatDeg, LeanStepDeg),
            Steps(figures.RideFrequencyHz, FrequencyStepHz),
            Steps(figures.InnerShoulderWearRatio ?? 0, ShoulderStep),
            figures.DryBias,
            Steps(figures.OffDampingRange, DampingStep),
            -Steps(figures.TreadLifeFactor ?? 0, LifeStep),
            Steps(figures.NoiseSteps ?? PackageNoise.UntoldSteps, NoiseStep),
        ];
    }

    /// <summary>The places of those that none other dominates, in their order; of several alike the first.</summary>
    /// <param name="compared">What each is compared by, less = better, all of one length.</param>
    public static IReadOnlyList<int> Find(IReadOnlyList<long[]> compared)
    {
        ArgumentNullException.ThrowIfNull(compared);

        // In order of their figures nobody is dominated by one that comes later.
        var order = Enumerable.Range(0, compared.Count).ToArray();
        Array.Sort(order, (one, other) => Order(compared[one], compared[other]) is var sign and not 0 ? sign : one.CompareTo(other));
        var front = new List<int>();
        foreach (var place in order)
        {
            if (!front.Exists(better => IsNoWorse(compared[better], compared[place]))) front.Add(place);
        }

        front.Sort();
        return front;
    }

    private static long Steps(double value, double step) => (long)Math.Round(value / step, MidpointRounding.AwayFromZero);

    private static int Order(long[] one, long[] other)
    {
        for (var i = 0; i < one.Length; i++)
        {
            if (one[i] != other[i]) return one[i].CompareTo(other[i]);
        }

        return 0;
    }

    private static bool IsNoWorse(long[] one, long[] other)
    {
        for (var i = 0; i < one.Length; i++)
        {
            if (one[i] > other[i]) return false;
        }

        return true;
    }
}

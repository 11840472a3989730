using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>
/// What the tyres say: how likely each cause is, what speaks for and against it, and what to measure next. The knowledge is <see cref="WearTable"/>; the method is
/// on docs/methods/wear-diagnosis.
/// </summary>
public sealed class WearDiagnosis
{
    // Less likely causes than this, as a share, are not known one by one.
    private const double Tellable = 0.02;

    // Lighter evidence than this, in powers of ten, is none.
    private const double Noticeable = 0.05;

    private readonly WearCase _wear;
    private readonly WornHere _worn;

    private WearDiagnosis(WearCase wear, WornHere worn, AxleFinding[] axles)
    {
        (_wear, _worn, Axles) = (wear, worn, axles);
        NormalProbability = 1;
        foreach (var axle in axles) NormalProbability *= axle.Posterior.NormalProbability;
        Causes = Rank();
        Next = Choose();
    }

    /// <summary>The causes, the likeliest first; unlikely ones left out, <see cref="WearCause.Normal"/> always there.</summary>
    public IReadOnlyList<CauseFinding> Causes { get; }

    /// <summary>What to measure next.</summary>
    public NextCheck Next { get; }

    /// <summary>How likely nothing is wrong with any axle looked at.</summary>
    public double NormalProbability { get; }

    /// <summary>The axles looked at, with all that is known of each.</summary>
    internal AxleFinding[] Axles { get; }

    /// <summary>True when anything was read that shows wear.</summary>
    public bool IsAnythingRead => !Array.TrueForAll(Axles, axle => axle.Signs.IsEmpty);

    /// <summary>Diagnoses a car.</summary>
    /// <param name="wear">What was read.</param>
    /// <param name="car">What the car itself tells of each axle; null = nothing.</param>
    public static WearDiagnosis Compute(WearCase wear, Func<CarAxle, CarSigns>? car = null)
    {
        ArgumentNullException.ThrowIfNull(wear);
        return Compute(wear, new WornHere(wear), car);
    }

    /// <summary>The same with the wear already assigned to its places.</summary>
    internal static WearDiagnosis Compute(WearCase wear, WornHere worn, Func<CarAxle, CarSigns>? car)
    {
        CarAxle[] looked = [.. ((CarAxle[])[CarAxle.Front, CarAxle.Rear]).Where(at => wear.Tyres.Count == 0 || worn.Tells(at))];
        var signs = Array.ConvertAll(looked, at => EvidenceExtractor.Extract(wear, worn, at, car?.Invoke(at) ?? default));
        if (signs is [var front, var rear]) (front.Other, rear.Other) = (rear, front);
        var axles = new AxleFinding[looked.Length];
        for (var i = 0; i < looked.Length; i++) axles[i] = new(looked[i], signs[i], AxlePosterior.Compute(signs[i], AxleSetting.From(wear, looked[i])));

        return new(wear, worn, axles);
    }

    /// <summary>A sign of an axle; null where it is not known.</summary>
    public Estimate? Sign(CarAxle at, WearSign sign)
    {
        foreach (var axle in Axles)
        {
            if (axle.Axle == at) return axle.Signs[sign];
        }

        return null;
    }

    /// <summary>True when a mark is on an axle; null where nobody has looked.</summary>
    public bool? Mark(CarAxle at, WearMark mark)
    {
        foreach (var axle in Axles)
        {
            if (axle.Axle == at) return axle.Signs[mark];
        }

        return null;
    }

    private List<CauseFinding> Rank()
    {
        var list = new List<CauseFinding> { new(WearCause.Normal, null, NormalProbability, [.. _wear.Tyres.Select(tyre => tyre.Position)], NormalEvidence()) };
        foreach (var axle in Axles)
        {
            for (var cause = WearCause.LowNegativeCamber; cause < WearCause.Normal; cause++)
            {
                var probability = axle.Posterior.Probability(cause);
                if (probability < Tellable || axle.Posterior.LikeliestWith(cause) is not { } mask) continue;
                list.Add(new(cause, axle.Axle, probability, CauseScope.FindTyres(_worn, axle.Axle, cause), Contrast(axle, mask, mask & ~(1 << (int)cause))));
            }
        }

        list.Sort((one, other) => other.Probability.CompareTo(one.Probability));
        return list;
    }

    private List<Evidence> NormalEvidence()
    {
        var list = new List<Evidence>();
        foreach (var axle in Axles)
        {
            var likeliest = axle.Posterior.Likeliest() is var mask and not 0 ? mask : NextToNone(axle.Posterior);
            list.AddRange(Contrast(axle, 0, likeliest));
        }

        list.Sort(Heavier);
        return list;
    }

    private static int NextToNone(AxlePosterior posterior)
    {
        var (best, share) = (0, -1.0);
        for (var i = 0; i < posterior.Count; i++)
        {
            var one = posterior.Combination(i);
            if (one.Mask != 0 && one.Share > share) (best, share) = one;
        }

        return best;
    }

    /// <summary>What each observation says of one combination against another.</summary>
    private static List<Evidence> Contrast(AxleFinding axle, int with, int without)
    {
        Span<double> one = stackalloc double[AxleLikelihoods.StateLength];
        Span<double> other = stackalloc double[AxleLikelihoods.StateLength];
        axle.Posterior.Likelihoods.Compute(with, one);
        axle.Posterior.Likelihoods.Compute(without, other);
        var list = new List<Evidence>();
        for (var sign = 0; sign < AxleSigns.SignCount; sign++)
        {
            if (axle.Signs[(WearSign)sign] is null) continue;
            var weight = (AxleLikelihoods.LogLikelihood(one, (WearSign)sign) - AxleLikelihoods.LogLikelihood(other, (WearSign)sign)) / Math.Log(10);
            if (Math.Abs(weight) >= Noticeable) list.Add(new(axle.Axle, (WearSign)sign, null, weight));
        }

        for (var mark = 0; mark < AxleSigns.MarkCount; mark++)
        {
            if (axle.Signs[(WearMark)mark] is null) continue;
            var weight = (axle.Posterior.Likelihoods.LogLikelihood(one, (WearMark)mark) - axle.Posterior.Likelihoods.LogLikelihood(other, (WearMark)mark)) / Math.Log(10);
            if (Math.Abs(weight) >= Noticeable) list.Add(new(axle.Axle, null, (WearMark)mark, weight));
        }

        list.Sort(Heavier);
        return list;
    }

    private static int Heavier(Evidence one, Evidence other) => Math.Abs(other.Weight).CompareTo(Math.Abs(one.Weight));

    /// <summary>The likeliest causes of an axle that are at least as likely as that, the likeliest first.</summary>
    public IReadOnlyList<CauseFinding> CausesOf(CarAxle at, double least) => [.. Causes.Where(cause => cause.Axle == at && cause.Probability >= least)];

    private NextCheck Choose()
    {
        Span<double> bits = stackalloc double[ExpectedInformation.CheckCount];
        bits.Clear();
        foreach (var axle in Axles) ExpectedInformation.Add(axle.Posterior, axle.Signs, bits);
        var best = 0;
        for (var check = 1; check < bits.Length; check++)
        {
            if (bits[check] > bits[best]) best = check;
        }

        // Depths come first: everything else is read beside them.
        if (bits[(int)WearCheck.DepthsAcross] > 0 && Array.TrueForAll(Axles, axle => axle.Signs[WearSign.ShoulderDifference] is null)) best = (int)WearCheck.DepthsAcross;
        return bits[best] > 0 ? new((WearCheck)best, bits[best]) : new(WearCheck.NextSession, null);
    }
}

/// <summary>A cause with how likely it is.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Axle">The axle it holds of; null for <see cref="WearCause.Normal"/>, which holds of all that was read.</param>
/// <param name="Probability">From 0 to 1.</param>
/// <param name="Tyres">The tyres that show it, or of its axle where none shows it alone.</param>
/// <param name="Evidence">What speaks for and against it, the heaviest first.</param>
public sealed record CauseFinding(WearCause Cause, CarAxle? Axle, double Probability, IReadOnlyList<WheelPosition> Tyres, IReadOnlyList<Evidence> Evidence);

/// <summary>One observation for or against a cause, beside the other causes most likely at work.</summary>
/// <param name="Axle">The axle it was read of.</param>
/// <param name="Sign">The sign it is; null where it is a mark.</param>
/// <param name="Mark">The mark it is; null where it is a sign.</param>
/// <param name="Weight">Common logarithm of how many times as likely the observation is with the cause as without: positive speaks for it.</param>
public readonly record struct Evidence(CarAxle Axle, WearSign? Sign, WearMark? Mark, double Weight);

/// <summary>The measurement with the largest expected information.</summary>
/// <param name="Check">What to measure.</param>
/// <param name="ExpectedBits">Expected information, bits; null where everything is read already.</param>
public readonly record struct NextCheck(WearCheck Check, double? ExpectedBits);

/// <summary>One axle's signs and how likely each cause is.</summary>
internal sealed record AxleFinding(CarAxle Axle, AxleSigns Signs, AxlePosterior Posterior);

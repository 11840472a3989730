namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>
/// Expected information of each check not yet done on an axle: the mutual information, in bits, between what it would read and the combination of causes.
/// Signs of one check are counted as independent, so a check counts for at most what is open.
/// </summary>
internal static class ExpectedInformation
{
    /// <summary>How many checks there are.</summary>
    public const int CheckCount = (int)WearCheck.NextSession + 1;

    private const int MostCombinations = 12;
    private const int EndsPerExpectation = 6;

    // Standard deviations from a mean between which a normal density is as smooth as a polynomial of the seventh degree, to a ten-thousandth of a bit.
    private static readonly double[] Ends = [-6, -3, -1, 1, 3, 6];

    // Gauss and Legendre's rule of four points (any table, such as Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4).
    private static readonly (double At, double Weight)[] Nodes =
    [
        (-0.861136311594053, 0.347854845137454), (-0.339981043584856, 0.652145154862546), (0.339981043584856, 0.652145154862546), (0.861136311594053, 0.347854845137454),
    ];

    /// <summary>Adds the bits of each check on one axle.</summary>
    public static void Add(AxlePosterior posterior, AxleSigns signs, Span<double> bits)
    {
        Span<int> masks = stackalloc int[MostCombinations];
        Span<double> shares = stackalloc double[MostCombinations];
        var count = Likeliest(posterior, masks, shares);
        Span<double> states = stackalloc double[MostCombinations * AxleLikelihoods.StateLength];
        for (var i = 0; i < count; i++) posterior.Likelihoods.Compute(masks[i], State(states, i));
        var open = Entropy(shares[..count]);
        Span<double> ofAxle = stackalloc double[CheckCount];
        ofAxle.Clear();
        foreach (var row in CheckTable.Signs)
        {
            if (signs[row.Sign] is not null || IsDone(signs, row.Check)) continue;
            ofAxle[(int)row.Check] += BySign(states, shares[..count], row);
        }

        for (var mark = WearMark.FeatheredSharpInboard; mark <= WearMark.TyresDiffer; mark++)
        {
            if (signs[mark] is null) ofAxle[(int)CheckTable.CheckFor(mark)] += ByMark(states, shares[..count], mark);
        }

        for (var check = 0; check < CheckCount; check++) bits[check] += Math.Min(open, ofAxle[check]);
    }

    /// <summary>True when a check was done although a sign of it is open: angles stated alike for both sides.</summary>
    private static bool IsDone(AxleSigns signs, WearCheck check) => check switch
    {
        WearCheck.Camber => signs.IsCamberRead,
        WearCheck.Toe => signs[WearSign.ToeSet] is not null,
        _ => false,
    };

    private static int Likeliest(AxlePosterior posterior, Span<int> masks, Span<double> shares)
    {
        var count = 0;
        for (var i = 0; i < posterior.Count; i++)
        {
            var (mask, share) = posterior.Combination(i);
            if (count == MostCombinations && share <= shares[count - 1]) continue;
            var at = count < MostCombinations ? count++ : count - 1;
            for (; at > 0 && shares[at - 1] < share; at--) (masks[at], shares[at]) = (masks[at - 1], shares[at - 1]);
            (masks[at], shares[at]) = (mask, share);
        }

        var sum = 0.0;
        for (var i = 0; i < count; i++) sum += shares[i];
        for (var i = 0; i < count; i++) shares[i] /= sum;
        return count;
    }

    private static double BySign(ReadOnlySpan<double> states, ReadOnlySpan<double> shares, in CheckRow row)
    {
        Span<double> means = stackalloc double[MostCombinations];
        Span<double> variances = stackalloc double[MostCombinations];
        Span<double> weights = stackalloc double[MostCombinations];
        var count = Distinct(states, shares, row.Sign, means, variances, weights);
        for (var i = 0; i < count; i++) variances[i] += row.Error * row.Error;
        return MutualInformation(weights[..count], means[..count], variances[..count]);
    }

    /// <summary>
    /// Mutual information, in bits, of which of several normal distributions holds and one value drawn from it: the mean of ln p(x | one) / p(x), by Gauss' rule of four points
    /// on every stretch between the multiples of each standard deviation in <c>Ends</c>, so that a narrow distribution beside a wide one is met.
    /// </summary>
    /// <param name="weights">How likely each is; 1 together.</param>
    /// <param name="means">Their means.</param>
    /// <param name="variances">Their variances, above 0.</param>
    public static double MutualInformation(ReadOnlySpan<double> weights, ReadOnlySpan<double> means, ReadOnlySpan<double> variances)
    {
        var count = weights.Length;
        if (count < 2) return 0;
        Span<double> ends = stackalloc double[count * EndsPerExpectation];
        Span<double> logs = stackalloc double[count];
        for (var i = 0; i < count; i++)
        {
            var spread = Math.Sqrt(variances[i]);
            logs[i] = Math.Log(spread * Math.Sqrt(2 * Math.PI));
            for (var end = 0; end < EndsPerExpectation; end++) ends[(i * EndsPerExpectation) + end] = means[i] + (Ends[end] * spread);
        }

        ends.Sort();
        var sum = 0.0;
        for (var stretch = 1; stretch < ends.Length; stretch++)
        {
            var half = (ends[stretch] - ends[stretch - 1]) / 2;
            if (half <= 0) continue;
            foreach (var (node, weight) in Nodes) sum += half * weight * Told(ends[stretch] - half + (half * node), weights, means, variances, logs);
        }

        return Math.Max(0, sum / Math.Log(2));
    }

    private static double Told(double at, ReadOnlySpan<double> weights, ReadOnlySpan<double> means, ReadOnlySpan<double> variances, ReadOnlySpan<double> logs)
    {
        var (whole, told) = (0.0, 0.0);
        for (var i = 0; i < weights.Length; i++)
        {
            var log = -logs[i] - (0.5 * (at - means[i]) * (at - means[i]) / variances[i]);
            var density = weights[i] * Math.Exp(log);
            (whole, told) = (whole + density, told + (density * log));
        }

        return whole > 0 ? told - (whole * Math.Log(whole)) : 0;
    }

    /// <summary>What is expected of a sign, each different expectation once with the share of all combinations that have it.</summary>
    private static int Distinct(ReadOnlySpan<double> states, ReadOnlySpan<double> shares, WearSign sign, Span<double> means, Span<double> variances, Span<double> weights)
    {
        var count = 0;
        for (var i = 0; i < shares.Length; i++)
        {
            var (mean, variance) = AxleLikelihoods.Expected(State(states, i), sign);
            var at = 0;
            while (at < count && (means[at] != mean || variances[at] != variance)) at++;
            if (at == count) (means[count], variances[count], weights[count++]) = (mean, variance, 0);
            weights[at] += shares[i];
        }

        return count;
    }

    private static double ByMark(ReadOnlySpan<double> states, ReadOnlySpan<double> shares, WearMark mark)
    {
        var (chance, within) = (0.0, 0.0);
        for (var i = 0; i < shares.Length; i++)
        {
            var one = AxleLikelihoods.Chance(State(states, i), mark);
            chance += shares[i] * one;
            within += shares[i] * Binary(one);
        }

        return Math.Max(0, Binary(chance) - within);
    }

    private static double Entropy(ReadOnlySpan<double> shares)
    {
        var sum = 0.0;
        foreach (var share in shares) sum -= share > 0 ? share * Math.Log2(share) : 0;
        return sum;
    }

    private static double Binary(double chance) =>
        chance is <= 0 or >= 1 ? 0 : -((chance * Math.Log2(chance)) + ((1 - chance) * Math.Log2(1 - chance)));

    private static Span<double> State(Span<double> states, int index) => states.Slice(index * AxleLikelihoods.StateLength, AxleLikelihoods.StateLength);

    private static ReadOnlySpan<double> State(ReadOnlySpan<double> states, int index) => states.Slice(index * AxleLikelihoods.StateLength, AxleLikelihoods.StateLength);
}

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
    private const int Points = 9;
    private const double Reach = 2.6;
    private const double HalfLogTwoPiE = 1.4189385332046727;

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
        WearCheck.Camber => signs[WearSign.CamberSet] is not null || signs[WearSign.CamberShort] is not null,
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
        if (count == 1) return 0;
        var (low, high, within) = (double.PositiveInfinity, double.NegativeInfinity, 0.0);
        for (var i = 0; i < count; i++)
        {
            variances[i] += row.Error * row.Error;
            var spread = Math.Sqrt(variances[i]);
            (low, high) = (Math.Min(low, means[i] - (Reach * spread)), Math.Max(high, means[i] + (Reach * spread)));
            within += weights[i] * (HalfLogTwoPiE + Math.Log(spread));
            weights[i] /= Math.Sqrt(2 * Math.PI) * spread;
        }

        var (step, whole, mass) = ((high - low) / Points, 0.0, 0.0);
        for (var point = 0; point < Points; point++)
        {
            var at = low + ((point + 0.5) * step);
            var density = 0.0;
            for (var i = 0; i < count; i++) density += weights[i] * Math.Exp(-0.5 * (at - means[i]) * (at - means[i]) / variances[i]);
            if (density <= 0) continue;
            mass += density * step;
            whole -= density * step * Math.Log(density);
        }

        // The grid's own error in the mass is taken out; less than nothing is the grid's too.
        return Math.Max(0, ((whole / mass) + Math.Log(mass) - within) / Math.Log(2));
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

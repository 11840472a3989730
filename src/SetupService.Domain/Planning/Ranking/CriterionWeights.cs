namespace SetupService.Domain.Planning.Ranking;

/// <summary>What a set of tyres is used for, in shares that add up to 1.</summary>
/// <param name="Daily">Driving on the road.</param>
/// <param name="Wet">Driving where it is often wet.</param>
/// <param name="Track">Track days, sprints, hill climbs.</param>
public readonly record struct TyreUseMix(double Daily, double Wet, double Track);

/// <summary>How much each criterion counts, as shares that add up to 1.</summary>
public readonly record struct CriterionWeights
{
    // Rows: what each use asks for, adding up to 1. Common practice, no source; the caller may give his own.
    private static readonly double[] Daily = [0.25, 0.15, 0.20, 0, 0.10, 0.10, 0.20];
    private static readonly double[] Wet = [0.60, 0.05, 0.15, 0, 0.05, 0.05, 0.10];
    private static readonly double[] Track = [0.05, 0.50, 0.15, 0.20, 0, 0, 0.10];

    private readonly double[]? _shares;

    private CriterionWeights(double[] shares) => _shares = shares;

    /// <summary>The share of a criterion.</summary>
    public double this[TyreCriterion criterion] => _shares?[(int)criterion] ?? 0;

    /// <summary>The weights that suit a mix of uses: each use's own, by its share.</summary>
    public static CriterionWeights From(TyreUseMix use)
    {
        var shares = new double[TyreMerits.Count];
        for (var i = 0; i < shares.Length; i++) shares[i] = (use.Daily * Daily[i]) + (use.Wet * Wet[i]) + (use.Track * Track[i]);
        return new(shares);
    }

    /// <summary>Weights as given, in the order of the criteria, scaled to add up to 1; at least one is above 0, none below.</summary>
    public static CriterionWeights From(ReadOnlySpan<double> given)
    {
        var shares = given.ToArray();
        var sum = 0.0;
        foreach (var share in shares) sum += share;
        for (var i = 0; i < shares.Length; i++) shares[i] /= sum;
        return new(shares);
    }
}

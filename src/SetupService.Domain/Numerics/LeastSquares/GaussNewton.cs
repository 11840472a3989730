namespace SetupService.Domain.Numerics.LeastSquares;

/// <summary>
/// Least squares for a formula that is not linear in its unknowns: Gauss–Newton with the formula's own derivatives, each step
/// halved until it makes nothing worse. Bounded in work, no allocation.
/// </summary>
public static class GaussNewton
{
    private const int MostHalvings = 30;

    // What rounding leaves uncertain in a single residual.
    private const double Rounding = 1e-15;

    /// <summary>
    /// Moves <paramref name="unknowns"/> from a start to the least sum of squares; <paramref name="standardFactors"/> are then
    /// their standard errors per unit of the readings' own. False where the fit does not reach rest or the readings cannot
    /// tell the unknowns apart.
    /// </summary>
    /// <param name="model">The formula and its readings.</param>
    /// <param name="unknowns">A start, then the fit.</param>
    /// <param name="standardFactors">Standard errors per unit of the readings' own.</param>
    /// <param name="sumOfSquares">What is left.</param>
    /// <param name="smallest">Root-mean-square change of the readings' values that no longer matters.</param>
    /// <param name="mostSteps">The most steps taken; a formula far from its readings reaches rest slowly.</param>
    /// <param name="budget">Work allowed, one of its steps a step of the fit; null = no limit but <paramref name="mostSteps"/>.</param>
    public static bool TryFit<TModel>(
        TModel model, Span<double> unknowns, Span<double> standardFactors, out double sumOfSquares, double smallest = 1e-14, int mostSteps = 60,
        WorkBudget? budget = null)
        where TModel : IFittedModel, allows ref struct
    {
        var count = model.UnknownCount;
        var equations = new NormalEquations(stackalloc double[NormalEquations.MemoryFor(count)], count);
        Span<double> step = stackalloc double[count];
        Span<double> trial = stackalloc double[count];
        if (!TrySum(model, unknowns, equations, out sumOfSquares)) return false;
        for (var i = 0; i < mostSteps; i++)
        {
            if (budget is not null && !budget.TrySpend()) return false;
            if (!equations.TryFactor()) return false;
            equations.StandardFactors(standardFactors);
            var promised = equations.Solve(step);
            if (promised <= model.ReadingCount * smallest * smallest) return true;
            if (!TryStep(model, unknowns, step, trial, equations, ref sumOfSquares)) return promised <= Slack(sumOfSquares, model.ReadingCount);
        }

        return false;
    }

    /// <summary>
    /// What a fit leaves open of its unknowns together: the lower triangle, by rows, whose product with its own transpose is their covariance where every reading's error is one. A column is what one
    /// standard error of one of as many independent unknowns does to each. False where the readings cannot tell the unknowns apart.
    /// </summary>
    /// <param name="model">The formula and its readings.</param>
    /// <param name="unknowns">The fit.</param>
    /// <param name="factor">The triangle, the count of unknowns squared.</param>
    public static bool TryCovarianceFactor<TModel>(TModel model, ReadOnlySpan<double> unknowns, Span<double> factor)
        where TModel : IFittedModel, allows ref struct
    {
        var count = model.UnknownCount;
        var equations = new NormalEquations(stackalloc double[NormalEquations.MemoryFor(count)], count);
        if (!TrySum(model, unknowns, equations, out _) || !equations.TryFactor()) return false;
        equations.Covariance(factor);
        for (var row = 0; row < count; row++)
        {
            for (var column = 0; column < count; column++)
            {
                ref var entry = ref factor[(row * count) + column];
                if (column > row)
                {
                    entry = 0;
                    continue;
                }

                for (var k = 0; k < column; k++) entry -= factor[(row * count) + k] * factor[(column * count) + k];
                if (column < row) entry /= factor[(column * count) + column];
                else if (entry > 0) entry = Math.Sqrt(entry);
                else return false;
            }
        }

        return true;
    }

    /// <summary>Within which two sums of squares cannot be known apart: every residual off by its rounding.</summary>
    private static double Slack(double sumOfSquares, int count) =>
        ((2 * Math.Sqrt(count * sumOfSquares)) + (count * Rounding)) * Rounding;

    private static bool TryStep<TModel>(
        TModel model, Span<double> unknowns, Span<double> step, Span<double> trial, in NormalEquations equations, ref double sumOfSquares)
        where TModel : IFittedModel, allows ref struct
    {
        for (var halving = 0; halving < MostHalvings; halving++)
        {
            for (var k = 0; k < trial.Length; k++) trial[k] = unknowns[k] + step[k];
            if (TrySum(model, trial, equations, out var sum) && sum <= sumOfSquares + Slack(sumOfSquares, model.ReadingCount))
            {
                sumOfSquares = sum;
                trial.CopyTo(unknowns);
                return true;
            }

            for (var k = 0; k < step.Length; k++) step[k] /= 2;
        }

        return false;
    }

    private static bool TrySum<TModel>(TModel model, ReadOnlySpan<double> unknowns, in NormalEquations equations, out double sumOfSquares)
        where TModel : IFittedModel, allows ref struct
    {
        Span<double> gradient = stackalloc double[unknowns.Length];
        equations.Clear();
        sumOfSquares = 0;
        for (var reading = 0; reading < model.ReadingCount; reading++)
        {
            if (!model.TryEvaluate(reading, unknowns, gradient, out var residual)) return false;
            equations.Add(gradient, residual);
            sumOfSquares += residual * residual;
        }

        return double.IsFinite(sumOfSquares);
    }
}

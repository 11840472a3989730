namespace SetupService.Domain.Answers;

/// <summary>A value with the range it lies in at a stated level.</summary>
/// <param name="Value">The best estimate.</param>
/// <param name="Lower">Lower end of the range.</param>
/// <param name="Upper">Upper end of the range.</param>
/// <param name="LevelPct">How often such a range holds the true value, percent.</param>
public readonly record struct Uncertainty(double Value, double Lower, double Upper, double LevelPct)
{
    /// <summary>The level of the ranges made here, percent.</summary>
    public const double NinetyPct = 90;

    /// <summary>How many standard errors lie either side at 90 %: the 95 % quantile of the normal distribution.</summary>
    public const double StandardErrorsAtNinetyPct = 1.6448536269514722;

    /// <summary>The 90 % range of a value whose errors are normally distributed; <paramref name="standardError"/> is not negative.</summary>
    public static Uncertainty Ninety(double value, double standardError) => new(
        value,
        value - (StandardErrorsAtNinetyPct * standardError),
        value + (StandardErrorsAtNinetyPct * standardError),
        NinetyPct);
}

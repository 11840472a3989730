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

/// <summary>A value worked from readings, with its standard error; both in the unit of the member that holds it.</summary>
/// <param name="Value">The best estimate.</param>
/// <param name="StandardError">What the readings leave uncertain; 0 for a value that was given.</param>
public readonly record struct Estimate(double Value, double StandardError)
{
    /// <summary>The 90 % range.</summary>
    public Uncertainty Ninety => Uncertainty.Ninety(Value, StandardError);
}

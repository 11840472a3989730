namespace SetupService.Domain.Answers;

/// <summary>A value worked from readings, with its standard error; both in the unit of the member that holds it.</summary>
/// <param name="Value">The best estimate.</param>
/// <param name="StandardError">What the readings leave open; 0 for a value that was given.</param>
public readonly record struct Estimate(double Value, double StandardError)
{
    /// <summary>The 90 % range.</summary>
    public Uncertainty Ninety => Uncertainty.Ninety(Value, StandardError);
}

namespace SetupService.Api.Http.Contract;

/// <summary>
/// The inclusive range a number of a request must lie in, in the unit its name ends in. On an array of numbers it
/// holds for each element. Outside it the request is refused with the code <c>outOfRange</c> and the limits as data.
/// </summary>
/// <param name="minimum">The smallest value accepted.</param>
/// <param name="maximum">The largest value accepted.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class LimitsAttribute(double minimum, double maximum) : Attribute
{
    /// <summary>The smallest value accepted.</summary>
    public double Minimum { get; } = minimum;

    /// <summary>The largest value accepted.</summary>
    public double Maximum { get; } = maximum;
}

using SetupService.Domain.Answers;

namespace SetupService.Domain.Handling.Cars;

/// <summary>One scalar of a car that the handling model takes, its place in a vehicle document, and how well a given value is usually known.</summary>
/// <param name="Place">JSON Pointer within the vehicle.</param>
/// <param name="Unit">Its unit, as a member's name ends in it.</param>
/// <param name="Read">Its value in a car.</param>
/// <param name="Put">The car with another value.</param>
/// <param name="RelativeError">Standard error of a value given, as a share of it; common practice, no source.</param>
/// <param name="AbsoluteError">Standard error of a value given, in its unit, on top of that share; common practice, no source.</param>
public sealed record HandlingInput(
    string Place, string Unit, Func<HandlingCar, double> Read, Func<HandlingCar, double, HandlingCar> Put, double RelativeError, double AbsoluteError)
{
    /// <summary>Standard error of a value given.</summary>
    public double ErrorOf(double value) => Math.Abs(value) * RelativeError + AbsoluteError;
}

/// <summary>A scalar that was not given, with the value used in its place.</summary>
/// <param name="Input">Which.</param>
/// <param name="Value">What was used, in the input's unit.</param>
/// <param name="Lower">Lower end of the range it plausibly lies in (90 %).</param>
/// <param name="Upper">Upper end of that range.</param>
/// <param name="Source">Where the value comes from.</param>
/// <param name="Reason">Why it was needed, and what it does to the answer.</param>
public sealed record AssumedInput(HandlingInput Input, double Value, double Lower, double Upper, string Source, string Reason)
{
    /// <summary>The standard error the range stands for, the range taken as 90 % of a normal distribution.</summary>
    public double StandardError => (Upper - Lower) / (2 * Uncertainty.StandardErrorsAtNinetyPct);

    /// <summary>As it stands in an answer.</summary>
    public Assumption ToAssumption() => new("/vehicle" + Input.Place, Value, null, Source, Reason);
}

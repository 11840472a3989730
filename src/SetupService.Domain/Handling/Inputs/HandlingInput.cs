using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Handling.Inputs;

/// <summary>One scalar of a car that the handling model takes, where it stands in a vehicle document, and how well a given value is usually known.</summary>
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

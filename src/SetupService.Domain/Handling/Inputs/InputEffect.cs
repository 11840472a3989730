using SetupService.Domain.Handling.Cars;

namespace SetupService.Domain.Handling.Inputs;

/// <summary>What an outcome would be at both ends of the range an assumed input plausibly lies in.</summary>
/// <param name="Assumed">The input.</param>
/// <param name="AtLower">The outcome at the lower end; null where there is none.</param>
/// <param name="AtUpper">The outcome at the upper end; null where there is none.</param>
public sealed record InputEffect(AssumedInput Assumed, double? AtLower, double? AtUpper)
{
    /// <summary>Works the outcome anew for both ends of every assumed input's range, the others as they are.</summary>
    public static IReadOnlyList<InputEffect> Of(HandlingCarReading reading, Func<HandlingCar, double?> outcome)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(outcome);
        var effects = new InputEffect[reading.Assumed.Count];
        for (var i = 0; i < effects.Length; i++)
        {
            var one = reading.Assumed[i];
            effects[i] = new(one, outcome(one.Input.Put(reading.Car, one.Lower)), outcome(one.Input.Put(reading.Car, one.Upper)));
        }

        return effects;
    }
}

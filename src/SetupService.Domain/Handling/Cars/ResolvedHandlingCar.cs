using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Inputs;

namespace SetupService.Domain.Handling.Cars;

/// <summary>A car made ready for the handling model, with what had to be assumed.</summary>
/// <param name="Car">The car.</param>
/// <param name="Assumed">The scalars nobody gave.</param>
/// <param name="Notes">What else was assumed, as it stands in an answer.</param>
public sealed record ResolvedHandlingCar(HandlingCar Car, IReadOnlyList<AssumedInput> Assumed, IReadOnlyList<Assumption> Notes)
{
    /// <summary>The scalar assumed for an input; null where it was given.</summary>
    public AssumedInput? AssumedFor(HandlingInput input)
    {
        foreach (var one in Assumed)
        {
            if (ReferenceEquals(one.Input, input)) return one;
        }

        return null;
    }

    /// <summary>Standard error of an input: of a value given what such values are usually known to, else what its plausible range stands for.</summary>
    public double ErrorOf(HandlingInput input) => AssumedFor(input)?.StandardError ?? input.ErrorOf(input.Read(Car));
}

using SetupService.Api.Http.Contract;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Wear.Diagnosis;

/// <summary>Readings that cannot well be true together.</summary>
public sealed record ContradictionPart
{
    /// <summary>The tyre they are of; null = of the whole car.</summary>
    [Sample("frontLeft")]
    public required WheelPosition? Position { get; init; }

    /// <summary>What contradicts what.</summary>
    [Sample("Edges sharp towards the car's centre point to toe-in, but the stated toe is 0.20° out.")]
    public required string Text { get; init; }
}

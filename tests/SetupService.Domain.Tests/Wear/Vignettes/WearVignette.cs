using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>A case as a person would report it and the cause that guidance names first.</summary>
internal sealed record WearVignette
{
    public required string Name { get; init; }

    public required WearCase Case { get; init; }

    /// <summary>The cause guidance names first.</summary>
    public required WearCause Expected { get; init; }

    /// <summary>Which axle it holds of; null = both, or neither where all is well.</summary>
    public CarAxle? Axle { get; init; }

    /// <summary>Where the guidance is published, or that none is.</summary>
    public required string Source { get; init; }

    public override string ToString() => Name;
}

using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>A car whose tyres were worn by computation: what a person reports of it, and what is truly wrong with it.</summary>
internal sealed record SimulatedCar
{
    /// <summary>What a person reports.</summary>
    public required WearCase Case { get; init; }

    /// <summary>Every cause whose definition holds, of both axles, also of one that nobody read; never <see cref="WearCause.Normal"/>.</summary>
    public required IReadOnlySet<(WearCause Cause, CarAxle Axle)> Faults { get; init; }
}

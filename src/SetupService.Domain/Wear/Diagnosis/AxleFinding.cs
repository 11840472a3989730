using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>One axle's signs and how likely each cause is.</summary>
internal sealed record AxleFinding(CarAxle Axle, AxleSigns Signs, AxlePosterior Posterior);

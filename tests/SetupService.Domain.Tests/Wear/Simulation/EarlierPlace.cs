using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Where a tyre served before.</summary>
/// <param name="Position">Where on the car.</param>
/// <param name="Share">Share of all its use.</param>
/// <param name="IsTurnedOnRim">Whether its sides were changed since.</param>
internal sealed record EarlierPlace(WheelPosition Position, double Share, bool IsTurnedOnRim);

namespace SetupService.Domain.Wear.BeforeAfter;

/// <summary>A zone's wear before and after a change.</summary>
/// <param name="Main">By the compared clock; null where the readings before do not tell.</param>
/// <param name="Road">Per 1000 km beside it, where laps are compared and both lists tell the road apart; else null.</param>
/// <param name="SoughtRatio">The ratio further readings are to show: the one expected, or the one seen; null where there is none.</param>
/// <param name="LeastUse">Further use that would show it four times in five, in units of the clock; null where none would, or nothing is sought.</param>
/// <param name="PlannedPower">How often the planned use would show it, 0 to 1; null where none is planned or nothing is sought.</param>
public readonly record struct ZoneComparison(RateChange? Main, RateChange? Road, double? SoughtRatio, double? LeastUse, double? PlannedPower);

using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Search;

/// <summary>A corner after adjusting: its changed parts, and the wheel travel it now stands at.</summary>
/// <param name="Setting">The changed corner.</param>
/// <param name="TravelMm">Wheel travel at which it stands, mm; other than 0 only where the ride height was changed.</param>
public readonly record struct AdjustedSetting(CornerSetting Setting, double TravelMm);

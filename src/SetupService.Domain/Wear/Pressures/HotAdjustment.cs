using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>What to let out of or into a tyre while it is hot.</summary>
/// <param name="ChangeKpa">Change of the hot gauge pressure, kPa; negative = let out.</param>
/// <param name="HotThenKpa">What the gauge then reads hot, kPa.</param>
/// <param name="ColdThenKpa">What it reads when the tyre is as cold as before the session, kPa.</param>
/// <param name="IsHeldByLoad">Whether the load needs more than the hot aim leaves, so that the aim is passed.</param>
public readonly record struct HotAdjustment(double ChangeKpa, double HotThenKpa, Uncertainty ColdThenKpa, bool IsHeldByLoad);

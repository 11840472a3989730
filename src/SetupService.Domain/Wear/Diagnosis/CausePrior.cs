namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>How often a cause holds on an axle of the cars whose owners ask, before anything is read.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Front">On a front axle of a car that sees the track.</param>
/// <param name="Rear">On a rear axle of one.</param>
/// <param name="RoadOnly">By how much less often where the car never sees the track; 0 = never.</param>
/// <param name="IsOfDrive">Whether only driven wheels can have it.</param>
/// <param name="Source">Where the figure comes from.</param>
public readonly record struct CausePrior(WearCause Cause, double Front, double Rear, double RoadOnly, bool IsOfDrive, string Source);

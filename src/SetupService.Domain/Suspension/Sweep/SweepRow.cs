namespace SetupService.Domain.Suspension.Sweep;

/// <summary>One position of a sweep that was reached.</summary>
/// <param name="Wheel">What is told of the left wheel.</param>
/// <param name="Pair">Both wheels' steer; null where the axle has no rack, or the right wheel does not reach the position.</param>
/// <param name="Anti">What braking and driving do.</param>
/// <param name="BumpSteerMmPerMm">Change of toe at the measuring diameter per mm of bump, mm; null where toe is not known over travel.</param>
public readonly record struct SweepRow(SuspensionPosition Wheel, SteeringPair? Pair, AntiFigures Anti, double? BumpSteerMmPerMm);

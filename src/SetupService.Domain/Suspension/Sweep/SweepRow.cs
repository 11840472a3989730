using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Suspension.Sweep;

/// <summary>One position of a sweep that was reached.</summary>
/// <param name="Wheel">The left wheel's figures.</param>
/// <param name="Pair">Both wheels' steer; null where the axle has no rack, or the right wheel does not reach the position.</param>
/// <param name="Anti">What braking and driving do.</param>
/// <param name="BumpSteerMmPerMm">Change of toe at the measuring diameter per mm of bump, mm.</param>
public readonly record struct SweepRow(WheelFigures Wheel, SteeringPair? Pair, AntiFigures Anti, double BumpSteerMmPerMm);

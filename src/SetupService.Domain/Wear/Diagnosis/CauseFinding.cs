using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>A cause with how likely it is.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Axle">The axle it holds of; null for <see cref="WearCause.Normal"/>, which holds of all that was read.</param>
/// <param name="Probability">From 0 to 1.</param>
/// <param name="Tyres">The tyres that show it, or of its axle where none shows it alone.</param>
/// <param name="Evidence">What speaks for and against it, the heaviest first.</param>
public sealed record CauseFinding(WearCause Cause, CarAxle? Axle, double Probability, IReadOnlyList<WheelPosition> Tyres, IReadOnlyList<Evidence> Evidence);

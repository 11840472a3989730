using SetupService.Domain.Tyres;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Fitment;

/// <summary>A wheel with a tyre on it.</summary>
/// <param name="Wheel">The wheel, with the spacer behind it.</param>
/// <param name="Tyre">The tyre on the wheel.</param>
public readonly record struct Fitting(Wheel Wheel, Tyre Tyre);

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>By how much a cause moves a sign.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Sign">The sign.</param>
/// <param name="Mean">Mean of the shift.</param>
/// <param name="Spread">Its standard deviation: causes are stronger on one car than on another, and some can go either way.</param>
/// <param name="By">With which use the shift grows.</param>
/// <param name="Source">Where it comes from.</param>
public readonly record struct SignShift(WearCause Cause, WearSign Sign, double Mean, double Spread, UseShare By, string Source);

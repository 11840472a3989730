namespace SetupService.Domain.Wheels;

/// <summary>The thread of a wheel bolt or stud.</summary>
/// <param name="DiameterMm">Nominal diameter in mm; a half-inch thread has 12.7.</param>
/// <param name="PitchMm">Distance from thread to thread in mm; 20 threads an inch are 1.27.</param>
public sealed record FastenerThread(double DiameterMm, double PitchMm);

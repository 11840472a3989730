namespace SetupService.Domain.Suspension.Steering;

/// <summary>Camber read on turn plates.</summary>
/// <param name="SteerDeg">Heading of this wheel, degrees; positive = left, whichever side the wheel is on.</param>
/// <param name="CamberDeg">Camber there, degrees; negative = top towards the car's centre.</param>
public readonly record struct SteerReading(double SteerDeg, double CamberDeg);

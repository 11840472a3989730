namespace SetupService.Domain.Wear.TreadWear;

/// <summary>How one wheel stands in one kind of corner.</summary>
/// <param name="Work">Share of this corner in what a kilometre of track takes, by side force times slip; all corners of both wheels of an axle make 2 together.</param>
/// <param name="LoadN">Load on the road, N.</param>
/// <param name="InclinationAngleDeg">Inclination to the road, degrees; negative = top towards the car's centre.</param>
/// <param name="PerCamber">Change of the inclination by a degree of static camber.</param>
/// <param name="IsOuter">Whether it is the outer wheel there.</param>
public readonly record struct BendLoad(double Work, double LoadN, double InclinationAngleDeg, double PerCamber, bool IsOuter);

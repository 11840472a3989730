namespace SetupService.Domain.Handling.Tyres;

/// <summary>How the two tyres of an axle share a side force.</summary>
/// <param name="SlipDeg">Their common slip angle, degrees.</param>
/// <param name="OuterN">Side force of the outer tyre, N.</param>
/// <param name="InnerN">Side force of the inner tyre, N.</param>
public readonly record struct PairSlip(double SlipDeg, double OuterN, double InnerN);

namespace SetupService.Domain.Fitment;

/// <summary>Room left at one place, mm; negative = it touches.</summary>
/// <param name="NominalMm">With everything at its nominal size.</param>
/// <param name="ProbableMm">Nominal less the root-sum-square of growth, production tolerance and measuring error.</param>
/// <param name="WorstCaseMm">Nominal less their sum.</param>
public readonly record struct Margin(double NominalMm, double ProbableMm, double WorstCaseMm);

using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Domain.Tests.Wear.Diagnosis;

/// <summary>What a diagnosis tells of causes it leaves out as unlikely, too.</summary>
internal static class ToldProbabilities
{
    /// <summary>How likely a cause is on an axle; null where none of its tyres was looked at.</summary>
    public static double? Probability(this WearDiagnosis diagnosis, WearCause cause, CarAxle at) =>
        diagnosis.Axles.FirstOrDefault(axle => axle.Axle == at)?.Posterior is not { } told ? null : cause == WearCause.Normal ? told.NormalProbability : told.Probability(cause);
}

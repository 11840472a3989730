using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>Asks the diagnosis as the service asks it.</summary>
internal static class AskedDiagnosis
{
    /// <summary>What it tells of each cause of each axle.</summary>
    public static Dictionary<(WearCause Cause, CarAxle? Axle), double> Tell(WearCase wear)
    {
        var vehicle = wear.Vehicle;
        var isWhole = vehicle.WheelbaseMm is not null && HandlingCarBuilder.Missing(vehicle).Count == 0 && wear.Use.TrackLaps is not 0;
        var car = isWhole ? HandlingCarBuilder.Build(vehicle)?.Car : null;
        var study = WearStudy.Compute(wear, car, WorkBudget.Generous(CancellationToken.None));
        return study.Diagnosis.Causes.ToDictionary(one => (one.Cause, one.Axle), one => one.Probability);
    }
}

using BenchmarkDotNet.Attributes;
using SetupService.Benchmarks.Handling;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Benchmarks.Wear;

/// <summary>The diagnosis of four tyres, by their readings alone and with the wear model of a car with full kinematics at both ends.</summary>
[MemoryDiagnoser]
public class DiagnosisBenchmark
{
    private readonly WearCase _case = Case(new Vehicle());
    private readonly WearCase _caseWithCar = Case(HandlingCars.Vehicle());
    private readonly HandlingCar _car = HandlingCars.Drawn().Car;

    /// <summary>By readings alone.</summary>
    [Benchmark]
    public double Readings() => WearDiagnosis.Compute(_case).NormalProbability;

    /// <summary>With the wear model: twelve turns solved, the model learned at both axles.</summary>
    [Benchmark]
    public double WithVehicle()
    {
        var study = WearStudy.Compute(_caseWithCar, _car);
        return study.Front!.LifeRatio(study.UseWith(CarAxle.Front, -0.5)!);
    }

    private static WearCase Case(Vehicle vehicle) => new()
    {
        Vehicle = vehicle,
        Use = new WearUse(6000, 85, 3.2) { LateralG = 0.95, CornerRadiusM = 55 },
        Tyres =
        [
            Tyre(WheelPosition.FrontLeft, 3.9, 5.4, 5.6, [TreadPattern.WornPastShoulder]), Tyre(WheelPosition.FrontRight, 4.1, 5.4, 5.7, [TreadPattern.ShoulderGraining]),
            Tyre(WheelPosition.RearLeft, 5.6, 5.8, 5.7, []), Tyre(WheelPosition.RearRight, 5.7, 5.8, 5.7, []),
        ],
    };

    private static TyreReading Tyre(WheelPosition position, double outerMm, double centreMm, double innerMm, TreadPattern[] patterns) => new()
    {
        Position = position,
        NewDepthMm = 7.8,
        GaugeErrorMm = 0.15,
        Zones = TreadZone.FromDepths(new AcrossTread<double>(outerMm, centreMm, innerMm)),
        Patterns = patterns,
        TemperatureC = new(90, 83, 78),
        TemperatureBy = Thermometer.Probe,
        Pressure = new TyrePressures(205, 242, null, 240),
    };
}

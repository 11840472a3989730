using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using static SetupService.Domain.Tests.Wear.Vignettes.Told;

namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>Camber too small for the track, and too great for the road.</summary>
internal static class CamberVignettes
{
    private const string Outer = "common practice, no source: on a track the outer shoulder wears where negative camber is too small";
    private const string Inner = "common practice, no source: negative camber wears the inner shoulder of a road car without feathering";
    private const string Hotter = "common practice, no source: outer edge hotter, too little negative camber";

    public static IEnumerable<WearVignette> All =>
    [
        Low("front outer shoulders worn on a track, depths alone", CarAxle.Front, Outer, Case(
            Track(70), Front(3.0, 4.9, 5.6), Rear(5.4, 5.5, 5.6))),
        Low("front outer shoulders worn on a track, camber of the street", CarAxle.Front, Outer, Case(
            Track(55, lateralG: 1.0), Front(3.4, 5.1, 5.7).With(), Rear(5.6, 5.7, 5.7).With()).Set(CarAxle.Front, -0.4, 0.05).Set(CarAxle.Rear, -2.6, 0.1)),
        Low("front outer edges hotter and worn", CarAxle.Front, Hotter, Case(
            Track(40), Front(4.2, 5.5, 6.0).Heat(98, 89, 82), Rear(5.9, 6.0, 6.0).Heat(84, 85, 88))),
        Low("front outer edges hotter, no depth read", CarAxle.Front, Hotter, Case(
            Track(25, lateralG: 0.95), Unread(WheelPosition.FrontLeft, WheelPosition.FrontRight).Heat(101, 92, 83), Unread(WheelPosition.RearLeft, WheelPosition.RearRight).Heat(83, 84, 88))
            .Set(CarAxle.Front, -0.6, 0)),
        Low("front scuffed past the shoulder and grained, outer side worn", CarAxle.Front, Outer, Case(
            Track(45), Front(3.6, 5.2, 5.8).With(TreadPattern.WornPastShoulder, TreadPattern.ShoulderGraining), Rear(5.7, 5.8, 5.8).With())
            .Set(CarAxle.Front, -0.3, 0.03)),
        Low("rear outer shoulders worn on a track, little camber", CarAxle.Rear, Outer, Case(
            Track(70, lateralG: 1.05), Front(5.2, 5.3, 5.3).With(), Rear(3.1, 4.6, 5.3).With()).Set(CarAxle.Rear, -0.3, 0.1).Set(CarAxle.Front, -3.0, 0)),
        Low("rear outer edges hotter", CarAxle.Rear, Hotter, Case(
            Track(35), Front(5.6, 5.7, 5.6).Heat(82, 83, 87), Rear(4.3, 5.3, 5.9).Heat(97, 89, 82))),

        High("rear inner shoulders of a lowered road car, no feathering", CarAxle.Rear, Case(
            Road(18000), Front(5.2, 5.4, 5.3).With(), Rear(5.4, 4.9, 3.4).With()).Set(CarAxle.Rear, -3.2, 0.06).Set(CarAxle.Front, -1.1, 0.04)),
        High("front inner shoulders of a lowered road car, toe right", CarAxle.Front, Case(
            Road(16000), Front(5.5, 5.0, 3.5).With(), Rear(5.6, 5.7, 5.6).With()).Set(CarAxle.Front, -3.1, 0.03).Set(CarAxle.Rear, -1.3, 0.1)),
        High("track camber driven on the road, front", CarAxle.Front, Case(
            Road(11000), Front(5.9, 5.3, 3.9), Rear(5.9, 6.0, 5.8)).Set(CarAxle.Front, -3.6, 0)),
        High("track camber driven on the road, rear, no play and pressures right", CarAxle.Rear, Case(
            Road(12000), Front(5.7, 5.8, 5.7).With().Cold(230, 230), Rear(5.8, 5.3, 4.0).With().Cold(230, 230)).Set(CarAxle.Rear, -3.4, 0.08)),
    ];

    private static WearVignette Low(string name, CarAxle axle, string source, WearCase told) =>
        new() { Name = "low camber: " + name, Case = told, Expected = WearCause.LowNegativeCamber, Axle = axle, Source = source };

    private static WearVignette High(string name, CarAxle axle, WearCase told) =>
        new() { Name = "high camber: " + name, Case = told, Expected = WearCause.HighNegativeCamber, Axle = axle, Source = Inner };
}

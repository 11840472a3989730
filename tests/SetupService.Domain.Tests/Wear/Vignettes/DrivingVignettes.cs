using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using static SetupService.Domain.Tests.Wear.Vignettes.Told;
using static SetupService.Domain.Vehicles.WheelPosition;

namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>What the driver does, and how warm the tread works.</summary>
internal static class DrivingVignettes
{
    private const string Overdriven = "common practice, no source: front treads much hotter and more worn than the rear, camber right: driven over the front";
    private const string Window = "common practice, no source: a tread outside the temperatures it is made for grains cold and blisters hot";

    public static IEnumerable<WearVignette> All =>
    [
        Spin("rear middle worn fast, the rear drives, air right", CarAxle.Rear, Case(
            Road(9000), Front(6.2, 6.2, 6.2).With().Cold(230, 230), Rear(4.4, 3.0, 4.4).With().Cold(230, 230)).Driving(DrivenAxle.Rear)),
        Spin("front middle worn fast, the front drives, air right", CarAxle.Front, Case(
            Road(8000), Front(4.3, 3.0, 4.4).With().Cold(230, 230), Rear(6.7, 6.8, 6.7).With().Cold(230, 230)).Driving(DrivenAxle.Front)),
        Spin("rear of a track car gone while the front is fresh, air right", CarAxle.Rear, Case(
            Track(25, 2000), Front(6.3, 6.4, 6.3).With().Hot(225, 225), Rear(3.6, 2.4, 3.5).With().Hot(226, 225)).Driving(DrivenAxle.Rear).Set(CarAxle.Rear, -2.5, 0.1)),

        TooMuch("front twice as worn and far hotter, camber right", Case(
            Track(30, lateralG: 0.9), Front(3.4, 4.2, 4.2).With(TreadPattern.ShoulderGraining).Heat(112, 108, 109), Rear(6.2, 6.3, 6.2).With().Heat(80, 81, 84))
            .Driving(DrivenAxle.Front).Set(CarAxle.Front, -3.3, 0).Set(CarAxle.Rear, -2.5, 0.1)),
        TooMuch("front scuffed past the shoulder, far hotter than the driven rear, camber right", Case(
            Track(35, lateralG: 0.95), Front(3.7, 4.4, 4.5).With(TreadPattern.WornPastShoulder).Heat(110, 106, 107), Rear(6.0, 6.1, 6.0).With().Heat(84, 85, 88))
            .Driving(DrivenAxle.Rear).Set(CarAxle.Front, -3.4, 0).Set(CarAxle.Rear, -2.6, 0.1)),
        TooMuch("front of a rear-driven car gone, grained and past the shoulder, camber and air right", Case(
            Track(40, lateralG: 0.9), Front(2.9, 3.7, 3.9).With(TreadPattern.ShoulderGraining, TreadPattern.WornPastShoulder).Hot(226, 225), Rear(6.0, 6.0, 5.9).With().Hot(225, 225))
            .Driving(DrivenAxle.Rear).Set(CarAxle.Front, -3.5, 0)),

        Cold("all four far below their window, grained", null, Case(
            Track(15), Front(6.4, 6.5, 6.4).With(TreadPattern.ShoulderGraining).Heat(47, 48, 50).Window(75, 105), Rear(6.6, 6.6, 6.6).With(TreadPattern.ShoulderGraining).Heat(44, 45, 47).Window(75, 105))),
        Cold("rear far below its window", CarAxle.Rear, Case(
            Track(15), Front(6.2, 6.3, 6.2).Heat(84, 85, 88).Window(75, 105), Rear(6.7, 6.7, 6.7).Heat(53, 54, 56).Window(75, 105))),
        Cold("front far below its window, grained", CarAxle.Front, Case(
            Track(12), Front(6.5, 6.6, 6.5).With(TreadPattern.ShoulderGraining).Heat(50, 51, 53).Window(75, 105), Rear(6.3, 6.3, 6.3).With().Heat(82, 83, 85).Window(75, 105))),

        Hot("rear blistered and above its window", CarAxle.Rear, Case(
            Track(30), Front(5.8, 5.9, 5.8).With().Heat(90, 91, 94).Window(70, 100), Rear(4.6, 4.6, 4.6).With(TreadPattern.Blistering).Heat(123, 125, 126).Window(70, 100))),
        Hot("front blistered and torn, no temperature read", CarAxle.Front, Case(
            Track(35), Front(4.8, 4.9, 4.8).With(TreadPattern.Blistering, TreadPattern.Chunking), Rear(5.9, 5.9, 5.9).With())),
        Hot("all four blistered and above their window", null, Case(
            Track(30), Front(4.9, 4.9, 4.8).With(TreadPattern.Blistering).Heat(120, 121, 124).Window(70, 100), Rear(5.1, 5.1, 5.0).With(TreadPattern.Blistering).Heat(119, 120, 122).Window(70, 100))),
        Hot("rear blistered, nothing measured", CarAxle.Rear, Case(
            Track(30), Unread(FrontLeft, FrontRight).With(), Unread(RearLeft, RearRight).With(TreadPattern.Blistering))),
    ];

    private static WearVignette Spin(string name, CarAxle axle, WearCase told) =>
        new() { Name = "wheelspin: " + name, Case = told, Expected = WearCause.Wheelspin, Axle = axle, Source = Guidance.Service + ", middle of the driven axle under hard driving torque" };

    private static WearVignette TooMuch(string name, WearCase told) =>
        new() { Name = "overdriven: " + name, Case = told, Expected = WearCause.FrontOverdriven, Axle = CarAxle.Front, Source = Overdriven };

    private static WearVignette Cold(string name, CarAxle? axle, WearCase told) =>
        new() { Name = "cold: " + name, Case = told, Expected = WearCause.BelowTemperatureWindow, Axle = axle, Source = Window };

    private static WearVignette Hot(string name, CarAxle? axle, WearCase told) =>
        new() { Name = "hot: " + name, Case = told, Expected = WearCause.AboveTemperatureWindow, Axle = axle, Source = Window };
}

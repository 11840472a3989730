using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using static SetupService.Domain.Tests.Wear.Vignettes.Told;

namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>Toe: feathering tells its direction, and the shoulder that drags wears.</summary>
internal static class ToeVignettes
{
    public static IEnumerable<WearVignette> All =>
    [
        In("front feathered, sharp inboard, nothing measured", CarAxle.Front, Case(
            Road(), Unread(WheelPosition.FrontLeft, WheelPosition.FrontRight).With(TreadPattern.FeatheredSharpInboard), Unread(WheelPosition.RearLeft, WheelPosition.RearRight).With())),
        In("front feathered, outer shoulders worn", CarAxle.Front, Case(
            Road(12000), Front(3.8, 4.9, 5.4).With(TreadPattern.FeatheredSharpInboard), Rear(5.8, 5.9, 5.8).With())),
        In("front feathered, toe as measured", CarAxle.Front, Case(
            Road(9000), Front(4.8, 5.5, 5.8).With(TreadPattern.FeatheredSharpInboard), Rear(6.3, 6.3, 6.3).With()).Set(CarAxle.Front, -0.9, 0.38).Set(CarAxle.Rear, -1.2, 0.08)),
        In("rear feathered, sharp inboard", CarAxle.Rear, Case(
            Road(), Front(5.0, 5.1, 5.0).With(), Rear(4.2, 5.0, 5.4).With(TreadPattern.FeatheredSharpInboard))),
        In("rear feathered, toe as measured", CarAxle.Rear, Case(
            Road(17000), Front(4.9, 5.0, 4.9).With(), Rear(4.0, 4.7, 5.1).With(TreadPattern.FeatheredSharpInboard)).Set(CarAxle.Rear, -1.2, 0.42).Set(CarAxle.Front, -1, 0.03)),
        In("rear of a track car feathered, toe as measured", CarAxle.Rear, Case(
            Track(30, 7000), Front(5.1, 5.2, 5.1).With(), Rear(4.3, 4.9, 5.2).With(TreadPattern.FeatheredSharpInboard)).Set(CarAxle.Rear, -2.4, 0.45)),

        Out("front feathered, sharp outboard, nothing measured", CarAxle.Front, Case(
            Road(), Unread(WheelPosition.FrontLeft, WheelPosition.FrontRight).With(TreadPattern.FeatheredSharpOutboard), Unread(WheelPosition.RearLeft, WheelPosition.RearRight).With())),
        Out("front inner shoulders worn and feathered outboard", CarAxle.Front, Case(
            Road(11000), Front(5.6, 5.1, 3.6).With(TreadPattern.FeatheredSharpOutboard), Rear(5.9, 6.0, 5.9).With())),
        Out("front of a lowered car, inner shoulders worn, toe as measured", CarAxle.Front, Case(
            Road(8000), Front(6.2, 5.6, 3.8).With(TreadPattern.FeatheredSharpOutboard), Rear(6.6, 6.6, 6.5).With()).Set(CarAxle.Front, -1.4, -0.36)),
        Out("rear inner shoulders worn and feathered outboard", CarAxle.Rear, Case(
            Road(13000), Front(5.4, 5.5, 5.4).With(), Rear(5.6, 5.0, 3.5).With(TreadPattern.FeatheredSharpOutboard)).Set(CarAxle.Rear, -1.3, -0.3)),
        Out("front of a track car feathered outboard, toe as measured", CarAxle.Front, Case(
            Track(20, 9000), Front(5.6, 5.0, 3.9).With(TreadPattern.FeatheredSharpOutboard), Rear(5.6, 5.7, 5.5).With()).Set(CarAxle.Front, -2.5, -0.4)),
    ];

    private static WearVignette In(string name, CarAxle axle, WearCase told) =>
        new() { Name = "toe-in: " + name, Case = told, Expected = WearCause.ToeIn, Axle = axle, Source = Guidance.Service };

    private static WearVignette Out(string name, CarAxle axle, WearCase told) =>
        new() { Name = "toe-out: " + name, Case = told, Expected = WearCause.ToeOut, Axle = axle, Source = Guidance.Service };
}

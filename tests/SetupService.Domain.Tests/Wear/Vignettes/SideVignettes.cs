using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using static SetupService.Domain.Tests.Wear.Vignettes.Told;
using static SetupService.Domain.Vehicles.WheelPosition;

namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>One side otherwise than the other: something bent, an axle askew, other tyres.</summary>
internal static class SideVignettes
{
    private const string OneSided = "common practice, no source: what is alike on both sides is setting or use, what is on one side is a fault";
    private const string Askew = "common practice, no source: patches at an angle on a rear axle tell of rear toe, thrust angle or a loose bush";
    private const string Moved = "common practice, no source: a tyre keeps the wear of the place it came from";

    public static IEnumerable<WearVignette> All =>
    [
        Side("left front worn inside, its camber far from the right's", CarAxle.Front, Case(
            Road(12000), [One(FrontLeft, 5.6, 5.0, 3.5), One(FrontRight, 5.5, 5.5, 5.4)], Rear(5.8, 5.9, 5.8)).Set(CarAxle.Front, (-2.9, 0.05), (-0.9, 0.05))),
        Side("right rear worn inside, the left even, depths alone", CarAxle.Rear, Case(
            Road(15000), Front(5.2, 5.3, 5.2), [One(RearLeft, 5.5, 5.6, 5.5), One(RearRight, 5.5, 4.9, 3.3)])),
        Side("right front worn outside, its camber positive", CarAxle.Front, Case(
            Road(13000), [One(FrontLeft, 5.4, 5.5, 5.4), One(FrontRight, 3.4, 4.9, 5.6)], Rear(5.7, 5.8, 5.7)).Set(CarAxle.Front, (-1.0, 0.04), (1.2, 0.03))),
        Side("left rear worn inside, bent, camber measured", CarAxle.Rear, Case(
            Track(20, 8000), Front(5.6, 5.6, 5.5), [One(RearLeft, 5.6, 4.8, 3.3), One(RearRight, 5.4, 5.5, 5.3)]).Set(CarAxle.Rear, (-4.4, 0.1), (-2.3, 0.1))),

        Misaligned("rear patches at an angle, nothing measured", Case(
            Road(20000), Unread(FrontLeft, FrontRight).With(), Unread(RearLeft, RearRight).With(TreadPattern.DiagonalScallop))),
        Misaligned("rear patches at an angle, the axle points to one side", Case(
            Road(17000), Front(5.0, 5.1, 5.0).With(), Rear(5.0, 5.1, 5.0).With(TreadPattern.DiagonalScallop)).Set(CarAxle.Rear, (-1.2, -0.35), (-1.2, 0.4))),
        Misaligned("rear worn inside left and outside right, patches at an angle", Case(
            Road(16000),
            Front(5.2, 5.3, 5.2).With(),
            new[] { One(RearLeft, 5.6, 5.1, 4.2), One(RearRight, 4.1, 5.0, 5.5) }.With(TreadPattern.DiagonalScallop)).Set(CarAxle.Rear, (-1.1, -0.3), (-1.1, 0.36))),

        Mixed("left front turned on its rim", CarAxle.Front, Case(
            Road(18000),
            [
                One(FrontLeft, 4.0, 5.0, 5.1) with { History = [new(FrontLeft, 9000, 0, true), new(FrontLeft, 9000, 0, false)] },
                One(FrontRight, 5.1, 5.0, 4.1) with { History = [new(FrontRight, 18000, 0, false)] },
            ],
            Rear(5.6, 5.7, 5.6))),
        Mixed("rear tyres came from the front", CarAxle.Rear, Case(
            Road(20000),
            [One(FrontLeft, 6.9, 7.0, 6.9), One(FrontRight, 7.0, 7.0, 6.9)],
            [
                One(RearLeft, 3.6, 4.4, 4.6) with { History = [new(FrontLeft, 15000, 0, false), new(RearLeft, 5000, 0, false)] },
                One(RearRight, 3.7, 4.4, 4.6) with { History = [new(FrontRight, 15000, 0, false), new(RearRight, 5000, 0, false)] },
            ])),
        Mixed("one rear tyre three years younger and far less worn", CarAxle.Rear, Case(
            Road(14000), Front(5.1, 5.2, 5.1), [One(RearLeft, 4.2, 4.3, 4.2) with { MadeInWeek = 1150 }, One(RearRight, 6.9, 7.0, 6.9) with { MadeInWeek = 1306 }])),
        Mixed("one front tyre two years older and far more worn", CarAxle.Front, Case(
            Track(20, 5000), [One(FrontLeft, 3.6, 3.7, 3.6) with { MadeInWeek = 1160 }, One(FrontRight, 6.0, 6.1, 6.0) with { MadeInWeek = 1268 }], Rear(5.9, 6.0, 5.9))),
    ];

    private static WearVignette Side(string name, CarAxle axle, WearCase told) =>
        new() { Name = "side: " + name, Case = told, Expected = WearCause.SideDifference, Axle = axle, Source = OneSided };

    private static WearVignette Misaligned(string name, WearCase told) =>
        new() { Name = "misaligned: " + name, Case = told, Expected = WearCause.AxleMisaligned, Axle = CarAxle.Rear, Source = Askew };

    private static WearVignette Mixed(string name, CarAxle axle, WearCase told) =>
        new() { Name = "mixed: " + name, Case = told, Expected = WearCause.MixedTyres, Axle = axle, Source = Moved };
}

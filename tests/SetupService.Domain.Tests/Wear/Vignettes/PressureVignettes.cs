using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using static SetupService.Domain.Tests.Wear.Vignettes.Told;

namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>Both shoulders, or the middle; and rims that do the same.</summary>
internal static class PressureVignettes
{
    private const string Cooler = "common practice, no source: centre cooler than the mean of the edges, pressure low";
    private const string Hotter = "common practice, no source: centre hotter than the mean of the edges, pressure high";
    private const string Rim = "common practice, no source: a rim narrower than permitted rounds the tread, a wider one flattens it";

    public static IEnumerable<WearVignette> All =>
    [
        Under("front shoulders worn on the road, depths alone", CarAxle.Front, Guidance.Service, Case(Road(), Front(3.9, 5.6, 4.0), Rear(5.7, 5.8, 5.7))),
        Under("rear shoulders worn on the road, depths alone", CarAxle.Rear, Guidance.Service, Case(Road(20000), Front(4.9, 5.0, 4.9), Rear(3.6, 5.4, 3.7))),
        Under("front shoulders worn, a quarter too little air", CarAxle.Front, Guidance.TreadLife, Case(
            Road(12000), Front(4.1, 5.8, 4.3).With().Cold(175, 230), Rear(6.0, 6.0, 6.0).With().Cold(228, 230))),
        Under("rear shoulders worn, a fifth too little air", CarAxle.Rear, Guidance.TreadLife, Case(
            Road(16000), Front(5.2, 5.2, 5.1).Cold(231, 230), Rear(4.0, 5.5, 4.1).Cold(184, 230))),
        Under("front centre cooler on a track, hot pressure low", CarAxle.Front, Cooler, Case(
            Track(30), Front(4.8, 5.8, 4.9).Heat(93, 84, 95).Hot(185, 225), Rear(5.8, 5.8, 5.8).Heat(84, 85, 87).Hot(224, 225))),
        Under("rear centre cooler on a track, hot pressure low", CarAxle.Rear, Cooler, Case(
            Track(30), Front(5.5, 5.5, 5.5).Heat(85, 86, 88).Hot(226, 225), Rear(4.6, 5.7, 4.7).Heat(94, 85, 96).Hot(188, 225))),
        Under("a slow leak at the left front", CarAxle.Front, Guidance.TreadLife, Case(
            Road(9000),
            Tyres(One(WheelPosition.FrontLeft, 4.4, 6.0, 4.5)).Cold(160, 230),
            Tyres(One(WheelPosition.FrontRight, 6.0, 6.1, 6.0)).Cold(229, 230),
            Rear(6.3, 6.3, 6.3).Cold(230, 230))),

        Over("rear middle worn, the front drives, depths alone", CarAxle.Rear, Guidance.Service, Case(Road(), Front(5.0, 5.1, 5.0), Rear(5.8, 4.0, 5.7)).Driving(DrivenAxle.Front)),
        Over("front middle worn, the rear drives, depths alone", CarAxle.Front, Guidance.Service, Case(Road(), Front(5.7, 3.9, 5.7), Rear(5.1, 5.1, 5.1)).Driving(DrivenAxle.Rear)),
        Over("front middle worn, a quarter too much air", CarAxle.Front, Guidance.Service, Case(
            Road(15000), Front(5.6, 4.1, 5.5).With().Cold(290, 230), Rear(5.8, 5.7, 5.8).With().Cold(231, 230))),
        Over("rear middle worn, a fifth too much air", CarAxle.Rear, Guidance.Service, Case(
            Road(18000), Front(5.0, 5.0, 5.1).Cold(232, 230), Rear(5.6, 4.2, 5.6).Cold(278, 230)).Driving(DrivenAxle.Front)),
        Over("front centre hotter on a track, hot pressure high", CarAxle.Front, Hotter, Case(
            Track(25), Front(5.9, 5.0, 5.9).Heat(84, 95, 87).Hot(268, 225), Rear(5.8, 5.9, 5.8).Heat(84, 85, 88).Hot(226, 225))),
        Over("rear centre hotter on a track, hot pressure high", CarAxle.Rear, Hotter, Case(
            Track(25), Front(5.6, 5.7, 5.6).Heat(85, 86, 89).Hot(225, 225), Rear(5.9, 4.9, 5.9).Heat(83, 95, 87).Hot(266, 225)).Driving(DrivenAxle.Front)),

        Mismatch("front middle worn on a rim too narrow, air right", CarAxle.Front, Case(
            Road(15000), Front(5.6, 4.4, 5.6).With().Cold(230, 230), Rear(5.8, 5.8, 5.8).With().Cold(230, 230)).Shod(CarAxle.Front, "225/45R17 91W", 6)),
        Mismatch("rear shoulders worn on a rim too wide, air right", CarAxle.Rear, Case(
            Road(15000), Front(5.4, 5.5, 5.4).With().Cold(220, 220), Rear(4.3, 5.5, 4.4).With().Cold(220, 220)).Shod(CarAxle.Rear, "195/50R15 82V", 8.5)),
        Mismatch("front shoulders worn on a track, stretched on its rim, air right", CarAxle.Front, Case(
            Track(25), Front(4.7, 5.8, 4.8).With().Hot(225, 225), Rear(5.6, 5.7, 5.6).With().Hot(225, 225)).Shod(CarAxle.Front, "205/55R16 91V", 9)),
    ];

    private static TyreReading[] Tyres(params TyreReading[] tyres) => tyres;

    private static WearVignette Under(string name, CarAxle axle, string source, WearCase told) =>
        new() { Name = "under-inflation: " + name, Case = told, Expected = WearCause.UnderInflation, Axle = axle, Source = source };

    private static WearVignette Over(string name, CarAxle axle, string source, WearCase told) =>
        new() { Name = "over-inflation: " + name, Case = told, Expected = WearCause.OverInflation, Axle = axle, Source = source };

    private static WearVignette Mismatch(string name, CarAxle axle, WearCase told) =>
        new() { Name = "rim width: " + name, Case = told, Expected = WearCause.RimWidthMismatch, Axle = axle, Source = Rim };
}

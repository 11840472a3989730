using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using static SetupService.Domain.Tests.Wear.Vignettes.Told;

namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>Tyres that wear as tyres do.</summary>
internal static class NormalVignettes
{
    private const string WithinTargets = "common practice, no source: inner edge 3 to 8 °C hotter, centre within about 3 °C of the mean of the edges";

    public static IEnumerable<WearVignette> All =>
    [
        Normal("a road car worn evenly, looked at, air right", Guidance.Practice, Case(
            Road(15000), Front(4.9, 5.0, 4.9).With().Cold(230, 230), Rear(5.5, 5.6, 5.5).With().Cold(231, 230))),
        Normal("outer grooves a quarter more worn than inner ones, nothing else found", Guidance.Convoy, Case(
            Road(16000), Front(4.9, 5.3, 5.5).With(), Rear(5.4, 5.7, 5.9).With()).Set(CarAxle.Front, -1, 0.05).Set(CarAxle.Rear, -1.2, 0.08)),
        Normal("driven front more worn than the rear, each evenly", Guidance.Practice, Case(
            Road(14000), Front(4.6, 4.6, 4.6).With().Cold(230, 230), Rear(5.7, 5.8, 5.7).With().Cold(230, 230)).Driving(DrivenAxle.Front)),
        Normal("a track car well set, temperatures as they should be", WithinTargets, Case(
            Track(30, 3000), Front(5.6, 5.7, 5.6).With().Heat(84, 86, 89).Window(70, 105).Hot(225, 225), Rear(5.7, 5.8, 5.7).With().Heat(83, 84, 87).Window(70, 105).Hot(224, 225))),
        Normal("hardly worn", Guidance.Practice, Case(Road(2000), Front(7.7, 7.7, 7.7).With(), Rear(7.8, 7.8, 7.8).With())),
        Normal("all set, all aired and worn evenly", Guidance.Practice, Case(
            Road(13000), Front(5.4, 5.5, 5.4).With().Cold(229, 230), Rear(5.9, 5.9, 5.9).With().Cold(230, 230))
            .Set(CarAxle.Front, -1.1, 0.04).Set(CarAxle.Rear, -1.3, 0.09).Shod(CarAxle.Front, "225/45R17 91W", 7.5).Shod(CarAxle.Rear, "225/45R17 91W", 7.5)),
    ];

    private static WearVignette Normal(string name, string source, WearCase told) =>
        new() { Name = "normal: " + name, Case = told, Expected = WearCause.Normal, Source = source };
}

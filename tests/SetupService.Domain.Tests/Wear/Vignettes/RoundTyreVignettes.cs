using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;
using static SetupService.Domain.Tests.Wear.Vignettes.Told;
using static SetupService.Domain.Vehicles.WheelPosition;

namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>Wear that changes round the tyre: hollows, one thin side, one flat.</summary>
internal static class RoundTyreVignettes
{
    private const string Flat = "SERVICE has the flat spot; that a locked wheel makes it is common practice, no source";
    private const string ThinSide = "SERVICE gives imbalance among the causes of hollows; that one thin side of one tyre tells it is common practice, no source";

    public static IEnumerable<WearVignette> All =>
    [
        Damping("hollows round both rear tyres", CarAxle.Rear, Case(Road(24000), Front(4.8, 4.9, 4.8).With(), Rear(4.4, 4.8, 4.4).With(TreadPattern.Cupping))),
        Damping("hollows round both front tyres", CarAxle.Front, Case(Road(22000), Front(4.1, 4.5, 4.2).With(TreadPattern.Cupping), Rear(5.2, 5.3, 5.2).With())),
        Damping("hollows on both rear tyres, nothing measured", CarAxle.Rear, Case(
            Road(26000), Unread(FrontLeft, FrontRight).With(), Unread(RearLeft, RearRight).With(TreadPattern.Cupping))),
        Damping("hollows on both front tyres of a track car", CarAxle.Front, Case(
            Track(25, 12000), Front(4.3, 4.6, 4.3).With(TreadPattern.Cupping), Rear(5.0, 5.1, 5.0).With()).Set(CarAxle.Front, -2.6, 0)),
        Damping("rear hollows found by eye and by gauge at six places", CarAxle.Rear, Case(
            Road(23000),
            Front(4.9, 5.0, 4.9).With(),
            Tyres(
                Round(RearLeft, new(4.1, 4.6, 4.0), new(4.9, 5.1, 4.9), new(4.0, 4.5, 4.1), new(5.0, 5.1, 4.9), new(4.1, 4.5, 4.0), new(4.9, 5.0, 5.0)),
                Round(RearRight, new(4.9, 5.1, 4.9), new(4.0, 4.6, 4.1), new(5.0, 5.0, 4.9), new(4.1, 4.5, 4.0), new(4.9, 5.1, 5.0), new(4.0, 4.5, 4.0))).With(TreadPattern.Cupping))),

        Imbalance("one thin side of the left front", CarAxle.Front, Case(
            Road(15000),
            Tyres(Round(FrontLeft, new(4.3, 4.4, 4.3), new(4.7, 4.8, 4.7), new(5.3, 5.4, 5.3), new(5.6, 5.7, 5.6), new(5.3, 5.3, 5.2), new(4.7, 4.8, 4.8)), One(FrontRight, 5.0, 5.1, 5.0)).With(),
            Rear(5.6, 5.7, 5.6).With())),
        Imbalance("one thin side of the right rear", CarAxle.Rear, Case(
            Road(18000),
            Front(5.0, 5.1, 5.0).With(),
            Tyres(One(RearLeft, 5.5, 5.6, 5.5), Round(RearRight, new(5.0, 5.1, 5.0), new(5.5, 5.6, 5.5), new(6.0, 6.1, 6.0), new(5.5, 5.6, 5.5))).With())),
        Imbalance("one thin side of the right front, hollows there only", CarAxle.Front, Case(
            Road(16000),
            [.. Tyres(One(FrontLeft, 5.1, 5.2, 5.1)).With(), .. Tyres(Round(FrontRight, new(4.5, 4.6, 4.5), new(5.0, 5.1, 5.0), new(5.7, 5.8, 5.7), new(5.2, 5.2, 5.1))).With(TreadPattern.Cupping)],
            Rear(5.7, 5.7, 5.7).With())),

        Locking("flat spots on both front tyres", CarAxle.Front, Case(Track(15), Front(6.0, 6.1, 6.0).With(TreadPattern.FlatSpot), Rear(6.4, 6.5, 6.4).With())),
        Locking("a flat spot on the left front, nothing measured", CarAxle.Front, Case(
            Track(10), Unread(FrontLeft).With(TreadPattern.FlatSpot), Unread(FrontRight, RearLeft, RearRight).With())),
        Locking("one place of the right front far lower", CarAxle.Front, Case(
            Track(12),
            [One(FrontLeft, 6.2, 6.3, 6.2), Round(FrontRight, new(6.2, 6.3, 6.2), new(6.2, 6.2, 6.2), new(4.7, 4.6, 4.7), new(6.3, 6.2, 6.2), new(6.2, 6.3, 6.3), new(6.2, 6.2, 6.2)) with { Patterns = [TreadPattern.FlatSpot] }],
            Rear(6.5, 6.6, 6.5))),
        Locking("a flat spot on the left rear of a road car", CarAxle.Rear, Case(
            Road(9000), Front(6.0, 6.0, 6.0).With(), [.. Tyres(One(RearLeft, 6.3, 6.4, 6.3)).With(TreadPattern.FlatSpot), .. Tyres(One(RearRight, 6.4, 6.4, 6.4)).With()])),
        Locking("flat spots in front after one braking on the road", CarAxle.Front, Case(
            Road(5000), Front(6.9, 6.9, 6.9).With(TreadPattern.FlatSpot), Rear(7.2, 7.2, 7.2).With()).Set(CarAxle.Front, -1, 0.05)),
    ];

    private static TyreReading[] Tyres(params TyreReading[] tyres) => tyres;

    private static WearVignette Damping(string name, CarAxle axle, WearCase told) =>
        new() { Name = "damping: " + name, Case = told, Expected = WearCause.WeakDamping, Axle = axle, Source = Guidance.Service };

    private static WearVignette Imbalance(string name, CarAxle axle, WearCase told) =>
        new() { Name = "imbalance: " + name, Case = told, Expected = WearCause.Imbalance, Axle = axle, Source = ThinSide };

    private static WearVignette Locking(string name, CarAxle axle, WearCase told) =>
        new() { Name = "locking: " + name, Case = told, Expected = WearCause.WheelLocking, Axle = axle, Source = Flat };
}

using System.Text.Json;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>The drawn cars: alike by seed, faulty as often as meant, reported within what the service reads.</summary>
public sealed class SimulatedCarsTests
{
    private const int Seed = 20261129;
    private const int Count = 1200;

    private static readonly JsonSerializerOptions Whole = new() { IncludeFields = true };
    private static readonly Lazy<IReadOnlyList<SimulatedCar>> Cars = new(() => SimulatedCars.Make(Seed, Count));

    [Fact]
    public void A_seed_gives_the_same_cars_however_many_are_asked_for()
    {
        var few = SimulatedCars.Make(Seed, 12).Select(Text);

        Assert.Equal(few, Cars.Value.Take(12).Select(Text));
        Assert.NotEqual(few, SimulatedCars.Make(Seed + 1, 12).Select(Text));
    }

    [Theory]
    [InlineData(WearCause.ToeIn, BaseRates.ToeIn)]
    [InlineData(WearCause.ToeOut, BaseRates.ToeOut)]
    [InlineData(WearCause.UnderInflation, BaseRates.UnderInflation)]
    [InlineData(WearCause.OverInflation, BaseRates.OverInflation)]
    [InlineData(WearCause.WeakDamping, BaseRates.WeakDamping)]
    [InlineData(WearCause.Imbalance, BaseRates.Imbalance)]
    [InlineData(WearCause.WheelLocking, 0.04)]
    [InlineData(WearCause.MixedTyres, BaseRates.MixedTyres)]
    [InlineData(WearCause.SideDifference, BaseRates.SideDifference)]
    [InlineData(WearCause.AxleMisaligned, 0.05)]
    [InlineData(WearCause.RimWidthMismatch, BaseRates.RimWidthMismatch)]
    public void Faults_are_as_frequent_per_axle_as_meant(WearCause cause, double rate)
    {
        var found = Cars.Value.Sum(car => car.Faults.Count(fault => fault.Cause == cause)) / (2.0 * Count);

        // Four standard errors and a sixth, for owners differ.
        Assert.InRange(found, (rate * 0.83) - (4 * Error(rate, 2 * Count)), (rate * 1.17) + (4 * Error(rate, 2 * Count)));
    }

    [Fact]
    public void Little_camber_is_a_track_cars_fault_and_a_front_one_more_than_a_rear_one()
    {
        var track = Cars.Value.Where(HasTrack).ToList();
        var road = Cars.Value.Where(car => car.Case.Use.TrackLaps == 0).ToList();

        var front = Share(track, (WearCause.LowNegativeCamber, CarAxle.Front));
        var rear = Share(track, (WearCause.LowNegativeCamber, CarAxle.Rear));

        Assert.InRange((front + rear) / 2, 0.25, 0.35);
        Assert.True(front > rear);
        Assert.InRange((Share(road, (WearCause.LowNegativeCamber, CarAxle.Front)) + Share(road, (WearCause.LowNegativeCamber, CarAxle.Rear))) / 2, 0.015, 0.085);
    }

    [Fact]
    public void What_needs_a_track_is_found_on_track_cars_only()
    {
        foreach (var car in Cars.Value.Where(car => car.Case.Use.TrackLaps == 0))
        {
            Assert.DoesNotContain(car.Faults, fault => fault.Cause is WearCause.FrontOverdriven or WearCause.BelowTemperatureWindow or WearCause.AboveTemperatureWindow);
        }

        var track = Cars.Value.Where(HasTrack).ToList();
        Assert.InRange(Share(track, (WearCause.FrontOverdriven, CarAxle.Front)), 0.06, 0.14);
        Assert.InRange(Share(track, (WearCause.BelowTemperatureWindow, CarAxle.Front)), 0.03, 0.1);
        Assert.InRange(Share(track, (WearCause.AboveTemperatureWindow, CarAxle.Rear)), 0.03, 0.1);
    }

    [Fact]
    public void Faults_that_exclude_each_other_never_meet_and_normal_is_none()
    {
        (WearCause, WearCause)[] pairs =
        [
            (WearCause.ToeIn, WearCause.ToeOut),
            (WearCause.LowNegativeCamber, WearCause.HighNegativeCamber),
            (WearCause.UnderInflation, WearCause.OverInflation),
            (WearCause.BelowTemperatureWindow, WearCause.AboveTemperatureWindow),
        ];
        foreach (var car in Cars.Value)
        {
            Assert.DoesNotContain(car.Faults, fault => fault.Cause == WearCause.Normal);
            foreach (var axle in new[] { CarAxle.Front, CarAxle.Rear })
            {
                Assert.DoesNotContain(pairs, pair => car.Faults.Contains((pair.Item1, axle)) && car.Faults.Contains((pair.Item2, axle)));
            }
        }
    }

    [Fact]
    public void Every_report_is_within_what_the_service_reads()
    {
        foreach (var car in Cars.Value)
        {
            Assert.NotEmpty(car.Case.Tyres);
            Assert.Equal(car.Case.Tyres.Count, car.Case.Tyres.Select(tyre => tyre.Position).Distinct().Count());
            foreach (var tyre in car.Case.Tyres)
            {
                Assert.InRange(tyre.Zones.Count, 3, 5);
                Assert.All(tyre.Zones, zone => Assert.InRange(zone.DepthMm, 0, 20));
                if (tyre.TemperatureC is { } heat) Assert.All([heat.Outer, heat.Centre, heat.Inner], degree => Assert.InRange(degree, -40, 250));
                foreach (var kpa in new[] { tyre.Pressure.ColdKpa, tyre.Pressure.HotKpa, tyre.Pressure.AimColdKpa, tyre.Pressure.AimHotKpa })
                {
                    if (kpa is { } told) Assert.InRange(told, 80, 500);
                }
            }
        }
    }

    [Fact]
    public void Rich_and_sparse_reports_are_both_there()
    {
        Within(0.74, Cars.Value.Average(car => car.Case.Tyres.Count == 4 ? 1.0 : 0));
        Within(0.7, Tell(tyre => tyre.NewDepthMm is not null));
        Within(0.7, Tell(tyre => tyre.Patterns is not null));
        Within(0.25, Tell(tyre => tyre.AroundMm.Count > 0));
        Within(0.2, Tell(tyre => tyre.Zones.Count == 5));
        Within(0.55, Tell(tyre => tyre.Pressure.OffShare is not null));
        Within(0.25, Tell(tyre => tyre.History.Count > 0));
        Within(0.35 * 2 / 3, Tell(tyre => tyre.TemperatureC is not null));
        Within(0.35, Cars.Value.Average(car => car.Case.Vehicle.Front.Left.CamberDeg is null ? 0.0 : 1));
        Within(0.5, Cars.Value.Average(car => car.Case.Vehicle.Rear.Wheel is null ? 0.0 : 1));
        Within(0.8, Cars.Value.Average(car => car.Case.Vehicle.DrivenAxle is null ? 0.0 : 1));

        static void Within(double meant, double found) => Assert.InRange(found, meant - 0.06, meant + 0.06);
    }

    [Fact]
    public void Patterns_are_found_where_their_cause_is_and_seldom_elsewhere()
    {
        AssertTells(WearCause.ToeIn, TreadPattern.FeatheredSharpInboard);
        AssertTells(WearCause.ToeOut, TreadPattern.FeatheredSharpOutboard);
        AssertTells(WearCause.WeakDamping, TreadPattern.Cupping);
        AssertTells(WearCause.WheelLocking, TreadPattern.FlatSpot);
        AssertTells(WearCause.AboveTemperatureWindow, TreadPattern.Blistering);
        AssertTells(WearCause.AxleMisaligned, TreadPattern.DiagonalScallop);
    }

    [Fact]
    public void A_rim_is_outside_what_its_tyre_permits_where_it_is_named_and_only_there()
    {
        foreach (var car in Cars.Value)
        {
            foreach (var place in new[] { CarAxle.Front, CarAxle.Rear })
            {
                if (car.Case.Vehicle.At(place) is not { Wheel: { } wheel, Tyre: { } tyre }) continue;
                Assert.Equal(car.Faults.Contains((WearCause.RimWidthMismatch, place)), !tyre.Marking.PermittedRimWidth.Includes(wheel.RimWidthIn));
            }
        }
    }

    private static void AssertTells(WearCause cause, TreadPattern pattern)
    {
        var with = Found(car => axle => car.Faults.Contains((cause, axle)));
        var without = Found(car => axle => !car.Faults.Any(fault => fault.Axle == axle));

        Assert.InRange(with, 0.3, 0.95);
        Assert.InRange(without, 0, 0.12);

        double Found(Func<SimulatedCar, Func<CarAxle, bool>> counts) => Cars.Value
            .SelectMany(car => car.Case.Tyres.Where(tyre => tyre.Patterns is not null && counts(car)(tyre.Axle)))
            .Average(tyre => tyre.Patterns!.Contains(pattern) ? 1.0 : 0);
    }

    private static double Tell(Func<TyreReading, bool> told) => Cars.Value.Average(car => car.Case.Tyres.Any(told) ? 1.0 : 0);

    private static double Share(List<SimulatedCar> cars, (WearCause Cause, CarAxle Axle) fault) => cars.Average(car => car.Faults.Contains(fault) ? 1.0 : 0);

    private static double Error(double rate, int count) => Math.Sqrt(rate * (1 - rate) / count);

    private static bool HasTrack(SimulatedCar car) => car.Case.Use.TrackLaps > 0;

    private static string Text(SimulatedCar car) => JsonSerializer.Serialize(car.Case.Tyres, Whole)
        + JsonSerializer.Serialize(car.Case.Use, Whole)
        + string.Join(' ', car.Faults.Order());
}

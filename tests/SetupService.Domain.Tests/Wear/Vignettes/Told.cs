using SetupService.Domain.Tests.Wear.Simulation;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wheels;
using static SetupService.Domain.Vehicles.WheelPosition;

namespace SetupService.Domain.Tests.Wear.Vignettes;

/// <summary>Short ways to say what a person tells of tyres, wheels and use.</summary>
internal static class Told
{
    public const double NewMm = 8;

    public static WearUse Road(double roadKm = 14000) => new(roadKm, 0, null);

    public static WearUse Track(double laps = 60, double roadKm = 3000, double lapKm = 3.2, double? lateralG = null) =>
        new(roadKm, laps, lapKm) { LateralG = lateralG };

    public static WearCase Case(WearUse use, params TyreReading[][] axles) => new() { Use = use, Tyres = [.. axles.SelectMany(axle => axle)] };

    public static WearCase Driving(this WearCase told, DrivenAxle driven) => told with { Vehicle = told.Vehicle with { DrivenAxle = driven } };

    /// <summary>Both wheels of an axle set alike.</summary>
    public static WearCase Set(this WearCase told, CarAxle at, double camberDeg, double toeDeg) => told.Set(at, (camberDeg, toeDeg), (camberDeg, toeDeg));

    public static WearCase Set(this WearCase told, CarAxle at, (double CamberDeg, double ToeDeg) left, (double CamberDeg, double ToeDeg) right) =>
        told with { Vehicle = told.Vehicle.With(at, told.Vehicle.At(at) with { Left = Aligned(left), Right = Aligned(right) }) };

    public static WearCase Shod(this WearCase told, CarAxle at, string marking, double rimWidthIn)
    {
        var read = TyreDraw.Read(marking);
        var wheel = new Wheel { RimDiameterIn = read.RimDiameterIn, RimWidthIn = rimWidthIn, OffsetMm = 40 };
        return told with { Vehicle = told.Vehicle.With(at, told.Vehicle.At(at) with { Tyre = new(read), Wheel = wheel }) };
    }

    /// <summary>Both tyres of the front axle, worn nearly alike.</summary>
    public static TyreReading[] Front(double outerMm, double centreMm, double innerMm) =>
        [One(FrontLeft, outerMm, centreMm, innerMm), One(FrontRight, outerMm + 0.1, centreMm, innerMm + 0.1)];

    /// <summary>Both tyres of the rear axle, worn nearly alike.</summary>
    public static TyreReading[] Rear(double outerMm, double centreMm, double innerMm) =>
        [One(RearLeft, outerMm, centreMm + 0.1, innerMm), One(RearRight, outerMm + 0.1, centreMm, innerMm)];

    public static TyreReading One(WheelPosition position, double outerMm, double centreMm, double innerMm) => new()
    {
        Position = position,
        NewDepthMm = NewMm,
        Zones = TreadZone.FromDepths(new(outerMm, centreMm, innerMm)),
    };

    /// <summary>Tyres nobody put a gauge to.</summary>
    public static TyreReading[] Unread(params WheelPosition[] positions) => [.. positions.Select(position => new TyreReading { Position = position })];

    /// <summary>Looked at, and these patterns found.</summary>
    public static TyreReading[] With(this TyreReading[] tyres, params TreadPattern[] patterns) => [.. tyres.Select(tyre => tyre with { Patterns = patterns })];

    /// <summary>Pressures cold, and what they should be.</summary>
    public static TyreReading[] Cold(this TyreReading[] tyres, double kpa, double aimKpa) =>
        [.. tyres.Select(tyre => tyre with { Pressure = new(kpa, null, aimKpa, null) })];

    /// <summary>Pressures straight off the track, and what they should be.</summary>
    public static TyreReading[] Hot(this TyreReading[] tyres, double kpa, double aimKpa) =>
        [.. tyres.Select(tyre => tyre with { Pressure = new(null, kpa, null, aimKpa) })];

    /// <summary>Read with a needle half a minute after the lap.</summary>
    public static TyreReading[] Heat(this TyreReading[] tyres, double outerC, double centreC, double innerC) =>
        [.. tyres.Select(tyre => tyre with { TemperatureC = new(outerC, centreC, innerC), TemperatureBy = Thermometer.Probe, SecondsAfterLap = 30 })];

    public static TyreReading[] Window(this TyreReading[] tyres, double fromC, double toC) =>
        [.. tyres.Select(tyre => tyre with { TemperatureWindowC = (fromC, toC) })];

    /// <summary>One tyre read at several places round it; its zones are their mean.</summary>
    public static TyreReading Round(WheelPosition position, params AcrossTread<double>[] aroundMm) => new()
    {
        Position = position,
        NewDepthMm = NewMm,
        AroundMm = aroundMm,
        Zones = TreadZone.FromDepths(new(aroundMm.Average(at => at.Outer), aroundMm.Average(at => at.Centre), aroundMm.Average(at => at.Inner))),
    };

    private static WheelAlignment Aligned((double CamberDeg, double ToeDeg) wheel) => new() { CamberDeg = wheel.CamberDeg, ToeDeg = wheel.ToeDeg };
}

using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>What a person reports of a car: some of it, with the errors of gauges, thermometers and memory. The shares are judgement.</summary>
internal sealed class Report(SeededDraw draw, TrueCar car, WornTyre[] tyres)
{
    private readonly bool _looks = draw.Chance(0.7);
    private readonly bool _hasAlignment = draw.Chance(0.35);
    private readonly bool _hasSizes = draw.Chance(0.5);
    private readonly bool _hasHistory = draw.Chance(0.25);
    private readonly PatternLook _eye = new(draw, car, tyres);
    private readonly DepthGauge _gauge = new(draw);
    private readonly TemperatureReading _thermometer = new(draw, car, tyres);
    private readonly PressureReading _pressure = new(draw, car, tyres);

    public WearCase Case() => new()
    {
        Vehicle = new Vehicle
        {
            DrivenAxle = draw.Chance(0.8) ? car.DrivenAxle : null,
            Front = Axle(car.Front),
            Rear = Axle(car.Rear),
        },
        Use = Use(),
        Tyres = Tyres(),
    };

    private WearUse Use() => new(
        draw.Chance(0.9) ? Math.Round(car.Use.RoadKm * draw.Within(1, 0.06) / 100) * 100 : null,
        draw.Chance(0.9) ? car.Use.TrackLaps : null,
        car.Use.HasTrack && draw.Chance(0.85) ? Math.Round(car.Use.LapKm, 2) : null)
    {
        LateralG = car.Use.HasTrack && draw.Chance(0.4) ? Math.Round(car.Use.TrackG * draw.Within(1, 0.05), 2) : null,
    };

    private List<TyreReading> Tyres()
    {
        var share = draw.Share();
        var one = draw.Whole(0, 3);
        return [.. tyres.Where((_, index) => IsRead(index)).Select(Reading)];

        bool IsRead(int index) => share switch
        {
            < 0.74 => true,
            < 0.86 => index < 2,
            < 0.92 => index >= 2,
            < 0.96 => index == one,
            _ => index != one,
        };
    }

    private TyreReading Reading(WornTyre tyre)
    {
        var axle = tyre.Wheel.Position is WheelPosition.FrontLeft or WheelPosition.FrontRight ? car.Front : car.Rear;
        var reading = new TyreReading
        {
            Position = tyre.Wheel.Position,
            NewDepthMm = _gauge.KnowsNewDepth ? Math.Round(axle.Tyre.NewDepthMm + _gauge.NewDepthErrorMm, 1) : null,
            Patterns = _looks ? _eye.At(axle, tyre) : null,
            GaugeErrorMm = _gauge.StatedErrorMm,
            Pressure = _pressure.At(axle, tyre),
        };
        return WithHistory(_thermometer.Of(_gauge.Of(reading, axle.Tyre.NewDepthMm, tyre), axle, tyre), tyre.Wheel);
    }

    private TyreReading WithHistory(TyreReading reading, TrueWheel wheel)
    {
        if (!_hasHistory) return reading;
        var laps = car.Use.TrackLaps;
        var before = wheel.Earlier?.Share ?? 0;
        var here = new HistoryLeg(wheel.Position, Math.Round(car.Use.RoadKm * (1 - before)), Math.Round(laps * (1 - before)), false);
        return reading with
        {
            MadeInWeek = wheel.MadeInWeek,
            History = wheel.Earlier is { } earlier
                ? [new(earlier.Position, Math.Round(car.Use.RoadKm * before), Math.Round(laps * before), earlier.IsTurnedOnRim), here]
                : [here],
        };
    }

    private Axle Axle(TrueAxle axle)
    {
        var told = new Axle();
        if (_hasSizes)
        {
            told = told with
            {
                Tyre = new(TyreDraw.Read(axle.Tyre.Marking)),
                Wheel = new Wheel { RimDiameterIn = TyreDraw.Read(axle.Tyre.Marking).RimDiameterIn, RimWidthIn = axle.Tyre.RimWidthIn, OffsetMm = 40 },
            };
        }

        return _hasAlignment ? told with { Left = Aligned(axle.Left), Right = Aligned(axle.Right) } : told;
    }

    private WheelAlignment Aligned(TrueWheel wheel) => new()
    {
        CamberDeg = Math.Round(wheel.CamberDeg + draw.Between(-0.1, 0.1), 2),
        ToeDeg = Math.Round(wheel.ToeDeg + draw.Between(-0.1, 0.1) / 2, 2),
    };
}

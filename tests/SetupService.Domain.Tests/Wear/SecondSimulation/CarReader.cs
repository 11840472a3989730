using SetupService.Domain.Suspension;
using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wheels;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>
/// A person who reads a car's tyres: with a gauge that errs and is rounded, at few places, who may not know how deep the treads were, who looks at them or
/// not, and tells of use, history, pressures and settings what he knows. All chances common practice, no source, but the gauge's: trained readers 0.05 to
/// 0.1 mm, others added about 1 mm to the range on one groove (ASNT), which 0.1 to 0.35 mm span.
/// </summary>
internal sealed class CarReader(Chance chance, DrawnCar car)
{
    private const int Turns = 360;
    private readonly double _gaugeMm = chance.One([0.1, 0.15, 0.2, 0.25, 0.35]);
    private readonly double _stepMm = chance.Of(0.7) ? 0.1 : chance.Of(0.5) ? 0.5 : 25.4 / 32;
    private readonly double _offsetMm = chance.Scatter(0.08);
    private readonly int _places = chance.Of(0.65) ? 1 : chance.Of(0.7) ? 3 : 6;
    private readonly bool _looks = chance.Of(0.65);
    private readonly bool _readsHeat = car.Habit > 0 && chance.Of(0.45);
    private readonly bool _readsPressure = chance.Of(0.65);
    private readonly bool _knowsAim = chance.Of(0.6);
    private readonly bool _knowsNew = chance.Of(0.45);
    private readonly bool _guessesNew = chance.Of(0.35);
    private readonly bool _tellsHistory = chance.Of(0.6);
    private readonly bool _tellsGauge = chance.Of(0.4);

    /// <summary>What he tells.</summary>
    public WearCase Read()
    {
        var what = chance.Between(0, 1);
        var first = chance.Of(0.6) ? 0 : 2;
        int[] wheels = what < 0.82 ? [0, 1, 2, 3] : what < 0.94 ? [first, first + 1] : [first + (chance.Of(0.5) ? 0 : 1)];
        return new WearCase { Vehicle = Vehicle(), Use = Use(), Tyres = [.. wheels.Select(Tyre)] };
    }

    private WearUse Use() => new(
        chance.Of(0.8) ? Math.Round(car.RoadKm * (1 + chance.Scatter(0.04)), 0) : null,
        car.Habit == 0 ? (chance.Of(0.6) ? 0 : null) : chance.Of(0.85) ? Math.Round(car.Laps * (1 + chance.Scatter(0.05))) : null,
        car.Habit > 0 && chance.Of(0.7) ? Math.Round(car.LapKm, 1) : null)
    {
        LateralG = car.Habit > 0 && chance.Of(0.3) ? Math.Round(car.Driver.TrackG + chance.Scatter(0.05), 2) : null,
    };

    private TyreReading Tyre(int wheel)
    {
        var faults = car.Faults[wheel / 2];
        var (phase, lobes) = (chance.Between(0, Turns), 3 + (int)chance.Between(0, 4));
        var waveMm = faults.HasWeakDamper ? chance.Between(0.1, 0.45) : chance.Of(0.02) ? 0.2 : 0;
        var onceMm = faults.HasImbalance && (wheel % 2 == 0) == (car.AirC > 17) ? chance.Between(0.15, 0.45) : Math.Abs(chance.Scatter(0.04));
        var flatMm = faults.HasLocked && chance.Of(0.8) ? chance.Between(0.4, 1.4) : 0;
        var around = Enumerable.Range(0, _places).Select(place =>
        {
            var at = phase + (place * (double)Turns / _places) + chance.Scatter(6);
            var less = (waveMm * Math.Sin(lobes * at * Math.PI / 180)) + (onceMm * Math.Cos(at * Math.PI / 180)) + (at % Turns is > 0 and < 25 ? flatMm : 0);
            return new AcrossTread<double>(Depth(wheel, 1, 2, less), Depth(wheel, 5, 5, less), Depth(wheel, 8, 9, less));
        }).ToList();
        var nominal = _knowsNew ? Math.Round(car.Wheels[wheel].Tyre.NewDepthMm, 1) : _guessesNew ? 8.0 : (double?)null;
        var mean = new AcrossTread<double>(around.Average(one => one.Outer), around.Average(one => one.Centre), around.Average(one => one.Inner));
        if (nominal is { } told) nominal = Math.Max(told, around.Max(one => Math.Max(one.Outer, Math.Max(one.Centre, one.Inner))));
        return new TyreReading
        {
            Position = (WheelPosition)wheel,
            NewDepthMm = nominal,
            Zones = TreadZone.FromDepths(mean),
            AroundMm = _places > 1 ? around : [],
            Patterns = _looks ? new PatternFinder(chance, car).Find(wheel) : null,
            TemperatureC = _readsHeat ? Heat(wheel) : null,
            TemperatureBy = _readsHeat ? (chance.Of(0.6) ? Thermometer.Probe : Thermometer.Infrared) : null,
            SecondsAfterLap = _readsHeat && chance.Of(0.7) ? 40 + (wheel * 15) : null,
            TemperatureWindowC = _readsHeat && chance.Of(0.5) ? TrueCauses.Window(car.Category) : null,
            Pressure = Pressures(wheel),
            GaugeErrorMm = _tellsGauge ? Math.Round(_gaugeMm * chance.Between(0.7, 1.4), 2) : null,
            History = _tellsHistory && car.Legs.Length > 1
                ? [.. car.Legs.Select(leg => new HistoryLeg((WheelPosition)leg.Positions[wheel], Math.Round(leg.Share * car.RoadKm), car.Habit == 0 ? null : Math.Round(leg.Share * car.Laps), leg.Turned))]
                : [],
        };
    }

    private double Depth(int wheel, int from, int to, double lessMm)
    {
        var worn = car.WornMm[wheel];
        var depth = car.Wheels[wheel].Tyre.NewDepthMm - ((worn[from] + worn[to]) / 2) - lessMm + _offsetMm + chance.Scatter(_gaugeMm);
        return Math.Clamp(Math.Round(depth / _stepMm) * _stepMm, 0, 12);
    }

    private AcrossTread<double> Heat(int wheel)
    {
        // Hotter where more energy goes in on track; the surface has cooled a little by the time of reading.
        var (_, track) = car.Rates(car.Wheels, car.Driver, car.WornMm);
        var all = track[wheel];
        var mean = TrueCauses.MeanC(car, (CarAxle)(wheel / 2)) + chance.Scatter(4);
        var cooled = 1 - (0.0015 * (40 + (wheel * 15)));
        return new(Zone(1, 2), Zone(4, 6), Zone(8, 9));

        double Zone(int from, int to)
        {
            var ratio = Math.Pow((all[from] + all[to]) / 2 / all.Average(), 0.45);
            return Math.Round(car.AirC + ((mean - car.AirC) * cooled * ratio) + chance.Scatter(1.8), 0);
        }
    }

    private TyrePressures Pressures(int wheel)
    {
        if (!_readsPressure) return default;
        var axle = (CarAxle)(wheel / 2);
        var cold = Math.Max(85, Math.Round((car.Wheels[wheel].PressureKpa + chance.Scatter(4)) / 5) * 5);
        var rise = car.Habit == 0 ? 15 : car.TrackRiseKpa * (car.Habit == 3 ? 0.5 : 1);
        var readsHot = car.Habit > 0 && _readsHeat;
        return new(
            readsHot && chance.Of(0.3) ? null : cold, readsHot ? Math.Round(car.Wheels[wheel].PressureKpa + rise + chance.Scatter(5)) : null,
            _knowsAim ? Math.Round(car.RightKpa(axle) / 5) * 5 : null, _knowsAim && readsHot ? Math.Round(car.RightKpa(axle) + rise) : null);
    }

    private Vehicle Vehicle()
    {
        var much = chance.Between(0, 1);
        if (much < 0.3) return new Vehicle();
        var isFull = much > 0.72;
        var tells = chance.Of(isFull ? 0.85 : 0.45);

        // Some tell the paper of the alignment before last, which is the car as it should be.
        var isOld = chance.Of(0.08);
        var gauge = chance.Of(0.6) ? 0.08 : 0.25;
        return new Vehicle
        {
            DrivenAxle = chance.Of(0.85) ? car.Kind.Driven : null,
            Body = chance.Of(0.5) ? car.Kind.Body : null,
            WheelbaseMm = isFull ? car.Kind.WheelbaseMm : null,
            CentreOfGravityHeightMm = isFull && chance.Of(0.4) ? car.Kind.HeightMm : null,
            Front = Axle(CarAxle.Front),
            Rear = Axle(CarAxle.Rear),
        };

        Axle Axle(CarAxle axle)
        {
            var first = 2 * (int)axle;
            TyreMarkingReader.Read(CarKind.At(axle, car.Kind.Marking)).TryGet(out var marking, out _);
            var share = axle == CarAxle.Front ? car.Kind.FrontShare : 1 - car.Kind.FrontShare;
            var rimIn = Math.Round(marking!.NominalSectionWidthMm / 25.4 * 0.88 * 2) / 2;
            return new Axle
            {
                Tyre = new Tyre(marking) { Category = chance.Of(0.5) ? car.Category : null },
                Wheel = chance.Of(0.5) ? new Wheel { RimDiameterIn = marking.RimDiameterIn, RimWidthIn = rimIn + (car.Faults[(int)axle].HasWrongRim ? (car.Faults[(int)axle].IsRimNarrow ? -1.5 : 1.5) : 0), OffsetMm = 45 } : null,
                LoadKg = isFull ? Math.Round(share * car.Kind.MassKg) : null,
                TrackMm = isFull ? car.Kind.TrackMm : null,
                Spring = isFull ? new Spring { RateNPerMm = CarKind.At(axle, car.Kind.RateNPerMm), MotionRatio = 1 } : new Spring(),
                BarRollRateNmPerDeg = isFull && chance.Of(0.8) ? CarKind.At(axle, car.Kind.BarNmPerDeg) : null,
                RollCentreHeightMm = isFull && chance.Of(0.4) ? CarKind.At(axle, car.Kind.RollCentreMm) : null,
                Suspension = chance.Of(0.6) ? SuspensionModel.FromFiguresOf(CarKind.At(axle, car.Kind.Layout)) : SuspensionModel.FromFigures,
                Left = tells ? Angles(first, axle) : new WheelAlignment(),
                Right = tells ? Angles(first + 1, axle) : new WheelAlignment(),
            };
        }

        WheelAlignment Angles(int wheel, CarAxle axle) => new()
        {
            CamberDeg = Math.Round(isOld ? CarKind.At(axle, car.Kind.CamberDeg) : car.Wheels[wheel].CamberDeg + chance.Scatter(gauge * 1.2), 1),
            ToeDeg = Math.Round(isOld ? CarKind.At(axle, car.Kind.ToeDeg) : car.Wheels[wheel].ToeDeg + chance.Scatter(gauge / 2), 2),
        };
    }
}

using SetupService.Domain.Tyres;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.SecondSimulation;

/// <summary>What is wrong at one axle beside angles and pressures, and how its tyres would be without.</summary>
internal sealed class AxleFaults
{
    public bool IsBent { get; set; }
    public bool IsAskew { get; set; }
    public bool HasWeakDamper { get; set; }
    public bool HasImbalance { get; set; }
    public bool HasLocked { get; set; }
    public bool HasMixedTyres { get; set; }
    public bool HasWrongRim { get; set; }
    public bool IsRimNarrow { get; set; }
}

/// <summary>One stretch of the life of the tyres on the car now: who was where, and how far.</summary>
/// <param name="Positions">Where the tyre of each present position was.</param>
/// <param name="Turned">Whether it was mounted with its sides changed over against now.</param>
/// <param name="Share">Share of the whole use.</param>
internal sealed record CarLeg(int[] Positions, bool Turned, double Share);

/// <summary>
/// A car with its owner, its faults and the way its tyres wore. How often a fault is there among those who ask: the pressures from a published survey
/// (11,530 cars at filling stations: 27 % had a tyre 8 psi or more too low, 13 % two or more; Tire Pressure Special Study, 2001, read in its press
/// release), the dampers between two (a third of cars of testing age with one faulty, TRRL abstract 73636, 1977; 0.2 to 5.5 % found by eye at
/// inspections in 2018); all others common practice, no source.
/// </summary>
internal sealed class DrawnCar
{
    private const double LowestMm = 1.0;
    private const double WornShareFrom = 0.12;
    private const double WornShareTo = 0.9;

    public required CarKind Kind { get; init; }
    public required Driver Driver { get; init; }
    public required WheelState[] Wheels { get; init; }
    public required AxleFaults[] Faults { get; init; }
    public required TyreCategory Category { get; init; }

    /// <summary>How much use is by track: 0 = none, 1 = some, 2 = nearly all, 3 = sprints and hill climbs.</summary>
    public required int Habit { get; init; }

    public required double LapKm { get; init; }
    public required double AirC { get; init; }
    public required CarLeg[] Legs { get; init; }
    public double RoadKm { get; private set; }
    public double Laps { get; private set; }
    public double[][] WornMm { get; private set; } = [];

    /// <summary>How much lower than on the plate this use wants the cold pressures, kPa.</summary>
    public double TrackDropKpa => Habit switch { 0 => 0, 1 => 8, _ => 25 };

    /// <summary>How far a tyre's pressure rises on track, kPa.</summary>
    public double TrackRiseKpa => 25 + (30 * Driver.TrackG);

    public double RightKpa(CarAxle axle) => CarKind.At(axle, Kind.RightKpa) - TrackDropKpa;

    /// <summary>Draws one.</summary>
    public static DrawnCar From(Chance chance)
    {
        var habit = chance.Of(0.45) ? 0 : chance.Of(0.62) ? 1 : chance.Of(0.6) ? 2 : 3;
        var kinds = habit == 0 ? CarKind.All.Take(7).ToList() : habit == 3 ? CarKind.All : CarKind.All.Where(one => one.Body is not (CarBody.Suv or CarBody.Wagon)).ToList();
        var kind = chance.One(kinds);
        var category = habit switch { 0 => chance.Of(0.7) ? TyreCategory.Touring : TyreCategory.Summer, 1 => chance.Of(0.7) ? TyreCategory.Summer : TyreCategory.TrackDay, _ => chance.Of(0.4) ? TyreCategory.TrackDay : TyreCategory.SemiSlick };
        var driver = new Driver(
            Math.Exp(chance.Scatter(0.2)), Math.Clamp(0.5 + chance.Scatter(0.04), 0.35, 0.65), Math.Clamp(chance.Of(0.6) ? 0.36 + chance.Scatter(0.05) : 0.6 + chance.Scatter(0.06), 0.2, 0.8),
            Math.Clamp((category == TyreCategory.SemiSlick ? 1.0 : 0.88) + chance.Scatter(0.08), 0.55, 1.2), chance.Between(0.3, 0.45), habit > 0 && chance.Of(0.15), chance.Of(habit == 0 ? 0.05 : 0.1));
        AxleFaults[] faults = [new(), new()];
        var wheels = new WheelState[4];
        var isLowered = chance.Of(habit == 0 ? 0.1 : 0.35) ? chance.Between(0.3, 1.2) : 0;
        var pressures = DrawPressureOff(chance, habit);
        foreach (var axle in (CarAxle[])[CarAxle.Front, CarAxle.Rear]) Set(chance, kind, axle, habit, category, isLowered, pressures, faults[(int)axle], wheels);
        var car = new DrawnCar
        {
            Kind = kind,
            Driver = driver,
            Wheels = wheels,
            Faults = faults,
            Category = category,
            Habit = habit,
            AirC = chance.Between(4, 30),
            LapKm = habit == 3 ? chance.Between(0.7, 2.4) : chance.Between(1.8, 5.2),
            Legs = DrawLegs(chance, habit),
        };
        car.Use(chance);
        return car;
    }

    /// <summary>Rates of each disc at a share of wear, mm per km by road and by track.</summary>
    public (double[][] Road, double[][] Track) Rates(IReadOnlyList<WheelState> wheels, Driver driver, IReadOnlyList<double[]> wornMm)
    {
        var rolling = new RollingCar(Kind, wheels);
        return (rolling.RatesMmPerKm(driver.Road(), false, 12, wornMm), Habit == 0 ? Fresh() : rolling.RatesMmPerKm(driver.Track(), true, TrackRiseKpa, wornMm));
    }

    public static double[][] Fresh() => [.. Enumerable.Range(0, 4).Select(_ => new double[ContactPatch.Discs])];

    public static double[] DrawPressureOff(Chance chance, int habit)
    {
        // Of each tyre, as a share of what is right; owners who go to tracks look more often.
        var off = new double[4];
        for (var i = 0; i < 4; i++) off[i] = -0.03 + chance.Scatter(0.035);
        var looks = habit == 0 ? 1 : 0.55;
        var part = chance.Between(0, 1);
        if (chance.Of(0.13 * looks))
        {
            var low = -chance.Between(0.18, 0.4);
            for (var i = 0; i < 4; i++)
            {
                if (part < 0.25 || (part < 0.62 && i < 2) || (part >= 0.62 && i >= 2)) off[i] += low;
            }
        }
        else if (chance.Of(0.16 * looks)) off[(int)(part * 3.999)] -= chance.Between(0.2, 0.45);
        else if (chance.Of(0.07)) for (var i = 0; i < 4; i++) off[i] += part < 0.5 || (part < 0.8 && i < 2) || (part >= 0.8 && i >= 2) ? chance.Between(0.18, 0.35) : 0;
        return off;
    }

    private static void Set(
        Chance chance, CarKind kind, CarAxle axle, int habit, TyreCategory category, double isLowered, double[] pressureOff, AxleFaults faults, WheelState[] wheels)
    {
        var (isFront, first) = (axle == CarAxle.Front, (int)axle * 2);
        var camber = CarKind.At(axle, kind.CamberDeg) - isLowered;
        var isSet = (SetCanChange(kind, axle), habit) is (true, > 0) && chance.Of(isFront ? 0.45 : 0.25);
        if (isSet) camber -= chance.Between(0.3, habit == 1 ? 1.8 : 2.8);
        var toe = CarKind.At(axle, kind.ToeDeg) + chance.Scatter(0.04);
        if (chance.Of(isFront ? 0.16 : 0.11)) toe += (chance.Of(isLowered > 0 && isFront ? 0.25 : 0.5) ? 1 : -1) * chance.Between(0.15, 0.6);
        var camberSplit = chance.Scatter(0.15);
        var toeSplit = chance.Scatter(0.03);
        faults.HasWeakDamper = chance.Of(0.08);
        faults.HasImbalance = chance.Of(isFront ? 0.05 : 0.035);
        faults.HasLocked = chance.Of(isFront ? 0.03 : 0.01);
        faults.HasMixedTyres = chance.Of(habit == 0 ? 0.08 : 0.03);
        faults.HasWrongRim = chance.Of(0.03);
        if (faults.IsAskew = !isFront && chance.Of(0.045)) toeSplit += (chance.Of(0.5) ? 1 : -1) * chance.Between(0.2, 0.6);
        var (drag, bentSide) = (0.0, chance.Of(0.5) ? 0 : 1);
        if (faults.IsBent = chance.Of(isFront ? 0.045 : 0.03)) drag = chance.Of(0.2) ? 0.02 : 0;
        var make = Make(chance, kind, axle, category);
        faults.IsRimNarrow = chance.Of(0.6);
        var crown = faults.HasWrongRim ? (faults.IsRimNarrow ? 0.8 : -0.7) : 0;
        for (var side = 0; side < 2; side++)
        {
            var sign = side == 0 ? 1 : -1;
            var tyre = faults.HasMixedTyres && side == 1 ? Make(chance, kind, axle, category) with { TreadStiffness = make.TreadStiffness * chance.Between(0.75, 1.3), MmPerKj = make.MmPerKj * (chance.Of(0.5) ? 0.6 : 1.55) } : make;
            var isBent = faults.IsBent && side == bentSide;
            wheels[first + side] = new WheelState(
                camber + (sign * camberSplit) - (isBent && drag == 0 ? (chance.Of(0.5) ? 1 : -1) * chance.Between(0.8, 2) : 0),
                toe + (sign * toeSplit) + (isBent && drag == 0 && chance.Of(0.6) ? (chance.Of(0.5) ? 1 : -1) * chance.Between(0.2, 0.5) : 0),
                (CarKind.At(axle, kind.RightKpa) - (habit switch { 0 => 0, 1 => 8, _ => 25 })) * (1 + pressureOff[first + side]),
                tyre with { CrownMm = tyre.CrownMm + crown })
            { DragShare = isBent ? drag : 0 };
        }
    }

    private static bool SetCanChange(CarKind kind, CarAxle axle) => CarKind.At(axle, kind.Layout) != Domain.Suspension.SuspensionLayout.TwistBeam;

    private static TyreMake Make(Chance chance, CarKind kind, CarAxle axle, TyreCategory category)
    {
        var marking = CarKind.At(axle, kind.Marking);
        var widthMm = double.Parse(marking[..3], System.Globalization.CultureInfo.InvariantCulture);
        var (rate, friction, newMm) = category switch
        {
            TyreCategory.Touring => (2.4e-4, 0.95, 8.0),
            TyreCategory.Summer => (3.4e-4, 1.05, 7.7),
            TyreCategory.TrackDay => (7e-4, 1.15, 7.0),
            _ => (1.2e-3, 1.3, 5.6),
        };
        var loadN = (axle == CarAxle.Front ? kind.FrontShare : 1 - kind.FrontShare) * kind.MassKg * 9.81 / 2;
        return new(
            widthMm * 0.86, 310, CarKind.At(axle, kind.RightKpa), Math.Max(0.05, (0.5 * loadN / 3600) + chance.Scatter(0.2)), friction, Math.Exp(chance.Scatter(0.12)) * Math.Sqrt(loadN / 4000),
            rate * Math.Exp(chance.Scatter(0.2)), Math.Clamp(1.0 + chance.Scatter(0.1), 0.75, 1.3), newMm + chance.Scatter(0.3));
    }

    private static CarLeg[] DrawLegs(Chance chance, int habit)
    {
        int[] stayed = [0, 1, 2, 3];
        if (!chance.Of(0.22)) return [new(stayed, false, 1)];
        var share = chance.Between(0.25, 0.97);
        var kind = chance.Between(0, 1);
        var (before, turned) = kind < 0.7 ? ((int[])[2, 3, 0, 1], false) : kind < 0.85 ? ([3, 2, 1, 0], false) : (stayed, true);
        if (turned && habit == 0) (before, turned) = ([2, 3, 0, 1], false);
        return [new(before, turned, share), new(stayed, false, 1 - share)];
    }

    /// <summary>Uses the car until its fastest tyre has lost a share drawn, and wears its tyres leg by leg.</summary>
    private void Use(Chance chance)
    {
        var (km, laps) = Habit switch
        {
            0 => (20_000.0, 0.0),
            1 => (chance.Between(2000, 12_000), chance.Between(15, 120)),
            2 => (chance.Between(150, 2500), chance.Between(40, 200)),
            _ => (chance.Between(200, 3000), chance.Between(20, 90)),
        };
        var goal = chance.Between(WornShareFrom, WornShareTo);
        var fresh = Worn(km, laps);
        var scale = fresh.Select((worn, i) => goal * (Wheels[i].Tyre.NewDepthMm - LowestMm) / worn.Max()).Min();
        (RoadKm, Laps) = (km * scale, Math.Round(laps * scale));
        WornMm = Worn(RoadKm, Laps);
        for (var i = 0; i < 4; i++)
        {
            for (var disc = 0; disc < ContactPatch.Discs; disc++) WornMm[i][disc] = Math.Min(WornMm[i][disc], Wheels[i].Tyre.NewDepthMm);
        }
    }

    private double[][] Worn(double km, double laps)
    {
        const int Steps = 2;
        var worn = Fresh();
        foreach (var leg in Legs)
        {
            for (var step = 0; step < Steps; step++)
            {
                // The tyre of present position i stood at leg.Positions[i].
                var then = new WheelState[4];
                var thenWorn = new double[4][];
                for (var i = 0; i < 4; i++)
                {
                    then[leg.Positions[i]] = Wheels[leg.Positions[i]] with { Tyre = Wheels[i].Tyre };
                    thenWorn[leg.Positions[i]] = leg.Turned ? [.. worn[i].Reverse()] : worn[i];
                }

                var (road, track) = Rates(then, Driver, thenWorn);
                for (var i = 0; i < 4; i++)
                {
                    for (var disc = 0; disc < ContactPatch.Discs; disc++)
                    {
                        var at = leg.Turned ? ContactPatch.Discs - 1 - disc : disc;
                        worn[i][disc] += leg.Share / Steps * ((km * road[leg.Positions[i]][at]) + (laps * LapKm * track[leg.Positions[i]][at]));
                    }
                }
            }
        }

        return worn;
    }
}

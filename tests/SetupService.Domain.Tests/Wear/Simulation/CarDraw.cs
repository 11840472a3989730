using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Draws a car, its use and its faults. The ranges are judgement unless a source stands by them.</summary>
internal static class CarDraw
{
    private const double LeftDepthMm = 0.3;

    public static (TrueCar Car, WornTyre[] Tyres) Of(SeededDraw draw)
    {
        var drive = draw.Share() switch { < 0.5 => DrivenAxle.Front, < 0.9 => DrivenAxle.Rear, _ => DrivenAxle.Both };
        var use = Use(draw);
        var kind = TyreDraw.Kind(draw, use.HasTrack);
        use = use with { TrackG = kind.Friction * draw.Between(0.66, 0.84) };
        var chance = new FaultChance(draw);
        if (use.HasTrack && chance.Has(BaseRates.FrontOverdriven))
        {
            use = use with { OverdrivenShare = draw.Between(0.35, 0.8), OverdrivenSlip = draw.Between(1.05, 1.6) };
        }

        if (use.HasTrack)
        {
            var (fromC, toC) = kind.WindowC;
            use = use with { TreadC = fromC + ((toC - fromC) * draw.Between(0.35, 0.65)) };
        }

        var massKg = draw.Between(900, 1650);
        var frontShare = drive == DrivenAxle.Front ? draw.Between(0.57, 0.64) : draw.Between(0.47, 0.56);
        var axles = new AxleDraw(draw, chance, use, kind);
        return Worn(new TrueCar
        {
            Front = axles.Of(CarAxle.Front, massKg * frontShare * 9.81 / 2, drive != DrivenAxle.Rear),
            Rear = axles.Of(CarAxle.Rear, massKg * (1 - frontShare) * 9.81 / 2, drive != DrivenAxle.Front),
            Use = use,
            DrivenAxle = drive,
        });
    }

    private static TrueUse Use(SeededDraw draw)
    {
        var use = new TrueUse
        {
            RoadKm = draw.Between(2000, 25000),
            RoadG = draw.Between(0.2, 0.42),
            AmbientC = draw.Between(5, 35),
        };
        if (draw.Chance(1.0 / 3)) return use;
        use = use with { RoadKm = Math.Exp(draw.Between(Math.Log(2000), Math.Log(25000))), LeftShare = draw.Within(0.4, 0.1), BrakingG = draw.Between(0.5, 0.95), DriveG = draw.Between(0.12, 0.35) };

        // Runs up a hill are few.
        return draw.Chance(0.15)
            ? use with { TrackLaps = Math.Round(draw.Between(10, 60)), LapKm = draw.Between(1.5, 5), LeftShare = draw.Within(0.5, 0.05) }
            : use with { TrackLaps = Math.Round(Math.Exp(draw.Between(Math.Log(10), Math.Log(400)))), LapKm = draw.Between(1, 5) };
    }

    /// <summary>The same car with no more use than its tyres last.</summary>
    private static (TrueCar Car, WornTyre[] Tyres) Worn(TrueCar car)
    {
        var tyres = TyreWear.Of(car);
        for (var trial = 0; trial < 6; trial++)
        {
            var worst = 0.0;
            foreach (var tyre in tyres)
            {
                var axle = tyre.Wheel.Position is WheelPosition.FrontLeft or WheelPosition.FrontRight ? car.Front : car.Rear;
                var roundMm = tyre.Wheel.RunOutMm + tyre.Wheel.HollowMm + tyre.Wheel.FlatMm;
                worst = Math.Max(worst, tyre.LostMm.Max() / Math.Max(0.5, axle.Tyre.NewDepthMm - LeftDepthMm - roundMm));
            }

            if (worst <= 1) break;
            car = car with
            {
                Use = car.Use with { RoadKm = car.Use.RoadKm * 0.93 / worst, TrackLaps = car.Use.HasTrack ? Math.Max(1, Math.Round(car.Use.TrackLaps * 0.93 / worst)) : 0 },
            };
            tyres = TyreWear.Of(car);
        }

        return (car, tyres);
    }
}

using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Wear.Simulation;

/// <summary>Draws the axles of one car with their faults, so that what was drawn holds by its definition.</summary>
internal sealed class AxleDraw(SeededDraw draw, FaultChance chance, TrueUse use, TrueTyre kind)
{
    private const double StandardWeek = 1200;

    private readonly double _rollDegPerG = draw.Between(2, 5.5);

    public TrueAxle Of(CarAxle place, double wheelLoadN, bool isDriven)
    {
        var isFront = place == CarAxle.Front;
        var tyre = TyreDraw.OnRim(kind, draw, chance.Has(BaseRates.RimWidthMismatch));
        var axle = new TrueAxle
        {
            Place = place,
            WheelLoadN = wheelLoadN,
            Tyre = tyre,
            IsDriven = isDriven,
            LoadTransferPerG = draw.Between(0.48, 0.72),
            RollCamberLossDegPerG = _rollDegPerG * draw.Between(0.3, 0.75),
            SteerCamberGainDegPerG = isFront ? draw.Between(0.1, 0.6) : 0,
            Left = new TrueWheel { Position = isFront ? WheelPosition.FrontLeft : WheelPosition.RearLeft },
            Right = new TrueWheel { Position = isFront ? WheelPosition.FrontRight : WheelPosition.RearRight },
        };
        return Temperature(Spin(Tyres(Round(Pressure(Misaligned(Side(Toe(Camber(axle)))))))));
    }

    private TrueAxle Camber(TrueAxle axle)
    {
        var overDeg = chance.Either(BaseRates.LowCamber(axle.Place, use.HasTrack), BaseRates.HighCamber) switch
        {
            -1 => -draw.Between(0.65, 2.3),
            1 => draw.Between(1.2, 2.8),
            _ => draw.Between(-0.35, 0.8),
        };
        var camberDeg = -axle.NeededNegativeCamberDeg(use.CorneringG) - overDeg;
        return Both(axle, wheel => wheel with { CamberDeg = camberDeg + draw.Within(0, 0.08) });
    }

    private TrueAxle Toe(TrueAxle axle)
    {
        var toeDeg = chance.Either(BaseRates.ToeOut, BaseRates.ToeIn) switch
        {
            -1 => -draw.Between(0.21, 0.6),
            1 => draw.Between(0.21, 0.6),
            _ => draw.Within(0.03, 0.04),
        };
        return Both(axle, wheel => wheel with { ToeDeg = toeDeg + draw.Within(0, 0.02) });
    }

    private TrueAxle Side(TrueAxle axle)
    {
        if (!chance.Has(BaseRates.SideDifference)) return axle;
        var camberDeg = draw.Sign() * draw.Between(0.85, 2.2);
        var toeDeg = draw.Between(-0.12, 0.12);
        return One(axle, wheel => wheel with { CamberDeg = wheel.CamberDeg + camberDeg, ToeDeg = wheel.ToeDeg + toeDeg });
    }

    private TrueAxle Misaligned(TrueAxle axle)
    {
        if (!chance.Has(BaseRates.AxleMisaligned(axle.Place))) return axle;
        var thrustDeg = draw.Sign() * draw.Between(0.22, 0.65);
        return axle with
        {
            DragShare = draw.Between(0.4, 0.75),
            LooseToeDeg = draw.Between(0.05, 0.25),
            Left = axle.Left with { ToeDeg = axle.Left.ToeDeg - thrustDeg },
            Right = axle.Right with { ToeDeg = axle.Right.ToeDeg + thrustDeg },
        };
    }

    private TrueAxle Pressure(TrueAxle axle)
    {
        var fault = chance.Either(BaseRates.UnderInflation, BaseRates.OverInflation);
        var offShare = fault switch
        {
            -1 => -draw.Between(0.12, 0.35),
            1 => draw.Between(0.12, 0.35),
            _ => draw.Within(0, 0.03),
        };

        // A slow leak is one wheel's.
        if (fault < 0 && draw.Chance(0.2))
        {
            return One(Both(axle, wheel => wheel with { PressureOffShare = draw.Within(0, 0.03) }), wheel => wheel with { PressureOffShare = offShare });
        }

        return Both(axle, wheel => wheel with { PressureOffShare = offShare + draw.Within(0, 0.008) });
    }

    private TrueAxle Round(TrueAxle axle)
    {
        axle = Both(axle, wheel => wheel with { RunOutMm = draw.Between(0, 0.06) });
        if (chance.Has(BaseRates.WeakDamping))
        {
            var hollowMm = draw.Between(0.2, 0.9);
            axle = draw.Chance(0.5) ? Both(axle, wheel => wheel with { HollowMm = hollowMm * draw.Between(0.8, 1.2) }) : One(axle, wheel => wheel with { HollowMm = hollowMm });
        }

        if (chance.Has(BaseRates.Imbalance))
        {
            var runOutMm = draw.Between(0.14, 0.5);
            axle = One(axle, wheel => wheel with { RunOutMm = runOutMm });
        }

        if (!chance.Has(BaseRates.WheelLocking(axle.Place))) return axle;
        var flatMm = draw.Between(0.3, 1.6);
        return draw.Chance(0.35) ? Both(axle, wheel => wheel with { FlatMm = flatMm * draw.Between(0.85, 1.2) }) : One(axle, wheel => wheel with { FlatMm = flatMm });
    }

    private TrueAxle Tyres(TrueAxle axle)
    {
        var week = StandardWeek + draw.Whole(0, 120);
        axle = Both(axle, wheel => wheel with { RateFactor = Math.Exp(draw.Within(0, 0.04)), MadeInWeek = (int)week + draw.Whole(0, 3) });
        if (!chance.Has(BaseRates.MixedTyres)) return axle;
        if (draw.Chance(0.45))
        {
            var factor = Math.Exp(draw.Sign() * draw.Between(0.3, 0.8));
            var weeks = draw.Whole(40, 250);
            return One(axle, wheel => wheel with { RateFactor = wheel.RateFactor * factor, MadeInWeek = wheel.MadeInWeek - weeks });
        }

        var share = draw.Between(0.3, 0.75);
        var isTurned = draw.Chance(0.4);
        if (isTurned) return One(axle, wheel => wheel with { Earlier = new(wheel.Position, share, true) });
        return Both(axle, wheel => wheel with { Earlier = new(OtherAxle(wheel.Position), share, false) });
    }

    private TrueAxle Spin(TrueAxle axle)
    {
        if (!axle.IsDriven || !chance.Has(BaseRates.Wheelspin)) return axle;
        axle = axle with { SpunRoadShare = draw.Between(0.0006, 0.003), SpunTrackShare = use.HasTrack ? draw.Between(0.006, 0.03) : 0 };
        var uneven = draw.Between(-0.4, 0.4);
        return axle with { Left = axle.Left with { SpinShare = 1 + uneven }, Right = axle.Right with { SpinShare = 1 - uneven } };
    }

    private TrueAxle Temperature(TrueAxle axle)
    {
        if (!use.HasTrack) return axle;
        return chance.Either(BaseRates.OutsideWindow, BaseRates.OutsideWindow) switch
        {
            -1 => axle with { SetTreadC = Math.Max(use.AmbientC + 8, axle.Tyre.WindowC.FromC - draw.Between(4, 25)), TemperatureWear = draw.Between(1.1, 1.35) },
            1 => axle with { SetTreadC = axle.Tyre.WindowC.ToC + draw.Between(4, 30), TemperatureWear = draw.Between(1.25, 1.9) },
            _ => axle,
        };
    }

    private TrueAxle One(TrueAxle axle, Func<TrueWheel, TrueWheel> change) =>
        draw.Chance(0.5) ? axle with { Left = change(axle.Left) } : axle with { Right = change(axle.Right) };

    private static TrueAxle Both(TrueAxle axle, Func<TrueWheel, TrueWheel> change) =>
        axle with { Left = change(axle.Left), Right = change(axle.Right) };

    private static WheelPosition OtherAxle(WheelPosition position) => (WheelPosition)(((int)position + 2) % 4);
}

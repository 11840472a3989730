using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.WhatIf;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.WhatIf;

/// <summary>Changes side by side: what is compared with what.</summary>
public sealed class WhatIfStudyTests
{
    // Every figure is 10 more in the one than in the other, whatever it is; read from the type, so that a figure added later is compared too.
    [Fact]
    public void A_comparison_takes_each_figure_from_its_own()
    {
        object after = new WhatIfFigures
        {
            RollDeg = 0,
            FrontInclinationDeg = 0,
            RearInclinationDeg = 0,
            FrontLoadTransferPct = 0,
            FrontLimitG = 0,
            RearLimitG = 0,
            LimitMarginG = 0,
            UndersteerDegPerG = 0,
            FrontBumpLeftMm = 0,
            RearBumpLeftMm = 0,
            FrontRideFrequencyHz = 0,
            RearRideFrequencyHz = 0,
            FrontDampingRatio = 0,
            RearDampingRatio = 0,
            FrontRideHeightMm = 0,
            RearRideHeightMm = 0,
        };
        object before = (WhatIfFigures)after;
        var figures = typeof(WhatIfFigures).GetProperties();
        for (var i = 0; i < figures.Length; i++)
        {
            figures[i].SetValue(after, 100.0 + i);
            figures[i].SetValue(before, 90.0 + i);
        }

        object change = ((WhatIfFigures)after).Less((WhatIfFigures)before);

        Assert.All(figures, figure => Assert.Equal(10.0, figure.GetValue(change)));
    }

    [Fact]
    public void The_car_as_given_stands_at_its_own_height()
    {
        var car = new WhatIfCar(new Vehicle(), new(WorkedCar.Make(), [], []));

        var figures = WhatIfStudy.Compute(car, new(0.3, 60, TurnDirection.Left), GripScale.ByTyres).AsGiven()!.Value.Figures;

        Assert.Equal((0, 0), (figures.FrontRideHeightMm, figures.RearRideHeightMm));
    }

    // A wider tyre was answered with a little more understeer: the tyres of each state were raised to what it asked of them.
    [Fact]
    public void All_states_stand_on_the_scale_of_the_car_as_given()
    {
        var car = WorkedCar.Make();
        var wider = car with { Front = car.Front with { TyreNominalLoadN = 1.2 * car.Front.TyreNominalLoadN } };
        var scale = GripScale.Find(car, TurnPath.AtRadius(TurnDirection.Left, 60), 1.1)!.Value;
        var study = WhatIfStudy.Compute(new WhatIfCar(new Vehicle(), new(car, [], [])), new(0.9, 60, TurnDirection.Left), scale);

        var (before, after) = (study.AsGiven()!.Value.Figures, study.Changed(new WhatIfCar(new Vehicle(), new(wider, [], [])))!.Value.Figures);

        Assert.Equal(1.1, Math.Min(before.FrontLimitG!.Value, before.RearLimitG!.Value), 1e-6);
        Assert.True(after.FrontLimitG > before.FrontLimitG + 0.005);
        Assert.Equal(before.RearLimitG!.Value, after.RearLimitG!.Value, 0.002);
        Assert.True(after.UndersteerDegPerG < before.UndersteerDegPerG);
    }

    // Worked by hand: 30 kg more on each front wheel press a spring of 28 N/mm at the wheel by 30 · 9.80665 / 28 = 10.507 mm further; the tail stays.
    [Fact]
    public void A_heavier_front_sinks_by_its_springs()
    {
        var car = WorkedCar.Make();
        var heavier = car with { Front = car.Front with { LeftLoadN = car.Front.LeftLoadN + (30 * 9.80665), RightLoadN = car.Front.RightLoadN + (30 * 9.80665) } };
        var study = WhatIfStudy.Compute(new WhatIfCar(Stated(), new(car, [], [])), new(0.3, 60, TurnDirection.Left), GripScale.ByTyres);

        var figures = study.Changed(new WhatIfCar(Stated(), new(heavier, [], [])))!.Value.Figures;

        Assert.Equal(-10.507, figures.FrontRideHeightMm!.Value, 5e-4);
        Assert.Equal(0, figures.RearRideHeightMm);

        static Vehicle Stated() => new() { Front = new Axle { Spring = new Spring { RateNPerMm = 28 } }, Rear = new Axle { Spring = new Spring { RateNPerMm = 26 } } };
    }
}

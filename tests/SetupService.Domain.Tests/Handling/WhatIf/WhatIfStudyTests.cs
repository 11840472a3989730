using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
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
            FrontCamberDeg = 0,
            RearCamberDeg = 0,
            FrontRollCentreHeightMm = 0,
            RearRollCentreHeightMm = 0,
            FrontTrackMm = 0,
            RearTrackMm = 0,
            FrontScrubRadiusMm = 0,
            FrontUnsprungMassKg = 0,
            RearUnsprungMassKg = 0,
        };
        object before = (WhatIfFigures)after;
        var figures = Array.FindAll(typeof(WhatIfFigures).GetProperties(), figure => figure.CanWrite);
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
        var figures = WhatIfStudy.Compute(Standing(WorkedCar.Make()), TurnPath.AtRadius(TurnDirection.Left, 60), 0.3, GripScale.ByTyres).Given.Figures;

        Assert.Equal((0, 0), (figures.FrontRideHeightMm, figures.RearRideHeightMm));
    }

    // A wider tyre was answered with a little more understeer: the tyres of each state were raised to what it asked of them.
    [Fact]
    public void All_states_stand_on_the_scale_of_the_car_as_given()
    {
        var car = WorkedCar.Make();
        var wider = car with { Front = car.Front with { TyreNominalLoadN = 1.2 * car.Front.TyreNominalLoadN } };
        var path = TurnPath.AtRadius(TurnDirection.Left, 60);
        var study = WhatIfStudy.Compute(Standing(car), path, 0.9, GripScale.Find(car, path, 1.1)!.Value);

        var (before, after) = (study.Given.Figures, study.Changed(Standing(wider)).Figures);

        Assert.Equal(1.1, Math.Min(before.FrontLimitG!.Value, before.RearLimitG!.Value), 1e-6);
        Assert.True(after.FrontLimitG > before.FrontLimitG + 0.005);
        Assert.Equal(before.RearLimitG!.Value, after.RearLimitG!.Value, 0.002);
        Assert.True(after.UndersteerDegPerG < before.UndersteerDegPerG);
    }

    private static StandingCar Standing(HandlingCar car) => StandingCar.Create(new Vehicle(), new(car, [], []), car, out _)!;
}

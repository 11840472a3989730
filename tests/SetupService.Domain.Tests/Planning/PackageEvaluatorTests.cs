using CsCheck;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Planning;
using SetupService.Domain.Tests.Handling.WhatIf;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Planning;

/// <summary>What a package reaches is what the models of the single calls say of the same car.</summary>
public sealed class PackageEvaluatorTests
{
    private static readonly Gen<BendShare> Bend = Gen.Select(
        Gen.Double[0.4, 0.85], Gen.Double[25, 120], Gen.Bool, Gen.Double[5, 60], (lateralG, radiusM, isLeft, share) => new BendShare(new(lateralG, radiusM, isLeft ? TurnDirection.Left : TurnDirection.Right), share));

    // A stiffer bar, other springs, more camber, in one to four bends to either side: the outer tyres lean as camber-target's series of bends has it.
    [Fact]
    public void Treads_lean_as_the_camber_target_says_over_several_bends()
    {
        var asGiven = WhatIfStoryTests.Car();
        var given = StandingCar.AsGiven(asGiven)!;
        Gen.Select(Bend.Array[1, 4], Gen.Double[0, 400], Gen.Double[22, 60], Gen.Double[-3, 0]).Sample((bends, barNmPerDeg, rateNPerMm, camberDeg) =>
        {
            var changed = asGiven with
            {
                Front = asGiven.Front with
                {
                    BarRollRateNmPerDeg = barNmPerDeg,
                    Left = asGiven.Front.Left with { CamberDeg = camberDeg },
                    Right = asGiven.Front.Right with { CamberDeg = camberDeg },
                },
                Rear = asGiven.Rear with { Spring = asGiven.Rear.Spring with { RateNPerMm = rateNPerMm } },
            };
            var hardest = bends.MaxBy(bend => bend.Demand.LateralG).Demand;
            var plan = new PlanCase
            {
                Given = given,
                Bends = bends,
                Scale = GripScale.Find(given.Reading.Car, TurnPath.AtRadius(hardest.Turn, hardest.RadiusM), null, null) ?? GripScale.ByTyres,
                Use = new(10_000, 5, 60, 3),
                Goals = [new(PlanGoal.Grip, 1)],
                Limits = new(),
            };
            var car = StandingCar.AsGiven(changed)!;

            var reached = new PackageEvaluator(plan, new WorkBudget(WorkBudget.GenerousSteps)).Evaluate(new(car, changed, null, _ => null), setsCamber: false).Figures!;

            foreach (var at in (CarAxle[])[CarAxle.Front, CarAxle.Rear])
            {
                var works = new BendSeries(new CamberDemand { Axle = at, Corners = bends }, budget: null).Works(car.Stands with { GripFactor = plan.Scale.Factor })!;
                Assert.Equal(BendSeries.MeanDeg(works, null)!.Value, reached.At(at).MeanInclinationDeg, 1e-6);
            }
        }, iter: 100);
    }
}

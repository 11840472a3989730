using CsCheck;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Tests.Fitment;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.CamberTarget;

/// <summary>Grip over static camber against the turns solved again with each camber, and what must hold of the rows.</summary>
public sealed class CamberGripTests
{
    // What an axle can hold in an attitude is its side force over the share of its grip it uses: solved again, bend by bend, with the camber set.
    [Fact]
    public void Grip_at_another_camber_is_what_the_turns_solved_again_have() =>
        Gen.Select(AnyDemand.Cars, AnyDemand.Mixes, Gen.Double[-4, 2], Gen.Bool).Sample((car, corners, addedDeg, isFront) =>
        {
            var at = isFront ? CarAxle.Front : CarAxle.Rear;
            if (Solve(car, corners, at) is not { } result) return;
            var set = HandlingInputs.For(at).Camber.Read(car);
            var sum = 0.0;
            var work = 0.0;
            foreach (var corner in corners)
            {
                var weight = Weight(car, corner, at, out var now);
                Weight(AnyDemand.Set(car, at, set + addedDeg), corner, at, out var then);
                sum += weight * now / then;
                work += weight;
            }

            Assert.Equal(100 * ((sum / work) - 1), Pct(result, set + addedDeg), 0.15 + (0.1 * Math.Abs((100 * sum / work) - 100)));
        }, iter: 60);

    [Fact]
    public void As_set_nothing_changes_and_the_best_is_no_worse_than_its_neighbours() =>
        Gen.Select(AnyDemand.Cars, AnyDemand.Mixes).Sample((car, corners) =>
        {
            if (Solve(car, corners, CarAxle.Front) is not { } result) return;
            Assert.Equal(0, Pct(result, result.SetCamberDeg), 1e-12);
            var best = result.BestGripCamberDeg;
            var at = Pct(result, best.Value);

            Assert.True(at >= Pct(result, best.Value - 0.5) - 1e-3);
            Assert.True(at >= Pct(result, best.Value + 0.5) - 1e-3);
            Assert.Equal(0, Math.IEEERemainder(best.Value, 0.5), 1e-9);
            Assert.InRange(best.Value, best.Lower, best.Upper);

            // Nobody has published a best lean: told to within a degree either side it would be invented.
            Assert.True(best.Upper - best.Lower >= 2, $"{best}");
        }, iter: 60);

    [Fact]
    public void Rows_hold_what_is_set_and_recommended_within_their_ranges_and_braking_may_be_untouched() =>
        Gen.Select(AnyDemand.Cars, AnyDemand.Mixes).Sample((car, corners) =>
        {
            if (Solve(car, corners, CarAxle.Front) is not { } result) return;
            var rows = CamberTradeOff.Compute(result, AngleReach.Between(-3, 0), car, CarAxle.Front, DemoCar.Tyre());

            Assert.Equal(rows.Select(row => row.StaticCamberDeg).Order(), rows.Select(row => row.StaticCamberDeg));
            Assert.InRange(rows.Length, 6, 20);
            var set = rows.Single(row => row.StaticCamberDeg == result.SetCamberDeg);
            Assert.Equal((0.0, 0.0, 0.0), (set.GripChangePct.Value, set.BrakingChangePct!.Value.Value, set.BrakingChangePct.Value.Lower));
            Assert.Contains(rows, row => Math.Abs(row.StaticCamberDeg - result.Advice.CamberDeg!.Value) < 1e-6);
            Assert.All(rows, row => Assert.InRange(row.GripChangePct.Value, row.GripChangePct.Lower, row.GripChangePct.Upper));
            Assert.All(rows, row => Assert.InRange(0, row.BrakingChangePct!.Value.Lower, row.BrakingChangePct.Value.Upper));
            Assert.All(rows, row => Assert.Equal(row.StaticCamberDeg is >= -3 and <= 0, row.IsReachable));

            // A wheel set to positive camber brakes better with less of it, and with as much negative one about as well.
            Assert.All(rows.Where(row => row.StaticCamberDeg < -Math.Abs(result.SetCamberDeg)), row => Assert.True(row.BrakingChangePct!.Value.Value < 0));
        }, iter: 40);

    [Fact]
    public void Without_a_tyre_braking_is_not_told()
    {
        var result = Solve(WorkedCar.Make(), [AnyDemand.Corner(0.8, 60)], CarAxle.Front)!;

        Assert.All(CamberTradeOff.Compute(result, null, WorkedCar.Make(), CarAxle.Front, null), row => Assert.Null(row.BrakingChangePct));
        Assert.All(CamberTradeOff.Compute(result, null, WorkedCar.Make(), CarAxle.Front, null), row => Assert.Null(row.IsReachable));
    }

    private static double Pct(CamberTargetResult result, double camberDeg) => result.Grip.ChangePct(camberDeg, result.StaticCamberDeg, new double[JointDraws.Count]).Value;

    private static CamberTargetResult? Solve(HandlingCar car, BendShare[] corners, CarAxle at) =>
        CamberTargetSearch.Solve(new(car, Judged, []), AnyDemand.Of(corners, at), [], null, out _);

    // What no car's owner can give: how tyres lean.
    private static AssumedInput[] Judged { get; } =
        [.. HandlingInputs.TyreSet.Where(one => one.Input == HandlingInputs.BestLean || one.Input == HandlingInputs.LeanGain).Select(one => new AssumedInput(one.Input, one.Typical.Value, one.Typical.Lower, one.Typical.Upper, one.Typical.Source, one.Reason))];

    private static double Weight(HandlingCar car, BendShare corner, CarAxle at, out double used)
    {
        var solver = CorneringSolver.Create(car, corner.Demand.Turn)!;
        Assert.Null(solver.Solve(corner.Demand.LateralG, corner.Demand.RadiusM));
        used = solver.GripUsed(at);
        var wheel = solver.Attitude(corner.Demand).Outer(at);
        return corner.Share * wheel.LoadN * Math.Abs(wheel.SlipDeg);
    }
}

using CsCheck;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Handling.CamberTarget;

/// <summary>The camber found against the turns themselves, solved again one by one.</summary>
public sealed class CamberTargetSearchTests
{
    [Fact]
    public void With_the_camber_found_the_turns_solved_again_average_the_target() =>
        Gen.Select(AnyDemand.Cars, AnyDemand.Mixes, Gen.Double[-3, 1], Gen.Bool).Sample((car, corners, targetDeg, isFront) =>
        {
            var axle = isFront ? CarAxle.Front : CarAxle.Rear;
            if (Found(car, AnyDemand.Of(corners, axle, targetDeg)) is not { } result) return;

            Assert.Equal(targetDeg, MeanDeg(AnyDemand.Set(car, axle, result.StaticCamberDeg.Value), corners, axle), 1e-6);
            Assert.Equal(1, result.Corners.Sum(one => one.Work), 1e-12);
        }, iter: 150);

    [Fact]
    public void The_camber_set_now_does_not_tell_which_is_found() =>
        Gen.Select(AnyDemand.Cars, AnyDemand.Mixes, Gen.Double[-4, 2]).Sample((car, corners, camberDeg) =>
        {
            var demand = AnyDemand.Of(corners);
            if (AnyDemand.CamberDeg(car, demand, out _) is not { } one || AnyDemand.CamberDeg(AnyDemand.Set(car, CarAxle.Front, camberDeg), demand, out _) is not { } other) return;
            Assert.Equal(one, other, 1e-6);
        }, iter: 100);

    [Fact]
    public void Shares_count_by_their_ratios_alone() =>
        Gen.Select(AnyDemand.Cars, AnyDemand.Mixes, Gen.Double[0.01, 1000]).Sample((car, corners, scale) =>
        {
            var one = AnyDemand.CamberDeg(car, AnyDemand.Of(corners), out _);
            var other = AnyDemand.CamberDeg(car, AnyDemand.Of([.. corners.Select(corner => corner with { Share = corner.Share * scale })]), out _);
            Assert.Equal(one is null, other is null);
            if (one is not null) Assert.Equal(one.Value, other!.Value, 1e-8);
        }, iter: 60);

    [Fact]
    public void A_corner_split_in_two_counts_as_one() =>
        Gen.Select(AnyDemand.Cars, AnyDemand.Mixes, Gen.Double[0.1, 0.9]).Sample((car, corners, part) =>
        {
            var first = corners[0];
            BendShare[] split = [first with { Share = first.Share * part }, first with { Share = first.Share * (1 - part) }, .. corners[1..]];
            var one = AnyDemand.CamberDeg(car, AnyDemand.Of(corners), out _);
            if (one is not null) Assert.Equal(one.Value, AnyDemand.CamberDeg(car, AnyDemand.Of(split), out _)!.Value, 1e-7);
        }, iter: 60);

    [Fact]
    public void The_same_corners_the_other_way_want_the_same_of_a_car_alike_on_both_sides() =>
        Gen.Select(AnyDemand.Cars, AnyDemand.Mixes).Sample((car, corners) =>
        {
            var left = Found(car, AnyDemand.Of(corners));
            var right = Found(car, AnyDemand.Of([.. corners.Select(Mirrored)]));
            Assert.Equal(left is null, right is null);
            if (left is null) return;
            Assert.Equal(left.StaticCamberDeg.Value, right!.StaticCamberDeg.Value, 1e-7);
            Assert.Equal(left.LeftDeg is null, right.RightDeg is null);
            if (left.LeftDeg is { } byRightTurns) Assert.Equal(byRightTurns, right.RightDeg!.Value, 1e-6);
        }, iter: 60);

    // The flatter the body stays, the less camber is wanted; true of a body that leans out of the turn on springs that stay seated.
    [Fact]
    public void Stiffer_springs_in_front_want_less_camber_in_front() =>
        Gen.Select(AnyDemand.Cars, AnyDemand.Mixes, Gen.Double[1.05, 1.5]).Sample((car, corners, factor) =>
        {
            var soft = car with { CentreOfGravityHeightMm = Math.Max(520, car.CentreOfGravityHeightMm) };
            var stiff = soft with { Front = soft.Front with { SpringRateNPerMm = factor * soft.Front.SpringRateNPerMm } };
            if (!IsSeated(soft, corners) || !IsSeated(stiff, corners)) return;
            if (AnyDemand.CamberDeg(soft, AnyDemand.Of(corners), out _) is { } before && AnyDemand.CamberDeg(stiff, AnyDemand.Of(corners), out _) is { } after)
                Assert.True(after > before, $"{before} then {after}");
        }, iter: 100);

    [Fact]
    public void More_caster_saves_camber_and_more_of_it_in_the_tighter_corner()
    {
        var wide = Found(WorkedCar.Make(), AnyDemand.Of([AnyDemand.Corner(0.8, 120)]))!;
        var tight = Found(WorkedCar.Make(), AnyDemand.Of([AnyDemand.Corner(0.8, 15)]))!;
        var both = Found(WorkedCar.Make(), AnyDemand.Of([AnyDemand.Corner(0.8, 120), AnyDemand.Corner(0.8, 15)]))!;

        Assert.True(wide.SavedPerCasterDeg > 0 && tight.SavedPerCasterDeg > wide.SavedPerCasterDeg);
        Assert.InRange(both.SavedPerCasterDeg!.Value, wide.SavedPerCasterDeg!.Value, tight.SavedPerCasterDeg!.Value);
        Assert.Equal(tight.SavedPerCasterDeg!.Value, both.SavedPerCasterInTightestDeg!.Value, 0.02);
    }

    [Fact]
    public void With_another_caster_the_camber_is_that_of_a_car_that_has_it()
    {
        var car = WorkedCar.Make();
        var demand = AnyDemand.Of([AnyDemand.Corner(0.9, 20), AnyDemand.Corner(0.6, 80, TurnDirection.Right)]);
        var result = CamberTargetSearch.Solve(new(car, [], []), demand, [4, 6, 9], default, out _)!;

        Assert.Equal([4, 6, 9], result.WithCaster.Select(one => one.CasterDeg));
        Assert.Equal(result.StaticCamberDeg.Value, result.WithCaster[1].StaticCamberDeg!.Value, 1e-7);
        Assert.All(result.WithCaster, one => Assert.Equal(AnyDemand.CamberDeg(HandlingInputs.Front.Caster.Put(car, one.CasterDeg), demand, out _)!.Value, one.StaticCamberDeg!.Value, 1e-7));
    }

    // Only the outer wheel is asked for: of left turns alone nothing is known of the left one.
    [Theory]
    [InlineData(TurnDirection.Left)]
    [InlineData(TurnDirection.Right)]
    public void Turns_to_one_side_alone_tell_nothing_of_their_inner_wheel(TurnDirection turn)
    {
        var result = Found(WorkedCar.Make(), AnyDemand.Of([AnyDemand.Corner(0.8, 40, turn), AnyDemand.Corner(0.5, 90, turn)]))!;
        var (outer, inner) = turn == TurnDirection.Left ? (result.RightDeg, result.LeftDeg) : (result.LeftDeg, result.RightDeg);

        Assert.Null(inner);
        Assert.Equal(result.StaticCamberDeg.Value, outer!.Value, 1e-6);
    }

    // What each side wants for itself, to first order from the camber that serves both: against the turns to one side solved alone.
    [Fact]
    public void Each_side_wants_nearly_the_camber_of_its_own_turns_alone() =>
        Gen.Select(AnyDemand.Cars, Gen.Double[15, 30], Gen.Double[60, 200]).Sample((car, tightM, wideM) =>
        {
            BendShare[] corners = [AnyDemand.Corner(0.7, tightM), AnyDemand.Corner(0.7, wideM, TurnDirection.Right)];
            if (Found(car, AnyDemand.Of(corners)) is not { } both
                || AnyDemand.CamberDeg(car, AnyDemand.Of(corners[..1]), out _) is not { } tight
                || AnyDemand.CamberDeg(car, AnyDemand.Of(corners[1..]), out _) is not { } wide) return;

            Assert.Equal(tight, both.RightDeg!.Value, 0.01 + (0.2 * Math.Abs(tight - both.StaticCamberDeg.Value)));
            Assert.Equal(wide, both.LeftDeg!.Value, 0.01 + (0.2 * Math.Abs(wide - both.StaticCamberDeg.Value)));
        }, iter: 60);

    [Fact]
    public void A_rear_axle_has_no_use_for_caster()
    {
        var result = CamberTargetSearch.Solve(new(WorkedCar.Make(), [], []), AnyDemand.Of([AnyDemand.Corner(0.9, 40)], CarAxle.Rear), [6, 8], default, out _)!;

        Assert.Null(result.SavedPerCasterDeg);
        Assert.Null(result.SavedPerCasterInTightestDeg);
        Assert.Empty(result.WithCaster);
    }

    [Fact]
    public void A_car_that_would_roll_over_in_its_hardest_corner_is_told_which()
    {
        var demand = AnyDemand.Of([AnyDemand.Corner(0.5, 80), AnyDemand.Corner(2.4, 60, TurnDirection.Right)]);

        Assert.Null(Found(WorkedCar.Make(), demand, out var failure));
        Assert.Equal(CorneringFailure.RollsOver, failure!.Value.Reason);
        Assert.Equal(demand.Corners[1].Demand, failure.Value.Corner);
    }

    [Fact]
    public void A_caller_who_has_gone_ends_the_search()
    {
        using var gone = new CancellationTokenSource();
        gone.Cancel();

        Assert.Null(CamberTargetSearch.Solve(new(WorkedCar.Make(), [], []), AnyDemand.Of([AnyDemand.Corner(0.9, 40)]), [], WorkBudget.Generous(gone.Token), out var failure));
        Assert.Equal(CorneringFailure.WorkSpent, failure!.Value.Reason);
    }

    private static CamberTargetResult? Found(HandlingCar car, CamberDemand demand) => Found(car, demand, out _);

    private static CamberTargetResult? Found(HandlingCar car, CamberDemand demand, out CamberTargetFailure? failure) =>
        CamberTargetSearch.Solve(new(car, [], []), demand, [], default, out failure);

    /// <summary>Every corner from rest, by a solver of its own, weighted by share times load times slip.</summary>
    private static double MeanDeg(HandlingCar car, BendShare[] corners, CarAxle axle)
    {
        var (sum, work) = (0.0, 0.0);
        foreach (var (demand, share, _) in corners)
        {
            var solver = CorneringSolver.Create(car, demand.Turn)!;
            Assert.Null(solver.Solve(demand.LateralG, demand.RadiusM));
            var wheel = solver.Attitude(demand).Outer(axle);
            sum += share * wheel.LoadN * Math.Abs(wheel.SlipDeg) * wheel.InclinationAngleDeg;
            work += share * wheel.LoadN * Math.Abs(wheel.SlipDeg);
        }

        return sum / work;
    }

    private static bool IsSeated(HandlingCar car, BendShare[] corners) => corners.All(corner =>
    {
        var solver = CorneringSolver.Create(car, corner.Demand.Turn)!;
        if (solver.Solve(corner.Demand.LateralG, corner.Demand.RadiusM) is not null) return false;
        var turn = solver.Attitude(corner.Demand);
        return ((WheelAttitude[])[turn.FrontLeft, turn.FrontRight, turn.RearLeft, turn.RearRight]).All(wheel => wheel.LoadN > 300);
    });

    private static BendShare Mirrored(BendShare corner) =>
        corner with { Demand = corner.Demand with { Turn = corner.Demand.Turn == TurnDirection.Left ? TurnDirection.Right : TurnDirection.Left } };
}

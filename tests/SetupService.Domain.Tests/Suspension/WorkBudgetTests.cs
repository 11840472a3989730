using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Handling.WhatIf;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Handling;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Suspension;

/// <summary>Every solver looks at its budget inside its loops, and ends with a named outcome.</summary>
public sealed class WorkBudgetTests
{
    [Fact]
    public void A_budget_gives_as_many_steps_as_it_has()
    {
        var budget = new WorkBudget(2);

        Assert.True(budget.TrySpend());
        Assert.True(budget.TrySpend());
        Assert.False(budget.IsSpent);
        Assert.False(budget.TrySpend());
        Assert.True(budget.IsSpent);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(4095)]
    [InlineData(4096)]
    [InlineData(4097)]
    [InlineData(10_000)]
    public void Threads_of_one_computation_share_their_steps(int steps)
    {
        var budget = new WorkBudget(steps);
        var budgets = new[] { budget, budget.ForAnotherThread(), budget.ForAnotherThread(), budget.ForAnotherThread() };
        var taken = 0;

        Parallel.ForEach(budgets, one =>
        {
            while (one.TrySpend()) Interlocked.Increment(ref taken);
        });

        Assert.Equal(steps, taken);
        Assert.Equal(steps, budget.StepsTaken);
        Assert.All(budgets, one => Assert.True(one.IsSpent && one.IsOutOfSteps));
    }

    [Fact]
    public void Who_has_gone_has_spent_no_steps()
    {
        using var gone = new CancellationTokenSource();
        var budget = new WorkBudget(10, gone.Token);
        Assert.True(budget.TrySpend());
        Assert.Equal(1, budget.StepsTaken);

        gone.Cancel();

        Assert.False(budget.TrySpend());
        Assert.True(budget.IsSpent);
        Assert.False(budget.IsOutOfSteps);
    }

    [Fact]
    public void A_continuation_ends_where_it_has_come_to()
    {
        var corner = MechanismBuilder.Build(KinematicsCases.Setting("ST1"));
        Assert.True(PoseContinuation.TryStart(corner, out var pose));

        Assert.False(PoseContinuation.TryMove(corner, 60, 0, ref pose, new WorkBudget(2)));
        Assert.Equal(40, pose.TravelMm, 1e-9);
    }

    [Fact]
    public void A_sweep_names_the_positions_it_had_no_work_left_for()
    {
        var sweep = TravelSweep.Start(MechanismBuilder.Build(KinematicsCases.Setting("ST1")), new(0, 60, 10), SweepRange.Only(0), default, new WorkBudget(3))!;
        var (rows, spent) = (0, 0);
        while (sweep.TryNext(out var row, out var missed))
        {
            if (row is not null) rows++;
            if (missed is { Reason: UnreachableReason.WorkSpent }) spent++;
        }

        Assert.Equal((4, 3), (rows, spent));
    }

    [Fact]
    public void A_search_for_a_movement_ends_where_the_work_is_spent()
    {
        var start = AdjustedCorner.AsStated(KinematicsCases.Setting("ST1"))!;
        var budget = new WorkBudget(1);
        var found = LeastMovement.Find(
            start, [new(new(Adjuster.StrutTopInboard, 0), -40, 40)], new(start.CamberDeg - 1.5, null), archGapMm: null, resetToe: true, budget)!;

        Assert.True(budget.IsSpent);
        Assert.False(found.IsReached);
    }

    [Fact]
    public void A_search_for_a_camber_says_that_it_was_cut_short()
    {
        var demand = new CamberDemand { Axle = CarAxle.Front, Corners = [new(new(0.9, 60, TurnDirection.Left), 1)] };

        Assert.Null(CamberTargetSearch.Solve(new(WorkedCar.Make(), [], []), demand, [], new WorkBudget(40), out var failure));
        Assert.Equal(CorneringFailure.WorkSpent, failure!.Value.Reason);
    }

    [Fact]
    public void A_path_says_that_it_was_cut_short()
    {
        var setting = KinematicsCases.Setting("ST1");
        var path = SuspensionModel.From(setting.Suspension).PathOver(new() { CamberDeg = setting.CamberDeg, ToeDeg = setting.ToeDeg }, 0, 60, new WorkBudget(3));

        Assert.Equal(SuspensionGapKind.WorkSpent, path.Gap!.Kind);
        Assert.Equal(12, path.Points[^1].TravelMm, 1e-9);
    }

    [Fact]
    public void A_comparison_of_changes_says_that_it_was_cut_short()
    {
        var car = StandingCar.Create(new Vehicle(), new(WorkedCar.Make(), [], []), WorkedCar.Make(), out _)!;
        var study = WhatIfStudy.Compute(car, TurnPath.AtRadius(TurnDirection.Left, 60), 0.9, GripScale.ByTyres, budget: new WorkBudget(2));

        Assert.Equal(CorneringFailure.WorkSpent, study.Given.Obstacle!.Value.Failure);
    }
}

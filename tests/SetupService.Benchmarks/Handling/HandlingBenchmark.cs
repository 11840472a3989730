using BenchmarkDotNet.Attributes;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Cornering.Effects;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Handling.WhatIf;
using SetupService.Domain.Vehicles;

namespace SetupService.Benchmarks.Handling;

/// <summary>The equilibrium of four wheels with full kinematics, and the camber target of a histogram of 20 bins.</summary>
[MemoryDiagnoser]
public class HandlingBenchmark
{
    private readonly ResolvedHandlingCar _reading = HandlingCars.Drawn();
    private readonly CorneringSolver _solver = CorneringSolver.Create(HandlingCars.Drawn().Car, TurnDirection.Left)!;
    private readonly CamberDemand _demand = new()
    {
        Axle = CarAxle.Front,
        Corners = [.. Enumerable.Range(0, 20).Select(i => new BendShare(new(0.075 + (0.05 * i), 40 + (3 * i), TurnDirection.Left), 20 - i))],
    };

    /// <summary>A car made ready and solved from rest: what one call needs.</summary>
    [Benchmark]
    public double FromRest()
    {
        var solver = CorneringSolver.Create(_reading.Car, TurnDirection.Left)!;
        return solver.Solve(1.0, 60) is null ? solver.Attitude(new(1.0, 60, TurnDirection.Left)).RollDeg : throw new InvalidOperationException();
    }

    /// <summary>Two turns 0.05 g apart in turn, each from the other: what a row of a sweep needs.</summary>
    [Benchmark(OperationsPerInvoke = 2)]
    public double FromNearby()
    {
        var sum = 0.0;
        foreach (var g in (ReadOnlySpan<double>)[0.95, 1.0])
        {
            if (_solver.Solve(g, 60) is not null) throw new InvalidOperationException();
            sum += _solver.Attitude(new(g, 60, TurnDirection.Left)).RollDeg;
        }

        return sum;
    }

    /// <summary>The limits of both axles, from the turn that was solved last.</summary>
    [Benchmark]
    public double Limits() => GripLimits.Solve(_solver, TurnPath.AtRadius(TurnDirection.Left, 60), 0.9).MarginG ?? throw new InvalidOperationException();

    /// <summary>The same with what every input does to them, and their ranges by joint draws.</summary>
    [Benchmark]
    public double LimitsWithRanges() => LimitStudy.Compute(_reading, _solver, TurnPath.AtRadius(TurnDirection.Left, 60), 0.9, null).FrontFirst ?? throw new InvalidOperationException();

    /// <summary>What both ends of every assumed input's range do to a turn.</summary>
    [Benchmark]
    public int Effects() => CorneringEffect.Compute(_reading, _solver, TurnPath.AtRadius(TurnDirection.Left, 60), 0.8).Count;

    /// <summary>The lateral acceleration at which both axles meet their bump stops.</summary>
    [Benchmark]
    public double StopMet() => StopMetInTurn.Compute(_reading.Car).FrontG ?? 0;

    /// <summary>A car and twelve changes of its front springs, each made ready and worked, with the gradient of understeer and both limits.</summary>
    [Benchmark]
    public double WhatIf()
    {
        var vehicle = HandlingCars.Vehicle();
        var given = StandingCar.AsGiven(vehicle)!;
        var study = WhatIfStudy.Compute(given, TurnPath.AtRadius(TurnDirection.Left, 60), 0.9, GripScale.ByTyres);
        var sum = study.Given.Figures.RollDeg ?? 0;
        var change = new CarChange { States = place => place == "/front/spring/rateNPerMm" };
        for (var i = 1; i <= 12; i++)
        {
            var merged = vehicle with { Front = vehicle.Front with { Spring = vehicle.Front.Spring with { RateNPerMm = 27 + i } } };
            sum += study.Changed(given.Changed(merged, change, out _)!).Figures.RollDeg ?? 0;
        }

        return sum;
    }

    /// <summary>The camber that is flat and the one of most grip, with sensitivities, intervals and four other casters.</summary>
    [Benchmark]
    public double CamberTarget() =>
        CamberTargetSearch.Solve(_reading, _demand, [4, 5, 6, 7], default, out _)?.StaticCamberDeg.Value ?? throw new InvalidOperationException();
}

using System.Diagnostics;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Envelope;
using SetupService.Domain.Vehicles;

namespace SetupService.Benchmarks.Handling;

/// <summary>Turns braked and driven through against the same turns steady, in turn in one run, the least time of many: a shared machine slows both alike. And the envelope of 31 points.</summary>
internal static class BendRatio
{
    private const int Rounds = 1500;
    private const int Envelopes = 60;

    public static int Run()
    {
        var car = HandlingCars.Drawn().Car with { DriveShareFrontPct = 0, Differential = Differential.LimitedSlip(2), Aero = new Aero(160, 120, 180, 600) };
        var steady = CorneringSolver.Create(car with { Aero = null }, TurnDirection.Left)!;
        var driven = CorneringSolver.Create(car, TurnDirection.Left)!;
        var path = TurnPath.AtRadius(TurnDirection.Left, 60);
        Console.WriteLine("turn, g | along, g | from near by: steady, with, ratio | from rest: steady, with, ratio (least of many, µs)");
        foreach (var (lateralG, longitudinalG) in ((double, double)[])[(0.6, -0.4), (0.6, -0.2), (0.6, 0.2), (0.85, -0.2), (0.85, 0.1), (0.9, -0.2), (0.9, 0.1)])
        {
            var near = Least(
                () => Pair(steady, path, lateralG),
                () => Pair(driven, path.WithLongitudinal(longitudinalG), lateralG),
                2);
            var rest = Least(
                () => Fresh(car with { Aero = null }, path.At(lateralG)),
                () => Fresh(car, path.WithLongitudinal(longitudinalG).At(lateralG)),
                1);
            Console.WriteLine(FormattableString.Invariant($"{lateralG} | {longitudinalG} | {near.One:0.0}, {near.Other:0.0}, {near.Other / near.One:0.00} | {rest.One:0.0}, {rest.Other:0.0}, {rest.Other / rest.One:0.00}"));
        }

        var envelope = GripEnvelope.Create(car, path)!;
        var least = double.PositiveInfinity;
        for (var i = 0; i < Envelopes; i++)
        {
            var began = Stopwatch.GetTimestamp();
            for (var point = 0; point < 31; point++) envelope.At(-1.1 + (0.05 * point));
            least = Math.Min(least, Stopwatch.GetElapsedTime(began).TotalMilliseconds);
        }

        Console.WriteLine(FormattableString.Invariant($"envelope of 31 points, -1.1 to 0.4 g: {least:0.00} ms"));
        return 0;
    }

    private static void Pair(CorneringSolver solver, in TurnPath path, double lateralG)
    {
        Hold(solver.Solve(path.At(lateralG - 0.05)));
        Hold(solver.Solve(path.At(lateralG)));
    }

    private static void Fresh(Domain.Handling.Cars.HandlingCar car, in CorneringDemand demand) => Hold(CorneringSolver.Create(car, TurnDirection.Left)!.Solve(demand));

    private static void Hold(CorneringFailure? failure)
    {
        if (failure is not null) throw new InvalidOperationException(failure.ToString());
    }

    private static (double One, double Other) Least(Action one, Action other, int turns)
    {
        var (least, leastOther) = (double.PositiveInfinity, double.PositiveInfinity);
        for (var i = 0; i < Rounds; i++)
        {
            least = Math.Min(least, Microseconds(one) / turns);
            leastOther = Math.Min(leastOther, Microseconds(other) / turns);
        }

        return (least, leastOther);
    }

    private static double Microseconds(Action action)
    {
        var began = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(began).TotalMicroseconds;
    }
}

using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>A car solved in turns, from each of which a similar car is solved in a few steps. Not thread-safe.</summary>
internal sealed class TrackTurns
{
    private readonly CorneringDemand[] _demands;
    private readonly CorneringSolver[] _solved;

    private TrackTurns(HandlingCar car, CorneringDemand[] demands, CorneringSolver[] solved, CorneringAttitude[] attitudes) =>
        (Car, _demands, _solved, Attitudes) = (car, demands, solved, attitudes);

    /// <summary>The car.</summary>
    public HandlingCar Car { get; }

    /// <summary>It in each of the turns.</summary>
    public CorneringAttitude[] Attitudes { get; }

    /// <summary>Solves a car; null where it has no equilibrium in one of the turns, or the work allowed is spent.</summary>
    /// <param name="car">The car; it has a wheelbase.</param>
    /// <param name="demands">The turns, those of one direction side by side: the solution of one is where the next begins.</param>
    /// <param name="budget">Work allowed, for similar cars too; null = no limit.</param>
    public static TrackTurns? Solve(HandlingCar car, CorneringDemand[] demands, WorkBudget? budget)
    {
        var solved = new CorneringSolver[demands.Length];
        var attitudes = new CorneringAttitude[demands.Length];
        for (var i = 0; i < demands.Length; i++)
        {
            var solver = i > 0 && demands[i - 1].Turn == demands[i].Turn ? solved[i - 1].With(car) : CorneringSolver.Create(car, demands[i].Turn, budget);
            if (solver is null || solver.Solve(demands[i]) is not null) return null;
            (solved[i], attitudes[i]) = (solver, solver.Attitude(demands[i]));
        }

        return new(car, demands, solved, attitudes);
    }

    /// <summary>A similar car in the same turns, each begun where this car stands in it; null where it has no equilibrium in one of them, or the work allowed is spent.</summary>
    public CorneringAttitude[]? AttitudesOf(HandlingCar similar)
    {
        var attitudes = new CorneringAttitude[_demands.Length];
        CorneringSolver? solver = null;
        for (var i = 0; i < attitudes.Length; i++)
        {
            if (i > 0 && _demands[i - 1].Turn == _demands[i].Turn) solver!.StartFrom(_solved[i]);
            else solver = _solved[i].With(similar);
            if (solver is null || solver.Solve(_demands[i]) is not null) return null;
            attitudes[i] = solver.Attitude(_demands[i]);
        }

        return attitudes;
    }
}

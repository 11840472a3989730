using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Numerics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.Ride;

/// <summary>
/// How hard the car may turn before an axle's outer wheel meets its bump stop, g: the root of the travel left there, by secants, each turn solved from the last. Null where no
/// stop is known, the car has no wheelbase or rolls over first, no car turns so hard, or the work allowed is spent.
/// </summary>
/// <param name="FrontG">The front's.</param>
/// <param name="RearG">The rear's.</param>
public readonly record struct StopMetInTurn(double? FrontG, double? RearG)
{
    private const double HardestG = 3;

    // How closely the place is found where the stop is met, as travel left, mm, and in g, and where the equilibrium itself ends, g: a turn without one costs as much as fifty others.
    private const double AgreedMm = 1e-8;
    private const double AgreedG = 1e-10;
    private const double EndAgreedG = 0.002;
    private const int MostTries = 60;

    // A turn most cars take without meeting a stop.
    private const double FirstG = 0.5;

    // A radius at which steer is small; the stop does not depend on it.
    private const double RadiusM = 60;

    /// <summary>Finds both.</summary>
    public static StopMetInTurn Compute(HandlingCar car, WorkBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        var isKnown = car.WheelbaseMm is not null && (car.Front.BumpLeftMm is not null || car.Rear.BumpLeftMm is not null);
        if (!isKnown || CorneringSolver.Create(car, TurnDirection.Left, budget) is not { } solver) return default;
        var (standsG, failsG) = (0.0, double.PositiveInfinity);
        var front = LateralG(solver, car.Front.BumpLeftMm, CarAxle.Front, ref standsG, ref failsG);
        return new(front, LateralG(solver, car.Rear.BumpLeftMm, CarAxle.Rear, ref standsG, ref failsG));
    }

    // The hardest turn that stands and the easiest that does not are the same for both axles.
    private static double? LateralG(CorneringSolver solver, double? leftMm, CarAxle axle, ref double standsG, ref double failsG)
    {
        if (leftMm is not { } left) return null;
        if (left <= 0) return 0;
        var (clearG, metG) = (0.0, double.PositiveInfinity);
        var (beforeG, beforeMm) = (0.0, left);
        var g = FirstG;
        for (var tries = 0; tries < MostTries; tries++)
        {
            if (solver.Solve(g, RadiusM) is { } failure)
            {
                if (failure is CorneringFailure.WorkSpent) return null;
                failsG = Math.Min(failsG, g);
                g = Between(Math.Max(clearG, Math.Min(standsG, failsG)), failsG);
            }
            else if (solver.BumpLeftMm(axle) is not { } nowMm || (nowMm > 0 && g >= HardestG))
            {
                return null;
            }
            else
            {
                standsG = Math.Max(standsG, g);
                if (Math.Abs(nowMm) <= AgreedMm) return g;
                if (nowMm > 0) clearG = g;
                else metG = g;
                var nextG = g - (nowMm * (g - beforeG) / (nowMm - beforeMm));
                (beforeG, beforeMm) = (g, nowMm);
                var ceilingG = Math.Min(Math.Min(metG, failsG), HardestG);
                g = nextG > clearG && nextG < ceilingG ? nextG : double.IsFinite(Math.Min(metG, failsG)) ? Between(clearG, ceilingG) : ceilingG;
            }

            if (metG - clearG <= AgreedG) return metG;
            if (failsG - clearG <= EndAgreedG && !double.IsFinite(metG)) return null;
        }

        return double.IsFinite(metG) ? metG : null;

        static double Between(double one, double other) => (one + other) / 2;
    }
}

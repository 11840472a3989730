using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Handling.Cornering;

namespace SetupService.Api.Handling.Turns;

/// <summary>The 422s of the calls on turns: there is no equilibrium.</summary>
internal static class TurnProblems
{
    /// <summary>The only turn asked for, or the first of a sweep of which none is reached.</summary>
    public static Problem NoEquilibrium(TurnRequest request, CorneringEvaluation car, in CorneringObstacle obstacle, bool isOfSweep = false)
    {
        var reason = CorneringWords.Reason(obstacle, car.Units);
        var limits = new FaultLimits { Minimum = 0, Maximum = obstacle.LimitG, Unit = "g" };
        return Problem.NotComputable(
            $"{(isOfSweep ? "None of the turns asked for has an equilibrium. The first: " : "There is no equilibrium: ")}{reason}",
            [.. Places(request, car, obstacle).Select(place => Fault.At(place, FaultCodes.Unreachable, reason, limits))]);
    }

    private static IReadOnlyList<string> Places(TurnRequest request, CorneringEvaluation car, in CorneringObstacle obstacle)
    {
        if (obstacle.Failure == CorneringFailure.AxleUnloaded) return ["/longitudinalG"];
        if (obstacle.Failure != CorneringFailure.TravelNotReached) return ["/lateralG"];
        var lacking = SuspensionReach.Lacking(car.Reading.Car, car.Path, obstacle.LateralG);
        return lacking.Count > 0
            ? [.. lacking.Select(HandlingProblems.SuspensionOf)]
            : [request.CornerRadiusM is null ? "/speedKmh" : "/cornerRadiusM"];
    }
}

using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;

namespace SetupService.Api.Handling;

/// <summary>The 422s of changes: the changed car does not stand, or does not hold the turn.</summary>
internal static class ChangeProblems
{
    /// <summary>The changed car cannot stand: named where the change says what moved it.</summary>
    /// <param name="fault">Why.</param>
    /// <param name="change">What the change names.</param>
    /// <param name="place">JSON Pointer of the change in the body.</param>
    /// <param name="units">Units of the sentence.</param>
    public static Problem CannotStand(StandingFault fault, CarChange change, string place, UnitSystem units)
    {
        var axle = CarChange.PlaceOf(fault.At);
        string[] likely = fault.Reason switch
        {
            StandingReason.BeyondDroop or StandingReason.BeyondSuspension => [axle + "/spring", axle + "AxleLoadKg", "/cornerWeightsKg", axle],
            StandingReason.NothingSprung => [axle + "/unsprungMassKg", axle + "/wheel", axle + "/tyre", axle + "AxleLoadKg"],
            _ => [axle + "/rideHeightChangeMm", axle + "/suspension", axle],
        };
        var named = Array.Find(likely, one => change.States(one));
        var reason = fault.Describe(units);
        return Problem.NotComputable(reason, [Fault.At(named is null ? place : $"{place}/vehicle{named}", FaultCodes.Unreachable, reason)]);
    }

    /// <summary>The changed car has no equilibrium in the turn.</summary>
    public static Problem CannotHold(CorneringObstacle obstacle, string place, UnitSystem units)
    {
        var reason = CorneringWords.Reason(obstacle, units);
        return Problem.NotComputable(
            $"With this change there is no equilibrium: {reason}",
            [Fault.At(place, FaultCodes.Unreachable, reason, new FaultLimits { Minimum = 0, Maximum = obstacle.LimitG, Unit = "g" })]);
    }
}

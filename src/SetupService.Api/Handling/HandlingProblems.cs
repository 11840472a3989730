using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling;

/// <summary>The 422s of the calls on handling: well-formed, but nothing to be computed.</summary>
internal static class HandlingProblems
{
    /// <summary>An axle's points hold no wheel at the ride height asked for.</summary>
    public static Problem NoCorner(Vehicle vehicle)
    {
        const string Reason = "the points do not hold the wheel: at this ride height they do not close, or leave it a free movement.";
        return Problem.NotComputable(
            "A suspension's points do not hold its wheel where it is stated.",
            [.. CornerGap.Of(vehicle).Select(at => Fault.At(SuspensionOf(at) + "/points", FaultCodes.Unreachable, Reason))]);
    }

    /// <summary>Where a suspension stands in the request.</summary>
    public static string SuspensionOf(CarAxle at) => at == CarAxle.Front ? "/vehicle/front/suspension" : "/vehicle/rear/suspension";
}

using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Handling;

/// <summary>The 422s of the calls on handling: well-formed, but nothing to be computed.</summary>
internal static class HandlingProblems
{
    /// <summary>An axle's points hold no wheel at the ride height asked for.</summary>
    public static Problem NoCorner(Vehicle vehicle)
    {
        const string Reason = "the points do not hold the wheel: at this ride height they do not close, leave it a free movement, or give its spring no leverage that holds the car up.";
        return Problem.NotComputable(
            "A suspension's points do not hold its wheel where it is stated.",
            [.. Places(vehicle).Select(place => Fault.At(place, FaultCodes.Unreachable, Reason))]);
    }

    /// <summary>The points that do not hold at the height stated; where those do, all that may not at the height the springs hold the car.</summary>
    private static string[] Places(Vehicle vehicle)
    {
        string[] stated = [.. OpenHardpoints.Find(vehicle).Select(at => SuspensionOf(at) + "/points")];
        if (stated.Length > 0) return stated;
        string[] drawn = [.. new[] { CarAxle.Front, CarAxle.Rear }.Where(at => vehicle.At(at).Suspension.Tells != SuspensionFigures.None).Select(SuspensionOf)];
        return drawn.Length > 0 ? drawn : ["/vehicle"];
    }

    /// <summary>Where a suspension stands in the request.</summary>
    public static string SuspensionOf(CarAxle at) => at == CarAxle.Front ? "/vehicle/front/suspension" : "/vehicle/rear/suspension";
}

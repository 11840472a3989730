using SetupService.Domain.Handling.Inputs;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>How the static camber wanted moves with one input.</summary>
/// <param name="Place">Where the input stands: a JSON Pointer into the request.</param>
/// <param name="Unit">Its unit, as a member's name ends in it.</param>
/// <param name="Value">Its value.</param>
/// <param name="DegPerUnit">Change of the camber wanted per unit of it, degrees.</param>
/// <param name="StandardError">How closely the input is known, in its unit.</param>
public sealed record CamberSensitivity(string Place, string Unit, double Value, double DegPerUnit, double StandardError)
{
    /// <summary>What that leaves open of the camber wanted, degrees, one standard error.</summary>
    public double LeavesOpenDeg => Math.Abs(DegPerUnit) * StandardError;

    internal static CamberSensitivity Create(HandlingInput input, double value, double degPerUnit, double standardError) =>
        new("/vehicle" + input.Place, input.Unit, value, degPerUnit, standardError);
}

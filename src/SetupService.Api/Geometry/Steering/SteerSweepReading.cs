using SetupService.Domain.Suspension.Steering;

namespace SetupService.Api.Geometry.Steering;

/// <summary>Reads a steer sweep's request into domain values.</summary>
internal static class SteerSweepReading
{
    /// <summary>The wheel, as the left one it mirrors where it is a right one.</summary>
    public static SteeredWheel Wheel(SteerSweepRequest request) => new()
    {
        CasterDeg = request.CasterDeg,
        SteeringAxisInclinationDeg = request.SteeringAxisInclinationDeg,
        CamberDeg = request.CamberDeg,
        ToeDeg = request.ToeDeg,
        LoadedRadiusMm = request.LoadedRadiusMm,
        SpindleOffsetMm = request.SpindleOffsetMm,
        WheelCentreTrailMm = request.WheelCentreTrailMm,
    };

    /// <summary>The side the wheel is on.</summary>
    public static WheelSide Side(WheelSide? side) => side ?? WheelSide.Left;

    /// <summary>The members that place the wheel on its axis and were not given.</summary>
    public static string[] Missing(SteerSweepRequest request)
    {
        string?[] missing =
        [
            request.LoadedRadiusMm is null ? "loadedRadiusMm" : null,
            request.SpindleOffsetMm is null ? "spindleOffsetMm" : null,
            request.WheelCentreTrailMm is null ? "wheelCentreTrailMm" : null,
        ];
        return [.. missing.OfType<string>()];
    }
}

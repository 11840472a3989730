using SetupService.Api.Vehicles;
using SetupService.Domain.Geometry.Alignment;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>Reads an alignment request into domain values.</summary>
internal static class AlignmentReading
{
    /// <summary>The figures of all four wheels.</summary>
    public static AlignmentFigures Read(AlignmentRequest request) => new(Read(request.Front), Read(request.Rear));

    private static AxleAngles Read(AxleAlignmentDocument? axle) => new(Read(axle?.Left), Read(axle?.Right));

    private static WheelAngles Read(AlignmentAnglesDocument? wheel) => new()
    {
        CamberDeg = wheel?.CamberDeg,
        CasterDeg = wheel?.CasterDeg,
        ToeDeg = wheel?.ToeDeg,
        SteeringAxisInclinationDeg = wheel?.SteeringAxisInclinationDeg,
    };
}

using SetupService.Api.Http.Shared;
using SetupService.Domain.Geometry.Alignment;

namespace SetupService.Api.Geometry.Alignment;

/// <summary>Names the figures an alignment leaves null, and the readings they lack.</summary>
internal static class AlignmentGaps
{
    /// <summary>The gaps, in the order of the answer.</summary>
    public static UnknownResponse[] Of(AlignmentRequest request, in AlignmentFigures figures)
    {
        var gaps = new List<UnknownResponse>();
        AddAxle(gaps, "/front", figures.Front);
        AddAxle(gaps, "/rear", figures.Rear);

        var (rearLeft, rearRight) = (Toe("/rear/left", figures.Rear.Left), Toe("/rear/right", figures.Rear.Right));
        var (frontLeft, frontRight) = (Toe("/front/left", figures.Front.Left), Toe("/front/right", figures.Front.Right));
        Add(gaps, "/thrustAngleDeg", rearLeft, rearRight);
        Add(gaps, "/steerAheadDeg", frontLeft, frontRight, rearLeft, rearRight);
        Add(gaps, "/frontLeftToeToThrustLine", frontLeft, rearLeft, rearRight);
        Add(gaps, "/frontRightToeToThrustLine", frontRight, rearLeft, rearRight);
        Add(gaps, "/setbackAngleDeg", ("/setbackMm", request.SetbackMm), ("/frontTrackMm", request.FrontTrackMm));
        return [.. gaps];
    }

    private static void AddAxle(List<UnknownResponse> gaps, string axle, in AxleAngles angles)
    {
        var (left, right) = (axle + "/left", axle + "/right");
        Add(gaps, axle + "/totalToe", Toe(left, angles.Left), Toe(right, angles.Right));
        Add(gaps, axle + "/crossCamberDeg", Camber(left, angles.Left), Camber(right, angles.Right));
        Add(gaps, axle + "/crossCasterDeg", (left + "/casterDeg", angles.Left.CasterDeg), (right + "/casterDeg", angles.Right.CasterDeg));
        Add(gaps, axle + "/crossSteeringAxisInclinationDeg", Inclination(left, angles.Left), Inclination(right, angles.Right));
        foreach (var output in new[] { "/crossIncludedAngleDeg", "/includedAngleHint" })
            Add(gaps, axle + output, Camber(left, angles.Left), Inclination(left, angles.Left), Camber(right, angles.Right), Inclination(right, angles.Right));
        AddWheel(gaps, left, angles.Left);
        AddWheel(gaps, right, angles.Right);
    }

    private static void AddWheel(List<UnknownResponse> gaps, string wheel, in WheelAngles angles)
    {
        Add(gaps, wheel + "/toe", Toe(wheel, angles));
        Add(gaps, wheel + "/includedAngleDeg", Camber(wheel, angles), Inclination(wheel, angles));
    }

    private static (string Input, double? Value) Toe(string wheel, in WheelAngles angles) => (wheel + "/toeDeg", angles.ToeDeg);

    private static (string Input, double? Value) Camber(string wheel, in WheelAngles angles) => (wheel + "/camberDeg", angles.CamberDeg);

    private static (string Input, double? Value) Inclination(string wheel, in WheelAngles angles) =>
        (wheel + "/steeringAxisInclinationDeg", angles.SteeringAxisInclinationDeg);

    private static void Add(List<UnknownResponse> gaps, string output, params ReadOnlySpan<(string Input, double? Value)> inputs)
    {
        var missing = new List<string>();
        foreach (var (input, value) in inputs)
        {
            if (value is null) missing.Add(input);
        }

        if (missing.Count > 0) gaps.Add(UnknownResponse.Of(output, Needs.Of(missing), [.. missing]));
    }
}

using SetupService.Domain.Answers;
using SetupService.Domain.Suspension;

namespace SetupService.Domain.Geometry.Alignment;

/// <summary>The figures of an alignment that cannot be told, why, and what would settle it; pointers are into answer and request.</summary>
public static class AlignmentGaps
{
    /// <summary>All of them, in the order of the answer.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="setbackMm">The setback as given.</param>
    /// <param name="frontTrackMm">The front track as given.</param>
    /// <param name="frontNotMeasured">Angles of the front right wheel that stand in for ones not measured, of those the hint compares.</param>
    /// <param name="rearNotMeasured">The same of the rear right wheel.</param>
    public static IReadOnlyList<FigureGap> Find(
        AlignmentFigures figures, double? setbackMm, double? frontTrackMm, IReadOnlyList<string> frontNotMeasured, IReadOnlyList<string> rearNotMeasured)
    {
        var gaps = new List<FigureGap>();
        AddAxle("/front", figures.Front, frontNotMeasured);
        AddAxle("/rear", figures.Rear, rearNotMeasured);
        var (front, rear) = (Toe("/front", figures.Front.Right), Toe("/rear", figures.Rear.Right));
        var (frontLeft, rearLeft) = (Toe("/front", figures.Front.Left), Toe("/rear", figures.Rear.Left));
        Add("/thrustAngleDeg", rearLeft, rear);
        Add("/steerAheadDeg", frontLeft, front, rearLeft, rear);
        Add("/frontLeftToeToThrustLine", frontLeft, rearLeft, rear);
        Add("/frontRightToeToThrustLine", front, rearLeft, rear);
        Add("/setbackAngleDeg", ("/setbackMm", setbackMm), ("/vehicle/front/trackMm", frontTrackMm));
        return gaps;

        void AddAxle(string axle, AxleAngles angles, IReadOnlyList<string> notMeasured)
        {
            var (left, right) = (angles.Left, angles.Right);
            Add(axle + "/totalToe", Toe(axle, left), Toe(axle, right));
            Add(axle + "/crossCamberDeg", Camber(axle, left), Camber(axle, right));
            Add(axle + "/crossCasterDeg", Caster(axle, left), Caster(axle, right));
            Add(axle + "/crossSteeringAxisInclinationDeg", Inclination(axle, left), Inclination(axle, right));
            foreach (var output in new[] { "/crossIncludedAngleDeg", "/includedAngleHint" })
                Add(axle + output, Camber(axle, left), Inclination(axle, left), Camber(axle, right), Inclination(axle, right));
            if (angles is { IsRightMeasured: false, CrossIncludedAngleDeg: not null })
                gaps.Add(new FigureGap(axle + "/includedAngleHint", "the right side was not measured and is taken as the left, so no difference could show", [.. notMeasured.Select(angle => $"/vehicle{axle}/alignment/right/{angle}")]));
            AddWheel(axle, axle + "/left", left);
            AddWheel(axle, axle + "/right", right);
        }

        void AddWheel(string axle, string wheel, WheelAngles angles)
        {
            Add(wheel + "/camberDeg", Camber(axle, angles));
            Add(wheel + "/casterDeg", Caster(axle, angles));
            Add(wheel + "/steeringAxisInclinationDeg", Inclination(axle, angles));
            Add(wheel + "/toe", Toe(axle, angles));
            Add(wheel + "/includedAngleDeg", Camber(axle, angles), Inclination(axle, angles));
        }

        void Add(string output, params ReadOnlySpan<(string Input, double? Value)> inputs)
        {
            var missing = new List<string>();
            foreach (var (input, value) in inputs)
            {
                if (value is null && !missing.Contains(input)) missing.Add(input);
            }

            if (missing.Count > 0) gaps.Add(new FigureGap(output, Needs.Describe(missing), missing));
        }
    }

    // What is not given for the right is as on the left, so what is missing is the left's.
    private static (string Input, double? Value) Toe(string axle, in WheelAngles angles) => ($"/vehicle{axle}/alignment/toeDeg", angles.ToeDeg);

    private static (string Input, double? Value) Camber(string axle, in WheelAngles angles) => ($"/vehicle{axle}/alignment/camberDeg", angles.CamberDeg);

    private static (string Input, double? Value) Caster(string axle, in WheelAngles angles) => ($"/vehicle{axle}/alignment/casterDeg", angles.CasterDeg);

    private static (string Input, double? Value) Inclination(string axle, in WheelAngles angles) =>
        ($"/vehicle{axle}/alignment/steeringAxisInclinationDeg", angles.SteeringAxisInclinationDeg);
}

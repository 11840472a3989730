using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;

namespace SetupService.Domain.Suspension.Points;

/// <summary>What can contradict in the points of a trailing arm or a twist beam.</summary>
internal static class ArmContradictions
{
    // A wheel that rises less than this per mm of its way about the pivot is guided level.
    private const double LeastRise = 0.01;

    public static void Add(TrailingArm arm, List<Contradiction> found)
    {
        var before = found.Count;
        Contradictions.AddLength(found, "pivotOuter", arm.Outer, "pivotInner", arm.Inner);
        if (found.Count == before) AddPivot(found, "pivotInner and pivotOuter", arm.Inner, arm.Outer, arm.WheelCentre);
    }

    public static void Add(TwistBeam beam, List<Contradiction> found)
    {
        if (beam.PivotLeft.Y < Contradictions.SamePointMm)
        {
            found.Add(new("pivotLeft", Prose.Write(UnitSystem.Metric, $"pivotLeft stands at y = {beam.PivotLeft.Y:mm}; the left pivot is at least {Contradictions.SamePointMm:mm} to the left of the car's centre plane, y = 0.")));
            return;
        }

        if (Math.Abs(beam.BeamShearCentre.Y) > Contradictions.SamePointMm)
        {
            found.Add(new("beamShearCentre", Prose.Write(UnitSystem.Metric, $"beamShearCentre stands at y = {beam.BeamShearCentre.Y:mm}; it lies in the car's centre plane, y = 0.")));
        }

        AddPivot(found, "both pivots", beam.PivotLeft.Mirrored, beam.PivotLeft, beam.WheelCentre);
        var before = found.Count;
        Contradictions.AddLength(found, "beamShearCentre", beam.BeamShearCentre, "pivotLeft", beam.PivotLeft);
        if (found.Count == before) AddPivot(found, "pivotLeft and beamShearCentre", beam.BeamShearCentre, beam.PivotLeft, beam.WheelCentre);
    }

    private static void AddPivot(List<Contradiction> found, string line, in Vector3 inner, in Vector3 outer, in Vector3 wheelCentre)
    {
        var radius = Contradictions.Distance(wheelCentre, inner, outer);
        if (radius < Contradictions.SamePointMm)
        {
            found.Add(new("wheelCentre", Prose.Write(UnitSystem.Metric, $"the wheel centre stands {radius:mm} from the line through {line}: it cannot move about it.")));
            return;
        }

        var rise = Math.Abs((outer - inner).Unit().Cross(wheelCentre - outer).Z) / radius;
        if (rise >= LeastRise) return;
        found.Add(new("wheelCentre", Prose.Write(
            UnitSystem.Metric,
            $"turning about the line through {line} raises the wheel centre by {100 * rise:fit} in 100 mm of its way: the points give the wheel no travel.")));
    }
}

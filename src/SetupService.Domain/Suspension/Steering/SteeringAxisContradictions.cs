using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Suspension.Steering;

/// <summary>Finds what contradicts in the two joints of a left wheel's steering axis and its wheel centre.</summary>
public static class SteeringAxisContradictions
{
    /// <summary>All of them, by the names <c>upper</c> and <c>wheelCentre</c>; empty where nothing contradicts.</summary>
    public static IReadOnlyList<Contradiction> Find(in Vector3 lower, in Vector3 upper, in Vector3 wheelCentre)
    {
        var found = new List<Contradiction>();
        if ((upper - lower).Length < Contradictions.SamePointMm)
        {
            found.Add(new("upper", Prose.Write(
                UnitSystem.Metric, $"upper and lower are {(upper - lower).Length:mm} apart: one point has no axis.")));
        }
        else if (upper.Z - lower.Z < Contradictions.SamePointMm)
        {
            found.Add(new("upper", Prose.Write(
                UnitSystem.Metric, $"upper stands {Height(upper.Z - lower.Z)} lower; the steering axis needs it above, by {Contradictions.SamePointMm:mm} at least.")));
        }

        if (wheelCentre.Y <= lower.Y)
        {
            found.Add(new("wheelCentre", Prose.Write(
                UnitSystem.Metric,
                $"the wheel centre stands {lower.Y - wheelCentre.Y:mm} inboard of lower; it must be outboard of it. Points are the left wheel's, y grows to the left.")));
        }

        return found;
    }

    private static string Height(double aboveMm) => aboveMm < 0
        ? Prose.Write(UnitSystem.Metric, $"{-aboveMm:mm} below")
        : Prose.Write(UnitSystem.Metric, $"{aboveMm:mm} above");
}

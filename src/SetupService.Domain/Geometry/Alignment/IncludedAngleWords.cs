using SetupService.Domain.Answers;

namespace SetupService.Domain.Geometry.Alignment;

/// <summary>The sentences of the hint.</summary>
public static class IncludedAngleWords
{
    private const string Inspect =
        "Inclination is hard to measure well: measure again, look for eccentrics, slots or camber plates that were set so on purpose, and leave the finding to an inspection of the parts.";

    /// <summary>The hint of an axle as a sentence; null where inclination or camber was not measured on both sides.</summary>
    public static string? Explain(in AxleAngles axle, UnitSystem units)
    {
        if (axle is not { Hint: { } hint, CrossInclinationDeg: { } inclinationDeg, CrossIncludedAngleDeg: { } includedDeg }) return null;
        var sides = Prose.Write(
            units,
            $"Left and right differ by {Math.Abs(inclinationDeg):deg} in steering-axis inclination and by {Math.Abs(includedDeg):deg} in included angle.");
        return hint switch
        {
            IncludedAngleHint.NoDifference => Prose.Write(units, $"{sides} That is within the {IncludedAngleHints.SameDeg:deg} in which sides count as equal; it does not show that parts are sound."),
            IncludedAngleHint.UprightOrStrut => Prose.Write(units, $"{sides} Where the included angle differs and the inclination does not, an upright, hub or strut may be bent, or have moved where they are bolted together. {Inspect}"),
            IncludedAngleHint.TowerOrArm => Prose.Write(units, $"{sides} Where the inclination differs and the included angle does not, a strut tower, top mount, arm or subframe may have moved or be bent. {Inspect}"),
            _ => Prose.Write(units, $"{sides} Where both differ, more than one part may be bent or moved, and the angles do not tell which. {Inspect}"),
        };
    }
}

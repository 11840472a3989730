using SetupService.Domain.Answers;

namespace SetupService.Domain.Geometry.Alignment;

/// <summary>The cautions that go with alignment figures.</summary>
public static class AlignmentCautions
{
    private static readonly Caution BentParts = new(
        "bentParts",
        "Steering and suspension parts that may be bent can break without warning. Have them inspected before the car is driven further; never straighten them.");

    private static readonly Caution SteeringWork = new(
        "steeringWork",
        "After any adjustment of steering or suspension, tighten to the vehicle maker's torque, check thread engagement and lock nuts, and have the car measured by a licensed workshop; local law decides what may be changed.");

    /// <summary>The cautions for these figures, gravest first.</summary>
    public static IReadOnlyList<Caution> For(in AlignmentFigures figures) =>
        Differs(figures.Front.Hint) || Differs(figures.Rear.Hint) ? [BentParts, SteeringWork] : [SteeringWork];

    private static bool Differs(IncludedAngleHint? hint) => hint is not (null or IncludedAngleHint.NoDifference);
}

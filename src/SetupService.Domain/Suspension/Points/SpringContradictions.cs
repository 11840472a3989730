namespace SetupService.Domain.Suspension.Points;

/// <summary>What can contradict in the points of spring and damper.</summary>
internal static class SpringContradictions
{
    public static void Add(Hardpoints suspension, List<Contradiction> found)
    {
        Add(found, suspension, "spring", suspension.Spring);
        Add(found, suspension, "damper", suspension.Damper);
    }

    /// <summary>Whether a kind of suspension has a part.</summary>
    public static bool Has(Hardpoints suspension, SuspensionMember part) => suspension switch
    {
        MacPhersonStrut => part is SuspensionMember.LowerArm or SuspensionMember.Upright,
        DoubleWishbone => part is not SuspensionMember.Beam,
        FiveLink => part is SuspensionMember.Upright,
        _ => part is SuspensionMember.Beam or SuspensionMember.Upright,
    };

    private static void Add(List<Contradiction> found, Hardpoints suspension, string name, SpringLine? line)
    {
        if (line is null) return;
        Contradictions.AddLength(found, name + "Moving", line.Moving, name + "Chassis", line.Chassis);
        if (!Has(suspension, line.On)) found.Add(new(name + "On", Lacks(suspension)));
    }

    private static string Lacks(Hardpoints suspension) => suspension switch
    {
        MacPhersonStrut => "a strut corner has a lowerArm and an upright to carry it.",
        DoubleWishbone => "a double wishbone has a lowerArm, an upperArm and an upright to carry it.",
        FiveLink => "of five links only the upright can carry it: a link turns about its own length, so a point beside it has no sure place.",
        _ => "a trailing arm or twist beam has only itself to carry it: beam (upright means the same).",
    };
}

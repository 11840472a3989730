namespace SetupService.Domain.Planning;

/// <summary>Limits that no package keeps together.</summary>
/// <param name="Limits">The smallest set of them that conflicts.</param>
/// <param name="Nearest">The package that breaks the fewest limits, of several the cheapest.</param>
/// <param name="Broken">The limits it breaks.</param>
public sealed record PlanConflict(IReadOnlyList<PlanLimit> Limits, JudgedPackage Nearest, IReadOnlyList<PlanLimit> Broken)
{
    /// <summary>The conflict; null where a package keeps every limit, or none can be driven in the bends at all.</summary>
    /// <param name="plan">The car and what is wanted of it.</param>
    /// <param name="parts">The parts on offer.</param>
    /// <param name="packages">Packages of any cost; at least one.</param>
    public static PlanConflict? Find(PlanCase plan, IReadOnlyList<OfferedPart> parts, IReadOnlyList<JudgedPackage> packages)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(packages);
        var broken = new List<(JudgedPackage Package, uint Limits)>(packages.Count);
        foreach (var one in packages)
        {
            // Of a car that cannot stand or hold the bends no limit tells anything.
            if (one.Evaluated.Figures is null) continue;
            var set = 0u;
            if (one.Package.Cost.Total > plan.Limits.Budget) set |= Bit(PlanLimit.Budget);
            foreach (var limit in PackageVerdict.Broken(plan, parts, one)) set |= Bit(limit);
            if (set == 0) return null;
            broken.Add((one, set));
        }

        if (broken.Count == 0) return null;
        var (nearest, brokenByNearest) = broken.OrderBy(one => uint.PopCount(one.Limits)).ThenBy(one => one.Package.Package.Cost.Total).First();
        return new(Names(Smallest([.. broken.Select(one => one.Limits).Distinct()])), nearest, Names(brokenByNearest));
    }

    /// <summary>The smallest set that shares a member with every one of these sets.</summary>
    /// <param name="sets">Sets of limits as bits, none empty.</param>
    public static uint Smallest(IReadOnlyList<uint> sets)
    {
        ArgumentNullException.ThrowIfNull(sets);
        var all = sets.Aggregate(0u, (union, one) => union | one);
        var best = all;
        for (var candidate = all; candidate != 0; candidate = (candidate - 1) & all)
        {
            if (uint.PopCount(candidate) < uint.PopCount(best) && sets.All(one => (one & candidate) != 0)) best = candidate;
        }

        return best;
    }

    private static uint Bit(PlanLimit limit) => 1u << (int)limit;

    private static PlanLimit[] Names(uint set) => [.. Enum.GetValues<PlanLimit>().Where(limit => (set & Bit(limit)) != 0)];
}

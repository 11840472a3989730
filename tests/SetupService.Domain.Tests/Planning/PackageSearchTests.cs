using CsCheck;
using SetupService.Domain.Numerics;
using SetupService.Domain.Planning;

namespace SetupService.Domain.Tests.Planning;

/// <summary>The search for packages, the front and the conflict of limits against plain enumeration, written without regard to how the search does it.</summary>
public sealed class PackageSearchTests
{
    private static readonly Gen<OfferedPart[]> Parts = Gen.Int[0, 7].SelectMany(count => Gen.Select(
        Gen.Int[0, 5], Gen.Int[0, 4], Gen.Int[0, 255], Gen.Int[0, 255], Gen.Int[0, 255], Gen.Int[0, 3],
        (price, hours, needs, excludes, shared, kind) => (price, hours, needs, excludes, shared, changes: kind % 2 == 1, isBar: kind > 1)).Array[count].Select(drawn => drawn.Select((one, i) => new OfferedPart
        {
            Id = FormattableString.Invariant($"part-{i}"),
            Kind = one.isBar ? PartKind.AntiRollBar : PartKind.Bush,
            Price = 100 * one.price,
            LabourHours = one.hours,
            ChangeNumber = one.changes ? i : -1,

            // Sparse: an eighth of all pairs.
            Needs = Places(one.needs & (one.needs >> 3) & (one.needs >> 1), i, drawn.Length),
            Excludes = Places(one.excludes & (one.excludes >> 2) & (one.excludes >> 5), i, drawn.Length),
            ApartWith = [.. Places(one.shared & (one.shared >> 1), i, drawn.Length).Take(1).Select(other => new SharedLabour(other, one.hours / 2.0))],
        }).ToArray()));

    [Fact]
    public void It_finds_what_plain_enumeration_finds_to_the_last_package() => Gen.Select(Parts, Gen.Int[-1, 12], Gen.Bool, Gen.Int[-1, 1]).Sample((parts, hundreds, isLabourPaid, alignments) =>
    {
        double? budget = hundreds < 0 ? null : 100 * hundreds;
        double? perHour = isLabourPaid ? 60 : null;
        double? alignment = alignments < 0 ? null : 90 * alignments;

        var found = PackageSearch.Find(parts, budget, new(perHour, alignment));

        ulong[] wanted = [.. Enumerable.Range(0, 1 << parts.Length).Select(set => (ulong)set).Where(set => IsWhole(parts, set) && CostOf(parts, set, perHour, alignment) <= (budget ?? double.MaxValue))];
        Assert.Equal(wanted, found.Packages.Select(one => one.Parts).Order());
        Assert.Equal(wanted.Length, found.Count);
        Assert.All(found.Packages.Append(new(0, default)), one => Assert.Equal(CostOf(parts, one.Parts, perHour, alignment), PackageSearch.Cost(parts, one.Parts, new(perHour, alignment)).Total, 1e-9));
    }, iter: 3000);

    [Fact]
    public void Beyond_what_is_kept_packages_are_counted()
    {
        OfferedPart[] parts = [.. Enumerable.Range(0, 12).Select(i => new OfferedPart { Id = "p", Kind = PartKind.Arm, ChangeNumber = i })];

        var found = PackageSearch.Find(parts, null, default);

        Assert.Equal((PackageSearch.MostPackages, 4096), (found.Packages.Count, found.Count));
        Assert.Equal(PackageSearch.MostCounted, PackageSearch.Find([.. Enumerable.Range(0, 40).Select(i => new OfferedPart { Id = "p", Kind = PartKind.Arm, ChangeNumber = i })], null, default).Count);
    }

    // Whoever asked may have gone: one step further is the end of it.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(500)]
    public void It_stops_with_the_work_allowed(int steps)
    {
        OfferedPart[] parts = [.. Enumerable.Range(0, 40).Select(i => new OfferedPart { Id = "p", Kind = PartKind.Arm, Price = 10, ChangeNumber = i })];
        var work = new WorkBudget(steps);

        var found = PackageSearch.Find(parts, 30, default, work: work);

        Assert.Equal(PackageSearch.MostCounted, found.Count);
        Assert.True(work.IsSpent);
        Assert.InRange(found.Packages.Count, 0, steps);
    }

    [Fact]
    public void The_front_is_what_no_other_dominates() => Gen.Int[0, 3].Select(one => (long)one).Array[4].Array[0, 30].Sample(compared =>
    {
        var front = PackageFront.Find(compared);

        // By the definition: no other is at least as good in all and better in one; of several alike the first stands for all.
        int[] wanted = [.. Enumerable.Range(0, compared.Length).Where(i => !Enumerable.Range(0, compared.Length).Any(j => j != i && compared[j].Zip(compared[i]).All(pair => pair.First <= pair.Second)
            && (j < i || compared[j].Zip(compared[i]).Any(pair => pair.First < pair.Second))))];
        Assert.Equal(wanted, front);
    }, iter: 3000);

    [Fact]
    public void The_smallest_conflict_is_the_smallest_there_is() => Gen.Int[1, 127].Select(one => (uint)one).Array[1, 12].Sample(sets =>
    {
        var smallest = PlanConflict.Smallest(sets);

        Assert.All(sets, one => Assert.NotEqual(0u, one & smallest));
        Assert.DoesNotContain(Enumerable.Range(0, 128).Select(set => (uint)set), set => uint.PopCount(set) < uint.PopCount(smallest) && Array.TrueForAll(sets, one => (one & set) != 0));
    }, iter: 2000);

    private static int[] Places(int bits, int self, int count) => [.. Enumerable.Range(0, count).Where(place => place != self && (bits & (1 << place)) != 0)];

    /// <summary>All needs are there, nothing excludes another, and what only renews is there because something that changes the car needs it, if not at first hand.</summary>
    private static bool IsWhole(OfferedPart[] parts, ulong set)
    {
        int[] held = [.. Enumerable.Range(0, parts.Length).Where(i => (set & (1UL << i)) != 0)];
        if (held.Any(i => parts[i].Needs.Any(need => !held.Contains(need)) || parts[i].Excludes.Any(held.Contains))) return false;
        var wanted = held.Where(i => parts[i].ChangeNumber >= 0).ToHashSet();
        while (held.FirstOrDefault(i => !wanted.Contains(i) && wanted.Any(by => parts[by].Needs.Contains(i)), -1) is >= 0 and var next) wanted.Add(next);
        return wanted.Count == held.Length;
    }

    private static double CostOf(OfferedPart[] parts, ulong set, double? perHour, double? alignment)
    {
        var (price, hours) = (0.0, 0.0);
        for (var i = 0; i < parts.Length; i++)
        {
            if ((set & (1UL << i)) == 0) continue;
            price += parts[i].Price;
            hours += parts[i].LabourHours;
            for (var j = 0; j < i; j++)
            {
                if ((set & (1UL << j)) == 0) continue;
                var told = parts[i].ApartWith.Where(one => one.Part == j).Concat(parts[j].ApartWith.Where(one => one.Part == i)).Select(one => one.SavedHours).DefaultIfEmpty(0).Max();
                hours -= told;
            }
        }

        // Of these kinds a bar alone leaves the angles as they are.
        var isMoved = Enumerable.Range(0, parts.Length).Any(i => (set & (1UL << i)) != 0 && parts[i].Kind != PartKind.AntiRollBar);
        return price + ((perHour ?? 0) * Math.Max(0, hours)) + (isMoved ? alignment ?? 0 : 0);
    }
}

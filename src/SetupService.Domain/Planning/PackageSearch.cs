using System.Numerics;

namespace SetupService.Domain.Planning;

/// <summary>
/// Every package of parts on offer that keeps what the parts need and exclude, and the budget: each once, the package without parts among them. Nothing is left out by a guess at
/// what it would do. Method page: docs/methods/plan.
/// </summary>
public sealed class PackageSearch
{
    /// <summary>The most parts of one plan; a package is a set of bits.</summary>
    public const int MostParts = 40;

    /// <summary>The most packages evaluated.</summary>
    public const int MostPackages = 2000;

    /// <summary>Beyond so many packages they are counted no further.</summary>
    public const int MostCounted = 1_000_000;

    // Where the budget leaves few of very many, the search itself is what ends.
    private const int MostSteps = 20 * MostCounted;

    private readonly IReadOnlyList<OfferedPart> _parts;
    private readonly double? _labourPerHour;
    private readonly double _budget;
    private readonly ulong[] _closures;
    private readonly ulong[] _excluded;
    private readonly List<PartPackage> _found = [];
    private readonly int _kept;
    private int _count;
    private int _steps;

    private PackageSearch(IReadOnlyList<OfferedPart> parts, double? labourPerHour, double budget, int kept)
    {
        (_parts, _labourPerHour, _budget, _kept) = (parts, labourPerHour, budget, kept);
        _closures = Closures(parts);
        _excluded = Exclusions(parts);
    }

    /// <summary>The packages, in order of their parts' places, and how many there are.</summary>
    /// <param name="parts">The parts on offer, at most <see cref="MostParts"/>.</param>
    /// <param name="budget">The most a package may cost; null = anything.</param>
    /// <param name="labourPerHour">What an hour of labour costs; null = labour is not in the cost.</param>
    /// <param name="kept">Beyond so many packages they are counted only.</param>
    public static FoundPackages Find(IReadOnlyList<OfferedPart> parts, double? budget, double? labourPerHour, int kept = MostPackages)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var search = new PackageSearch(parts, labourPerHour, budget ?? double.PositiveInfinity, kept);
        search.Choose(0, 0, 0);
        return new(search._found, search._count);
    }

    /// <summary>The parts that come with a part, itself among them: what it needs, and what that needs.</summary>
    public static ulong[] Closures(IReadOnlyList<OfferedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var closures = new ulong[parts.Count];
        for (var i = 0; i < closures.Length; i++) Add(i, ref closures[i]);
        return closures;

        void Add(int part, ref ulong closure)
        {
            if ((closure & (1UL << part)) != 0) return;
            closure |= 1UL << part;
            foreach (var needed in parts[part].Needs) Add(needed, ref closure);
        }
    }

    /// <summary>The parts each part cannot be fitted beside, whichever of the two says so.</summary>
    public static ulong[] Exclusions(IReadOnlyList<OfferedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var excluded = new ulong[parts.Count];
        for (var i = 0; i < parts.Count; i++)
        {
            foreach (var other in parts[i].Excludes)
            {
                excluded[i] |= 1UL << other;
                excluded[other] |= 1UL << i;
            }
        }

        return excluded;
    }

    /// <summary>What a package costs, and the labour in it, hours.</summary>
    public static PackageCost Cost(IReadOnlyList<OfferedPart> parts, ulong package, double? labourPerHour)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var (price, hours) = (0.0, 0.0);
        for (var rest = package; rest != 0; rest &= rest - 1)
        {
            var part = parts[BitOperations.TrailingZeroCount(rest)];
            price += part.Price;
            hours += part.LabourHours;
        }

        var saved = SavedHours(parts, package);
        hours = Math.Max(0, hours - saved);
        return new(price, hours, saved, price + (hours * (labourPerHour ?? 0)));
    }

    // A pair that both parts name is one strip-down, of the larger saving told.
    private static double SavedHours(IReadOnlyList<OfferedPart> parts, ulong package)
    {
        var saved = 0.0;
        for (var rest = package; rest != 0; rest &= rest - 1)
        {
            var i = BitOperations.TrailingZeroCount(rest);
            for (var others = rest & (rest - 1); others != 0; others &= others - 1)
            {
                var j = BitOperations.TrailingZeroCount(others);
                saved += SharedHours(parts, i, j);
            }
        }

        return saved;
    }

    /// <summary>Labour saved where two parts are fitted at once, hours, whichever of them tells it.</summary>
    public static double SharedHours(IReadOnlyList<OfferedPart> parts, int one, int other)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return Math.Max(Told(one, other), Told(other, one));

        double Told(int of, int with)
        {
            var most = 0.0;
            foreach (var shared in parts[of].ApartWith)
            {
                if (shared.Part == with) most = Math.Max(most, shared.SavedHours);
            }

            return most;
        }
    }

    // Parts in order of place: each is left out, or comes with all it needs. What is chosen already by another's needs is not asked again.
    private void Choose(int next, ulong chosen, ulong left)
    {
        if (_count >= MostCounted || _steps++ > MostSteps)
        {
            _count = MostCounted;
            return;
        }

        while (next < _parts.Count && ((chosen & (1UL << next)) != 0 || !IsOfferedAlone(next))) next++;
        if (next == _parts.Count)
        {
            if (Cost(_parts, chosen, _labourPerHour).Total > _budget) return;
            if (_count++ < _kept) _found.Add(new(chosen, Cost(_parts, chosen, _labourPerHour)));
            return;
        }

        Choose(next + 1, chosen, left | (1UL << next));
        var more = chosen | _closures[next];
        if ((more & left) != 0 || Contradicts(more) || LeastCost(more) > _budget) return;
        Choose(next + 1, more, left);
    }

    // What only renews something comes into a package where another part needs it; else it is told beside the package.
    private bool IsOfferedAlone(int part) => _parts[part].ChangeNumber >= 0;

    private bool Contradicts(ulong package)
    {
        for (var rest = package; rest != 0; rest &= rest - 1)
        {
            if ((_excluded[BitOperations.TrailingZeroCount(rest)] & package) != 0) return true;
        }

        return false;
    }

    // Further parts may share a strip-down with these, and save labour; none saves more than it takes.
    private double LeastCost(ulong package)
    {
        var cost = Cost(_parts, package, null).Price;
        if (_labourPerHour is not { } perHour) return cost;
        var hours = 0.0;
        for (var rest = package; rest != 0; rest &= rest - 1)
        {
            var i = BitOperations.TrailingZeroCount(rest);
            hours += _parts[i].LabourHours;
            for (var j = 0; j < _parts.Count; j++)
            {
                if (j > i || (package & (1UL << j)) == 0) hours -= SharedHours(_parts, i, j);
            }
        }

        return cost + (perHour * Math.Max(0, hours));
    }
}

/// <summary>The packages found.</summary>
/// <param name="Packages">The packages, as many as were to be kept.</param>
/// <param name="Count">How many there are; where it is <see cref="PackageSearch.MostCounted"/>, at least that many.</param>
public sealed record FoundPackages(IReadOnlyList<PartPackage> Packages, int Count);

/// <summary>A package: parts that are fitted together.</summary>
/// <param name="Parts">Bit n stands for the part at place n.</param>
/// <param name="Cost">What it costs.</param>
public readonly record struct PartPackage(ulong Parts, PackageCost Cost)
{
    /// <summary>How many parts it has.</summary>
    public int Count => BitOperations.PopCount(Parts);

    /// <summary>True when a part is in it.</summary>
    public bool Has(int part) => (Parts & (1UL << part)) != 0;

    /// <summary>The places of its parts, ascending.</summary>
    public int[] Places()
    {
        var places = new int[Count];
        var next = 0;
        for (var rest = Parts; rest != 0; rest &= rest - 1) places[next++] = BitOperations.TrailingZeroCount(rest);
        return places;
    }
}

/// <summary>What a package costs.</summary>
/// <param name="Price">Its parts' prices.</param>
/// <param name="LabourHours">Labour, hours, less what is saved.</param>
/// <param name="SavedHours">Hours saved because parts share a strip-down.</param>
/// <param name="Total">Parts and, where its rate is known, labour.</param>
public readonly record struct PackageCost(double Price, double LabourHours, double SavedHours, double Total);

using System.Numerics;
using SetupService.Domain.Numerics;

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

    // Rounding of sums that were added up in another order.
    private const double Slack = 1e-6;

    private readonly IReadOnlyList<OfferedPart> _parts;
    private readonly PackagePrices _prices;
    private readonly double _limit;
    private readonly WorkBudget _work;
    private readonly ulong[] _closures;
    private readonly ulong[] _excluded;
    private readonly double[] _shared;
    private readonly double[] _sharedInAll;
    private readonly List<PartPackage> _found = [];
    private readonly int _kept;
    private int _count;

    private PackageSearch(IReadOnlyList<OfferedPart> parts, in PackagePrices prices, double limit, int kept, WorkBudget work)
    {
        (_parts, _prices, _limit, _kept, _work) = (parts, prices, limit, kept, work);
        _closures = Closures(parts);
        _excluded = Exclusions(parts);
        (_shared, _sharedInAll) = (new double[parts.Count * parts.Count], new double[parts.Count]);
        for (var i = 0; i < parts.Count; i++)
        {
            for (var j = 0; j < parts.Count; j++) _sharedInAll[i] += _shared[(i * parts.Count) + j] = i == j ? 0 : SharedHours(parts, i, j);
        }
    }

    /// <summary>The packages, in order of their parts' places, and how many there are.</summary>
    /// <param name="parts">The parts on offer, at most <see cref="MostParts"/>.</param>
    /// <param name="budget">The most a package may cost; null = anything.</param>
    /// <param name="prices">What is paid beside the parts.</param>
    /// <param name="kept">Beyond so many packages they are counted only.</param>
    /// <param name="work">Steps allowed, one for each part taken or left; where they are spent the count is <see cref="MostCounted"/>. Null = as many as a search may take.</param>
    public static FoundPackages Find(IReadOnlyList<OfferedPart> parts, double? budget, in PackagePrices prices, int kept = MostPackages, WorkBudget? work = null)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var search = new PackageSearch(parts, prices, budget ?? double.PositiveInfinity, kept, work ?? new(MostSteps));
        search.Choose(0, default, 0);
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

    /// <summary>What a package costs, and the labour in it, hours; an alignment is in it where one of its parts moves an angle.</summary>
    public static PackageCost Cost(IReadOnlyList<OfferedPart> parts, ulong package, in PackagePrices prices)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var (price, hours, moves) = (0.0, 0.0, false);
        for (var rest = package; rest != 0; rest &= rest - 1)
        {
            var part = parts[BitOperations.TrailingZeroCount(rest)];
            price += part.Price;
            hours += part.LabourHours;
            moves |= OfferedPart.MovesAngles(part.Kind);
        }

        var saved = SavedHours(parts, package);
        hours = Math.Max(0, hours - saved);
        var cost = new PackageCost(price, hours, saved, 0, price + (hours * (prices.LabourPerHour ?? 0)));
        return moves ? cost.WithAlignment(prices) : cost;
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
    private void Choose(int next, in Chosen chosen, ulong left)
    {
        if (_count >= MostCounted || !_work.TrySpend())
        {
            _count = MostCounted;
            return;
        }

        while (next < _parts.Count && (chosen.Has(next) || !IsOfferedAlone(next))) next++;
        if (next == _parts.Count)
        {
            if (chosen.Cost(_prices) > _limit + Slack) return;
            if (_count < _kept)
            {
                var cost = Cost(_parts, chosen.Parts, _prices);
                if (cost.Total > _limit) return;
                _found.Add(new(chosen.Parts, cost));
            }

            _count++;
            return;
        }

        Choose(next + 1, chosen, left | (1UL << next));
        if (((chosen.Parts | _closures[next]) & left) == 0 && With(chosen, _closures[next]) is { } more && more.LeastCost(_prices) <= _limit + Slack) Choose(next + 1, more, left);
    }

    // What only renews something, or gives nothing, comes into a package where another part needs it; else it is told beside the package.
    private bool IsOfferedAlone(int part) => _parts[part].Changes;

    // Null where one of its parts excludes another.
    private Chosen? With(Chosen chosen, ulong added)
    {
        for (var rest = added & ~chosen.Parts; rest != 0; rest &= rest - 1)
        {
            var i = BitOperations.TrailingZeroCount(rest);
            if ((_excluded[i] & (chosen.Parts | added)) != 0) return null;
            var sharedHours = 0.0;
            for (var others = chosen.Parts; others != 0; others &= others - 1) sharedHours += _shared[(i * _parts.Count) + BitOperations.TrailingZeroCount(others)];
            var part = _parts[i];
            chosen = new(
                chosen.Parts | (1UL << i), chosen.Price + part.Price, chosen.Hours + part.LabourHours, chosen.SharedHours + sharedHours, chosen.MostSharedHours + _sharedInAll[i] - sharedHours,
                chosen.MovesAngles || OfferedPart.MovesAngles(part.Kind));
        }

        return chosen;
    }

    // The parts chosen so far, with what their cost is made of: hours they share with each other, and with any part on offer.
    private readonly record struct Chosen(ulong Parts, double Price, double Hours, double SharedHours, double MostSharedHours, bool MovesAngles)
    {
        public bool Has(int part) => (Parts & (1UL << part)) != 0;

        public double Cost(in PackagePrices prices) => Total(SharedHours, prices);

        // Further parts may share a strip-down with these, and save labour; none saves more than it takes.
        public double LeastCost(in PackagePrices prices) => Total(MostSharedHours, prices);

        private double Total(double saved, in PackagePrices prices) => Price + (Math.Max(0, Hours - saved) * (prices.LabourPerHour ?? 0)) + (MovesAngles ? prices.Alignment ?? 0 : 0);
    }
}

/// <summary>What is paid beside the parts.</summary>
/// <param name="LabourPerHour">What an hour of labour costs; null = labour is not in the cost.</param>
/// <param name="Alignment">What setting the angles of all wheels costs; null = it is not in the cost.</param>
public readonly record struct PackagePrices(double? LabourPerHour, double? Alignment = null);

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
/// <param name="Alignment">What setting the angles costs; 0 where nothing moves them, or nobody said.</param>
/// <param name="Total">Parts and, where they are known, labour and the alignment.</param>
public readonly record struct PackageCost(double Price, double LabourHours, double SavedHours, double Alignment, double Total)
{
    /// <summary>The same with an alignment in it, once.</summary>
    public PackageCost WithAlignment(in PackagePrices prices) => prices.Alignment is { } amount && Alignment == 0 ? this with { Alignment = amount, Total = Total + amount } : this;
}

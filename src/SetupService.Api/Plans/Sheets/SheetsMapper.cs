using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Domain.Planning;
using SetupService.Domain.Planning.Sheets;

namespace SetupService.Api.Plans.Sheets;

/// <summary>Maps a request for sheets: the plan, and the parts chosen of it.</summary>
internal static class SheetsMapper
{
    /// <summary>The plan's request in domain values; refused with every fault of it and of what was chosen.</summary>
    public static MapResult<PlanInputs> Map(PlanSheetsRequest request)
    {
        var mapped = PlanMapper.Map(request);
        if (Refusal.From(Unknown(request)) is not { } refusal) return mapped;
        return mapped.TryGet(out _, out var other) ? refusal : other.And(refusal);
    }

    /// <summary>The chosen parts as a package; refused where they leave out what one needs, or exclude each other.</summary>
    /// <param name="chosen">Their ids, each of a part on offer.</param>
    /// <param name="parts">The parts on offer, with what they exclude by their changes.</param>
    /// <param name="prices">What labour and an alignment cost.</param>
    public static MapResult<PartPackage> Choose(string[] chosen, IReadOnlyList<OfferedPart> parts, in PackagePrices prices)
    {
        var places = chosen.Select(id => Place(parts, id)).ToArray();
        var set = places.Aggregate(0UL, (all, place) => all | (1UL << place));
        var (closures, excluded, faults) = (PackageSearch.Closures(parts), PackageSearch.Exclusions(parts), new List<Fault>());
        for (var i = 0; i < places.Length; i++)
        {
            var missing = new PartPackage(closures[places[i]] & ~set, default).Places();
            if (missing.Length > 0)
                faults.Add(Fault.At(At(i), FaultCodes.Inconsistent, $"{TokenText.Quote(chosen[i])} cannot be fitted without {string.Join(" and ", missing.Select(place => TokenText.Quote(parts[place].Id)))}: choose that too."));
            var clash = new PartPackage(excluded[places[i]] & set, default).Places();
            if (clash.FirstOrDefault(place => Array.IndexOf(places, place) < i, -1) is >= 0 and var other)
                faults.Add(Fault.At(At(i), FaultCodes.Inconsistent, $"{TokenText.Quote(chosen[i])} cannot be fitted beside {TokenText.Quote(parts[other].Id)}: they exclude each other, or set the same member of the car differently."));
        }

        return Refusal.From(faults) is { } refusal ? refusal : new PartPackage(set, PackageSearch.Cost(parts, set, prices));
    }

    /// <summary>The caller's own torques.</summary>
    public static IReadOnlyList<StatedTorque> Torques(PlanSheetsRequest request) => [.. (request.Torques ?? []).Select(one => new StatedTorque(one.Fastener, one.Axle, one.TorqueNm))];

    /// <summary>Ids that are none of a part on offer, or named twice.</summary>
    private static List<Fault> Unknown(PlanSheetsRequest request)
    {
        var faults = new List<Fault>();
        var chosen = request.Chosen ?? [];
        for (var i = 0; i < chosen.Length; i++)
        {
            if (chosen[i] is not { } id) continue;
            if (!(request.Parts ?? []).Any(part => part?.Id == id)) faults.Add(Fault.At(At(i), FaultCodes.UnknownWord, $"{TokenText.Quote(id)} is the id of no part on offer."));
            else if (Array.IndexOf(chosen, id) < i) faults.Add(Fault.At(At(i), FaultCodes.Inconsistent, $"{TokenText.Quote(id)} is chosen twice."));
        }

        return faults;
    }

    private static int Place(IReadOnlyList<OfferedPart> parts, string id)
    {
        for (var i = 0; i < parts.Count; i++)
        {
            if (parts[i].Id == id) return i;
        }

        return -1;
    }

    private static string At(int place) => FormattableString.Invariant($"/chosen/{place}");
}

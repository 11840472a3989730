using SetupService.Api.Handling.CamberTarget;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Shared;
using SetupService.Api.Vehicles;
using SetupService.Domain.Planning;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Diagnosis;

namespace SetupService.Api.Plans;

/// <summary>A plan's request in domain values, but for what the parts change.</summary>
/// <param name="Vehicle">The car as stated.</param>
/// <param name="Parts">The parts on offer; what they change and which exclude each other by it is not in them yet.</param>
/// <param name="Currency">The currency of all prices; null = there are none.</param>
internal sealed record PlanInputs(Vehicle Vehicle, IReadOnlyList<OfferedPart> Parts, string? Currency);

/// <summary>Maps a plan's request: the car, and how the parts hang together.</summary>
internal static class PlanMapper
{
    private static readonly WeightedGoal[] UsualGoals = [new(PlanGoal.Grip, 1), new(PlanGoal.Wear, 1), new(PlanGoal.Comfort, 1)];

    /// <summary>The bends as the camber target reads them.</summary>
    public static BendMixMapper Bends(PlanRequest request) => BendMixMapper.Map(new CamberTargetRequest { Corners = request.Bends });

    /// <summary>What the car is driven in a year.</summary>
    public static PlanUse Use(PlanUseDocument use) => new(use.RoadKmPerYear, use.TrackDaysPerYear, use.LapsPerDay ?? PlanUse.UsualLapsPerDay, use.LapKm ?? TrackShare.UsualLapKm);

    /// <summary>What is wanted.</summary>
    public static IReadOnlyList<WeightedGoal> Goals(PlanRequest request) =>
        request.Goals is { Length: > 0 } goals ? [.. goals.Select(one => new WeightedGoal(one.Goal, one.Weight ?? 1))] : UsualGoals;

    /// <summary>What must not be exceeded.</summary>
    public static PlanLimits Limits(PlanLimitsDocument? limits) => new()
    {
        Budget = limits?.Budget?.Amount,
        ArchesUntouched = limits?.ArchesUntouched ?? true,
        LowestRideHeightChangeMm = limits?.LowestRideHeightChangeMm,
        RoadLegalOnly = limits?.RoadLegalOnly ?? false,
        GreatestRimWidthIn = limits?.GreatestRimWidthIn,
        MostNegativeCamberDeg = limits?.MostNegativeCamberDeg,
        HighestRideFrequencyHz = limits?.HighestRideFrequencyHz,
        LeastLimitG = limits?.LeastLimitG,
    };

    /// <summary>What is paid beside the parts.</summary>
    public static PackagePrices Prices(PlanRequest request) => new(request.LabourPerHour?.Amount, request.Alignment?.Amount);

    /// <summary>The request; refused with every fault of the car, of prices and of how the parts hang together.</summary>
    public static MapResult<PlanInputs> Map(PlanRequest request)
    {
        Refusal? refusal = null;
        var vehicle = request.Vehicle is { } document ? VehicleMapper.Map(document).Take("vehicle", ref refusal) : null;
        var faults = new List<Fault>();
        var currency = Currency(request, faults);
        var parts = Parts([.. (request.Parts ?? []).Take(PackageSearch.MostParts)], faults);
        if (Refusal.From(faults) is { } found) refusal = refusal is null ? found : refusal.And(found);
        return refusal is not null ? refusal : vehicle is null ? Refusal.Missing().Under("vehicle") : new PlanInputs(vehicle, parts, currency);
    }

    /// <summary>The one currency of all prices.</summary>
    private static string? Currency(PlanRequest request, List<Fault> faults)
    {
        List<(string Place, string Currency)> told = [];
        Add("/limits/budget/currency", request.Limits?.Budget);
        Add("/labourPerHour/currency", request.LabourPerHour);
        Add("/alignment/currency", request.Alignment);
        for (var i = 0; i < request.Parts?.Length; i++) Add(FormattableString.Invariant($"/parts/{i}/price/currency"), request.Parts[i]?.Price);
        var first = told.FirstOrDefault(one => IsCode(one.Currency));
        foreach (var (place, currency) in told)
        {
            if (!IsCode(currency)) faults.Add(Fault.At(place, FaultCodes.Unreadable, $"{TokenText.Quote(currency)} is no currency; it is written as three capital letters, as EUR."));
            else if (currency != first.Currency) faults.Add(Fault.At(place, FaultCodes.Inconsistent, $"currency is {currency} here and {first.Currency} at {first.Place}: one currency for all prices, as rates change from day to day."));
        }

        return first.Currency;

        void Add(string place, MoneyDocument? price)
        {
            if (price?.Currency is { } currency) told.Add((place, currency));
        }

        static bool IsCode(string text) => text.Length == 3 && text.All(char.IsAsciiLetterUpper);
    }

    private static List<OfferedPart> Parts(PlanPartDocument?[] documents, List<Fault> faults)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < documents.Length; i++)
        {
            if (documents[i]?.Id is not { } id) continue;
            var place = FormattableString.Invariant($"/parts/{i}/id");
            if (string.IsNullOrWhiteSpace(id)) faults.Add(Fault.At(place, FaultCodes.Required, "id is empty; the answer names each part by it."));
            else if (!places.TryAdd(id, i)) faults.Add(Fault.At(place, FaultCodes.Inconsistent, FormattableString.Invariant($"{TokenText.Quote(id)} is the id of part {places[id]} too; each part needs its own.")));
        }

        var parts = new List<OfferedPart>(documents.Length);
        for (var i = 0; i < documents.Length; i++)
        {
            var (document, place) = (documents[i], FormattableString.Invariant($"/parts/{i}"));
            int[] Named(string member, string[]? ids) => [.. (ids ?? []).Select((id, at) => Known(FormattableString.Invariant($"{place}/{member}/{at}"), id, i)).Where(known => known >= 0)];
            parts.Add(new()
            {
                Id = document?.Id ?? "",
                Kind = document?.Kind ?? default,
                Price = document?.Price?.Amount ?? 0,
                LabourHours = document?.LabourHours ?? 0,
                Joint = document?.Joint,
                NoiseDb = document?.NoiseDb,
                IsRoadLegal = document?.IsRoadLegal,
                IsReversible = document?.IsReversible,
                Needs = [.. Named("pairsWith", document?.PairsWith), .. Named("requires", document?.Requires)],
                Excludes = Named("excludes", document?.Excludes),
                ApartWith = [.. (document?.ApartWith ?? []).Select((one, at) => new SharedLabour(one is null ? -1 : Known(FormattableString.Invariant($"{place}/apartWith/{at}/part"), one.Part, i), one?.SavedHours ?? 0)).Where(one => one.Part >= 0)],
            });
            if (document?.ApartWith is { Length: > 0 } shared && shared.Sum(one => one?.SavedHours ?? 0) is var saved && saved > (document.LabourHours ?? 0))
                faults.Add(Fault.At(place + "/apartWith", FaultCodes.Inconsistent, FormattableString.Invariant($"savedHours come to {saved} h, more than the {document.LabourHours ?? 0} h the part takes.")));
        }

        // A pair holds whichever of the two tells it.
        for (var i = 0; i < documents.Length; i++)
        {
            foreach (var id in documents[i]?.PairsWith ?? [])
            {
                if (id is not null && places.TryGetValue(id, out var other) && other != i && !parts[other].Needs.Contains(i)) parts[other] = parts[other] with { Needs = [.. parts[other].Needs, i] };
            }
        }

        AddImpossible(documents, parts, faults);
        return parts;

        int Known(string place, string? id, int of)
        {
            if (id is null) return -1;
            if (!places.TryGetValue(id, out var known)) faults.Add(Fault.At(place, FaultCodes.UnknownWord, $"{TokenText.Quote(id)} is the id of no part on offer."));
            else if (known == of) faults.Add(Fault.At(place, FaultCodes.Inconsistent, $"{TokenText.Quote(id)} is the part itself."));
            else return known;
            return -1;
        }
    }

    /// <summary>Parts whose needs exclude each other, so that no package can hold them.</summary>
    private static void AddImpossible(PlanPartDocument?[] documents, List<OfferedPart> parts, List<Fault> faults)
    {
        var (closures, excluded) = (PackageSearch.Closures(parts), PackageSearch.Exclusions(parts));
        for (var i = 0; i < parts.Count; i++)
        {
            var held = new PartPackage(closures[i], default).Places();
            if (held.FirstOrDefault(one => (excluded[one] & closures[i]) != 0, -1) is not (>= 0 and var clash)) continue;
            var other = new PartPackage(excluded[clash] & closures[i], default).Places()[0];
            var member = documents[i]?.Requires is { Length: > 0 } ? "requires" : documents[i]?.PairsWith is { Length: > 0 } ? "pairsWith" : "excludes";
            faults.Add(Fault.At(
                FormattableString.Invariant($"/parts/{i}/{member}"), FaultCodes.Inconsistent,
                $"{TokenText.Quote(parts[i].Id)} can be in no package: it needs {TokenText.Quote(parts[clash].Id)} and {TokenText.Quote(parts[other].Id)}, which exclude each other."));
        }
    }
}

using System.Globalization;
using System.Text;
using System.Text.Json;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Vehicles;
using SetupService.Domain.Planning;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans;

/// <summary>What the parts of a plan change: the parts with their changes numbered, and which exclude each other by them.</summary>
internal sealed class PartChanges
{
    private readonly PlanPartDocument[] _documents;
    private readonly IReadOnlyDictionary<string, JsonElement>[] _leaves;

    private PartChanges(PlanPartDocument[] documents, IReadOnlyDictionary<string, JsonElement>[] leaves, IReadOnlyList<OfferedPart> parts, IReadOnlyList<(int, int, string)> apart) =>
        (_documents, _leaves, Parts, Apart) = (documents, leaves, parts, apart);

    /// <summary>The parts, complete.</summary>
    public IReadOnlyList<OfferedPart> Parts { get; }

    /// <summary>Pairs of parts that exclude each other because both set one member of the car to different values, with its JSON Pointer within the vehicle.</summary>
    public IReadOnlyList<(int One, int Other, string Member)> Apart { get; }

    /// <summary>The change of a part as it was sent; one that changes the car has one.</summary>
    public CarChangeDocument Document(int part) => _documents[part].Change!;

    /// <summary>Reads the changes; refused with every fault of theirs, each made to the car as given alone.</summary>
    /// <param name="documents">The parts as sent.</param>
    /// <param name="parts">The same as mapped.</param>
    /// <param name="stated">The car as stated.</param>
    public static MapResult<PartChanges> Read(PlanPartDocument[] documents, IReadOnlyList<OfferedPart> parts, ChangedDocument<VehicleDocument> stated)
    {
        Refusal? refusal = null;
        var leaves = new IReadOnlyDictionary<string, JsonElement>[documents.Length];
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var numbered = new List<OfferedPart>(documents.Length);
        for (var i = 0; i < documents.Length; i++)
        {
            var place = Place(i);
            leaves[i] = new Dictionary<string, JsonElement>();
            var number = -1;
            Refusal? mine = null;
            string? nothing = null;
            if (documents[i].Change is { } change && (mine = Check(stated, change, place + "/change", out var changed)) is null)
            {
                leaves[i] = Leaves(change);
                nothing = OwnReach(leaves[i].Keys, stated, changed!, documents[i].Id);
                if (leaves[i].Any(leaf => !IsSo(stated.Members, leaf.Key, leaf.Value))) number = NumberOf(leaves[i], change.KeepRideHeight == true);
            }

            if (mine is null && number < 0 && !OfferedPart.IsWearPart(parts[i].Kind)) mine = new Refusal(ActsOnNothing(documents[i], place));
            if (mine is not null) refusal = refusal?.And(mine) ?? mine;
            numbered.Add(parts[i] with { ChangeNumber = number, GivesNothing = nothing });
        }

        if (refusal is not null) return refusal;
        var apart = Conflicts(leaves, numbered);
        foreach (var (one, other, _) in apart) numbered[one] = numbered[one] with { Excludes = [.. numbered[one].Excludes, other] };
        return new PartChanges(documents, leaves, numbered, apart);

        int NumberOf(IReadOnlyDictionary<string, JsonElement> set, bool keepsHeight)
        {
            var key = new StringBuilder(keepsHeight ? "kept" : "");
            foreach (var (pointer, value) in set.OrderBy(one => one.Key, StringComparer.Ordinal))
                key.Append('\n').Append(pointer).Append('=').Append(value.ValueKind == JsonValueKind.Number ? value.GetDouble().ToString("R", CultureInfo.InvariantCulture) : value.ValueKind == JsonValueKind.Undefined ? "off" : value.GetRawText());
            return numbers.TryGetValue(key.ToString(), out var known) ? known : numbers[key.ToString()] = numbers.Count;
        }
    }

    /// <summary>Which members of the car a part sets, as JSON Pointers within the vehicle.</summary>
    public IEnumerable<string> Members(int part) => _leaves[part].Keys;

    private static string Place(int part) => FormattableString.Invariant($"/parts/{part}");

    private static Fault ActsOnNothing(PlanPartDocument part, string place) => part.Change is null
        ? Fault.At(place + "/change", FaultCodes.Required, $"change is missing: what {TokenText.Quote(part.Id)} changes of the car. Without one only a bush, ballJoint, pad, disc or tyre is taken, as one that renews what is there.")
        : Fault.At(place + "/change", FaultCodes.Inconsistent, $"the change of {TokenText.Quote(part.Id)} acts on nothing: it sets what the car has already.");

    private static Refusal? Check(ChangedDocument<VehicleDocument> stated, CarChangeDocument change, string place, out Vehicle? changed)
    {
        changed = null;
        if (!CarChangeMapper.Make(stated, change, place).TryGet(out var made, out var refusal)) return refusal;
        if (!made.Document.Read(PlanRules.Car).TryGet(out var document, out refusal)) return refusal;
        return VehicleMapper.Map(document).Under(place[1..] + "/vehicle").TryGet(out changed, out refusal) ? null : refusal;
    }

    /// <summary>Why a part that only lets angles be set gives nothing: the car's own adjusters reach as far; null where they do not, or it does more.</summary>
    private static string? OwnReach(IEnumerable<string> members, ChangedDocument<VehicleDocument> stated, Vehicle changed, string id)
    {
        if (!members.Any() || !members.All(static member => member.StartsWith("/front/adjustable/", StringComparison.Ordinal) || member.StartsWith("/rear/adjustable/", StringComparison.Ordinal))) return null;
        if (!stated.Read(PlanRules.Car).TryGet(out var document, out _) || !VehicleMapper.Map(document).TryGet(out var own, out _)) return null;
        return own.Front.Adjustable.Cover(changed.Front.Adjustable) && own.Rear.Adjustable.Cover(changed.Rear.Adjustable)
            ? $"'{id}' gives nothing: what it lets be set, the car's own adjusters reach already."
            : null;
    }

    /// <summary>The members a change sets, arrays whole, its label left out; a part taken off has no value.</summary>
    private static Dictionary<string, JsonElement> Leaves(CarChangeDocument change)
    {
        var leaves = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
        if (change.Vehicle is { } vehicle) Add("", vehicle.Members);
        foreach (var removed in change.Remove ?? []) leaves[removed] = default;
        leaves.Remove("/label");
        return leaves;

        void Add(string pointer, JsonElement value)
        {
            if (value.ValueKind != JsonValueKind.Object)
            {
                leaves[pointer] = value;
                return;
            }

            foreach (var member in value.EnumerateObject()) Add($"{pointer}/{member.Name}", member.Value);
        }
    }

    private static bool IsSo(JsonElement stated, string pointer, JsonElement value)
    {
        foreach (var step in pointer.Split('/').Skip(1))
        {
            if (stated.ValueKind != JsonValueKind.Object || !stated.TryGetProperty(step, out stated)) return false;
        }

        return value.ValueKind != JsonValueKind.Undefined && JsonElement.DeepEquals(stated, value);
    }

    /// <summary>Parts that set one member to different values, unless one needs the other: then the later one's holds, as in what-if.</summary>
    private static List<(int One, int Other, string Member)> Conflicts(IReadOnlyDictionary<string, JsonElement>[] leaves, List<OfferedPart> parts)
    {
        var closures = PackageSearch.Closures(parts);
        var list = new List<(int, int, string)>();
        for (var i = 0; i < parts.Count; i++)
        {
            for (var j = i + 1; j < parts.Count; j++)
            {
                if ((closures[i] & (1UL << j)) != 0 || (closures[j] & (1UL << i)) != 0) continue;
                if (leaves[i].Keys.FirstOrDefault(member => leaves[j].Any(other => Overlap(member, leaves[i][member], other.Key, other.Value))) is { } clash) list.Add((i, j, clash));
            }
        }

        return list;

        static bool Overlap(string one, JsonElement value, string other, JsonElement otherValue) => one == other
            ? value.ValueKind == JsonValueKind.Undefined != (otherValue.ValueKind == JsonValueKind.Undefined) || (value.ValueKind != JsonValueKind.Undefined && !JsonElement.DeepEquals(value, otherValue))
            : one.StartsWith(other + "/", StringComparison.Ordinal) || other.StartsWith(one + "/", StringComparison.Ordinal);
    }
}

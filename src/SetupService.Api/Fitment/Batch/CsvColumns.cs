using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Queries;
using SetupService.Api.Tyres;
using SetupService.Api.Wheels;
using SetupService.Domain.Wheels;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// The columns a table of candidates may have: the members of wheel and tyre that are one value, by their plain name or under
/// wheel. and tyre.; massKg is a member of both and needs one of the two.
/// </summary>
internal sealed class CsvColumns
{
    private readonly Dictionary<string, CsvColumn> _known = new(StringComparer.Ordinal);
    private readonly List<string> _names = ["id"];
    private readonly HashSet<string> _twice = new(StringComparer.Ordinal);

    public CsvColumns(JsonContract contract)
    {
        _known.Add("id", new CsvColumn("id", new LineIdSchema(LineId.MaximumLength), text: static (row, text) => (row.Id = text) is not null));
        var wheel = contract.SchemaOf<WheelDocument>();
        var wheelMarking = new CsvColumn(WheelMarking, Member(wheel, "marking"), text: static (row, text) => (row.Wheel.Marking = text) is not null);
        Know(wheelMarking, "wheelMarking");
        Number(wheel, "rimDiameterIn", static (row, value) => row.Wheel.RimDiameterIn = value);
        Number(wheel, "rimWidthIn", static (row, value) => row.Wheel.RimWidthIn = value);
        Number(wheel, "offsetMm", static (row, value) => row.Wheel.OffsetMm = value);
        Number(wheel, "spacerMm", static (row, value) => row.Wheel.SpacerMm = value);
        Number(wheel, "spacerPilotBoreMm", static (row, value) => row.Wheel.SpacerPilotBoreMm = value);
        Number(wheel, "spacerPilotDiameterMm", static (row, value) => row.Wheel.SpacerPilotDiameterMm = value);
        Text(wheel, "spacerHasOwnFasteners", SetOwnFasteners);
        Number(wheel, "massKg", static (row, value) => row.Wheel.MassKg = value);
        Text(wheel, "boltCircle", static (row, text) => (row.Wheel.BoltCircle = text) is not null);
        Number(wheel, "centreBoreMm", static (row, value) => row.Wheel.CentreBoreMm = value);
        Number(wheel, "loadRatingKg", static (row, value) => row.Wheel.LoadRatingKg = value);
        Text(wheel, "fastenerSeat", SetSeat);
        Number(wheel, "padThicknessMm", static (row, value) => row.Wheel.PadThicknessMm = value);
        var tyre = contract.SchemaOf<TyreDocument>();
        Text(tyre, "marking", static (row, text) => (row.Tyre.Marking = text) is not null);
        _known.Add("tyreMarking", _known["tyre.marking"]);
        Number(tyre, "massKg", static (row, value) => row.Tyre.MassKg = value);
        Number(tyre, "pressureKpa", static (row, value) => row.Tyre.PressureKpa = value);
        Number(tyre, "rimProtectorMm", static (row, value) => row.Tyre.RimProtectorMm = value);
        Number(tyre, "verticalRateNPerMm", static (row, value) => row.Tyre.VerticalRateNPerMm = value);
        Number(tyre, "corneringStiffnessNPerDeg", static (row, value) => row.Tyre.CorneringStiffnessNPerDeg = value);
    }

    /// <summary>The names without which no row can be a candidate; a column for the wheel's marking stands for the wheel's three.</summary>
    public static IReadOnlyList<string> Required { get; } = ["wheel.rimDiameterIn", "wheel.rimWidthIn", "wheel.offsetMm", "tyre.marking"];

    private const string WheelMarking = "wheel.marking";

    /// <summary>Every full name a column may have.</summary>
    public IReadOnlyList<string> Names => _names;

    /// <summary>The columns of a header, or every fault it has.</summary>
    public bool TryRead(IReadOnlyList<string> header, [NotNullWhen(true)] out CsvColumn[]? columns, [NotNullWhen(false)] out Refusal? refusal)
    {
        FaultList found = new();
        List<CsvColumn> read = [];
        foreach (var name in header)
        {
            if (_twice.Contains(name))
                found.Add(Fault.At("/candidates", FaultCodes.Inconsistent, $"The column {TokenText.Quote(name)} may be the wheel's or the tyre's: name it wheel.{name} or tyre.{name}."));
            else if (!_known.TryGetValue(name, out var column))
                found.Add(Unknown(name));
            else if (read.Contains(column))
                found.Add(Fault.At("/candidates", FaultCodes.DuplicateMember, $"The column {TokenText.Quote(column.Name)} stands more than once in the header."));
            else
                read.Add(column);
        }

        var hasWheelMarking = read.Exists(static column => column.Name == WheelMarking);
        foreach (var name in Required.Where(name => !read.Exists(column => column.Name == name) && !(hasWheelMarking && name.StartsWith("wheel.", StringComparison.Ordinal))))
            found.Add(Fault.At("/candidates", FaultCodes.Required, $"The header has no column for {name}, which every candidate needs."));
        refusal = Refusal.From(found.ToList());
        columns = refusal is null ? [.. read] : null;
        return columns is not null;
    }

    private Fault Unknown(string name)
    {
        if (name.Length == 0)
            return Fault.At("/candidates", FaultCodes.UnknownMember, "A column of the header has no name.");

        var meant = NearestName.Find(name, _known.Keys) is { } near ? $"; {near} may be meant" : "";
        return Fault.At("/candidates", FaultCodes.UnknownMember, $"There is no column {TokenText.Quote(name)}{meant}. Known: {string.Join(", ", Names)}.");
    }

    private static bool SetSeat(CsvRow row, string text)
    {
        if (!EnumNames<FastenerSeat>.TryGet(text, out var seat))
            return false;
        row.Wheel.FastenerSeat = seat;
        return true;
    }

    private static bool SetOwnFasteners(CsvRow row, string text)
    {
        var isRead = bool.TryParse(text, out var flag);
        row.Wheel.SpacerHasOwnFasteners = isRead ? flag : null;
        return isRead;
    }

    private void Number(ObjectSchema owner, string member, Action<CsvRow, double> set) =>
        Add(owner, member, schema => new CsvColumn(Prefix(owner) + member, schema, number: set));

    private void Text(ObjectSchema owner, string member, Func<CsvRow, string, bool> set) =>
        Add(owner, member, schema => new CsvColumn(Prefix(owner) + member, schema, text: set));

    private void Add(ObjectSchema owner, string member, Func<ContractSchema, CsvColumn> make)
    {
        var column = make(Member(owner, member));
        _known.Add(column.Name, column);
        _names.Add(column.Name);
        if (!_twice.Contains(member) && !_known.TryAdd(member, column))
        {
            _known.Remove(member);
            _twice.Add(member);
        }
    }

    /// <summary>A column with a plain name of its own, because the member's is the other part's too.</summary>
    private void Know(CsvColumn column, string plainName)
    {
        _known.Add(column.Name, column);
        _known.Add(plainName, column);
        _names.Add(column.Name);
    }

    private static ContractSchema Member(ObjectSchema owner, string member) => owner.Members.Single(known => known.Name == member).Schema;

    private static string Prefix(ObjectSchema owner) => owner.Type == typeof(WheelDocument) ? "wheel." : "tyre.";
}

/// <summary>One column of a table of candidates: the member it holds, and how a cell sets it.</summary>
/// <param name="name">The member's path under candidate, such as wheel.rimWidthIn; "id" for the row's id.</param>
/// <param name="schema">What the contract allows there.</param>
/// <param name="number">Sets a number.</param>
/// <param name="text">Sets a text or word; false where the text is none of the words.</param>
internal sealed class CsvColumn(
    string name, ContractSchema schema, Action<CsvRow, double>? number = null, Func<CsvRow, string, bool>? text = null)
{
    private const NumberStyles Accepted = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    public string Name => name;

    public bool IsNumber => number is not null;

    public bool IsFlag => schema is BooleanSchema;

    /// <summary>Reads a number with a decimal point; one too large for a double is infinite.</summary>
    public static bool TryReadNumber(ReadOnlySpan<char> cell, out double value) =>
        double.TryParse(cell, Accepted, CultureInfo.InvariantCulture, out value) && !cell.ContainsAnyExcept(NumberParameter.Letters);

    /// <summary>Sets the member from a cell; false where the contract does not allow the cell's value.</summary>
    public bool TrySet(CsvRow row, ReadOnlySpan<char> cell)
    {
        if (number is null)
            return cell.Length <= ((schema as StringSchema)?.MaximumLength ?? LineId.MaximumLength) && text!(row, row.Intern(cell));

        var limits = (NumberSchema)schema;
        if (!TryReadNumber(cell, out var value) || !(value >= limits.Minimum && value <= limits.Maximum))
        {
            return false;
        }

        number(row, value);
        return true;
    }
}

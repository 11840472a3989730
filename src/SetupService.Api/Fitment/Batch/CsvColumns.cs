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
/// wheel. and tyre.; massKg is a member of both and needs one of the two. Further columns of the caller's own are passed through.
/// </summary>
internal sealed class CsvColumns
{
    private const string WheelMarking = "wheel.marking";

    // Of so few letters every word is near another.
    private const int FewLetters = 4;

    private readonly Dictionary<string, CsvColumn> _known = new(StringComparer.Ordinal);
    private readonly List<string> _names = ["id"];
    private readonly HashSet<string> _twice = new(StringComparer.Ordinal);
    private readonly HashSet<string> _lists;

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
        _lists = [.. wheel.Members.Concat(tyre.Members).Where(static member => member.Schema is ArraySchema).Select(static member => member.Name)];
    }

    /// <summary>The names without which no row can be a candidate; a column for the wheel's marking stands for the wheel's three.</summary>
    public static IReadOnlyList<string> Required { get; } = ["wheel.rimDiameterIn", "wheel.rimWidthIn", "wheel.offsetMm", "tyre.marking"];

    /// <summary>Every full name a column may have.</summary>
    public IReadOnlyList<string> Names => _names;

    /// <summary>The columns of a header, or every fault it has.</summary>
    /// <param name="header">The names in it.</param>
    /// <param name="separator">What stands between its columns.</param>
    /// <param name="columns">The columns in order, further ones among them.</param>
    /// <param name="refusal">The faults.</param>
    public bool TryRead(
        IReadOnlyList<string> header, TableSeparator separator, [NotNullWhen(true)] out CsvColumn[]? columns, [NotNullWhen(false)] out Refusal? refusal)
    {
        FaultList found = new();
        List<CsvColumn> read = [];
        if (!separator.IsRead)
            found.Add(At(FaultCodes.Unreadable, $"The columns of the header stand apart by {separator.Name}; a comma, a semicolon or a tab is read."));
        foreach (var typed in header)
        {
            var name = typed.Trim();
            if (!_known.TryGetValue(name, out var column) && Refuse(name, separator) is { } fault)
                found.Add(fault);
            else if (read.Exists(one => one.Name == (column?.Name ?? name)))
                found.Add(At(FaultCodes.DuplicateMember, $"The column {TokenText.Quote(name)} stands more than once in the header."));
            else
                read.Add(column ?? new CsvColumn(name));
        }

        var hasWheelMarking = read.Exists(static column => column.Name == WheelMarking);
        foreach (var name in Required.Where(name => !read.Exists(column => column.Name == name) && !(hasWheelMarking && name.StartsWith("wheel.", StringComparison.Ordinal))))
            found.Add(At(FaultCodes.Required, $"The header has no column for {name}, which every candidate needs. Its columns were read with {separator.Name} between them."));
        refusal = Refusal.From(found.ToList());
        columns = refusal is null ? [.. read] : null;
        return columns is not null;
    }

    /// <summary>Why a name that is none of the service's cannot be a further column; null where it is passed through.</summary>
    private Fault? Refuse(string name, TableSeparator separator)
    {
        if (name.Length == 0)
            return At(FaultCodes.UnknownMember, $"A column of the header has no name. Its columns were read with {separator.Name} between them.");
        if (_twice.Contains(name))
            return At(FaultCodes.Inconsistent, $"The column {TokenText.Quote(name)} may be the wheel's or the tyre's: name it wheel.{name} or tyre.{name}.");
        if (TableSeparator.FindOther(name, separator, part => _known.ContainsKey(part)) is { } other)
            return At(FaultCodes.Inconsistent, $"The header has {other.Name} in {TokenText.Quote(name)}, but its columns were read with {separator.Name} between them: use one of them.");
        if (_lists.Contains(name[(name.IndexOf('.', StringComparison.Ordinal) + 1)..]))
            return At(FaultCodes.UnknownMember, $"{name} is a list, which no column of a table can hold; send such candidates as JSON lines.");
        if (CsvRows.AnswerColumns.Contains(name))
            return At(FaultCodes.Inconsistent, $"The column {TokenText.Quote(name)} has the name of a column of the answer, so it cannot be passed through; give it another name.");

        var claims = name.StartsWith("wheel.", StringComparison.Ordinal) || name.StartsWith("tyre.", StringComparison.Ordinal);

        // Headings begin with a capital.
        var near = name.Length < FewLetters && !_known.Keys.Contains(name, StringComparer.OrdinalIgnoreCase)
            ? null
            : NearestName.Find(char.ToLowerInvariant(name[0]) + name[1..], _known.Keys.Concat(_twice));
        if (near is null && !claims)
            return null;
        var meant = near is null ? "" : $"; {near} may be meant. A column of your own needs a name less like it";
        return At(FaultCodes.UnknownMember, $"There is no column {TokenText.Quote(name)}{meant}. Known: {string.Join(", ", Names)}.");
    }

    private static Fault At(string code, string message) => Fault.At("/candidates", code, message);

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

/// <summary>What stands between the columns of a table: told from its header.</summary>
/// <param name="Letter">The character.</param>
internal readonly record struct TableSeparator(char Letter)
{
    private static readonly char[] Read = [',', ';', '\t'];

    /// <summary>True for a comma, a semicolon and a tab.</summary>
    public bool IsRead => Read.Contains(Letter);

    /// <summary>True where numbers may have a decimal comma, because the comma separates nothing.</summary>
    public bool AllowsDecimalComma => Letter != ',';

    /// <summary>Its name, with the article.</summary>
    public string Name => Letter switch
    {
        ',' => "a comma",
        ';' => "a semicolon",
        '\t' => "a tab",
        _ => $"“{Letter}”",
    };

    /// <summary>Another separator by which a name of the header falls into names that are known; null where there is none.</summary>
    public static TableSeparator? FindOther(string name, TableSeparator taken, Func<string, bool> isKnown)
    {
        foreach (var letter in Read)
        {
            if (letter != taken.Letter && name.Contains(letter, StringComparison.Ordinal) && name.Split(letter).Any(part => isKnown(part.Trim())))
                return new(letter);
        }

        return null;
    }
}

/// <summary>One column of a table of candidates: the member it holds, and how a cell sets it.</summary>
/// <param name="name">The member's path under candidate, such as wheel.rimWidthIn; "id" for the row's id.</param>
/// <param name="schema">What the contract allows there; null for a further column, which is passed through.</param>
/// <param name="number">Sets a number.</param>
/// <param name="text">Sets a text or word; false where the text is none of the words.</param>
internal sealed class CsvColumn(
    string name, ContractSchema? schema = null, Action<CsvRow, double>? number = null, Func<CsvRow, string, bool>? text = null)
{
    private const NumberStyles Accepted = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
    private const int LongestNumber = 64;

    public string Name => name;

    /// <summary>True for a column of the caller's own.</summary>
    public bool IsFurther => schema is null;

    public bool IsNumber => number is not null;

    public bool IsFlag => schema is BooleanSchema;

    /// <summary>Reads a number; one too large for a double is infinite. A comma in it is its decimal comma, where the table allows one.</summary>
    public static bool TryReadNumber(ReadOnlySpan<char> cell, TableSeparator separator, out double value)
    {
        if (!separator.AllowsDecimalComma || !cell.Contains(','))
            return TryReadNumber(cell, out value);

        value = 0;
        if (cell.Length > LongestNumber)
            return false;
        Span<char> plain = stackalloc char[LongestNumber];
        cell.Replace(plain, ',', '.');
        return TryReadNumber(plain[..cell.Length], out value);
    }

    /// <summary>Sets the member from a cell; false where the contract does not allow the cell's value.</summary>
    public bool TrySet(CsvRow row, ReadOnlySpan<char> cell, TableSeparator separator)
    {
        if (number is null)
            return cell.Length <= ((schema as StringSchema)?.MaximumLength ?? LineId.MaximumLength) && text!(row, row.Intern(cell));

        var limits = (NumberSchema)schema!;
        if (!TryReadNumber(cell, separator, out var value) || !(value >= limits.Minimum && value <= limits.Maximum))
        {
            return false;
        }

        number(row, value);
        if (separator.AllowsDecimalComma && cell.IndexOfAny(',', '.') is var mark and >= 0)
            row.HasDecimalComma = cell[mark] == ',';
        return true;
    }

    private static bool TryReadNumber(ReadOnlySpan<char> cell, out double value) =>
        double.TryParse(cell, Accepted, CultureInfo.InvariantCulture, out value) && !cell.ContainsAnyExcept(NumberParameter.Letters);
}

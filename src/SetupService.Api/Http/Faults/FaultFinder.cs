using System.Buffers;
using System.Text.Json;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Faults;

/// <summary>
/// The second reader: walks a refused body against its schema, lists every fault in the order of the text (what is
/// missing at the end of its object), and writes a copy that holds only the sound parts. Bodies that are not JSON
/// text must have been sorted out before.
/// </summary>
internal ref struct FaultFinder
{
    private readonly ReadOnlySpan<byte> _utf8;
    private readonly FaultList _faults;
    private readonly Utf8JsonWriter _copy;
    private readonly PointerPath _path = new();
    private Utf8JsonReader _reader;

    private FaultFinder(ReadOnlySpan<byte> utf8, FaultList faults, Utf8JsonWriter copy)
    {
        _utf8 = utf8;
        _faults = faults;
        _copy = copy;
        _reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = ServiceLimits.JsonDepth });
    }

    /// <summary>Lists the faults and gives the sound parts as JSON, or null where the body as a whole is of the wrong type.</summary>
    public static ReadOnlyMemory<byte>? Walk(ReadOnlySpan<byte> utf8, ContractSchema schema, FaultList faults)
    {
        ArrayBufferWriter<byte> sound = new(utf8.Length + 16);
        using Utf8JsonWriter copy = new(sound, new JsonWriterOptions { SkipValidation = true });
        FaultFinder finder = new(utf8, faults, copy);
        finder._reader.Read();
        finder.Value(schema, member: null);
        copy.Flush();
        return sound.WrittenCount == 0 ? (ReadOnlyMemory<byte>?)null : sound.WrittenMemory;
    }

    private void Value(ContractSchema schema, string? member)
    {
        switch (schema)
        {
            case ObjectSchema known when _reader.TokenType == JsonTokenType.StartObject:
                Open(member);
                Members(known);
                break;
            case VariantSchema variant when _reader.TokenType == JsonTokenType.StartObject:
                Variant(variant, member);
                break;
            case ArraySchema list when _reader.TokenType == JsonTokenType.StartArray:
                Elements(list, member);
                break;
            default:
                Scalar(schema, member);
                break;
        }
    }

    private void Scalar(ContractSchema schema, string? member)
    {
        if (ScalarFaults.Find(ref _reader, schema, _path) is not { } fault)
        {
            Name(member);
            var start = (int)_reader.TokenStartIndex;
            _copy.WriteRawValue(_utf8[start..(int)_reader.BytesConsumed], skipInputValidation: true);
            return;
        }

        _faults.Add(fault);
        _reader.Skip();
        if (member is null && _reader.CurrentDepth > 0)
            StandIn(schema);
    }

    /// <summary>Keeps the place of a faulty element, so that the elements after it keep their numbers.</summary>
    private readonly void StandIn(ContractSchema schema)
    {
        if (schema is NumberSchema number)
            _copy.WriteNumberValue(number.Minimum);
        else if (schema is EnumSchema words)
            _copy.WriteStringValue(words.Words[0]);
        else
            _copy.WriteNullValue();
    }

    private void Variant(VariantSchema schema, string? member)
    {
        var ahead = _reader;
        List<string> strangers = [];
        while (ahead.Read() && ahead.TokenType != JsonTokenType.EndObject)
        {
            var tells = ahead.ValueTextEquals(schema.DiscriminatorUtf8);
            if (!tells && !schema.Knows(ref ahead))
                strangers.Add(ahead.GetString()!);
            ahead.Read();
            if (!tells)
            {
                ahead.Skip();
                continue;
            }

            var kind = ahead.TokenType == JsonTokenType.String ? schema.IndexOf(ref ahead) : -1;
            if (kind >= 0)
            {
                Open(member);
                Members(schema.Schemas[kind]);
                return;
            }

            _path.Push(schema.Discriminator);
            _faults.Add(ScalarFaults.Find(ref ahead, new EnumSchema(schema.Kinds), _path)!);
            _path.Pop();
            Drop(member);
            return;
        }

        // Its name may be misspelt: what no kind has is told beside what is missing.
        foreach (var name in strangers)
            AddUnknown(name, schema.Names);
        _faults.Add(Fault.At(
            _path.Then(schema.Discriminator),
            FaultCodes.Required,
            $"{schema.Discriminator} is missing; it tells the kind and must be one of: {string.Join(", ", schema.Kinds)}."));
        Drop(member);
    }

    private void Drop(string? member)
    {
        _reader.Skip();
        if (member is null && _reader.CurrentDepth > 0)
            _copy.WriteNullValue();
    }

    private void Members(ObjectSchema schema)
    {
        ulong seen = 0;
        while (_reader.Read() && _reader.TokenType != JsonTokenType.EndObject)
        {
            var index = schema.IndexOf(ref _reader);
            if (index < 0)
                Unknown(schema);
            else if ((seen & (1UL << index)) != 0)
                Duplicate(schema.Members[index]);
            else
                Member(schema.Members[index]);
            if (index >= 0)
                seen |= 1UL << index;
        }

        for (var index = 0; index < schema.Members.Count; index++)
        {
            var member = schema.Members[index];
            if (member.IsRequired && (seen & (1UL << index)) == 0)
                _faults.Add(Fault.At(_path.Then(member.Name), FaultCodes.Required, $"{member.Name} is missing; {member.Schema.Expected} is needed here."));
        }

        _copy.WriteEndObject();
    }

    private void Member(MemberSchema member)
    {
        _reader.Read();
        if (_reader.TokenType != JsonTokenType.Null)
        {
            _path.Push(member.Name);
            Value(member.Schema, member.Name);
            _path.Pop();
        }
        else if (member.IsRequired)
        {
            _faults.Add(Fault.At(_path.Then(member.Name), FaultCodes.Required, $"{member.Name} is null; {member.Schema.Expected} is needed here."));
        }
    }

    private void Unknown(ObjectSchema schema)
    {
        if (_faults.IsFull)
            _faults.AddUnlisted();
        else
            AddUnknown(_reader.GetString()!, [.. schema.Members.Select(member => member.Name)]);
        _reader.Read();
        _reader.Skip();
    }

    private readonly void AddUnknown(string name, IReadOnlyList<string> known)
    {
        if (_faults.IsFull)
        {
            _faults.AddUnlisted();
            return;
        }

        var meant = NearestName.Find(name, known) is { } near ? $"; {near} may be meant" : "";
        _faults.Add(Fault.At(
            _path.Then(name),
            FaultCodes.UnknownMember,
            $"There is no member {TokenText.Quote(name)} here{meant}. Known: {string.Join(", ", known)}."));
    }

    private void Duplicate(MemberSchema member)
    {
        if (_faults.IsFull)
            _faults.AddUnlisted();
        else
            _faults.Add(Fault.At(_path.Then(member.Name), FaultCodes.DuplicateMember, $"{member.Name} is given more than once in the same object."));
        _reader.Read();
        _reader.Skip();
    }

    private void Elements(ArraySchema list, string? member)
    {
        var pointer = _path.ToString();
        var label = _path.Label;
        Name(member);
        _copy.WriteStartArray();
        var count = 0;
        while (_reader.Read() && _reader.TokenType != JsonTokenType.EndArray)
        {
            // Of elements too many only their number is told: a body may have thousands, and each would be examined.
            if (count++ >= list.Maximum)
            {
                _reader.Skip();
                continue;
            }

            _path.Push(count - 1);
            Value(list.Element, member: null);
            _path.Pop();
        }

        _copy.WriteEndArray();
        if (CountFaults.Find(list, count, pointer, label) is { } fault)
            _faults.Add(fault);
    }

    private readonly void Open(string? member)
    {
        Name(member);
        _copy.WriteStartObject();
    }

    private readonly void Name(string? member)
    {
        if (member is not null)
            _copy.WritePropertyName(member);
    }
}

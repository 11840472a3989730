using System.Buffers;
using System.Text.Json;
using SetupService.Api.Http.Contract;

namespace SetupService.Api.Http.Faults;

/// <summary>
/// The second reader: walks a refused body against its shape, lists every fault in the order of the text (what is
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
    public static ReadOnlyMemory<byte>? Walk(ReadOnlySpan<byte> utf8, ContractShape shape, FaultList faults)
    {
        ArrayBufferWriter<byte> sound = new(utf8.Length + 16);
        using Utf8JsonWriter copy = new(sound, new JsonWriterOptions { SkipValidation = true });
        FaultFinder finder = new(utf8, faults, copy);
        finder._reader.Read();
        finder.Value(shape, member: null);
        copy.Flush();
        return sound.WrittenCount == 0 ? (ReadOnlyMemory<byte>?)null : sound.WrittenMemory;
    }

    private void Value(ContractShape shape, string? member)
    {
        switch (shape)
        {
            case ObjectShape known when _reader.TokenType == JsonTokenType.StartObject:
                Open(member);
                Members(known);
                break;
            case VariantShape variant when _reader.TokenType == JsonTokenType.StartObject:
                Variant(variant, member);
                break;
            case ListShape list when _reader.TokenType == JsonTokenType.StartArray:
                Elements(list, member);
                break;
            default:
                Scalar(shape, member);
                break;
        }
    }

    private void Scalar(ContractShape shape, string? member)
    {
        if (ScalarFaults.Find(ref _reader, shape, _path) is not { } fault)
        {
            Name(member);
            var start = (int)_reader.TokenStartIndex;
            _copy.WriteRawValue(_utf8[start..(int)_reader.BytesConsumed], skipInputValidation: true);
            return;
        }

        _faults.Add(fault);
        _reader.Skip();
        if (member is null && _reader.CurrentDepth > 0)
            StandIn(shape);
    }

    /// <summary>Keeps the place of a faulty element, so that the elements after it keep their numbers.</summary>
    private readonly void StandIn(ContractShape shape)
    {
        if (shape is NumberShape number)
            _copy.WriteNumberValue(number.Minimum);
        else if (shape is WordShape words)
            _copy.WriteStringValue(words.Words[0]);
        else
            _copy.WriteNullValue();
    }

    private void Variant(VariantShape shape, string? member)
    {
        var ahead = _reader;
        while (ahead.Read() && ahead.TokenType != JsonTokenType.EndObject)
        {
            var tells = ahead.ValueTextEquals(shape.TellerUtf8);
            ahead.Read();
            if (!tells)
            {
                ahead.Skip();
                continue;
            }

            var kind = ahead.TokenType == JsonTokenType.String ? shape.IndexOf(ref ahead) : -1;
            if (kind >= 0)
            {
                Open(member);
                Members(shape.Shapes[kind]);
                return;
            }

            _path.Push(shape.Teller);
            _faults.Add(ScalarFaults.Find(ref ahead, new WordShape(shape.Kinds), _path)!);
            _path.Pop();
            Drop(member);
            return;
        }

        _faults.Add(Fault.At(
            _path.Then(shape.Teller),
            FaultCodes.Required,
            $"{shape.Teller} is missing; it tells the kind and must be one of: {string.Join(", ", shape.Kinds)}."));
        Drop(member);
    }

    private void Drop(string? member)
    {
        _reader.Skip();
        if (member is null && _reader.CurrentDepth > 0)
            _copy.WriteNullValue();
    }

    private void Members(ObjectShape shape)
    {
        ulong seen = 0;
        while (_reader.Read() && _reader.TokenType != JsonTokenType.EndObject)
        {
            var index = shape.IndexOf(ref _reader);
            if (index < 0)
                Unknown(shape);
            else if ((seen & (1UL << index)) != 0)
                Duplicate(shape.Members[index]);
            else
                Member(shape.Members[index]);
            if (index >= 0)
                seen |= 1UL << index;
        }

        for (var index = 0; index < shape.Members.Count; index++)
        {
            var member = shape.Members[index];
            if (member.IsRequired && (seen & (1UL << index)) == 0)
                _faults.Add(Fault.At(_path.Then(member.Name), FaultCodes.Required, $"{member.Name} is missing; {member.Shape.Wanted} is needed here."));
        }

        _copy.WriteEndObject();
    }

    private void Member(MemberShape member)
    {
        _reader.Read();
        if (_reader.TokenType != JsonTokenType.Null)
        {
            _path.Push(member.Name);
            Value(member.Shape, member.Name);
            _path.Pop();
        }
        else if (member.IsRequired)
        {
            _faults.Add(Fault.At(_path.Then(member.Name), FaultCodes.Required, $"{member.Name} is null; {member.Shape.Wanted} is needed here."));
        }
    }

    private void Unknown(ObjectShape shape)
    {
        var name = _reader.GetString()!;
        var allowed = string.Join(", ", shape.Members.Select(member => member.Name));
        var meant = NearestName.Find(name, shape.Members.Select(member => member.Name)) is { } near
            ? $"; {near} may be meant"
            : "";
        _faults.Add(Fault.At(
            _path.Then(name),
            FaultCodes.UnknownMember,
            $"There is no member {TokenText.Quote(name)} here{meant}. Known: {allowed}."));
        _reader.Read();
        _reader.Skip();
    }

    private void Duplicate(MemberShape member)
    {
        _faults.Add(Fault.At(_path.Then(member.Name), FaultCodes.DuplicateMember, $"{member.Name} is given more than once in the same object."));
        _reader.Read();
        _reader.Skip();
    }

    private void Elements(ListShape list, string? member)
    {
        var pointer = _path.ToString();
        var label = _path.Label;
        Name(member);
        _copy.WriteStartArray();
        var count = 0;
        while (_reader.Read() && _reader.TokenType != JsonTokenType.EndArray)
        {
            _path.Push(count++);
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

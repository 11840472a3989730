using System.Buffers;
using System.Buffers.Text;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Cars;

namespace SetupService.Api.Fitment.Catalogue;

/// <summary>Writes the answer lines of a catalogue into a buffer. Pairs are put together from bytes made ready before: there are many.</summary>
internal sealed class CatalogueLines : IDisposable
{
    private static readonly byte[][] Verdicts = Quoted(EnumNames<CheckStatus>.List);
    private static readonly byte[][] Names = Quoted(EnumNames<CheckId>.List);

    // What a buffer may grow to and be kept.
    private const int KeptBytes = 8 * BatchLimits.FlushBytes;

    private readonly Utf8JsonWriter _writer;
    private readonly JsonTypeInfo<LineId> _id;
    private readonly JsonTypeInfo<CatalogueSummary> _summary;
    private readonly List<byte[]> _cars = [];
    private ArrayBufferWriter<byte> _buffer = new(2 * BatchLimits.FlushBytes);
    private byte[] _candidate = [];

    public CatalogueLines(JsonContract contract)
    {
        _writer = new Utf8JsonWriter(_buffer, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true });
        _id = contract.TypeOf<LineId>();
        _summary = contract.TypeOf<CatalogueSummary>();
    }

    /// <summary>Number of bytes gathered and not yet sent.</summary>
    public int Length => _buffer.WrittenCount;

    /// <summary>The bytes gathered and not yet sent.</summary>
    public ReadOnlyMemory<byte> Bytes => _buffer.WrittenMemory;

    /// <summary>Empties the buffer once its bytes are sent.</summary>
    public void Clear()
    {
        if (_buffer.Capacity <= KeptBytes)
        {
            _buffer.ResetWrittenCount();
            return;
        }

        _buffer = new(2 * BatchLimits.FlushBytes);
        _writer.Reset(_buffer);
    }

    /// <summary>Adds a car, whose pairs name it by this id.</summary>
    public void AddCar(LineId id) => _cars.Add(Utf8(id));

    /// <summary>Goes to the next candidate, whose pairs follow.</summary>
    public void Begin(long line, LineId? id) =>
        _candidate = [.. ",\"candidate\":"u8, .. id is null ? "null"u8 : Utf8(id), .. ",\"line\":"u8, .. Digits(line), .. ",\"verdict\":"u8];

    /// <summary>Writes a pair of the candidate and a car, by its place among the cars.</summary>
    public void Write(int car, in PairVerdict pair)
    {
        _buffer.Write("{\"car\":"u8);
        _buffer.Write(_cars[car]);
        _buffer.Write(_candidate);
        _buffer.Write(Verdicts[(int)pair.Verdict]);
        _buffer.Write(",\"decidedBy\":["u8);
        var isFirst = true;
        foreach (var id in pair.DecidedBy)
        {
            if (!isFirst)
                _buffer.Write(","u8);
            _buffer.Write(Names[(int)id]);
            isFirst = false;
        }

        _buffer.Write("],\"probableMm\":"u8);
        if (double.IsNaN(pair.ProbableMm))
            _buffer.Write("null"u8);
        else
            _buffer.Advance(AnswerNumberConverter.Format(_buffer.GetSpan(AnswerNumberConverter.MaximumLength), pair.ProbableMm));
        _buffer.Write("}\n"u8);
    }

    /// <summary>Writes that a car cannot be read.</summary>
    public void WriteCar(long line, LineId? id, Problem problem) => Write("car", id, line, problem);

    /// <summary>Writes that a candidate cannot be read.</summary>
    public void WriteCandidate(long line, LineId? id, Problem problem) => Write("candidate", id, line, problem);

    /// <summary>Writes a problem of neither.</summary>
    public void Write(Problem problem)
    {
        _writer.WriteStartObject();
        End(problem);
    }

    public void Write(CatalogueSummary summary)
    {
        _writer.WriteStartObject();
        _writer.WritePropertyName("summary"u8);
        JsonSerializer.Serialize(_writer, summary, _summary);
        End();
    }

    public void Dispose() => _writer.Dispose();

    private void Write(string name, LineId? id, long line, Problem problem)
    {
        _writer.WriteStartObject();
        _writer.WritePropertyName(name);
        if (id is null)
            _writer.WriteNullValue();
        else
            JsonSerializer.Serialize(_writer, id, _id);
        _writer.WriteNumber("line"u8, line);
        End(problem);
    }

    private void End(Problem problem)
    {
        _writer.WritePropertyName("problem"u8);
        JsonSerializer.Serialize(_writer, problem, ProblemJsonContext.Default.Problem);
        End();
    }

    private void End()
    {
        _writer.WriteEndObject();
        _writer.Flush();
        _writer.Reset(_buffer);
        _buffer.Write("\n"u8);
    }

    private byte[] Utf8(LineId id) => JsonSerializer.SerializeToUtf8Bytes(id, _id);

    private static byte[] Digits(long line)
    {
        var digits = new byte[20];
        Utf8Formatter.TryFormat(line, digits, out var length);
        return digits[..length];
    }

    private static byte[][] Quoted(IReadOnlyList<string> words) => [.. words.Select(static word => Encoding.UTF8.GetBytes($"\"{word}\""))];
}

using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using SetupService.Api.Fitment.CarCheck;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Cars;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// Writes the answer lines of an NDJSON batch into a buffer. By hand, and not through <see cref="BatchAnswerLine"/>, because
/// writing the words from their encoded form without building the line first is half the cost of a line.
/// </summary>
internal sealed class BatchLines : IDisposable
{
    private static readonly JsonEncodedText Line = JsonEncodedText.Encode("line");
    private static readonly JsonEncodedText Id = JsonEncodedText.Encode("id");
    private static readonly JsonEncodedText Verdict = JsonEncodedText.Encode("verdict");
    private static readonly JsonEncodedText DecidedBy = JsonEncodedText.Encode("decidedBy");
    private static readonly JsonEncodedText Governing = JsonEncodedText.Encode("governing");
    private static readonly JsonEncodedText ProbableMm = JsonEncodedText.Encode("probableMm");
    private static readonly JsonEncodedText WorstCaseMm = JsonEncodedText.Encode("worstCaseMm");
    private static readonly JsonEncodedText Failed = JsonEncodedText.Encode("failed");
    private static readonly JsonEncodedText Cautioned = JsonEncodedText.Encode("cautioned");
    private static readonly JsonEncodedText Unknown = JsonEncodedText.Encode("unknown");
    private static readonly JsonEncodedText Front = JsonEncodedText.Encode("front");
    private static readonly JsonEncodedText Rear = JsonEncodedText.Encode("rear");
    private static readonly JsonEncodedText CarResult = JsonEncodedText.Encode("carResult");
    private static readonly JsonEncodedText Result = JsonEncodedText.Encode("result");
    private static readonly JsonEncodedText ProblemName = JsonEncodedText.Encode("problem");
    private static readonly JsonEncodedText SummaryName = JsonEncodedText.Encode("summary");

    private readonly ArrayBufferWriter<byte> _buffer = new(2 * BatchLimits.FlushBytes);
    private readonly Utf8JsonWriter _writer;
    private readonly JsonTypeInfo<CheckAnswer> _answer;
    private readonly JsonTypeInfo<CarCheckAnswer> _carAnswer;
    private readonly JsonTypeInfo<BatchSummary> _summary;

    public BatchLines(JsonContract contract)
    {
        _writer = new Utf8JsonWriter(_buffer, new JsonWriterOptions
        {
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            SkipValidation = true,
        });
        _answer = contract.TypeOf<CheckAnswer>();
        _carAnswer = contract.TypeOf<CarCheckAnswer>();
        _summary = contract.TypeOf<BatchSummary>();
    }

    /// <summary>Number of bytes gathered and not yet sent.</summary>
    public int Length => _buffer.WrittenCount;

    /// <summary>The bytes gathered and not yet sent.</summary>
    public ReadOnlyMemory<byte> Bytes => _buffer.WrittenMemory;

    /// <summary>Empties the buffer once its bytes are sent.</summary>
    public void Clear() => _buffer.ResetWrittenCount();

    /// <summary>Writes a verdict, of a whole car with each axle's.</summary>
    public void Write(long lineNumber, LineId? id, CarSheet sheet, bool isWhole)
    {
        Begin(lineNumber, id, sheet);
        if (isWhole)
        {
            WriteAxle(Front, sheet.Front);
            WriteAxle(Rear, sheet.Rear);
        }

        End();
    }

    /// <summary>Writes a verdict with the answer of the single check.</summary>
    public void Write(long lineNumber, LineId? id, CarSheet sheet, CheckAnswer result)
    {
        Begin(lineNumber, id, sheet);
        _writer.WritePropertyName(Result);
        JsonSerializer.Serialize(_writer, result, _answer);
        End();
    }

    /// <summary>Writes the verdict on a whole car with the answer of its single check.</summary>
    public void Write(long lineNumber, LineId? id, CarSheet sheet, CarCheckAnswer result)
    {
        Begin(lineNumber, id, sheet);
        WriteAxle(Front, sheet.Front);
        WriteAxle(Rear, sheet.Rear);
        _writer.WritePropertyName(CarResult);
        JsonSerializer.Serialize(_writer, result, _carAnswer);
        End();
    }

    public void Write(long lineNumber, LineId? id, Problem problem)
    {
        Begin(lineNumber, id);
        _writer.WritePropertyName(ProblemName);
        JsonSerializer.Serialize(_writer, problem, ProblemJsonContext.Default.Problem);
        End();
    }

    public void Write(BatchSummary summary)
    {
        _writer.WriteStartObject();
        _writer.WritePropertyName(SummaryName);
        JsonSerializer.Serialize(_writer, summary, _summary);
        End();
    }

    public void Dispose() => _writer.Dispose();

    private void Begin(long lineNumber, LineId? id, CarSheet sheet)
    {
        Begin(lineNumber, id);
        WriteVerdict(sheet.Verdict, sheet.DecidedBy);
        if (sheet.Governing is { } place)
            _writer.WriteString(Governing, EnumNames<CheckId>.EncodedOf(place));
        else
            _writer.WriteNull(Governing);
        var margin = sheet.GoverningMargin;
        WriteRoom(margin?.ProbableMm, ProbableMm);
        WriteRoom(margin?.WorstCaseMm, WorstCaseMm);
        WriteNames(Failed, sheet.Failed);
        WriteNames(Cautioned, sheet.Cautioned);
        WriteNames(Unknown, sheet.Unknown);
    }

    private void WriteAxle(JsonEncodedText name, in CheckedAxle? axle)
    {
        if (axle is not { Sheet: var sheet })
            return;
        _writer.WriteStartObject(name);
        WriteVerdict(sheet.Verdict, sheet.DecidedBy);
        WriteRoom(sheet.GoverningMargin?.ProbableMm, ProbableMm);
        _writer.WriteEndObject();
    }

    private void WriteVerdict(CheckStatus verdict, CheckIdSet decidedBy)
    {
        _writer.WriteString(Verdict, EnumNames<CheckStatus>.EncodedOf(verdict));
        WriteNames(DecidedBy, decidedBy);
    }

    private void WriteRoom(double? roomMm, JsonEncodedText name)
    {
        if (roomMm is { } mm)
        {
            _writer.WritePropertyName(name);
            AnswerNumberConverter.Write(_writer, mm);
        }
        else
        {
            _writer.WriteNull(name);
        }
    }

    private void Begin(long lineNumber, LineId? id)
    {
        _writer.WriteStartObject();
        _writer.WriteNumber(Line, lineNumber);
        if (id is null)
            _writer.WriteNull(Id);
        else if (id.Text is { } text)
            _writer.WriteString(Id, text);
        else
            _writer.WriteNumber(Id, id.Number);
    }

    private void WriteNames(JsonEncodedText name, CheckIdSet set)
    {
        _writer.WriteStartArray(name);
        foreach (var id in set)
            _writer.WriteStringValue(EnumNames<CheckId>.EncodedOf(id));
        _writer.WriteEndArray();
    }

    private void End()
    {
        _writer.WriteEndObject();
        _writer.Flush();
        _writer.Reset(_buffer);
        _buffer.Write("\n"u8);
    }
}

using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;

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
    private static readonly JsonEncodedText Result = JsonEncodedText.Encode("result");
    private static readonly JsonEncodedText ProblemName = JsonEncodedText.Encode("problem");
    private static readonly JsonEncodedText SummaryName = JsonEncodedText.Encode("summary");

    private readonly ArrayBufferWriter<byte> _buffer = new(2 * BatchLimits.FlushBytes);
    private readonly Utf8JsonWriter _writer;
    private readonly JsonTypeInfo<CheckAnswer> _answer;
    private readonly JsonTypeInfo<BatchSummary> _summary;

    public BatchLines(JsonContract contract)
    {
        _writer = new Utf8JsonWriter(_buffer, new JsonWriterOptions
        {
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            SkipValidation = true,
        });
        _answer = contract.TypeOf<CheckAnswer>();
        _summary = contract.TypeOf<BatchSummary>();
    }

    /// <summary>Number of bytes gathered and not yet sent.</summary>
    public int Length => _buffer.WrittenCount;

    /// <summary>The bytes gathered and not yet sent.</summary>
    public ReadOnlyMemory<byte> Bytes => _buffer.WrittenMemory;

    /// <summary>Empties the buffer once its bytes are sent.</summary>
    public void Clear() => _buffer.ResetWrittenCount();

    public void Write(long lineNumber, LineId? id, CheckSheet sheet, CheckAnswer? result)
    {
        Begin(lineNumber, id);
        _writer.WriteString(Verdict, EnumNames<CheckStatus>.EncodedOf(sheet.Verdict));
        WriteNames(DecidedBy, sheet.DecidedBy);
        if (sheet.GoverningMargin is { } margin)
        {
            _writer.WriteString(Governing, EnumNames<CheckId>.EncodedOf(sheet.Governing!.Value));
            _writer.WritePropertyName(ProbableMm);
            AnswerNumberConverter.Write(_writer, margin.ProbableMm);
            _writer.WritePropertyName(WorstCaseMm);
            AnswerNumberConverter.Write(_writer, margin.WorstCaseMm);
        }
        else
        {
            _writer.WriteNull(Governing);
            _writer.WriteNull(ProbableMm);
            _writer.WriteNull(WorstCaseMm);
        }

        WriteNames(Failed, sheet.Failed);
        WriteNames(Cautioned, sheet.Cautioned);
        WriteNames(Unknown, sheet.Unknown);
        if (result is not null)
        {
            _writer.WritePropertyName(Result);
            JsonSerializer.Serialize(_writer, result, _answer);
        }

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

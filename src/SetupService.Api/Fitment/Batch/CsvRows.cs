using System.Buffers;
using System.Globalization;
using System.Text;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Words;

namespace SetupService.Api.Fitment.Batch;

/// <summary>Writes the answer rows of a table (RFC 4180) and sends them.</summary>
internal sealed class CsvRows(HttpResponse response, BatchRun run, UnitSystem units)
{
    private static readonly byte[][] Verdicts = Utf8(EnumNames<CheckStatus>.List);
    private static readonly byte[][] Names = Utf8(EnumNames<CheckId>.List);
    private static readonly SearchValues<char> NeedsQuotes = SearchValues.Create("\",\r\n ");

    private readonly ArrayBufferWriter<byte> _buffer = new(2 * BatchLimits.FlushBytes);
    /// <summary>True when the header is written; until then a problem may replace the table.</summary>
    public bool IsStarted { get; private set; }

    /// <summary>Number of bytes gathered and not yet sent.</summary>
    public int Length => _buffer.WrittenCount;

    /// <summary>The line of the row written last; the header's before the first.</summary>
    public long LastLine { get; private set; } = 1;

    /// <summary>Writes the header.</summary>
    public void Start()
    {
        IsStarted = true;
        _buffer.Write("line,id,verdict,decidedBy,governing,probableMm,worstCaseMm,failed,cautioned,unknown,reasons,problem\r\n"u8);
    }

    public void Write(long line, string? id)
    {
        var sheet = run.Sheet;
        Begin(line, id);
        _buffer.Write(Verdicts[(int)sheet.Verdict]);
        Comma();
        Set(sheet.DecidedBy);
        Comma();
        if (sheet.GoverningMargin is { } margin)
        {
            _buffer.Write(Names[(int)sheet.Governing!.Value]);
            Comma();
            Number(margin.ProbableMm);
            Comma();
            Number(margin.WorstCaseMm);
        }
        else
        {
            _buffer.Write(",,"u8);
        }

        Comma();
        Set(sheet.Failed);
        Comma();
        Set(sheet.Cautioned);
        Comma();
        Set(sheet.Unknown);
        Comma();
        if (sheet.DecidedBy.Count > 0)
            Text(string.Join(' ', SummaryWords.Reasons(run.Car!, run.Candidate, sheet, units)));
        _buffer.Write(",\r\n"u8);
    }

    public void Write(long line, string? id, Problem problem)
    {
        Begin(line, id);
        _buffer.Write(",,,,,,,,,"u8);
        Text(problem.Errors.Count == 0 ? problem.Detail : string.Join(" | ", problem.Errors.Select(Sentence)));
        _buffer.Write("\r\n"u8);
    }

    /// <summary>Sends what is gathered once the header is written; until then a problem may still replace the table.</summary>
    public ValueTask SendIfStartedAsync() => IsStarted ? SendAsync() : ValueTask.CompletedTask;

    public async ValueTask SendAsync()
    {
        if (_buffer.WrittenCount == 0)
            return;
        run.Meter();
        await response.BodyWriter.WriteAsync(_buffer.WrittenMemory, response.HttpContext.RequestAborted).ConfigureAwait(false);
        _buffer.ResetWrittenCount();
    }

    private static string Sentence(Fault fault) => fault.Pointer is "" ? $"{fault.Code}: {fault.Message}" : $"{fault.Code} {fault.Pointer}: {fault.Message}";

    private void Begin(long line, string? id)
    {
        LastLine = line;
        Number(line);
        Comma();
        if (id is not null)
            Text(id);
        Comma();
    }

    private void Number<T>(T value)
        where T : IUtf8SpanFormattable
    {
        value.TryFormat(_buffer.GetSpan(32), out var written, default, CultureInfo.InvariantCulture);
        _buffer.Advance(written);
    }

    private void Number(double value) => _buffer.Advance(AnswerNumberConverter.Format(_buffer.GetSpan(AnswerNumberConverter.MaximumLength), value));

    private void Set(CheckIdSet set)
    {
        var isFirst = true;
        foreach (var id in set)
        {
            if (!isFirst)
                _buffer.Write(" "u8);
            _buffer.Write(Names[(int)id]);
            isFirst = false;
        }
    }

    private void Text(string text)
    {
        var isQuoted = text.AsSpan().ContainsAny(NeedsQuotes);
        var cell = isQuoted ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
        Encoding.UTF8.GetBytes(cell, _buffer);
    }

    private void Comma() => _buffer.Write(","u8);

    private static byte[][] Utf8(IReadOnlyList<string> words) => [.. words.Select(Encoding.UTF8.GetBytes)];
}

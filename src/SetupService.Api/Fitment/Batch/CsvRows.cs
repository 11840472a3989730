using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Words;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// Writes the answer rows of a table (RFC 4180) and sends them: with the separator, and the decimal mark, that the table sent has, and with the caller's further
/// columns behind the answer's.
/// </summary>
internal sealed class CsvRows(HttpResponse response, BatchFlow flow, BatchRun run, VerdictFilter only, UnitSystem units) : ITableAnswers
{
    private const int VerdictColumn = 2;

    private static readonly byte[][] Verdicts = Utf8(EnumNames<CheckStatus>.List);
    private static readonly byte[][] Names = Utf8(EnumNames<CheckId>.List);

    private readonly ArrayBufferWriter<byte> _buffer = new(2 * BatchLimits.FlushBytes);
    private SearchValues<char> _needsQuotes = SearchValues.Create("");
    private int[] _further = [];
    private byte _separator;
    private bool _hasDecimalComma;
    private long _lastLine = 1;

    /// <summary>The columns of the answer, before the caller's further ones.</summary>
    public static IReadOnlyList<string> AnswerColumns { get; } =
        ["line", "id", "verdict", "decidedBy", "governing", "probableMm", "worstCaseMm", "failed", "cautioned", "unknown", "reasons", "problem"];

    /// <summary>True when the header is written; until then a problem may replace the table.</summary>
    public bool IsStarted { get; private set; }

    /// <inheritdoc />
    public void Start(IReadOnlyList<string> header, CsvColumn[] columns, TableSeparator separator)
    {
        IsStarted = true;
        _separator = (byte)separator.Letter;
        _needsQuotes = SearchValues.Create("\"\r\n " + separator.Letter);
        _further = [.. Enumerable.Range(0, columns.Length).Where(i => columns[i].IsFurther)];
        for (var i = 0; i < AnswerColumns.Count; i++)
        {
            if (i > 0)
                Next();
            Text(AnswerColumns[i]);
        }

        foreach (var i in _further)
        {
            Next();
            Text(header[i]);
        }

        _buffer.Write("\r\n"u8);
    }

    /// <inheritdoc />
    public bool TryAnswer(in TableRow row, CsvRow candidate, [NotNullWhen(false)] out Refusal? refusal)
    {
        _lastLine = row.Line;
        if (!run.TryEvaluate(candidate.Line, out refusal))
            return false;
        run.CountAnswered();
        _hasDecimalComma = candidate.HasDecimalComma;
        if (only.Keeps(run.Sheet.Verdict))
            Write(row);
        return true;
    }

    /// <inheritdoc />
    public void Refuse(in TableRow row, Problem problem)
    {
        _lastLine = row.Line;
        Begin(row.Line, row.Id);
        Nothing(problem);
        Further(row);
        run.CountRefused();
    }

    /// <summary>Writes a row behind the last of the table.</summary>
    public void WriteLast(Problem problem)
    {
        Begin(_lastLine + 1, "");
        Nothing(problem);
        foreach (var _ in _further)
            Next();
        _buffer.Write("\r\n"u8);
    }

    /// <inheritdoc />
    public ValueTask SendMuchAsync() => _buffer.WrittenCount >= BatchLimits.FlushBytes ? SendAsync() : ValueTask.CompletedTask;

    /// <inheritdoc />
    public ValueTask SendAllAsync() => IsStarted ? SendAsync() : ValueTask.CompletedTask;

    public async ValueTask SendAsync()
    {
        response.HttpContext.RequestAborted.ThrowIfCancellationRequested();
        run.Meter(flow);
        if (_buffer.WrittenCount == 0)
            return;
        await flow.SendAsync(response.BodyWriter, _buffer.WrittenMemory).ConfigureAwait(false);
        _buffer.ResetWrittenCount();
    }

    private void Write(in TableRow row)
    {
        var sheet = run.Sheet;
        Begin(row.Line, row.Id);
        _buffer.Write(Verdicts[(int)sheet.Verdict]);
        Next();
        Set(sheet.DecidedBy);
        Next();
        if (sheet.GoverningMargin is { } margin)
        {
            _buffer.Write(Names[(int)sheet.Governing!.Value]);
            Next();
            Number(margin.ProbableMm);
            Next();
            Number(margin.WorstCaseMm);
        }
        else
        {
            Next();
            Next();
        }

        Next();
        Set(sheet.Failed);
        Next();
        Set(sheet.Cautioned);
        Next();
        Set(sheet.Unknown);
        Next();
        if (sheet.DecidedBy.Count > 0)
        {
            var axle = sheet.OneAxle;
            Text(string.Join(' ', SummaryWords.Reasons(axle.Car, axle.Candidate, axle.Sheet, units)));
        }

        Next();
        Further(row);
    }

    /// <summary>Leaves the columns of a verdict empty and says why there is none.</summary>
    private void Nothing(Problem problem)
    {
        for (var column = VerdictColumn; column < AnswerColumns.Count - 1; column++)
            Next();
        Text(problem.Errors.Count == 0 ? problem.Detail : string.Join(" | ", problem.Errors.Select(Sentence)));
    }

    /// <summary>The caller's further cells and the end of the row; a row of another width has none to pass through.</summary>
    private void Further(in TableRow row)
    {
        foreach (var i in _further)
        {
            Next();
            if (row.IsWhole)
                Text(row.Cells[i].Span);
        }

        _buffer.Write("\r\n"u8);
    }

    private static string Sentence(Fault fault) => fault.Pointer is "" ? $"{fault.Code}: {fault.Message}" : $"{fault.Code} {fault.Pointer}: {fault.Message}";

    private void Begin(long line, string? id)
    {
        line.TryFormat(_buffer.GetSpan(32), out var written, default, CultureInfo.InvariantCulture);
        _buffer.Advance(written);
        Next();
        Text(id);
        Next();
    }

    private void Number(double value)
    {
        var digits = _buffer.GetSpan(AnswerNumberConverter.MaximumLength);
        var length = AnswerNumberConverter.Format(digits, value);
        if (_hasDecimalComma)
            digits[..length].Replace((byte)'.', (byte)',');
        _buffer.Advance(length);
    }

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

    private void Text(ReadOnlySpan<char> text)
    {
        if (!text.ContainsAny(_needsQuotes))
            Encoding.UTF8.GetBytes(text, _buffer);
        else
            Encoding.UTF8.GetBytes($"\"{text.ToString().Replace("\"", "\"\"", StringComparison.Ordinal)}\"", _buffer);
    }

    private void Next()
    {
        _buffer.Write(new ReadOnlySpan<byte>(in _separator));
    }

    private static byte[][] Utf8(IReadOnlyList<string> words) => [.. words.Select(Encoding.UTF8.GetBytes)];
}

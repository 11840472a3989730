using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using nietras.SeparatedValues;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Fitment.Batch;

/// <summary>What becomes of the candidates of a table.</summary>
internal interface ITableAnswers
{
    /// <summary>The header was read without a fault; rows follow.</summary>
    void Start(IReadOnlyList<string> header, CsvColumn[] columns, TableSeparator separator);

    /// <summary>Answers a candidate; false where its mapping is refused.</summary>
    bool TryAnswer(in TableRow row, CsvRow candidate, [NotNullWhen(false)] out Refusal? refusal);

    /// <summary>Answers a row that is no candidate.</summary>
    void Refuse(in TableRow row, Problem problem);

    /// <summary>Called after each row: sends what is gathered once it is much.</summary>
    ValueTask SendMuchAsync();

    /// <summary>Called before the caller is waited for: sends what is gathered, once the table has begun to be answered.</summary>
    ValueTask SendAllAsync();
}

/// <summary>A row of a table of candidates.</summary>
/// <param name="line">Number of the line it starts at.</param>
/// <param name="id">Its id, where one can be read.</param>
/// <param name="cells">Its cells.</param>
/// <param name="isWhole">True where it has a cell for each column of the header.</param>
internal readonly ref struct TableRow(long line, string? id, SepReader.Row cells, bool isWhole)
{
    public long Line { get; } = line;

    public string? Id { get; } = id;

    public SepReader.Row Cells { get; } = cells;

    public bool IsWhole { get; } = isWhole;
}

/// <summary>
/// Reads a table of candidates row by row: the separator as the header has it, rows without a filled cell left out, every fault of a row told as that of the
/// same candidate in JSON.
/// </summary>
internal sealed class CandidateTable(JsonContract contract, BatchFlow flow, ITableAnswers answers)
{
    private readonly ContractReader<BatchCandidateLine> _candidates = contract.ReaderOf<BatchCandidateLine>();
    private readonly CsvRow _row = new();
    private CsvColumn[] _columns = [];
    private TableSeparator _separator;

    /// <summary>Answers every row; a problem where the header is refused, so that there is no answer.</summary>
    public async Task<Problem?> AnswerAsync(Stream part)
    {
        TableStream table = new(part, flow, answers.SendAllAsync);
        using var reader = await Open(table).ConfigureAwait(false);
        _separator = new(reader.Spec.Sep.Separator);
        string[] header = [.. reader.Header.ColNames];
        if (!new CsvColumns(contract).TryRead(header, _separator, out var columns, out var refusal))
            return Problem.Invalid(refusal);

        _columns = columns;
        answers.Start(header, columns, _separator);
        await foreach (var cells in reader)
        {
            Answer(cells, table);
            await answers.SendMuchAsync().ConfigureAwait(false);
        }

        return null;
    }

    private static ValueTask<SepReader> Open(Stream table) =>
        Sep.Auto.Reader(static options => options with
        {
            // Rows not as wide as the header, and duplicate names, get this service's own messages.
            DisableColCountCheck = true,
            ColNameComparer = NoNameIsAnother.Instance,
            Unescape = true,
            Trim = SepTrim.Outer,
            CultureInfo = CultureInfo.InvariantCulture,
        }).FromAsync(table);

    private void Answer(SepReader.Row cells, TableStream table)
    {
        var line = cells.LineNumberFrom;
        var wasCut = table.WasCut(line);
        if (!wasCut && IsBlank(cells))
            return;

        _row.Clear();
        var isWhole = cells.ColCount == _columns.Length;
        var isSound = !IsNoText(cells.Span) && !wasCut && isWhole;
        for (var i = 0; isSound && i < _columns.Length; i++)
        {
            if (_columns[i].IsFurther)
                continue;
            var cell = cells[i].Span.Trim();
            isSound = cell.IsEmpty || _columns[i].TrySet(_row, cell, _separator);
        }

        Refusal? refusal = null;
        if (isSound && _row.HasTyre && answers.TryAnswer(new(table.LineSent(line), _row.Id, cells, isWhole), _row, out refusal))
            return;
        answers.Refuse(new(table.LineSent(line), IdOf(cells), cells, isWhole), Refuse(cells, wasCut, refusal));
    }

    /// <summary>True where no cell is filled.</summary>
    private static bool IsBlank(SepReader.Row cells)
    {
        // Most rows begin with a letter or digit, and need no look at their cells.
        if (cells.Span is [var first, ..] && char.IsAsciiLetterOrDigit(first))
            return false;
        for (var i = 0; i < cells.ColCount; i++)
        {
            if (!cells[i].Span.IsWhiteSpace())
                return false;
        }

        return true;
    }

    /// <summary>The id of a row whose other cells are not valid.</summary>
    private string? IdOf(SepReader.Row cells)
    {
        var index = Array.FindIndex(_columns, static column => column.Name == "id");
        return index < 0 || index >= cells.ColCount || cells[index].Span.Trim() is not { Length: > 0 and <= LineId.MaximumLength } id ? null : id.ToString();
    }

    /// <summary>True when the row holds U+FFFD, which the decoder writes for bytes that are not UTF-8, or NUL.</summary>
    private static bool IsNoText(ReadOnlySpan<char> row) => row.ContainsAny('\uFFFD', '\0');

    private Problem Refuse(SepReader.Row cells, bool wasCut, Refusal? found)
    {
        if (wasCut)
            return BatchProblems.LineTooLong(flow.Caps.LineBytes);
        if (IsNoText(cells.Span))
            return Problem.Invalid(Fault.At("", FaultCodes.Syntax, "The row has bytes that are not UTF-8 text."));
        if (cells.ColCount != _columns.Length)
        {
            return Problem.Invalid(Fault.At("", FaultCodes.Inconsistent, string.Create(
                CultureInfo.InvariantCulture, $"The row has {cells.ColCount} cells and the header {_columns.Length}, with {_separator.Name} between them.")));
        }

        var json = CsvRowJson.Write(cells, _columns, _separator).Span;
        return Problem.Invalid(found is not null ? _candidates.Refuse(json, found)
            : _candidates.Read(json, out _, out var refusal) ? throw new InvalidOperationException("A row was refused but has no fault.")
            : refusal);
    }

    /// <summary>
    /// Keeps the CSV reader from refusing a header with duplicate names. No name equals any, not even itself: the reader returns short
    /// duplicate names as one instance, and columns are only read by number.
    /// </summary>
    private sealed class NoNameIsAnother : IEqualityComparer<string>
    {
        public static NoNameIsAnother Instance { get; } = new();

        public bool Equals(string? x, string? y) => false;

        public int GetHashCode(string obj) => 0;
    }
}

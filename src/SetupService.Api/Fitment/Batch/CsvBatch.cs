using System.Globalization;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;
using nietras.SeparatedValues;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;

namespace SetupService.Api.Fitment.Batch;

/// <summary>Answers a table of candidates with a table, one row for each, as they arrive.</summary>
internal sealed class CsvBatch(JsonContract contract, BatchSettings settings, string boundary, UnitSystem units) : IResult
{
    /// <summary>The media type of the answer, and of the part with the candidates.</summary>
    public const string MediaType = "text/csv";

    /// <summary>The media type of the request.</summary>
    public const string RequestMediaType = "multipart/form-data";

    /// <summary>Longest boundary a message may have (RFC 2046, section 5.1.1).</summary>
    public const int LongestBoundary = 70;

    private readonly BatchRun _run = new(contract);

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        BatchTransport.Prepare(httpContext, MediaType + "; charset=utf-8; header=present");
        using ReadTimeout timeout = new(settings.ReadTimeout, httpContext.RequestAborted);
        MultipartReader parts = new(boundary, httpContext.Request.Body);
        CsvRows rows = new(httpContext.Response, _run, units);
        try
        {
            var problem = await SetCarAsync(parts, timeout).ConfigureAwait(false)
                ?? await AnswerAsync(parts, timeout, rows).ConfigureAwait(false);
            if (problem is not null)
                await problem.ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        catch (Exception broken) when (IsMalformed(broken, httpContext) && !httpContext.Response.HasStarted)
        {
            BrokenBody.EndConnection(httpContext);
            var malformed = Problem.Invalid(Fault.At("", FaultCodes.Syntax, "The body is not multipart/form-data with the boundary its Content-Type names, or its chunks (Transfer-Encoding) are malformed."));
            await malformed.ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (timeout.IsExpired && !rows.IsStarted)
        {
            BrokenBody.EndConnection(httpContext);
            await Problem.Create(ProblemTypes.RequestTimeout).ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        catch (Exception cut) when (IsMalformed(cut, httpContext) || timeout.IsExpired)
        {
            BrokenBody.EndConnection(httpContext);

            // Rows are already sent: a last row with a problem says that the table was cut off.
            rows.Write(rows.LastLine + 1, id: null, Problem.Invalid(Fault.At("/candidates", FaultCodes.Syntax, "The table broke off, or nothing came in time; the rows up to here stand.")));
            await rows.SendAsync().ConfigureAwait(false);
        }
    }

    /// <summary>True when the parts, or the message they come in, could not be read; false where the caller went away.</summary>
    private static bool IsMalformed(Exception exception, HttpContext context) =>
        exception is IOException or InvalidDataException && !HangUps.Explain(exception, context);

    private async Task<Problem?> SetCarAsync(MultipartReader parts, ReadTimeout timeout)
    {
        var part = await NextAsync(parts, timeout).ConfigureAwait(false);
        if (NameOf(part) != "car")
            return Missing("/car", "The first part must be car, with the JSON of vehicle and axle; candidates come after it.");

        using MemoryStream json = new();
        var chunk = new byte[4096];
        int read;
        do
        {
            read = 0;
            await timeout.WaitAsync(async token => read = await part!.Body.ReadAsync(chunk, token).ConfigureAwait(false)).ConfigureAwait(false);
            json.Write(chunk, 0, read);
            if (json.Length > BatchLimits.LineBytes)
                return BatchProblems.LineTooLong();
        }
        while (read > 0);

        return _run.TrySetCar(json.GetBuffer().AsSpan(0, (int)json.Length), out var refusal)
            ? null
            : Problem.Invalid(refusal.Under("car"));
    }

    private async Task<Problem?> AnswerAsync(MultipartReader parts, ReadTimeout timeout, CsvRows rows)
    {
        var part = await NextAsync(parts, timeout).ConfigureAwait(false);
        if (NameOf(part) != "candidates")
            return Missing("/candidates", "The second part must be candidates, with the table as text/csv.");

        TableStream table = new(part!.Body, timeout, rows.SendIfStartedAsync);
        using var reader = await Open(table).ConfigureAwait(false);
        CsvColumns known = new(contract);
        if (!known.TryRead([.. reader.Header.ColNames], out var columns, out var refusal))
            return Problem.Invalid(refusal);

        rows.Start();
        CsvRow row = new();
        await foreach (var cells in reader)
        {
            Answer(cells, columns, row, table, rows);
            if (rows.Length >= BatchLimits.FlushBytes)
                await rows.SendAsync().ConfigureAwait(false);
        }

        if (await NextAsync(parts, timeout).ConfigureAwait(false) is { } surplus)
            rows.Write(rows.LastLine + 1, id: null, Problem.Invalid(Surplus(surplus)));
        await rows.SendAsync().ConfigureAwait(false);
        return null;
    }

    private static ValueTask<SepReader> Open(Stream table) =>
        Sep.New(',').Reader(static options => options with
        {
            // Rows not as wide as the header, and duplicate names, get this service's own messages.
            DisableColCountCheck = true,
            ColNameComparer = NoNameIsAnother.Instance,
            Unescape = true,
            Trim = SepTrim.All,
            CultureInfo = CultureInfo.InvariantCulture,
        }).FromAsync(table);

    private void Answer(SepReader.Row cells, CsvColumn[] columns, CsvRow row, TableStream table, CsvRows rows)
    {
        var line = cells.LineNumberFrom;
        if (cells.ColCount == 1 && columns.Length > 1 && cells.Span.IsWhiteSpace())
            return;

        row.Clear();
        var isSound = !IsNoText(cells.Span) && !table.WasCut(line) && cells.ColCount == columns.Length;
        for (var i = 0; isSound && i < columns.Length; i++)
        {
            var cell = cells[i].Span;
            isSound = cell.IsEmpty || columns[i].TrySet(row, cell);
        }

        Refusal? refusal = null;
        if (isSound && row.HasTyre && _run.TryEvaluate(row.Candidate, out refusal))
        {
            rows.Write(table.LineSent(line), row.Id);
            _run.CountAnswered();
            return;
        }

        rows.Write(table.LineSent(line), IdOf(cells, columns), Refuse(cells, columns, table, refusal));
        _run.CountRefused();
    }

    /// <summary>The id of a row whose other cells are not valid.</summary>
    private static string? IdOf(SepReader.Row cells, CsvColumn[] columns)
    {
        var index = Array.FindIndex(columns, static column => column.Name == "id");
        return index < 0 || index >= cells.ColCount || cells[index].Span is not { Length: > 0 and <= LineId.MaximumLength } id ? null : id.ToString();
    }

    /// <summary>True when the row holds U+FFFD, which the decoder writes for bytes that are not UTF-8, or NUL.</summary>
    private static bool IsNoText(ReadOnlySpan<char> row) => row.ContainsAny('\uFFFD', '\0');

    private Problem Refuse(SepReader.Row cells, CsvColumn[] columns, TableStream table, Refusal? found)
    {
        if (table.WasCut(cells.LineNumberFrom))
            return BatchProblems.LineTooLong();
        if (IsNoText(cells.Span))
            return Problem.Invalid(Fault.At("", FaultCodes.Syntax, "The row has bytes that are not UTF-8 text."));
        if (cells.ColCount != columns.Length)
            return Problem.Invalid(Fault.At("", FaultCodes.Inconsistent, string.Create(CultureInfo.InvariantCulture, $"The row has {cells.ColCount} cells and the header {columns.Length}.")));

        var json = CsvRowJson.Write(cells, columns).Span;
        return Problem.Invalid(found is not null ? _run.Candidates.Refuse(json, found)
            : _run.Candidates.Read(json, out _, out var refusal) ? throw new InvalidOperationException("A row was refused but has no fault.")
            : refusal);
    }

    private static async Task<MultipartSection?> NextAsync(MultipartReader parts, ReadTimeout timeout)
    {
        MultipartSection? part = null;
        await timeout.WaitAsync(async token => part = await parts.ReadNextSectionAsync(token).ConfigureAwait(false)).ConfigureAwait(false);
        return part;
    }

    private static string? NameOf(MultipartSection? part) =>
        ContentDispositionHeaderValue.TryParse(part?.ContentDisposition, out var disposition)
            ? HeaderUtilities.RemoveQuotes(disposition.Name).ToString()
            : null;

    private static Fault Surplus(MultipartSection part)
    {
        var name = NameOf(part) ?? "";
        return Fault.At(
            new PointerPath().Then(name),
            FaultCodes.UnknownMember,
            $"A part {TokenText.Quote(name)} comes after the candidates; car and candidates are read, and nothing after them.");
    }

    private static Problem Missing(string pointer, string message) => Problem.Invalid(Fault.At(pointer, FaultCodes.Required, message));

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

using System.Diagnostics.CodeAnalysis;
using System.IO.Pipelines;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Fitment.Cars;

namespace SetupService.Api.Fitment.Catalogue;

/// <summary>
/// Answers a stream of candidates, as lines or as a table, with a line for each pair of candidate and car that is asked for. Holds the cars, and nothing that
/// grows with the candidates. A caller that goes away ends it within a candidate.
/// </summary>
internal sealed class CatalogueAnswer(JsonContract contract, string boundary, VerdictFilter only) : IResult
{
    private const int ReadBytes = 65_536;

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        using var flow = BatchFlow.Start(httpContext, NdjsonBatch.MediaType);
        FormParts parts = new(boundary, httpContext.Request.Body, flow);
        using CatalogueLines lines = new(contract);
        CatalogueCars cars = new(contract, lines);
        Pairs? pairs = null;
        try
        {
            var problem = await ReadCarsAsync(parts, cars, flow).ConfigureAwait(false);
            if (problem is null)
            {
                pairs = new(contract, cars, lines, only, httpContext, flow);
                problem = await AnswerAsync(parts, pairs, flow).ConfigureAwait(false);
            }

            if (problem is null)
                await pairs!.EndAsync(null).ConfigureAwait(false);
            else
                await problem.ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        catch (Exception broken) when (FormParts.IsMalformed(broken, httpContext) && pairs?.IsStarted != true)
        {
            await FormParts.Malformed(httpContext).ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (flow.EndReason is not null && pairs?.IsStarted != true)
        {
            BrokenBody.EndConnection(httpContext);
            await Problem.Create(ProblemTypes.RequestTimeout).ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        catch (Exception cut) when (FormParts.IsMalformed(cut, httpContext) || flow.EndReason is not null)
        {
            BrokenBody.EndConnection(httpContext);
            await pairs!.EndAsync(flow.ReasonOf(cut)).ConfigureAwait(false);
        }
    }

    private static async Task<Problem?> ReadCarsAsync(FormParts parts, CatalogueCars cars, BatchFlow flow)
    {
        var part = await parts.NextAsync().ConfigureAwait(false);
        return FormParts.NameOf(part) == "cars"
            ? await cars.ReadAsync(part!.Body, flow).ConfigureAwait(false)
            : FormParts.Missing("/cars", "The first part must be cars, a line of JSON with id and vehicle for each; candidates come after it.");
    }

    private async Task<Problem?> AnswerAsync(FormParts parts, Pairs pairs, BatchFlow flow)
    {
        var part = await parts.NextAsync().ConfigureAwait(false);
        if (FormParts.NameOf(part) != "candidates")
            return FormParts.Missing("/candidates", "The second part must be candidates: JSON lines, or a table as text/csv.");

        var pipe = PipeReader.Create(part!.Body, new StreamPipeReaderOptions(bufferSize: ReadBytes, leaveOpen: true));
        var problem = await IsTableAsync(part, pipe, flow).ConfigureAwait(false)
            ? await new CandidateTable(contract, flow, pairs).AnswerAsync(pipe.AsStream(leaveOpen: true)).ConfigureAwait(false)
            : await AnswerLinesAsync(new LineFeed(pipe, flow.Caps.LineBytes), pairs, flow).ConfigureAwait(false);
        if (problem is null && await parts.NextAsync().ConfigureAwait(false) is { } surplus)
            pairs.Refuse(FormParts.Surplus(surplus, "cars"));
        return problem;
    }

    /// <summary>True for a table: by the part's Content-Type, and where that is neither a table's nor that of lines, by how the part begins.</summary>
    private static async Task<bool> IsTableAsync(MultipartSection part, PipeReader pipe, BatchFlow flow)
    {
        if (MediaTypeHeaderValue.TryParse(part.ContentType, out var type) && type.MediaType.Value is CsvBatch.MediaType or NdjsonBatch.MediaType)
            return type.MediaType.Value == CsvBatch.MediaType;

        for (long left = 0; ;)
        {
            ReadResult read = default;
            await flow.WaitAsync(async token =>
            {
                read = await pipe.ReadAsync(token).ConfigureAwait(false);
                return read.Buffer.Length - left;
            }).ConfigureAwait(false);
            left = read.Buffer.Length;
            var first = FirstLetter(read);
            pipe.AdvanceTo(read.Buffer.Start, first is null ? read.Buffer.End : read.Buffer.Start);
            if (first is not null || read.IsCompleted)
                return first is not (null or (byte)'{');
        }
    }

    private static byte? FirstLetter(in ReadResult read)
    {
        foreach (var segment in read.Buffer)
        {
            var at = segment.Span.IndexOfAnyExcept("\uFEFF \t\r\n"u8);
            if (at >= 0)
                return segment.Span[at];
        }

        return null;
    }

    private static async Task<Problem?> AnswerLinesAsync(LineFeed feed, Pairs pairs, BatchFlow flow)
    {
        while (true)
        {
            await flow.WaitAsync(feed.WaitAsync).ConfigureAwait(false);
            while (feed.TryTake(out var line))
            {
                pairs.Answer(feed.Text(line), feed);
                await pairs.SendMuchAsync().ConfigureAwait(false);
            }

            if (feed.IsCompleted)
                return pairs.IsStarted ? null : FormParts.Missing("/candidates", "The part candidates has no line: send one with a candidate for each to be checked.");
            await pairs.SendAllAsync().ConfigureAwait(false);
        }
    }

    /// <summary>Answers candidates with the pairs they make.</summary>
    private sealed class Pairs : ITableAnswers
    {
        private readonly ContractReader<BatchCandidateLine> _candidates;
        private readonly CatalogueCars _cars;
        private readonly CatalogueCheck _check;
        private readonly PairVerdict[] _verdicts;
        private readonly VerdictCounter _counts = new();
        private readonly CatalogueLines _lines;
        private readonly VerdictFilter _only;
        private readonly HttpContext _context;
        private readonly BatchFlow _flow;
        private long _candidateCount;
        private long _refusedCount;
        private long _metered;
        private long _paidPairs;
        private long _refusedCandidates;
        private long _paidRefused;

        public Pairs(JsonContract contract, CatalogueCars cars, CatalogueLines lines, VerdictFilter only, HttpContext context, BatchFlow flow)
        {
            _candidates = contract.ReaderOf<BatchCandidateLine>();
            _cars = cars;
            _check = new(cars.Cars);
            _verdicts = new PairVerdict[cars.Cars.Count];
            _lines = lines;
            _only = only;
            _context = context;
            _flow = flow;
        }

        /// <summary>True once a candidate, or the header of a table, was read: until then a problem may take the answer's place.</summary>
        public bool IsStarted { get; private set; }

        /// <summary>Answers a line.</summary>
        public void Answer(ReadOnlySpan<byte> utf8, LineFeed feed)
        {
            if (feed.IsTooLong)
                Refuse(feed.LineNumber, LineClassifier.Classify(utf8).Id, BatchProblems.LineTooLong(feed.MostBytes));
            else if (LineFeed.IsBlank(utf8))
                return;
            else if (!_candidates.TryRead(utf8, out var line) && !_candidates.Read(utf8, out line, out var refusal))
                Refuse(feed.LineNumber, LineClassifier.Classify(utf8).Id, Problem.Invalid(refusal));
            else if (!CandidateMapper.Map(line).TryGet(out var candidate, out refusal))
                Refuse(feed.LineNumber, line.Id, Problem.Invalid(_candidates.Refuse(utf8, refusal)));
            else
                Answer(feed.LineNumber, line.Id, candidate);
        }

        /// <inheritdoc />
        public void Start(IReadOnlyList<string> header, CsvColumn[] columns, TableSeparator separator) => IsStarted = true;

        /// <inheritdoc />
        public bool TryAnswer(in TableRow row, CsvRow candidate, [NotNullWhen(false)] out Refusal? refusal)
        {
            if (!CandidateMapper.Map(candidate.Line).TryGet(out var mapped, out refusal))
                return false;
            Answer(row.Line, IdOf(row), mapped);
            return true;
        }

        /// <inheritdoc />
        public void Refuse(in TableRow row, Problem problem) => Refuse(row.Line, IdOf(row), problem);

        /// <summary>Says what else is wrong with what was sent.</summary>
        public void Refuse(Problem problem) => _lines.Write(problem);

        /// <inheritdoc />
        public ValueTask SendMuchAsync()
        {
            _flow.ThrowIfEnded();
            return _lines.Length >= BatchLimits.FlushBytes ? SendAllAsync() : ValueTask.CompletedTask;
        }

        /// <inheritdoc />
        public async ValueTask SendAllAsync()
        {
            if (!IsStarted)
                return;
            ServiceMeter.CountLines(_candidateCount - _metered);
            _counts.Meter();
            _flow.ChargeLines(_candidateCount - _metered);
            _flow.ChargePairs(_counts.Total - _paidPairs);
            _flow.ChargeRequests(_refusedCandidates - _paidRefused);
            (_metered, _paidPairs, _paidRefused) = (_candidateCount, _counts.Total, _refusedCandidates);

            // Where nothing is kept yet, the caller still sees that the work has begun.
            if (_lines.Length == 0 && _context.Response.HasStarted)
                return;
            await _flow.SendAsync(_context.Response.BodyWriter, _lines.Bytes).ConfigureAwait(false);
            _lines.Clear();
        }

        /// <summary>Closes the answer.</summary>
        /// <param name="reason">Why it is not complete; null where it is.</param>
        public ValueTask EndAsync(string? reason)
        {
            _lines.Write(new CatalogueSummary
            {
                CarCount = _cars.Count,
                CandidateCount = _candidateCount,
                AnsweredCount = _counts.Total,
                RefusedCount = _refusedCount,
                Verdicts = _counts.ToCounts(),
                IsComplete = reason is null,
                Reason = reason,
            });
            return SendAllAsync();
        }

        private void Answer(long line, LineId? id, in CarCandidate candidate)
        {
            IsStarted = true;
            _candidateCount++;
            _refusedCount += _cars.RefusedCount;
            _check.Evaluate(candidate, _verdicts);
            var isBegun = false;
            for (var car = 0; car < _verdicts.Length; car++)
            {
                ref readonly var pair = ref _verdicts[car];
                _counts.Count(pair.Verdict);
                if (!_only.Keeps(pair.Verdict))
                    continue;
                if (!isBegun)
                    _lines.Begin(line, id);
                isBegun = true;
                _lines.Write(car, pair);
            }
        }

        private void Refuse(long line, LineId? id, Problem problem)
        {
            IsStarted = true;
            _candidateCount++;
            _refusedCandidates++;
            _refusedCount += _cars.Count;
            _lines.WriteCandidate(line, id, problem);
        }

        private static LineId? IdOf(in TableRow row) => row.Id is { } id ? new LineId { Text = id } : null;
    }
}

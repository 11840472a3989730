using System.Buffers;
using System.Text.Json;
using SetupService.Api.Fitment.CarCheck;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http;
using SetupService.Api.Http.Contract;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;
using SetupService.Domain.Fitment.Cars;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// Answers a stream of lines with a stream of lines: reads what has come, answers every whole line of it, sends the answers,
/// and waits for more. A caller that goes away ends it within a line.
/// </summary>
internal sealed class NdjsonBatch(JsonContract contract, CheckDetail detail, VerdictFilter only, UnitSystem units) : IResult
{
    /// <summary>The media type of the lines, both ways.</summary>
    public const string MediaType = "application/x-ndjson";

    private readonly BatchRun _run = new(contract);
    private bool _hasLines;

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        using var flow = BatchFlow.Start(httpContext, MediaType);
        using BatchLines lines = new(contract);
        LineFeed feed = new(httpContext.Request.BodyReader, flow.Caps.LineBytes);
        string? cutShort = null;
        try
        {
            while (true)
            {
                await flow.WaitAsync(feed.WaitAsync).ConfigureAwait(false);
                while (feed.TryTake(out var line))
                {
                    flow.ThrowIfEnded();
                    Answer(line, feed, lines);
                    if (lines.Length >= BatchLimits.FlushBytes)
                        await SendAsync(httpContext, flow, lines).ConfigureAwait(false);
                }

                if (feed.IsCompleted)
                    break;
                await SendAsync(httpContext, flow, lines).ConfigureAwait(false);
            }
        }
        catch (OperationCanceledException ended) when (flow.EndReason is not null)
        {
            BrokenBody.EndConnection(httpContext);
            cutShort = flow.ReasonOf(ended);
        }
        catch (IOException broken) when (!HangUps.Explain(broken, httpContext))
        {
            if (!_run.HasAnswers)
            {
                await BrokenBody.Refusal(broken, httpContext).ExecuteAsync(httpContext).ConfigureAwait(false);
                return;
            }

            BrokenBody.EndConnection(httpContext);
            cutShort = flow.ReasonOf(broken);
        }
        finally
        {
            feed.Finish();
        }

        if (cutShort is null && !_hasLines)
        {
            await BatchProblems.NothingSent().ExecuteAsync(httpContext).ConfigureAwait(false);
            return;
        }

        lines.Write(_run.Summary(cutShort));
        await SendAsync(httpContext, flow, lines).ConfigureAwait(false);
    }

    private async ValueTask SendAsync(HttpContext context, BatchFlow flow, BatchLines lines)
    {
        _run.Meter(flow);
        if (lines.Length == 0)
            return;
        await flow.SendAsync(context.Response.BodyWriter, lines.Bytes).ConfigureAwait(false);
        lines.Clear();
    }

    private void Answer(in ReadOnlySequence<byte> line, LineFeed feed, BatchLines lines)
    {
        var utf8 = feed.Text(line);
        _hasLines |= feed.IsTooLong || !LineFeed.IsBlank(utf8);
        if (feed.IsTooLong)
        {
            RefuseTooLong(utf8, feed, lines);
            return;
        }

        if (LineFeed.IsBlank(utf8))
            return;
        if (_run.Candidates.TryRead(utf8, out var candidate))
        {
            AnswerCandidate(utf8, candidate, feed.LineNumber, lines);
            return;
        }

        var (isCar, id) = LineClassifier.Classify(utf8);
        if (isCar)
            SetCar(utf8, feed.LineNumber, id, lines);
        else if (_run.Candidates.Read(utf8, out candidate, out var refusal))
            AnswerCandidate(utf8, candidate, feed.LineNumber, lines);
        else
            Refuse(lines, feed.LineNumber, id, Problem.Invalid(refusal));
    }

    private void AnswerCandidate(ReadOnlySpan<byte> utf8, BatchCandidateLine line, long lineNumber, BatchLines lines)
    {
        if (_run.Car is null)
        {
            Refuse(lines, lineNumber, line.Id, BatchProblems.NoCar());
        }
        else if (_run.TryEvaluate(line, out var refusal))
        {
            _run.CountAnswered();
            if (only.Keeps(_run.Sheet.Verdict))
                Write(line.Id, lineNumber, lines);
        }
        else
        {
            Refuse(lines, lineNumber, line.Id, Problem.Invalid(_run.Candidates.Refuse(utf8, refusal)));
        }
    }

    private void Write(LineId? id, long lineNumber, BatchLines lines)
    {
        var isWhole = _run.Candidate.IsWhole(_run.Car!);
        if (detail != CheckDetail.Verdict)
            _run.CountDetailed();
        if (detail == CheckDetail.Verdict)
            lines.Write(lineNumber, id, _run.Sheet, isWhole);
        else if (isWhole)
            lines.Write(lineNumber, id, _run.Sheet, CheckedCar.From(_run.Sheet).ToAnswer(units, detail));
        else
            lines.Write(lineNumber, id, _run.Sheet, Answer(_run.Sheet.OneAxle));

        CheckAnswer Answer(CheckedAxle axle) => CheckAnswers.Create(axle.Car, axle.Candidate, axle.Sheet, units, detail);
    }

    private void SetCar(ReadOnlySpan<byte> utf8, long lineNumber, LineId? id, BatchLines lines)
    {
        if (!_run.TrySetCar(utf8, out var refusal))
            Refuse(lines, lineNumber, id, Problem.Invalid(refusal));
    }

    private void Refuse(BatchLines lines, long lineNumber, LineId? id, Problem problem)
    {
        lines.Write(lineNumber, id, problem);
        _run.CountRefused();
    }

    /// <summary>A car that is too long is a bad car: the one before it must not answer for it.</summary>
    private void RefuseTooLong(ReadOnlySpan<byte> start, LineFeed feed, BatchLines lines)
    {
        var (isCar, id) = LineClassifier.Classify(start);
        if (isCar)
            _run.UnsetCar();
        Refuse(lines, feed.LineNumber, id, BatchProblems.LineTooLong(feed.MostBytes));
    }
}

/// <summary>Determines the kind of a line that is not a valid candidate.</summary>
internal static class LineClassifier
{
    /// <summary>True when the line has a member vehicle and so sets a car; and its id, null where none can be read.</summary>
    public static (bool IsCar, LineId? Id) Classify(ReadOnlySpan<byte> utf8)
    {
        var isCar = false;
        LineId? id = null;
        try
        {
            Utf8JsonReader reader = new(utf8, new JsonReaderOptions { MaxDepth = Http.ServiceLimits.JsonDepth });
            if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
                return default;
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                var isId = reader.ValueTextEquals("id"u8);
                isCar |= reader.ValueTextEquals("vehicle"u8);
                reader.Read();
                if (isId && reader.TokenType == JsonTokenType.String && reader.GetString() is { Length: <= LineId.MaximumLength } text)
                    id = new LineId { Text = text };
                else if (isId && reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out var number))
                    id = new LineId { Number = number };
                reader.Skip();
            }
        }
        catch (Exception unreadable) when (unreadable is JsonException or InvalidOperationException)
        {
            // What was read up to there counts; the reader of the line reports the fault itself.
        }

        return (isCar, id);
    }
}

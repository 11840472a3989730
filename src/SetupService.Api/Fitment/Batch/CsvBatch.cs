using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Domain.Answers;

namespace SetupService.Api.Fitment.Batch;

/// <summary>Answers a table of candidates with a table, one row for each, as they arrive.</summary>
internal sealed class CsvBatch(JsonContract contract, string boundary, VerdictFilter only, UnitSystem units) : IResult
{
    /// <summary>The media type of the answer, and of the part with the candidates.</summary>
    public const string MediaType = "text/csv";

    private readonly BatchRun _run = new(contract);

    /// <inheritdoc />
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        using var flow = BatchFlow.Start(httpContext, MediaType + "; charset=utf-8; header=present");
        FormParts parts = new(boundary, httpContext.Request.Body, flow);
        CsvRows rows = new(httpContext.Response, flow, _run, only, units);
        try
        {
            var problem = await SetCarAsync(parts, flow).ConfigureAwait(false)
                ?? await AnswerAsync(parts, flow, rows).ConfigureAwait(false);
            if (problem is not null)
                await problem.ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        catch (Exception broken) when (FormParts.IsMalformed(broken, httpContext) && !httpContext.Response.HasStarted)
        {
            await FormParts.Malformed(httpContext).ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (flow.EndReason is not null && !rows.IsStarted)
        {
            BrokenBody.EndConnection(httpContext);
            await Problem.Create(ProblemTypes.RequestTimeout).ExecuteAsync(httpContext).ConfigureAwait(false);
        }
        catch (Exception cut) when (FormParts.IsMalformed(cut, httpContext) || flow.EndReason is not null)
        {
            BrokenBody.EndConnection(httpContext);

            // Rows are already sent: a last row with a problem says that the table was cut off.
            rows.WriteLast(Problem.Invalid(Fault.At("/candidates", FaultCodes.Syntax, $"{flow.ReasonOf(cut)} The rows up to here stand.")));
            await rows.SendAsync().ConfigureAwait(false);
        }
    }

    private async Task<Problem?> SetCarAsync(FormParts parts, BatchFlow flow)
    {
        var part = await parts.NextAsync().ConfigureAwait(false);
        if (FormParts.NameOf(part) != "car")
            return FormParts.Missing("/car", "The first part must be car, with the JSON of vehicle and axle; candidates come after it.");

        using MemoryStream json = new();
        var chunk = new byte[4096];
        int read;
        do
        {
            read = 0;
            await flow.WaitAsync(async token => read = await part!.Body.ReadAsync(chunk, token).ConfigureAwait(false)).ConfigureAwait(false);
            json.Write(chunk, 0, read);
            if (json.Length > flow.Caps.LineBytes)
                return BatchProblems.LineTooLong(flow.Caps.LineBytes);
        }
        while (read > 0);

        return _run.TrySetCar(json.GetBuffer().AsSpan(0, (int)json.Length), out var refusal)
            ? null
            : Problem.Invalid(refusal.Under("car"));
    }

    private async Task<Problem?> AnswerAsync(FormParts parts, BatchFlow flow, CsvRows rows)
    {
        var part = await parts.NextAsync().ConfigureAwait(false);
        if (FormParts.NameOf(part) != "candidates")
            return FormParts.Missing("/candidates", "The second part must be candidates, with the table as text/csv.");
        if (await new CandidateTable(contract, flow, rows).AnswerAsync(part!.Body).ConfigureAwait(false) is { } problem)
            return problem;

        if (await parts.NextAsync().ConfigureAwait(false) is { } surplus)
            rows.WriteLast(FormParts.Surplus(surplus, "car"));
        await rows.SendAsync().ConfigureAwait(false);
        return null;
    }
}

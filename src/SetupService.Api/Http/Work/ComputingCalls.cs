using SetupService.Api.Http.Problems;

namespace SetupService.Api.Http.Work;

/// <summary>What is refused before any work: a body or a query with faults.</summary>
internal interface IRefusable
{
    /// <summary>Why it is refused; null where it is not.</summary>
    Problem? Problem { get; }
}

/// <summary>Holds calls of solvers to the work a request may do, and to their turn.</summary>
public static class ComputingCalls
{
    /// <summary>
    /// The calls compute: each waits for its turn once its body is read, works within the <see cref="RequestWork"/> it is given, and is refused with 422 where that
    /// is spent, whatever its handler made of it, or with 503 where its turn did not come.
    /// </summary>
    public static TBuilder WithWork<TBuilder>(this TBuilder builder)
        where TBuilder : IEndpointConventionBuilder =>
        builder.AddEndpointFilter(RunAsync).WithProblems(ProblemTypes.WorkExceeded);

    private static async ValueTask<object?> RunAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        // What is refused anyhow needs no turn, and its handler has nothing to work on.
        if (FindRefusal(call.Arguments) is { } refusal)
            return refusal;

        var context = call.HttpContext;
        var services = context.RequestServices;
        var gate = services.GetRequiredService<WorkGate>();
        using var turn = await gate.EnterAsync(context.RequestAborted).ConfigureAwait(false);
        if (turn is null)
            return Busy(context, gate.RetryAfterSeconds);

        var work = RequestWork.From(context);
        using (work)
        {
            work.Start(services.GetRequiredService<WorkSettings>(), services.GetRequiredService<TimeProvider>(), context.RequestAborted);
            object? answer;
            try
            {
                answer = await AnswerAsync(call, next, work).ConfigureAwait(false);
            }
            finally
            {
                // Who goes away before the answer pays for the work all the same.
                Caller.From(context).Quota?.ChargeSteps(work.StepsTaken);
                ServiceMeter.CountSteps(context, work.StepsTaken);
            }

            context.RequestAborted.ThrowIfCancellationRequested();
            return work.IsExceeded ? work.Refuse() : answer;
        }
    }

    private static async ValueTask<object?> AnswerAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next, RequestWork work)
    {
        try
        {
            return await next(call).ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (work.IsExceeded)
        {
            return null;
        }
    }

    /// <summary>The 503 of a request that is not worked on: its turn did not come, or too much came before it.</summary>
    internal static Problem Busy(HttpContext context, int seconds)
    {
        context.Response.Headers.RetryAfter = seconds.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return Problem.Create(ProblemTypes.Unavailable);
    }

    /// <summary>The first refusal: a body's has the faults of the query too.</summary>
    private static Problem? FindRefusal(IList<object?> arguments)
    {
        for (var i = 0; i < arguments.Count; i++)
        {
            if (arguments[i] is IRefusable { Problem: { } refusal })
                return refusal;
        }

        return null;
    }
}

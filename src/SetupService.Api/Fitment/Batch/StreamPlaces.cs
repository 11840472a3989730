using System.Globalization;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// Places for streams: each holds memory for as long as its caller likes to send, so that only so many are answered at once, and of one client only so many of these. Safe for
/// all threads.
/// </summary>
/// <param name="settings">Have the numbers.</param>
internal sealed class StreamPlaces(BatchSettings settings)
{
    private int _taken;

    /// <summary>Number of places taken.</summary>
    public int Taken => Volatile.Read(ref _taken);

    /// <summary>Gives a request a place until it is done.</summary>
    /// <returns>Why it gets none; null where it has one.</returns>
    public Problem? Take(HttpContext context)
    {
        // Who has no quota is not told apart from others.
        var caller = Caller.From(context) is { Quota: not null } known ? known : null;
        if (caller is not null && !caller.TryBeginStream(settings.ConcurrencyPerClient))
            return TooMany(context);
        if (Interlocked.Increment(ref _taken) > settings.Concurrency)
        {
            Leave(caller);
            return ComputingCalls.Busy(context, RetryAfterSeconds(context));
        }

        context.Response.RegisterForDispose(new Place(this, caller));
        return null;
    }

    private static int RetryAfterSeconds(HttpContext context) => context.RequestServices.GetRequiredService<WorkSettings>().RetryAfterSeconds;

    private Problem TooMany(HttpContext context)
    {
        context.Response.Headers.RetryAfter = RetryAfterSeconds(context).ToString(CultureInfo.InvariantCulture);
        var message = string.Create(CultureInfo.InvariantCulture, $"{settings.ConcurrencyPerClient} batches of this client are being answered, which is as many as may be; begin the next when one of them has ended.");
        return Problem.Create(ProblemTypes.TooManyRequests, message, [Fault.ForParameter(Caller.KeyHeader, FaultCodes.LimitReached, message)]);
    }

    private void Leave(Caller? caller)
    {
        Interlocked.Decrement(ref _taken);
        caller?.EndStream();
    }

    private sealed class Place(StreamPlaces places, Caller? caller) : IDisposable
    {
        public void Dispose() => places.Leave(caller);
    }
}

/// <summary>Marks calls that answer a stream.</summary>
internal static class StreamCalls
{
    /// <summary>The call takes a place among the streams.</summary>
    public static TBuilder WithStreamPlace<TBuilder>(this TBuilder builder)
        where TBuilder : IEndpointConventionBuilder =>
        builder.AddEndpointFilter(static async (call, next) =>
            call.HttpContext.RequestServices.GetRequiredService<StreamPlaces>().Take(call.HttpContext) is { } refusal ? refusal : await next(call).ConfigureAwait(false));
}

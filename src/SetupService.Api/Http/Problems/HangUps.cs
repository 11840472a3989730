using Microsoft.AspNetCore.Connections;

namespace SetupService.Api.Http.Problems;

/// <summary>Requests whose caller went away: nobody is left to answer, so they leave one line in the log and are no failure.</summary>
internal static class HangUps
{
    /// <summary>Ends such requests quietly. Stands inside the exception handler, which would log them as failures.</summary>
    public static void UseHangUps(this IApplicationBuilder app) =>
        app.Use(static (context, next) =>
        {
            var request = next(context);
            return request.IsCompletedSuccessfully ? request : WatchAsync(context, request);
        });

    /// <summary>
    /// True when the exception comes of the caller's reset, or of work cancelled because the caller went away. Over HTTP/2 whatever ends the reading and is no refusal of
    /// the server's is such too: it may come before the request is said to be aborted.
    /// </summary>
    public static bool Explain(Exception exception, HttpContext context) =>
        IsTold(exception, context) || (exception is IOException and not BadHttpRequestException && HttpProtocol.IsHttp2(context.Request.Protocol));

    /// <summary>The same where the exception may be that of a reader of forms, which fails alike on a form that breaks off.</summary>
    public static bool IsTold(Exception exception, HttpContext context) =>
        exception is ConnectionResetException or ConnectionAbortedException or OperationCanceledException { InnerException: ConnectionAbortedException }
        || (exception is OperationCanceledException or IOException && context.RequestAborted.IsCancellationRequested);

    private static async Task WatchAsync(HttpContext context, Task request)
    {
        try
        {
            await request.ConfigureAwait(false);
        }
        catch (Exception exception) when (Explain(exception, context))
        {
            // Else the server would try to read the rest of the body, and log that it cannot.
            BrokenBody.EndConnection(context);
            context.Abort();
            new RequestOutcome(0, HasGone: true).KeepFor(context);
        }
    }
}

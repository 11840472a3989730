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

    /// <summary>True when the exception comes of the caller's reset, or of work cancelled because the caller went away.</summary>
    public static bool Explain(Exception exception, HttpContext context) =>
        exception is ConnectionResetException or ConnectionAbortedException
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

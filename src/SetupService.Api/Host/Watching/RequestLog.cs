using System.Diagnostics;
using Serilog.Events;
using Serilog.Parsing;
using SetupService.Api.Host.Settings;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Host.Watching;

/// <summary>
/// One line a request: method, route, status, duration, steps of solvers, client and id. Refusals come so many a second and no more; failures of ours have their line, with the
/// cause, where they are caught. The path as it was sent stands in for the route where there is none; never a query, a body or a key.
/// </summary>
internal sealed class RequestLog(Serilog.ILogger log, LogSettings settings, TimeProvider clock)
{
    private const int LongestPath = 200;

    private static readonly MessageTemplate Answered = Template("Request {RequestId}: {Method} {Route} {Status} in {DurationMs} ms, {Steps} steps, client {Client}");
    private static readonly MessageTemplate Refused = Template("Request {RequestId}: {Method} {Route} refused with {Status} in {DurationMs} ms, {FaultCount} faults, {Steps} steps, client {Client}");
    private static readonly MessageTemplate Gone = Template("Request {RequestId}: {Method} {Route}, the caller went away after {DurationMs} ms, {Steps} steps, client {Client}");
    private static readonly MessageTemplate LeftOut = Template("{Count} lines of refused requests were left out");

    private readonly Lock _lock = new();
    private long _second;
    private int _refusals;
    private long _leftOut;

    /// <summary>Logs a request when it is done.</summary>
    public Task RunAsync(HttpContext context, RequestDelegate next)
    {
        // The method may be rewritten on the way.
        var (method, start) = (context.Request.Method, Stopwatch.GetTimestamp());
        var request = next(context);
        if (!request.IsCompletedSuccessfully)
            return WaitAsync(request, context, method, start);
        Write(context, method, start);
        return Task.CompletedTask;
    }

    private async Task WaitAsync(Task request, HttpContext context, string method, long start)
    {
        try
        {
            await request.ConfigureAwait(false);
        }
        finally
        {
            Write(context, method, start);
        }
    }

    private void Write(HttpContext context, string method, long start)
    {
        var status = context.Response.StatusCode;
        var outcome = RequestOutcome.From(context);
        var isRefused = status >= StatusCodes.Status400BadRequest && outcome is not { HasGone: true };
        if (!settings.EveryRequest && (outcome is null || status == StatusCodes.Status500InternalServerError))
            return;
        if (!log.IsEnabled(LogEventLevel.Information) || (isRefused && !MayTell()))
            return;

        var template = outcome is { HasGone: true } ? Gone : isRefused ? Refused : Answered;

        // As the event keeps them: of a list it would make this.
        Dictionary<string, LogEventPropertyValue> properties = new(8)
        {
            ["RequestId"] = new ScalarValue(context.TraceIdentifier),
            ["Method"] = new ScalarValue(method),
            ["Route"] = new ScalarValue(RouteOf(context)),
            ["Status"] = new ScalarValue(status),
            ["DurationMs"] = new ScalarValue(Math.Round(Stopwatch.GetElapsedTime(start).TotalMilliseconds, 3)),
            ["Steps"] = new ScalarValue(context.Features.Get<RequestWork>()?.StepsTaken ?? 0),
            ["Client"] = new ScalarValue(Caller.From(context).Name),
        };
        if (isRefused)
            properties["FaultCount"] = new ScalarValue(outcome?.FaultCount ?? 0);
        log.Write(LogEvent.UnstableAssembleFromParts(clock.GetLocalNow(), LogEventLevel.Information, null, template, properties, default, default));
    }

    private bool MayTell()
    {
        long leftOut;
        lock (_lock)
        {
            var second = clock.GetUtcNow().ToUnixTimeSeconds();
            if (second != _second)
                (_second, _refusals) = (second, 0);
            if (++_refusals > settings.RefusalsPerSecond)
            {
                _leftOut++;
                return false;
            }

            (leftOut, _leftOut) = (_leftOut, 0);
        }

        if (leftOut > 0)
            log.Write(new LogEvent(clock.GetLocalNow(), LogEventLevel.Information, null, LeftOut, [new LogEventProperty("Count", new ScalarValue(leftOut))]));
        return true;
    }

    private static string RouteOf(HttpContext context)
    {
        if ((context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText is { } route)
            return route;

        // As it was sent: decoded it could break the line.
        var path = context.Request.Path.ToUriComponent();
        return path.Length <= LongestPath ? path : path[..LongestPath];
    }

    private static MessageTemplate Template(string text) => new MessageTemplateParser().Parse(text);
}

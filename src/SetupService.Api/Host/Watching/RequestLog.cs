using System.Collections.Frozen;
using System.Diagnostics;
using Microsoft.AspNetCore.Diagnostics;
using Serilog.Events;
using Serilog.Parsing;
using SetupService.Api.Host.Settings;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;

namespace SetupService.Api.Host.Watching;

/// <summary>
/// One line a request: method, route, status, duration, steps of solvers, client and id. Refusals, and callers who go away, come so many a second and no more; failures of ours have their line, with the
/// cause, where they are caught. No text of the caller's: not the path as it was sent, in which a key may stand by mistake, no query, body or key.
/// </summary>
internal sealed class RequestLog(Serilog.ILogger log, LogSettings settings, TimeProvider clock)
{
    private const string NoRoute = "none";

    // As the semantic conventions of OpenTelemetry for HTTP have it, and so the metrics.
    private const string OtherMethod = "_OTHER";

    private static readonly FrozenSet<string> Methods = new[] { "GET", "HEAD", "POST", "PUT", "DELETE", "CONNECT", "OPTIONS", "TRACE", "PATCH" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly MessageTemplate Answered = Template("Request {RequestId}: {Method} {Route} {Status} in {DurationMs} ms, {Steps} steps, client {Client}");
    private static readonly MessageTemplate Refused = Template("Request {RequestId}: {Method} {Route} refused with {Status} in {DurationMs} ms, {FaultCount} faults, {Steps} steps, client {Client}");
    private static readonly MessageTemplate Gone = Template("Request {RequestId}: {Method} {Route}, the caller went away after {DurationMs} ms, {Steps} steps, client {Client}");
    private static readonly MessageTemplate LeftOut = Template("{Count} lines of requests that were refused, or whose caller went away, were left out");

    private readonly LineRate _refusals = new(settings.RefusalsPerSecond, clock);

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
        var hasGone = outcome is { HasGone: true };
        var isRefused = status >= StatusCodes.Status400BadRequest && !hasGone;
        if (!settings.EveryRequest && (outcome is null || status == StatusCodes.Status500InternalServerError))
            return;
        if (!log.IsEnabled(LogEventLevel.Information) || ((isRefused || hasGone) && !MayTell()))
            return;

        var template = hasGone ? Gone : isRefused ? Refused : Answered;

        // As the event keeps them: of a list it would make this.
        Dictionary<string, LogEventPropertyValue> properties = new(8)
        {
            ["RequestId"] = new ScalarValue(context.TraceIdentifier),
            ["Method"] = new ScalarValue(Methods.Contains(method) ? method : OtherMethod),
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
        if (!_refusals.MayTell(out var leftOut))
            return false;
        if (leftOut > 0)
            log.Write(new LogEvent(clock.GetLocalNow(), LogEventLevel.Information, null, LeftOut, [new LogEventProperty("Count", new ScalarValue(leftOut))]));
        return true;
    }

    /// <summary>The template of a request's route; a word where it has none.</summary>
    internal static string RouteOf(HttpContext context)
    {
        // The endpoint itself is cleared by the time an error is handled.
        var endpoint = context.GetEndpoint() ?? context.Features.Get<IExceptionHandlerFeature>()?.Endpoint;
        return (endpoint as RouteEndpoint)?.RoutePattern.RawText ?? NoRoute;
    }

    private static MessageTemplate Template(string text) => new MessageTemplateParser().Parse(text);
}

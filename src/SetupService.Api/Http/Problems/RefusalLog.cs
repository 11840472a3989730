namespace SetupService.Api.Http.Problems;

/// <summary>Leaves a line in the log for each request that is refused, so that its id can be found there; never the body.</summary>
internal static partial class RefusalLog
{
    private static readonly object Written = new();

    /// <summary>True once the request has its line.</summary>
    public static bool Has(HttpContext context) => context.Items.ContainsKey(Written);

    public static void Write(HttpContext context, Problem problem)
    {
        // Failures of ours are logged with their cause where they are caught.
        if (problem.Status >= StatusCodes.Status500InternalServerError || context.RequestServices?.GetService<ILoggerFactory>() is not { } loggers)
            return;

        var log = loggers.CreateLogger("SetupService.Refusals");

        // A refusal that could not be sent is refused again on the way out: one line is enough.
        if (!log.IsEnabled(LogLevel.Information) || Has(context))
            return;

        // The path as it was sent: decoded it could break the line.
        var path = context.Request.Path.ToUriComponent();
        context.Items[Written] = true;
        Refused(log, context.TraceIdentifier, path, problem.Status, problem.Errors.Count);
    }

    [LoggerMessage(Level = LogLevel.Information, Message = "Request {RequestId} to {Path} refused with {Status}, {FaultCount} faults")]
    private static partial void Refused(ILogger logger, string requestId, string path, int status, int faultCount);
}

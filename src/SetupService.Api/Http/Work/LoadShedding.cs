namespace SetupService.Api.Http.Work;

/// <summary>Refuses requests while the service is behind, so that those it accepts are answered soon and those it refuses at once.</summary>
internal static class LoadShedding
{
    private static readonly PathString[] NeverRefused = ["/health", "/metrics"];

    /// <summary>
    /// A request that comes while there is an overload is refused with 503, before its call is looked for or its body read. What asks how the service does is answered always.
    /// </summary>
    public static void UseLoadShedding(this IApplicationBuilder app)
    {
        var retryAfterSeconds = app.ApplicationServices.GetRequiredService<WorkSettings>().RetryAfterSeconds;
        var detector = app.ApplicationServices.GetRequiredService<OverloadDetector>();
        app.Use((context, next) => detector.IsOverloaded() && !IsNeverRefused(context.Request.Path)
            ? ComputingCalls.Busy(context, retryAfterSeconds).ExecuteAsync(context)
            : next(context));
    }

    /// <summary>True for what asks how the service does.</summary>
    public static bool IsNeverRefused(PathString path) => Array.Exists(NeverRefused, known => path.StartsWithSegments(known));
}

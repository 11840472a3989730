using SetupService.Api.Http;

namespace SetupService.Api.Host;

/// <summary>What is done around every request: its id first, and no work for an answer the caller would not accept.</summary>
internal static class RequestFrame
{
    public static void UseRequestIds(this IApplicationBuilder app) =>
        app.Use(static (context, next) =>
        {
            RequestIds.Begin(context);
            return next(context);
        });

    public static void UseAcceptCheck(this IApplicationBuilder app) =>
        app.Use(static (context, next) => AcceptCheck.Find(context)?.ExecuteAsync(context) ?? next(context));
}

using SetupService.Api.Http;

namespace SetupService.Api.Host;

/// <summary>What is done around every request: its id first, HEAD as GET, and no work for an answer the caller would not accept.</summary>
internal static class RequestFrame
{
    public static void UseRequestIds(this IApplicationBuilder app) =>
        app.Use(static (context, next) =>
        {
            RequestIds.Begin(context);
            return next(context);
        });

    /// <summary>Answers HEAD as GET (RFC 9110, section 9.3.2). The server, which knows the method sent, sends the headers and drops the body.</summary>
    public static void UseHead(this IApplicationBuilder app) =>
        app.Use(static (context, next) =>
        {
            if (HttpMethods.IsHead(context.Request.Method))
                context.Request.Method = HttpMethods.Get;
            return next(context);
        });

    public static void UseAcceptCheck(this IApplicationBuilder app) =>
        app.Use(static (context, next) => AcceptCheck.Find(context)?.ExecuteAsync(context) ?? next(context));
}

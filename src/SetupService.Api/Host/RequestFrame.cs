using SetupService.Api.Host.Access;
using SetupService.Api.Http;

namespace SetupService.Api.Host;

/// <summary>What is done around every request: its id and the headers of every answer first, HEAD as GET, who calls, and no work for an answer the caller would not accept.</summary>
internal static class RequestFrame
{
    public static void UseCommonHeaders(this IApplicationBuilder app) =>
        app.Use(static (context, next) =>
        {
            RequestIds.Begin(context);
            SecurityHeaders.Put(context);
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

    /// <summary>Lets a request go on only where its caller may ask, and still has work to ask for. Stands behind the routing.</summary>
    public static void UseAccessCheck(this IApplicationBuilder app)
    {
        var check = app.ApplicationServices.GetRequiredService<AccessCheck>();
        app.Use((context, next) => check.Find(context)?.ExecuteAsync(context) ?? next(context));
    }

    public static void UseAcceptCheck(this IApplicationBuilder app) =>
        app.Use(static (context, next) => AcceptCheck.Find(context)?.ExecuteAsync(context) ?? next(context));
}

using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;
using SetupService.Api.Host.Access;
using SetupService.Api.Host.Settings;
using SetupService.Api.Http;

namespace SetupService.Api.Host;

/// <summary>
/// The web pages whose scripts may call this service: those of the origins (WHATWG Fetch, 3.2) the setting names, no others. Where
/// none is named, no answer carries a header about origins and browsers keep answers from every page of another origin.
/// </summary>
internal static class AllowedOrigins
{
    /// <summary>The setting: origins as browsers send them, separated by commas or spaces.</summary>
    public const string Setting = "AllowedOrigins";

    private static readonly TimeSpan PreflightKept = TimeSpan.FromHours(1);

    /// <summary>The origins of the settings.</summary>
    /// <exception cref="SettingException">One of them is no origin.</exception>
    public static IReadOnlyList<string> Read(IConfiguration settings)
    {
        var origins = (settings[Setting] ?? "").Split([',', ' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries);
        foreach (var origin in origins)
        {
            if (!IsOrigin(origin))
                throw new SettingException($"{Setting} has “{origin}”, which is no origin as browsers send it: https://shop.example, with a port only where it is not the usual one; lower case, no path, no *.");
        }

        return origins;
    }

    public static void UseAllowedOrigins(this WebApplication app)
    {
        var origins = Read(app.Configuration);
        if (origins.Count == 0)
            return;

        // A cache must not hand one page's answer to another, nor one asked for without a page.
        app.Use(static (context, next) =>
        {
            context.Response.OnStarting(static state => VaryByOrigin((HttpResponse)state), context.Response);
            return next(context);
        });
        app.UseCors(policy => policy
            .WithOrigins([.. origins])
            .WithMethods(HttpMethods.Get, HttpMethods.Head, HttpMethods.Post)
            .WithHeaders(HeaderNames.ContentType, AccessCheck.Header, HeaderNames.IfNoneMatch, HeaderNames.TraceParent, HeaderNames.TraceState)
            .WithExposedHeaders(HeaderNames.ETag, HeaderNames.RetryAfter, AccessCheck.PolicyHeader, AccessCheck.LimitHeader, RequestIds.Header)
            .SetPreflightMaxAge(PreflightKept));
    }

    private static Task VaryByOrigin(HttpResponse response)
    {
        if (!response.Headers.Vary.Any(static line => line?.Split(',').Any(static name => name.Trim().Equals(HeaderNames.Origin, StringComparison.OrdinalIgnoreCase)) == true))
            response.Headers.Vary = StringValues.Concat(response.Headers.Vary, HeaderNames.Origin);
        return Task.CompletedTask;
    }

    private static bool IsOrigin(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var uri)
        && (uri.Scheme == Uri.UriSchemeHttp || uri.Scheme == Uri.UriSchemeHttps)
        && uri.UserInfo.Length == 0
        && uri.GetLeftPart(UriPartial.Authority) == text;
}

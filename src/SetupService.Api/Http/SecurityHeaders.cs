namespace SetupService.Api.Http;

/// <summary>The headers that keep browsers from taking an answer for what it is not (Fetch, Content Security Policy, Referrer Policy, RFC 6797).</summary>
internal static class SecurityHeaders
{
    // A picture or page of ours brings its own styles, and nothing else.
    private const string OfAnswers = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'";

    // The pages about the calls have scripts and styles of their own, and call this service.
    private const string OfPages =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private const string AYear = "max-age=31536000";

    public static void Put(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.XContentTypeOptions = "nosniff";
        headers.ContentSecurityPolicy = context.Request.Path.StartsWithSegments("/docs") ? OfPages : OfAnswers;
        headers["Referrer-Policy"] = "no-referrer";
        if (context.Request.IsHttps)
            headers.StrictTransportSecurity = AYear;
    }
}

using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http.Metadata;

namespace SetupService.Api.Http.Pages;

/// <summary>A page made for one request: 200 with HTML, not to be stored by caches, under a policy that lets nothing run or load.</summary>
/// <param name="html">The whole page.</param>
/// <param name="policy">What the page may do, of <see cref="PagePolicy"/>.</param>
public sealed class PageAnswer(string html, string policy) : IResult, IEndpointMetadataProvider
{
    private static readonly ProducedMedia Html = new("text/html");

    /// <inheritdoc />
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(string), [Html.Type]));
        builder.Metadata.Add(Html);
    }

    /// <inheritdoc />
    public Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var (response, bytes) = (httpContext.Response, Encoding.UTF8.GetBytes(html));
        response.ContentType = Html.Type + "; charset=utf-8";
        response.ContentLength = bytes.Length;
        response.Headers.CacheControl = "no-store";
        response.Headers.ContentSecurityPolicy = policy + "; frame-ancestors 'none'";
        response.Headers.XContentTypeOptions = "nosniff";
        return response.BodyWriter.WriteAsync(bytes, httpContext.RequestAborted).AsTask();
    }
}

/// <summary>Content Security Policy (W3C, level 3) of a page that holds everything it shows.</summary>
internal static class PagePolicy
{
    /// <summary>No script, nothing loaded, no style sheet but these, each by the digest of its text.</summary>
    public static string ForStyles(params ReadOnlySpan<string> styleSheets)
    {
        StringBuilder policy = new("default-src 'none'; base-uri 'none'; form-action 'none'; style-src");
        foreach (var sheet in styleSheets)
            policy.Append(" 'sha256-").Append(Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(sheet)))).Append('\'');
        return policy.ToString();
    }
}

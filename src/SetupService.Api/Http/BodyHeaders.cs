using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Http;

/// <summary>Checks what the headers say of a JSON body before a byte of it is read.</summary>
internal static class BodyHeaders
{
    public static Problem? Find(HttpRequest request, CapSettings caps)
    {
        if (!IsJson(request.ContentType))
        {
            return Problem.Create(
                ProblemTypes.UnsupportedMediaType,
                request.ContentType is null
                    ? "The body has no Content-Type; application/json in UTF-8 is read."
                    : "The body's Content-Type is not application/json in UTF-8.");
        }

        if (IsEncoded(request.Headers.ContentEncoding))
            return Problem.Create(ProblemTypes.UnsupportedMediaType, "The body has a Content-Encoding; send it as it is, not compressed.");
        return request.ContentLength > caps.BodyBytes ? TooLarge(caps) : null;
    }

    /// <summary>The 413 of a body that has more bytes than are read.</summary>
    public static Problem TooLarge(CapSettings caps) => Problem.Create(
        ProblemTypes.TooLarge,
        caps.OfBody,
        [Fault.At("", FaultCodes.TooLong, "The body is longer than is read.")]);

    private static bool IsJson(string? contentType)
    {
        if (contentType is "application/json" or ProducedMedia.JsonUtf8)
            return true;
        if (!MediaTypeHeaderValue.TryParse(contentType, out var parsed)
            || !parsed.MediaType.Equals("application/json", StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        var charset = HeaderUtilities.RemoveQuotes(parsed.Charset);
        return charset.Length == 0 || charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase);
    }

    public static bool IsEncoded(StringValues encoding)
    {
        foreach (var value in encoding)
        {
            if (!string.IsNullOrEmpty(value) && !value.Equals("identity", StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }
}

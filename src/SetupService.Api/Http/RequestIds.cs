using System.Diagnostics;

namespace SetupService.Api.Http;

/// <summary>
/// The id of a request: the W3C trace id, so that a caller's own trace goes on through this service. The same id
/// stands in the header, in every problem and in the log.
/// </summary>
internal static class RequestIds
{
    /// <summary>The header that carries it.</summary>
    public const string Header = "Request-Id";

    /// <summary>Gives the request its id, once, and puts it on the response.</summary>
    public static string Begin(HttpContext context)
    {
        var activity = Activity.Current;
        var trace = activity?.IdFormat == ActivityIdFormat.W3C ? activity.TraceId : ActivityTraceId.CreateRandom();
        context.TraceIdentifier = trace.ToHexString();
        return Put(context);
    }

    /// <summary>Puts the id on the response again, where an error has cleared the headers.</summary>
    public static string Put(HttpContext context)
    {
        var id = context.TraceIdentifier;
        context.Response.Headers[Header] = id;
        return id;
    }
}

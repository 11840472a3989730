using Microsoft.AspNetCore.Connections.Features;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Http;

/// <summary>The refusal of a body that the server could not take off the connection.</summary>
internal static class BrokenBody
{
    /// <summary>What is wrong with a message whose chunks cannot be told apart (RFC 9112, section 7.1).</summary>
    public const string Message = "The body could not be read to its end: its chunks (Transfer-Encoding) are malformed.";

    /// <summary>408 and 413 as the server says; a 400 with its fault for everything else. No further request is taken off the connection.</summary>
    public static Problem Refusal(IOException broken, HttpContext context)
    {
        EndConnection(context);
        return broken is BadHttpRequestException { StatusCode: not StatusCodes.Status400BadRequest } refusal
            ? Problem.Create(ProblemTypes.ForStatus(refusal.StatusCode))
            : Problem.Invalid(Fault.At("", FaultCodes.Syntax, Message));
    }

    /// <summary>
    /// Tells the server to take no further request off a connection whose body broke off: the read that met its end is left begun, and a next one would fail. Streams of
    /// HTTP/2 and later end by themselves.
    /// </summary>
    public static void EndConnection(HttpContext context)
    {
        if (HttpProtocol.IsHttp11(context.Request.Protocol) || HttpProtocol.IsHttp10(context.Request.Protocol))
            context.Features.Get<IConnectionLifetimeNotificationFeature>()?.RequestClose();
    }
}

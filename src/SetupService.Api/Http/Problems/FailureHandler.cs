using Microsoft.AspNetCore.Diagnostics;

namespace SetupService.Api.Http.Problems;

/// <summary>
/// Answers what no handler caught: a request the server could not read keeps its status, everything else is our
/// fault, is logged with the id of the request, and is sent without a word about the inside.
/// </summary>
internal sealed partial class FailureHandler(ILogger<FailureHandler> logger) : IExceptionHandler
{
    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        Problem problem;
        if (exception is BadHttpRequestException refusal)
        {
            problem = BrokenBody.Refusal(refusal, httpContext);
        }
        else
        {
            LogFailure(exception, httpContext.TraceIdentifier, EndpointOf(httpContext));
            problem = Problem.Create(ProblemTypes.InternalError);
        }

        await problem.ExecuteAsync(httpContext).ConfigureAwait(false);
        return true;
    }

    // The endpoint itself is cleared by the time an error is handled.
    private static string EndpointOf(HttpContext context) =>
        context.Features.Get<IExceptionHandlerFeature>()?.Endpoint?.DisplayName ?? "no endpoint";

    [LoggerMessage(Level = LogLevel.Error, Message = "Request {RequestId} to {Endpoint} failed")]
    private partial void LogFailure(Exception exception, string requestId, string endpoint);
}

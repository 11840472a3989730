namespace SetupService.Api.Http.Problems;

/// <summary>The problem for a status the framework has set.</summary>
internal static class FrameworkProblems
{
    public static Problem Of(HttpContext context)
    {
        var status = context.Response.StatusCode;
        var detail = status == StatusCodes.Status405MethodNotAllowed && context.Response.Headers.Allow is { Count: > 0 } allow
            ? $"This path answers {allow} only."
            : null;
        return Problem.Of(ProblemTypes.OfStatus(status), detail) with { Status = status };
    }
}

namespace SetupService.Api.Http.Problems;

/// <summary>The problem for a status the framework has set.</summary>
internal static class FrameworkProblems
{
    public static Problem From(HttpContext context)
    {
        var status = context.Response.StatusCode;
        return Problem.Create(ProblemTypes.ForStatus(status), status == StatusCodes.Status405MethodNotAllowed ? Allowed(context.Response) : null) with { Status = status };
    }

    /// <summary>What Allow says; it names HEAD wherever it names GET, because HEAD is answered there too.</summary>
    private static string? Allowed(HttpResponse response)
    {
        if (response.Headers.Allow is not { Count: > 0 } allow)
            return null;
        if (allow == HttpMethods.Get)
            response.Headers.Allow = allow = $"{HttpMethods.Get}, {HttpMethods.Head}";
        return $"This path answers {allow} only.";
    }
}

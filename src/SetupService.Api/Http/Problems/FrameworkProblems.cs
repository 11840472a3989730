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
        string[] methods = [.. allow.SelectMany(static line => line!.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))];
        var place = Array.IndexOf(methods, HttpMethods.Get);
        if (place >= 0 && !methods.Contains(HttpMethods.Head))
            response.Headers.Allow = allow = string.Join(", ", [.. methods[..(place + 1)], HttpMethods.Head, .. methods[(place + 1)..]]);
        return $"This path answers {allow} only.";
    }
}

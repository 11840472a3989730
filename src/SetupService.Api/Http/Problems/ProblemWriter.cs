namespace SetupService.Api.Http.Problems;

/// <summary>Gives the refusals the framework makes itself (404, 405, 415, …) the same body as ours.</summary>
internal sealed class ProblemWriter : IProblemDetailsWriter
{
    public bool CanWrite(ProblemDetailsContext context) => true;

    public ValueTask WriteAsync(ProblemDetailsContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return new ValueTask(FrameworkProblems.From(context.HttpContext).ExecuteAsync(context.HttpContext));
    }
}

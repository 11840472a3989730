namespace SetupService.Api.Http.Problems;

/// <summary>How a request that did not go well ended, for its line in the log.</summary>
/// <param name="FaultCount">Number of faults told to the caller.</param>
/// <param name="HasGone">True where the caller went away.</param>
internal sealed record RequestOutcome(int FaultCount, bool HasGone = false)
{
    /// <summary>The outcome of a request; null where it went well.</summary>
    public static RequestOutcome? From(HttpContext context) => context.Features.Get<RequestOutcome>();

    /// <summary>Keeps it; a refusal whose caller went away before it was written stays a refusal.</summary>
    public void KeepFor(HttpContext context)
    {
        if (From(context) is null)
            context.Features.Set(this);
    }
}

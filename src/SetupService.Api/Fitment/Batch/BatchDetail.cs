namespace SetupService.Api.Fitment.Batch;

/// <summary>How much a line of a batch's answer tells.</summary>
public enum BatchDetail
{
    /// <summary>Verdict, governing place and its room, what failed and what is unknown.</summary>
    Compact,

    /// <summary>The whole answer of the single call as well.</summary>
    Full,
}

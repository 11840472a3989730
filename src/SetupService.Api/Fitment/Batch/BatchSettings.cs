namespace SetupService.Api.Fitment.Batch;

/// <summary>What of a batch may be set where the service is put together.</summary>
internal sealed record BatchSettings
{
    /// <summary>How long the service waits for the next bytes before it closes the batch.</summary>
    public TimeSpan Patience { get; init; } = BatchLimits.Patience;
}

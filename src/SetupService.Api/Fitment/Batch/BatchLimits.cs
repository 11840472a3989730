namespace SetupService.Api.Fitment.Batch;

/// <summary>The limits of a batch; the number of lines is not limited.</summary>
internal static class BatchLimits
{
    /// <summary>Longest line in bytes (64 KiB); a whole car takes about 4 KiB.</summary>
    public const int LineBytes = 65_536;

    /// <summary>How long the service waits for the next bytes before it closes the batch.</summary>
    public static readonly TimeSpan ReadTimeout = TimeSpan.FromSeconds(30);

    /// <summary>Answer bytes gathered before they are sent while there is more to work on.</summary>
    public const int FlushBytes = 32_768;
}

/// <summary>The settings of batches that the host may change.</summary>
internal sealed record BatchSettings
{
    /// <summary>How long the service waits for the next bytes before it closes the batch.</summary>
    public TimeSpan ReadTimeout { get; init; } = BatchLimits.ReadTimeout;
}

namespace SetupService.Api.Fitment.Batch;

/// <summary>The caps a batch is held to; it has no greatest number of lines.</summary>
internal static class BatchLimits
{
    /// <summary>Longest line in bytes (64 KiB); a whole car takes about 4 KiB.</summary>
    public const int LineBytes = 65_536;

    /// <summary>How long the service waits for the next bytes before it closes the batch.</summary>
    public static readonly TimeSpan ReadTimeout = TimeSpan.FromSeconds(30);

    /// <summary>Answer bytes gathered before they are sent while there is more to work on.</summary>
    public const int FlushBytes = 32_768;
}

/// <summary>What of a batch may be set where the service is put together.</summary>
internal sealed record BatchSettings
{
    /// <summary>How long the service waits for the next bytes before it closes the batch.</summary>
    public TimeSpan ReadTimeout { get; init; } = BatchLimits.ReadTimeout;
}

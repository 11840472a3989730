using System.ComponentModel.DataAnnotations;

namespace SetupService.Api.Fitment.Batch;

/// <summary>What is fixed for a batch; the number of lines is not limited.</summary>
internal static class BatchLimits
{
    /// <summary>Answer bytes gathered before they are sent while there is more to work on.</summary>
    public const int FlushBytes = 32_768;
}

/// <summary>What a batch may take: a place, waits for its caller, time, and the least rates at which its bytes come and go.</summary>
public sealed class BatchSettings
{
    /// <summary>Batches, tables and catalogues answered at once, of all callers; one more is refused with 503.</summary>
    [Range(1, 100_000)]
    public int Concurrency { get; set; } = 64;

    /// <summary>The same of one client, or of one network of callers where the service is open on purpose; one more is refused with 429.</summary>
    [Range(1, 100_000)]
    public int ConcurrencyPerClient { get; set; } = 16;

    /// <summary>Longest wait for a caller's next bytes, in seconds; after it the batch is closed.</summary>
    [Range(0.1, 3600.0)]
    public double SilenceSeconds { get; set; } = 30;

    /// <summary>Longest time of a whole batch, in seconds; after it the batch is closed.</summary>
    [Range(1.0, 604_800.0)]
    public double LongestSeconds { get; set; } = 3600;

    /// <summary>Least bytes a second, on average over the waiting, at which a batch must come and its answer be read. A batch that comes more slowly is closed, one read more slowly is cut off.</summary>
    [Range(1, 1_000_000)]
    public int LeastBytesPerSecond { get; set; } = 20;

    /// <summary>Seconds for which a batch may be slower than that.</summary>
    [Range(2.0, 3600.0)]
    public double LeastRateAfterSeconds { get; set; } = 30;
}

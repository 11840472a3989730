using System.ComponentModel.DataAnnotations;

namespace SetupService.Api.Http.Work;

/// <summary>What one request may cost, and how many are worked on at once.</summary>
public sealed class WorkSettings
{
    /// <summary>Longest time a request is computed, in seconds. A request that takes longer is refused with 422.</summary>
    [Range(0.01, 3600.0)]
    public double DeadlineSeconds { get; set; } = 20;

    /// <summary>Most steps of solvers a request may take. A request that needs more is refused with 422. A million steps take some two seconds of one processor.</summary>
    [Range(1L, 1_000_000_000_000L)]
    public long Steps { get; set; } = 10_000_000;

    /// <summary>Calls of solvers computed at once; 0 = as many as the process has processors. Health, metrics, tables and fitment checks do not count.</summary>
    [Range(0, 1024)]
    public int Concurrency { get; set; }

    /// <summary>Calls of solvers that wait for their turn; one more is refused with 503.</summary>
    [Range(0, 100_000)]
    public int QueueLength { get; set; } = 64;

    /// <summary>Longest wait for a turn, in seconds; after it the call is refused with 503.</summary>
    [Range(0.01, 600.0)]
    public double QueueSeconds { get; set; } = 2;

    /// <summary>Longest time work may wait for a thread, in seconds. While it waits longer, every request but those for health and metrics is refused with 503.</summary>
    [Range(0.001, 600.0)]
    public double DelaySeconds { get; set; } = 0.005;

    /// <summary>Seconds that Retry-After asks a caller to wait after a 503.</summary>
    [Range(1, 3600)]
    public int RetryAfterSeconds { get; set; } = 1;

    /// <summary>Calls of solvers computed at once.</summary>
    internal int ConcurrencyOrProcessors => Concurrency > 0 ? Concurrency : Environment.ProcessorCount;
}

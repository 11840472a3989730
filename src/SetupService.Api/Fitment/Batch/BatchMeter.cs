using System.Diagnostics.Metrics;

namespace SetupService.Api.Fitment.Batch;

/// <summary>
/// Counts the lines answered, for whoever watches the service. Counted when answers are sent and not line by line, so that a
/// line costs nothing more.
/// </summary>
internal static class BatchMeter
{
    /// <summary>The meter's name.</summary>
    public const string Name = "SetupService.Batch";

    private static readonly Meter Meter = new(Name);
    private static readonly Counter<long> Lines = Meter.CreateCounter<long>("batch.lines", "{line}", "Lines of batches answered, bad ones included.");

    public static void Count(long lines) => Lines.Add(lines);
}

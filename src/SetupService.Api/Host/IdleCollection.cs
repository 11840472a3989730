namespace SetupService.Api.Host;

/// <summary>
/// Gives memory back when work is over. The collector runs where objects are made, so that a service that falls idle keeps what starting, or its last load, took, for as long
/// as nobody asks: here it runs once more, a moment after the start and whenever some time passed in which next to nothing was made.
/// </summary>
internal sealed class IdleCollection(TimeProvider clock) : BackgroundService
{
    /// <summary>So long after the start the first requests, of a probe, have been answered too.</summary>
    public static readonly TimeSpan AfterStart = TimeSpan.FromSeconds(1);

    /// <summary>How often is looked after that.</summary>
    public static readonly TimeSpan Period = TimeSpan.FromSeconds(10);

    /// <summary>A service that makes fewer bytes of objects in a period is idle: probes and a scrape of its metrics make some hundred thousand.</summary>
    public const long IdleBytes = 4 << 20;

    /// <summary>Bytes of objects since the last time that make it worth while.</summary>
    public const long WorthBytes = 16 << 20;

    private long _atLastLook;
    private long _atLastCollection;

    /// <summary>True where memory should be given back now.</summary>
    /// <param name="allocatedBytes">Bytes of all objects made since the start.</param>
    public bool IsDue(long allocatedBytes)
    {
        var isIdle = allocatedBytes - _atLastLook < IdleBytes;
        _atLastLook = allocatedBytes;
        if (!isIdle || allocatedBytes - _atLastCollection < WorthBytes)
            return false;
        _atLastCollection = allocatedBytes;
        return true;
    }

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // Thrown, the end would be told as a failure where the service could not start.
        await Task.Delay(AfterStart, clock, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        if (!stoppingToken.IsCancellationRequested)
            GiveBack();
        while (!stoppingToken.IsCancellationRequested)
        {
            await Task.Delay(Period, clock, stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            if (!stoppingToken.IsCancellationRequested && IsDue(GC.GetTotalAllocatedBytes()))
                GiveBack();
        }
    }

    private static void GiveBack() => GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
}

namespace SetupService.Api.Host;

/// <summary>Gives back, a moment after the start, the memory that starting took and nobody needs any more: a service that waits would keep it.</summary>
internal static class Settling
{
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(1);

    public static void SettleAfterStart(this WebApplication app) =>
        app.Lifetime.ApplicationStarted.Register(() => _ = SettleAsync(app.Lifetime.ApplicationStopping));

    private static async Task SettleAsync(CancellationToken stopping)
    {
        await Task.Delay(Moment, stopping).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        if (!stopping.IsCancellationRequested)
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
    }
}

using SetupService.Api.Http.Work;

namespace SetupService.Api.Host;

/// <summary>
/// Ends the service in order: not ready, so that balancers send no more; then the listener closes while what is being answered goes on; then batches end with a last
/// line that says so; at the end of the grace the rest is cut off.
/// </summary>
internal sealed class Shutdown(ShutdownSettings settings, ShutdownSignal signal, TimeProvider clock) : IHostedLifecycleService, IDisposable
{
    private ITimer? _draining;

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public async Task StoppingAsync(CancellationToken cancellationToken)
    {
        // Asked twice, it ends once.
        if (!signal.IsReady)
            return;
        signal.BeginToEnd();
        await Task.Delay(TimeSpan.FromSeconds(settings.UnreadySeconds), clock, cancellationToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);

        // The server stops next and waits for its requests: among them the streams, which end when they are told to.
        _draining = clock.CreateTimer(static state => ((ShutdownSignal)state!).EndStreams(), signal, settings.Drain, Timeout.InfiniteTimeSpan);
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public void Dispose() => _draining?.Dispose();
}

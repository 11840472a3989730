using SetupService.Api.Fitment.Batch;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>The wait for a caller's next bytes.</summary>
public sealed class ReadTimeoutTests
{
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan Never = TimeSpan.FromHours(1);

    [Fact]
    public async Task It_ends_when_nothing_comes_in_time()
    {
        using ReadTimeout timeout = new(Short, CancellationToken.None);

        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () => await timeout.WaitAsync(Forever));

        Assert.True(timeout.IsExpired);
    }

    [Fact]
    public async Task It_starts_anew_with_each_wait_and_does_not_run_between_them()
    {
        var limit = TimeSpan.FromSeconds(3);
        using ReadTimeout timeout = new(limit, CancellationToken.None);
        for (var i = 0; i < 4; i++)
        {
            await timeout.WaitAsync(static async token => await Task.Delay(100, token));
            await timeout.WaitAsync(static _ => ValueTask.CompletedTask);
        }

        // Work between two waits may take as long as it takes.
        await Task.Delay(limit + TimeSpan.FromMilliseconds(200));
        await timeout.WaitAsync(static async token => await Task.Delay(10, token));
        Assert.False(timeout.IsExpired);
    }

    [Fact]
    public async Task A_caller_that_went_away_did_not_exhaust_it()
    {
        using CancellationTokenSource gone = new();
        using ReadTimeout timeout = new(Never, gone.Token);
        var waiting = timeout.WaitAsync(Forever).AsTask();

        await gone.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        Assert.False(timeout.IsExpired);
    }

    private static async ValueTask Forever(CancellationToken cancellation) => await Task.Delay(Timeout.Infinite, cancellation);
}

using SetupService.Api.Fitment.Batch;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>The wait for a caller's next bytes.</summary>
public sealed class BatchPatienceTests
{
    private static readonly TimeSpan Short = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan Never = TimeSpan.FromHours(1);

    [Fact]
    public async Task It_ends_when_nothing_comes_in_time()
    {
        using BatchPatience patience = new(Short, CancellationToken.None);

        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () => await patience.WaitAsync(Forever));

        Assert.True(patience.IsExhausted);
    }

    [Fact]
    public async Task It_starts_anew_with_each_wait_and_does_not_run_between_them()
    {
        var limit = TimeSpan.FromSeconds(3);
        using BatchPatience patience = new(limit, CancellationToken.None);
        for (var i = 0; i < 4; i++)
        {
            await patience.WaitAsync(static async token => await Task.Delay(100, token));
            await patience.WaitAsync(static _ => ValueTask.CompletedTask);
        }

        // Work between two waits may take as long as it takes.
        await Task.Delay(limit + TimeSpan.FromMilliseconds(200));
        await patience.WaitAsync(static async token => await Task.Delay(10, token));
        Assert.False(patience.IsExhausted);
    }

    [Fact]
    public async Task A_caller_that_went_away_did_not_exhaust_it()
    {
        using CancellationTokenSource gone = new();
        using BatchPatience patience = new(Never, gone.Token);
        var waiting = patience.WaitAsync(Forever).AsTask();

        await gone.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        Assert.False(patience.IsExhausted);
    }

    private static async ValueTask Forever(CancellationToken cancellation) => await Task.Delay(Timeout.Infinite, cancellation);
}

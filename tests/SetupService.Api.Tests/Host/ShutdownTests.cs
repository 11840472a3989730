using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;
using SetupService.Api.Tests.Fitment.Batch;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Host;

/// <summary>How the service ends.</summary>
public sealed class ShutdownTests
{
    [Fact]
    public async Task It_is_not_ready_before_it_stops_to_listen_and_batches_end_with_a_line_that_says_so()
    {
        FakeTimeProvider clock = new(DateTimeOffset.UtcNow);
        await using var service = await RunningService.StartAsync(configure: builder =>
        {
            builder.Services.AddSingleton<TimeProvider>(clock);
            builder.Services.AddSingleton(new ShutdownSettings { UnreadySeconds = 3, DrainSeconds = 5, GraceSeconds = 60 });
        });
        using var batch = await OpenBatch.StartAsync(service.Client);
        await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n");
        await batch.ReadLineAsync();

        var stopping = service.StopAsync();
        using (var refused = await UntilNotReady(service))
        {
            await Problems.Read(refused, ProblemTypes.Unavailable);
            Assert.Equal(TimeSpan.FromSeconds(1), refused.Headers.RetryAfter!.Delta);
        }

        // It still listens, and computes.
        using (var live = await service.Client.GetAsync(new Uri("/health/live", UriKind.Relative)))
            Assert.Equal(HttpStatusCode.OK, live.StatusCode);
        clock.Advance(TimeSpan.FromSeconds(3));

        // The listener closes while the batch goes on.
        await UntilClosed(service);
        await batch.SendAsync(BatchCalls.CandidateLine() + "\n");
        Assert.Contains("\"line\":3,", await batch.ReadLineAsync(), StringComparison.Ordinal);
        Assert.False(stopping.IsCompleted);
        clock.Advance(TimeSpan.FromSeconds(5));
        var last = await batch.ReadLineAsync();

        Assert.Contains("\"answeredCount\":2,", last, StringComparison.Ordinal);
        Assert.Contains("\"isComplete\":false,\"reason\":\"The service is shutting down. Send the lines after the last one answered again.\"", last, StringComparison.Ordinal);
        Assert.Null(await batch.ReadLineAsync());

        // Its caller still holds the connection; the service closes it and does not wait for the end of its grace.
        for (var wait = 0; !stopping.IsCompleted && wait < 1000; wait++)
        {
            clock.Advance(TimeSpan.FromSeconds(1));
            await Task.Delay(10);
        }

        Assert.True(stopping.IsCompletedSuccessfully);
    }

    [Theory]
    [InlineData(3, 1, 3)]
    [InlineData(0, 600, 4)]
    public async Task The_grace_begins_when_the_listener_closes_and_batches_are_told_within_it(double unreadySeconds, double drainSeconds, double graceSeconds)
    {
        await using var service = await RunningService.StartAsync(configure: builder =>
            builder.Services.AddSingleton(new ShutdownSettings { UnreadySeconds = unreadySeconds, DrainSeconds = drainSeconds, GraceSeconds = graceSeconds }));
        using var batch = await OpenBatch.StartAsync(service.Client);
        await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n");
        await batch.ReadLineAsync();

        var stopping = service.StopAsync();

        Assert.Contains("\"isComplete\":false,\"reason\":\"The service is shutting down.", await batch.ReadLineAsync(), StringComparison.Ordinal);
        await stopping.WaitAsync(TimeSpan.FromSeconds(20));
    }

    [Theory]
    [InlineData("/v1/fitment/check")]
    [InlineData("/v1/fitment/batch")]
    public async Task At_the_end_of_the_grace_a_caller_who_still_sends_is_cut_off(string path)
    {
        await using var service = await RunningService.StartAsync(configure: static builder =>
            builder.Services.AddSingleton(new ShutdownSettings { UnreadySeconds = 0, DrainSeconds = 600, GraceSeconds = 1 }));
        using var caller = await RawConnection.OpenAsync(service.Client);
        await caller.SendAsync($"POST {path} HTTP/1.1\r\nHost: test\r\nContent-Type: {(path.EndsWith("check", StringComparison.Ordinal) ? "application/json" : BatchCalls.Ndjson)}\r\nContent-Length: 1000\r\nExpect: 100-continue\r\n\r\n");
        await caller.ReadUntilAsync("100 Continue");

        // Without a grace it would wait for the caller's bytes: half a minute by the host's own limit, or for good.
        await service.StopAsync().WaitAsync(TimeSpan.FromSeconds(20));

        await Assert.ThrowsAsync<IOException>(caller.ReadToEndAsync);
    }

    [Fact]
    public void Streams_that_are_told_to_end_after_the_service_has_ended_are_none()
    {
        ShutdownSignal signal = new();
        signal.Dispose();

        signal.EndStreams();

        Assert.True(signal.IsReady);
    }

    private static async Task<HttpResponseMessage> UntilNotReady(RunningService service)
    {
        while (true)
        {
            var answer = await service.Client.GetAsync(new Uri("/health/ready", UriKind.Relative));
            if (answer.StatusCode != HttpStatusCode.OK)
                return answer;
            answer.Dispose();
            await Task.Delay(10);
        }
    }

    private static async Task UntilClosed(RunningService service)
    {
        for (var wait = 0; wait < 500; wait++)
        {
            try
            {
                using var connection = await RawConnection.OpenAsync(service.Client);
            }
            catch (System.Net.Sockets.SocketException)
            {
                return;
            }

            await Task.Delay(10);
        }

        throw new InvalidOperationException("The service listens on.");
    }
}

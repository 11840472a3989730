using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using SetupService.Api.Host;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Api.Vehicles;

namespace SetupService.Api.Tests.Http.Work;

/// <summary>What becomes of calls that compute for long, of those behind them, and of their callers who go.</summary>
public sealed class ComputingCallsTests : IAsyncLifetime, IDisposable
{
    private const string Slow = "/test/slow";

    private readonly FakeTimeProvider _clock = new(DateTimeOffset.UtcNow);
    private readonly SemaphoreSlim _began = new(0);
    private readonly SemaphoreSlim _ended = new(0);
    private readonly TaskCompletionSource _release = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private RunningService _service = null!;

    /// <summary>Calls whose example asks a solver.</summary>
    public static TheoryData<string, string> Solving => new()
    {
        { "/v1/geometry/travel-sweep", "travel-sweep" },
        { "/v1/geometry/travel-sweep/chart", "travel-sweep" },
        { "/v1/handling/ride", "ride" },
        { "/v1/handling/cornering", "cornering" },
        { "/v1/handling/cornering-sweep", "cornering-sweep" },
        { "/v1/handling/cornering-sweep/chart", "cornering-sweep" },
        { "/v1/handling/envelope", "envelope" },
        { "/v1/handling/camber-target", "camber-target" },
        { "/v1/handling/what-if", "what-if" },
        { "/v1/wear/diagnosis", "wear-diagnosis" },
        { "/v1/wear/diagnosis/chart", "wear-diagnosis" },
        { "/v1/plans", "plan" },
    };

    public async Task InitializeAsync() => _service = await RunningService.StartAsync(
        configure: builder =>
        {
            builder.Services.AddSingleton<TimeProvider>(_clock);
            builder.Services.AddSingleton(new WorkSettings { Concurrency = 1, QueueLength = 1, QueueSeconds = 2, DelaySeconds = 600, DeadlineSeconds = 10, RetryAfterSeconds = 3 });
        },
        map: app => app.MapPost(Slow, RunSlowly).WithWork());

    public async Task DisposeAsync()
    {
        _release.TrySetResult();
        await _service.DisposeAsync();
    }

    public void Dispose()
    {
        _began.Dispose();
        _ended.Dispose();
    }

    [Theory]
    [MemberData(nameof(Solving))]
    public async Task A_request_that_spends_its_steps_is_refused_with_422(string path, string example)
    {
        await using var service = await RunningService.StartAsync(configure: builder => builder.Configuration["Work:Steps"] = "1");
        using var response = await service.Client.PostAsync(path, await File.ReadAllTextAsync(ExampleCall.FileOf(example + ".request.json")));

        var problem = await Problems.Read(response, ProblemTypes.WorkExceeded);

        var fault = Assert.Single(problem.GetProperty("errors").EnumerateArray());
        Assert.Equal("workExceeded", fault.GetProperty("code").GetString());
        Assert.Equal(1, fault.GetProperty("limits").GetProperty("maximum").GetDouble());
        Assert.Equal("steps", fault.GetProperty("limits").GetProperty("unit").GetString());
        Assert.StartsWith("One request may take 1 steps of the solvers", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_request_that_is_not_done_by_its_deadline_is_refused_with_422()
    {
        var answer = SendSlow();
        await _began.WaitAsync();
        _clock.Advance(TimeSpan.FromSeconds(9.9));
        Assert.False(answer.IsCompleted);
        _clock.Advance(TimeSpan.FromSeconds(0.2));

        using var response = await answer;
        var problem = await Problems.Read(response, ProblemTypes.WorkExceeded);

        Assert.Equal("One request is computed for 10 s at most, and this one takes longer. Ask for fewer rows, bends, changes or parts.", problem.GetProperty("detail").GetString());
        Assert.Equal(10, problem.GetProperty("errors")[0].GetProperty("limits").GetProperty("maximum").GetDouble());
    }

    [Fact]
    public async Task Who_finds_the_queue_full_and_who_waits_too_long_is_refused_with_503()
    {
        var computing = SendSlow();
        await _began.WaitAsync();
        var waiting = SendSlow();
        await UntilOneWaits();

        using (var refused = await SendSlow())
        {
            await Problems.Read(refused, ProblemTypes.Unavailable);
            Assert.Equal(TimeSpan.FromSeconds(3), refused.Headers.RetryAfter!.Delta);
        }

        _clock.Advance(TimeSpan.FromSeconds(2.1));
        using (var late = await waiting)
        {
            await Problems.Read(late, ProblemTypes.Unavailable);
            Assert.Equal(TimeSpan.FromSeconds(3), late.Headers.RetryAfter!.Delta);
        }

        Assert.False(computing.IsCompleted);
        _release.SetResult();
        using var answer = await computing;
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task Health_tables_checks_and_refusals_do_not_wait_behind_calls()
    {
        var computing = SendSlow();
        await _began.WaitAsync();
        var waiting = SendSlow();
        await UntilOneWaits();

        foreach (var path in new[] { "/health/live", "/health/ready", "/version", "/v1/reference/load-indices", "/v1/tyres/decode?marking=225/45R17%2091W" })
        {
            using var answer = await _service.Client.GetAsync(new Uri(path, UriKind.Relative));
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }

        await _service.Client.AnswerOf(Calls.Check, Requests.Check());
        await _service.Client.RefusalOf(Slow, "{\"label\":1}");
        await _service.Client.RefusalOf("/v1/handling/cornering", "{}");
        Assert.False(computing.IsCompleted || waiting.IsCompleted);
    }

    [Fact]
    public async Task A_caller_that_goes_ends_its_work_and_its_turn_goes_to_the_next()
    {
        using CancellationTokenSource gone = new();
        var computing = SendSlow(gone.Token);
        await _began.WaitAsync();
        var waiting = SendSlow();
        await UntilOneWaits();

        await gone.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => computing);
        await _ended.WaitAsync();
        await _began.WaitAsync();
        _release.SetResult();
        using var answer = await waiting;
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory]
    [InlineData("Work:DeadlineSeconds", "0", "Work:DeadlineSeconds must be between 0.01 and 3600")]
    [InlineData("Work:Steps", "0", "Work:Steps must be between 1 and 1000000000000")]
    [InlineData("Work:Concurrency", "-1", "Work:Concurrency must be between 0 and 1024")]
    [InlineData("Work:QueueLength", "many", "Work:QueueLength")]
    [InlineData("Work:DelaySeconds", "0", "Work:DelaySeconds must be between 0.001 and 600")]
    [InlineData("Work:QueueLenght", "1", "QueueLenght")]
    [InlineData("Batch:SilenceSeconds", "NaN", "Batch:SilenceSeconds must be between 0.1 and 3600")]
    [InlineData("Batch:LeastBytesPerSecond", "0", "Batch:LeastBytesPerSecond must be between 1 and 1000000")]
    public void A_setting_that_is_wrong_stops_the_start_and_is_named(string name, string value, string told)
    {
        var fault = Assert.ThrowsAny<InvalidOperationException>(() => SetupServiceHost.Build([], builder => builder.Configuration[name] = value));

        Assert.Contains(told, fault.ToString(), StringComparison.Ordinal);
    }

    private async Task<HttpResponseMessage> SendSlow(CancellationToken gone = default)
    {
        using StringContent body = new("{}", System.Text.Encoding.UTF8, "application/json");
        return await _service.Client.PostAsync(new Uri(Slow, UriKind.Relative), body, gone);
    }

    private async Task<Results<Answer<HealthAnswer>, Problem>> RunSlowly(Body<VehicleDocument> body, RequestWork work)
    {
        if (body.Problem is { } problem)
            return problem;
        _began.Release();
        try
        {
            await _release.Task.WaitAsync(work.Cancellation);
            return new Answer<HealthAnswer>(new HealthAnswer { Status = "done" });
        }
        finally
        {
            _ended.Release();
        }
    }

    private async Task UntilOneWaits()
    {
        var gate = _service.Services.GetRequiredService<WorkGate>();
        while (gate.WaitingCount == 0)
            await Task.Delay(5);
    }
}

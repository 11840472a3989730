using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Work;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Http.Work;

/// <summary>What is answered while more comes than can be worked on.</summary>
public sealed class LoadSheddingTests : IAsyncLifetime
{
    private const string Shop = "https://shop.example";

    private readonly FakeTimeProvider _clock = new(DateTimeOffset.UtcNow);
    private readonly QueueUnderTest _queue = new();
    private RunningService _service = null!;

    public async Task InitializeAsync()
    {
        _service = await RunningService.StartAsync(configure: builder =>
        {
            builder.Configuration["AllowedOrigins"] = Shop;
            builder.Configuration["Telemetry:Metrics"] = "true";
            builder.Configuration["Work:RetryAfterSeconds"] = "3";
            builder.Configuration["Work:DelaySeconds"] = "0.01";
            builder.Services.AddSingleton(services => _queue.Watch(services.GetRequiredService<WorkSettings>(), _clock));
        });

        // The probe that this request sends waits from now on.
        await _service.Client.AnswerOf(Calls.Check, Requests.Check());
        _clock.Advance(TimeSpan.FromMilliseconds(11));
        _queue.Length = OverloadDetector.ShortQueue + 1;
    }

    public async Task DisposeAsync() => await _service.DisposeAsync();

    [Theory]
    [InlineData("POST", Calls.Check)]
    [InlineData("POST", "/v1/handling/cornering")]
    [InlineData("POST", "/v1/fitment/batch")]
    [InlineData("GET", "/v1/tyres/decode?marking=225/45R17%2091W")]
    [InlineData("GET", "/v1/reference/load-indices")]
    [InlineData("GET", "/docs")]
    [InlineData("GET", "/none")]
    public async Task A_request_is_refused_with_503_and_told_when_to_come_again(string method, string path)
    {
        using HttpRequestMessage request = new(new HttpMethod(method), path) { Headers = { { "Origin", Shop } } };
        if (method == "POST")
            request.Content = new StringContent(Requests.Check().ToJsonString());
        using var response = await _service.Client.SendAsync(request);

        var problem = await Problems.Read(response, ProblemTypes.Unavailable);

        Assert.Empty(problem.GetProperty("errors").EnumerateArray());
        Assert.Equal(TimeSpan.FromSeconds(3), response.Headers.RetryAfter!.Delta);
        Assert.Equal(Shop, Assert.Single(response.Headers.GetValues("Access-Control-Allow-Origin")));
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
    }

    [Theory]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    [InlineData("/metrics")]
    public async Task Who_asks_how_the_service_does_is_answered(string path)
    {
        using var response = await _service.Client.GetAsync(new Uri(path, UriKind.Relative));

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Fact]
    public async Task A_connection_whose_request_was_refused_unread_takes_the_next()
    {
        var body = Requests.Check().ToJsonString();
        var refused = $"POST {Calls.Check} HTTP/1.1\r\nHost: test\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n{body}";
        using var connection = await RawConnection.OpenAsync(_service.Client);
        await connection.SendAsync(refused);
        var first = await connection.ReadUntilAsync("\"errors\":[]}");
        _queue.Length = 0;
        await connection.SendAsync("GET /v1/reference/speed-symbols HTTP/1.1\r\nHost: test\r\nConnection: close\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 503 ", first, StringComparison.Ordinal);
        Assert.StartsWith("HTTP/1.1 200 ", await connection.ReadToEndAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Once_the_queue_is_worked_off_requests_are_answered_again()
    {
        _queue.RunProbe();
        _clock.Advance(TimeSpan.FromMilliseconds(12));

        await _service.Client.AnswerOf(Calls.Check, Requests.Check());
    }
}

using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using OpenTelemetry.Trace;
using SetupService.Api.Host;
using SetupService.Api.Host.Watching;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Fitment.Batch;
using SetupService.Api.Tests.Host.Access;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Host.Watching;

/// <summary>What is measured and where it goes. Counts of the whole process are looked at, so it runs by itself.</summary>
[Collection(nameof(ByItself))]
public sealed class TelemetryTests
{
    [Fact]
    public async Task The_metrics_are_served_as_text_with_those_of_the_services_own_work()
    {
        await using var service = await RunningService.StartAsync(configure: builder => builder.Configuration["Telemetry:Metrics"] = "true");
        await service.Client.AnswerOf(Calls.Check, Requests.Check());
        await service.Client.AnswerOf("/v1/handling/cornering", await File.ReadAllTextAsync(ExampleCall.FileOf("cornering.request.json")));
        await service.Client.RefusalOf(Calls.Check, "{}");
        await service.Client.LinesOf($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n");

        // What is scraped within a moment is the same text: wait for one that has all.
        var text = "";
        for (var wait = 0; wait < 100 && !text.Contains("setup_batch_lines_total", StringComparison.Ordinal); wait++)
        {
            text = await service.Client.GetStringAsync(new Uri("/metrics", UriKind.Relative));
            await Task.Delay(50);
        }

        Assert.Contains("\nsetup_batch_lines_total", text, StringComparison.Ordinal);
        Assert.Matches("\nsetup_fitment_verdicts_total\\{[^}]*verdict=\"caution\"[^}]*\\} [0-9]", text);
        Assert.Matches("\nsetup_solver_steps_total\\{[^}]*route=\"/v1/handling/cornering\"[^}]*\\} [0-9]", text);
        Assert.Matches("\nsetup_refusals_total\\{[^}]*code=\"required\"[^}]*type=\"invalid-request\"[^}]*\\} [0-9]", text);
        Assert.Matches("\nsetup_work_waiting(\\{[^}]*\\})? 0", text);
        Assert.Matches("\nsetup_work_delay_seconds(\\{[^}]*\\})? [0-9]", text);
        Assert.Matches("\nhttp_server_request_duration_seconds_bucket\\{[^}]*http_route=\"/v1/fitment/check\"", text);
        Assert.Contains("\ndotnet_gc_collections_total", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_metrics_need_a_key_where_clients_have_keys()
    {
        await using var service = await ServiceWithKeys.StartAsync(settings: ("Telemetry:Metrics", "true"));
        using (var refused = await service.SendAsync("GET", "/metrics", null))
            await Problems.Read(refused, ProblemTypes.KeyNeeded);
        using var answer = await service.SendAsync("GET", "/metrics", ServiceWithKeys.First);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task They_may_have_a_port_of_their_own_without_a_key_and_nothing_else_there()
    {
        var port = FreePort();
        await using var app = SetupServiceHost.Build(
            ["--urls", $"http://127.0.0.1:0;http://127.0.0.1:{port}", "--Telemetry:Metrics", "true", "--Telemetry:MetricsPort", $"{port}", "--Shutdown:UnreadySeconds", "0"], ServiceWithKeys.Configure);
        await app.StartAsync();
        using HttpClient client = new() { BaseAddress = new Uri($"http://127.0.0.1:{port}") };
        using var metrics = await client.GetAsync(new Uri("/metrics", UriKind.Relative));
        using var health = await client.GetAsync(new Uri("/health/live", UriKind.Relative));
        using var table = await client.GetAsync(new Uri("/v1/reference/load-indices", UriKind.Relative));

        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.OK), (metrics.StatusCode, health.StatusCode));
        await Problems.Read(table, ProblemTypes.NotFound);
        await app.StopAsync();
    }

    [Fact]
    public async Task Unless_asked_for_there_are_none()
    {
        await using var service = await RunningService.StartAsync();
        using var none = await service.SendAsync("GET", "/metrics", null);

        await Problems.Read(none, ProblemTypes.NotFound);
    }

    [Fact]
    public async Task Traces_and_metrics_are_sent_and_go_on_with_the_callers_trace()
    {
        const string Trace = "4bf92f3577b34da6a3ce929d0e0e4736";
        await using var collector = await Collector.StartAsync();
        await SendTracedAsync(collector, Trace, "/v1/reference/load-indices", ("Telemetry:TracedShare", "1"));

        Assert.True(collector.HasTraced(Convert.FromHexString(Trace)));
        Assert.Contains(collector.Received, one => one.Path == "/v1/metrics" && one.Body.AsSpan().IndexOf("http.server.request.duration"u8) >= 0);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_caller_decides_what_is_traced_only_where_the_operator_says_so(bool callerDecides)
    {
        const string Trace = "4bf92f3577b34da6a3ce929d0e0e4737";
        await using var collector = await Collector.StartAsync();
        await SendTracedAsync(collector, Trace, "/v1/reference/load-indices", ("Telemetry:TracedShare", "0"), ("Telemetry:CallerDecidesTracing", $"{callerDecides}"));

        Assert.Equal(callerDecides, collector.HasTraced(Convert.FromHexString(Trace)));
    }

    [Fact]
    public void The_share_is_drawn_by_lot_and_not_by_a_trace_id_that_a_caller_makes_up()
    {
        const int Requests = 10_000;
        const double Share = 0.25;

        // Of ids a sampler by ids takes this one at every share but 0.
        SamplingParameters asked = new(
            new(ActivityTraceId.CreateFromString("00000000000000000000000000000001"), ActivitySpanId.CreateFromString("00f067aa0ba902b7"), ActivityTraceFlags.Recorded, traceState: null, isRemote: true),
            ActivityTraceId.CreateFromString("00000000000000000000000000000001"), "GET", ActivityKind.Server);
        var sampler = Telemetry.SamplerFrom(new() { TracedShare = Share });
        var traced = Enumerable.Range(0, Requests).Count(_ => sampler.ShouldSample(asked).Decision == SamplingDecision.RecordAndSample);

        // Ten standard deviations of a binomial distribution, sqrt(n p (1 - p)).
        Assert.InRange(traced, (Requests * Share) - 433, (Requests * Share) + 433);
    }

    [Theory]
    [InlineData("/nowhere/secret-name?signature=secret-name")]
    [InlineData("/v1/tyres/decode?marking=secret-name")]
    public async Task A_trace_has_no_text_of_the_callers(string path)
    {
        const string Trace = "4bf92f3577b34da6a3ce929d0e0e4738";
        await using var collector = await Collector.StartAsync();
        await SendTracedAsync(collector, Trace, path, ("Telemetry:TracedShare", "1"));

        Assert.True(collector.HasTraced(Convert.FromHexString(Trace)));
        Assert.False(collector.HasTraced("secret-name"u8.ToArray()));
    }

    [Theory]
    [InlineData("Telemetry:OtlpEndpoint", "collector", "Telemetry:OtlpEndpoint is no address of a collector")]
    [InlineData("Telemetry:TracedShare", "1.1", "Telemetry:TracedShare must be between 0 and 1")]
    [InlineData("Telemetry:MetricsPort", "65536", "Telemetry:MetricsPort must be between 0 and 65535")]
    [InlineData("Log:Format", "Xml", "Log:Format")]
    [InlineData("Log:RefusalsPerSecond", "0", "Log:RefusalsPerSecond must be between 1 and 100000")]
    [InlineData("Shutdown:GraceSeconds", "0", "Shutdown:GraceSeconds must be between 1 and 600")]
    public void A_setting_that_is_wrong_stops_the_start_and_is_named(string name, string value, string told)
    {
        var fault = Assert.ThrowsAny<Exception>(() => SetupServiceHost.Build([], builder => builder.Configuration[name] = value));

        Assert.Contains(told, fault.ToString(), StringComparison.Ordinal);
    }

    /// <summary>Has a service answer one request whose caller wants it traced, and end: everything is sent by then.</summary>
    private static async Task SendTracedAsync(Collector collector, string trace, string path, params (string Name, string Value)[] settings)
    {
        await using var service = await RunningService.StartAsync(configure: builder =>
        {
            builder.Configuration["Telemetry:OtlpEndpoint"] = collector.Address;
            foreach ((var name, var value) in settings)
                builder.Configuration[name] = value;
        });
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri(path, UriKind.Relative));
        request.Headers.Add("traceparent", $"00-{trace}-00f067aa0ba902b7-01");
        request.Headers.Add("User-Agent", "secret-name");
        request.Headers.Host = "secret-name.test";
        using var answer = await service.Client.SendAsync(request);
        Assert.Equal(trace, Assert.Single(answer.Headers.GetValues("Request-Id")));
    }

    private static int FreePort()
    {
        using System.Net.Sockets.TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    /// <summary>Takes what is sent by OTLP over HTTP.</summary>
    private sealed class Collector : IAsyncDisposable
    {
        private readonly WebApplication _app;

        private Collector(WebApplication app) => _app = app;

        public ConcurrentQueue<(string Path, byte[] Body)> Received { get; } = new();

        public string Address => _app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();

        /// <summary>True where bytes stand in a trace.</summary>
        public bool HasTraced(byte[] bytes) => Received.Any(one => one.Path == "/v1/traces" && one.Body.AsSpan().IndexOf(bytes) >= 0);

        public static async Task<Collector> StartAsync()
        {
            var builder = WebApplication.CreateSlimBuilder();
            builder.WebHost.UseUrls("http://127.0.0.1:0");
            builder.Logging.ClearProviders();
            Collector collector = new(builder.Build());
            collector._app.Run(async context =>
            {
                using MemoryStream body = new();
                await context.Request.Body.CopyToAsync(body);
                collector.Received.Enqueue((context.Request.Path.Value!, body.ToArray()));
            });
            await collector._app.StartAsync();
            return collector;
        }

        public ValueTask DisposeAsync() => _app.DisposeAsync();
    }
}

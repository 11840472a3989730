using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using Serilog;
using Serilog.Events;
using SetupService.Api.Host.Watching;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host.Access;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Host.Watching;

/// <summary>A line a request, and nothing in it that is the caller's own.</summary>
public sealed class RequestLogTests
{
    private readonly CapturedLog _log = new();

    [Fact]
    public async Task Every_request_has_its_line_where_that_is_asked_for()
    {
        await using var service = await StartAsync("Log:EveryRequest", "true");
        using var good = await service.SendAsync("POST", "/v1/handling/cornering", ServiceWithKeys.First, await File.ReadAllTextAsync(ExampleCall.FileOf("cornering.request.json")));
        using var head = await service.SendAsync("HEAD", "/health/live", null);

        var line = await LineOf(good);
        Assert.Equal("\"POST\"", line["Method"].ToString());
        Assert.Equal("\"/v1/handling/cornering\"", line["Route"].ToString());
        Assert.Equal("200", line["Status"].ToString());
        Assert.Equal("\"shop\"", line["Client"].ToString());
        Assert.True(long.Parse(line["Steps"].ToString(), CultureInfo.InvariantCulture) > 10);
        Assert.True(double.Parse(line["DurationMs"].ToString(), CultureInfo.InvariantCulture) > 0);
        Assert.Equal("\"HEAD\"", (await LineOf(head))["Method"].ToString());
    }

    [Fact]
    public async Task Neither_keys_nor_bodies_nor_queries_are_told()
    {
        await using var service = await StartAsync("Log:EveryRequest", "true");
        var body = Requests.Check();
        body["vehicle"]!["label"] = "secret-name";
        using var good = await service.SendAsync("POST", Calls.Check, ServiceWithKeys.First, body.ToJsonString());
        using var wrong = await service.SendAsync("POST", Calls.Check, ServiceWithKeys.First, "{\"secret-name\":1}");
        using var unknown = await service.SendAsync("GET", "/v1/tyres/decode?marking=secret-name", ServiceWithKeys.First);
        using var refused = await service.SendAsync("GET", "/v1/tyres/decode?marking=secret-name", "secret-name");
        using var nowhere = await service.SendAsync("GET", "/nowhere/secret-name/" + ServiceWithKeys.First, null);
        using var page = await service.SendAsync("GET", "/docs/methods/secret-name", null);
        using var method = await service.SendAsync("secret-name", Calls.Check, ServiceWithKeys.First);
        await LineOf(good);
        await LineOf(wrong);
        await LineOf(unknown);
        await LineOf(refused);
        Assert.Equal("\"none\"", (await LineOf(nowhere))["Route"].ToString());
        Assert.Equal("\"/docs/methods/{name}\"", (await LineOf(page))["Route"].ToString());
        Assert.Equal("\"_OTHER\"", (await LineOf(method))["Method"].ToString());

        Assert.All(_log.Events, one =>
        {
            Assert.DoesNotContain("secret-name", one.RenderMessage(CultureInfo.InvariantCulture) + string.Join(' ', one.Properties), StringComparison.Ordinal);
            Assert.DoesNotContain(ServiceWithKeys.First, one.RenderMessage(CultureInfo.InvariantCulture) + string.Join(' ', one.Properties), StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task Refusals_have_so_many_lines_a_second_and_the_next_tells_how_many_were_left_out()
    {
        FakeTimeProvider clock = new(DateTimeOffset.UtcNow);
        await using var service = await StartAsync("Log:RefusalsPerSecond", "3", clock);
        for (var i = 0; i < 10; i++)
            (await service.SendAsync("GET", "/none", null)).Dispose();
        clock.Advance(TimeSpan.FromSeconds(1));
        using var last = await service.SendAsync("GET", "/none", null);
        await LineOf(last);

        Assert.Equal(4, _log.Events.Count(one => one.Properties.ContainsKey("Status")));
        Assert.Equal("7", Assert.Single(_log.Events, one => one.MessageTemplate.Text.Contains("left out", StringComparison.Ordinal)).Properties["Count"].ToString());
    }

    [Fact]
    public async Task Callers_who_go_away_are_told_no_oftener()
    {
        const int Callers = 6;
        FakeTimeProvider clock = new(DateTimeOffset.UtcNow);
        await using var service = await StartAsync("Log:RefusalsPerSecond", "3", clock);
        for (var i = 0; i < Callers; i++)
        {
            using var caller = await RawConnection.OpenAsync(service.Client);
            await caller.SendAsync($"POST {Calls.Check} HTTP/1.1\r\nHost: test\r\nApi-Key: {ServiceWithKeys.First}\r\nContent-Type: application/json\r\nContent-Length: 100\r\nExpect: 100-continue\r\n\r\n");
            await caller.ReadUntilAsync("100 Continue");
            caller.Reset();
        }

        // They are gone a moment later.
        for (var wait = 0; wait < 500 && Told() + LeftOut() < Callers; wait++)
        {
            await Task.Delay(200);
            clock.Advance(TimeSpan.FromSeconds(1));
            (await service.SendAsync("GET", "/none", null)).Dispose();
        }

        Assert.Equal(Callers, Told() + LeftOut());
        Assert.InRange(LeftOut(), 1, Callers - 3);

        int Told() => _log.Events.Count(static one => one.MessageTemplate.Text.Contains("went away after", StringComparison.Ordinal));
        int LeftOut() => _log.Events.Where(static one => one.MessageTemplate.Text.Contains("left out", StringComparison.Ordinal)).Sum(static one => int.Parse(one.Properties["Count"].ToString(), CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Warnings_of_the_server_that_callers_bring_about_are_so_many_a_second_too()
    {
        FakeTimeProvider clock = new(DateTimeOffset.UtcNow);
        LineRate rate = new(3, clock);

        Assert.Equal([false, false, false, true, true], Enumerable.Range(0, 5).Select(_ => rate.IsBeyond(Line(LogEventLevel.Warning, "Microsoft.AspNetCore.Server.Kestrel.Connections"))));
        Assert.False(rate.IsBeyond(Line(LogEventLevel.Error, "Microsoft.AspNetCore.Server.Kestrel")));
        Assert.False(rate.IsBeyond(Line(LogEventLevel.Warning, "SetupService.Api")));
        clock.Advance(TimeSpan.FromSeconds(1));
        Assert.False(rate.IsBeyond(Line(LogEventLevel.Warning, "Microsoft.AspNetCore.Server.Kestrel.Connections")));

        static LogEvent Line(LogEventLevel level, string source) =>
            new(DateTimeOffset.UnixEpoch, level, null, MessageTemplate.Empty, [new LogEventProperty("SourceContext", new ScalarValue(source))]);
    }

    [Fact]
    public void Lines_for_machines_are_JSON_and_the_grave_ones_do_not_wait()
    {
        using MemoryStream written = new();
        using JsonLines lines = new(written);
        using var log = new LoggerConfiguration().WriteTo.Sink(lines).CreateLogger();

        log.Information("Request {RequestId} {Status}", "a\"b", 200);
        log.Error(new InvalidOperationException("why"), "Request {RequestId} failed", "c");

        var told = Encoding.UTF8.GetString(written.ToArray()).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement).ToArray();
        Assert.Equal(2, told.Length);
        Assert.Equal("a\"b", told[0].GetProperty("RequestId").GetString());
        Assert.Equal(200, told[0].GetProperty("Status").GetInt32());
        Assert.Equal("Error", told[1].GetProperty("level").GetString());
        Assert.Contains("why", told[1].GetProperty("exception").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_gathered_is_written_in_the_end()
    {
        NeverClosed written = new();
        using (JsonLines lines = new(written))
        using (var log = new LoggerConfiguration().WriteTo.Sink(lines).CreateLogger())
            log.Information("one");

        Assert.Contains("\"template\":\"one\"", Encoding.UTF8.GetString(written.ToArray()), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_log_has_no_room_its_lines_are_lost_and_later_ones_come()
    {
        FullDisk disk = new() { IsFull = true };
        using JsonLines lines = new(disk);
        using var log = new LoggerConfiguration().WriteTo.Sink(lines).CreateLogger();

        // The lines wait for the timer, on whose thread nobody catches what is thrown: that would end the process.
        log.Information("lost");
        for (var wait = 0; wait < 250 && disk.Refused == 0; wait++)
            Thread.Sleep(20);
        disk.IsFull = false;
        log.Error("told");

        Assert.Equal(1, disk.Refused);
        var line = Assert.Single(Encoding.UTF8.GetString(disk.ToArray()).Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("told", line, StringComparison.Ordinal);
    }

    [Fact]
    public async Task While_one_thread_waits_for_a_slow_reader_the_others_go_on()
    {
        const int Lines = 400;
        using SlowReader reader = new();
        using (JsonLines lines = new(reader))
        using (var log = new LoggerConfiguration().WriteTo.Sink(lines).CreateLogger())
        {
            // Some 40 KB: more than is gathered before it is written, and less than makes the others wait.
            var waiting = Task.Run(() => WriteLines(log));
            await reader.Begun.WaitAsync(TimeSpan.FromSeconds(60));
            await Task.Run(() => WriteLines(log)).WaitAsync(TimeSpan.FromSeconds(60));
            reader.Read();
            await waiting.WaitAsync(TimeSpan.FromSeconds(60));
        }

        Assert.Equal(2 * Lines, Encoding.UTF8.GetString(reader.ToArray()).Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);

        static void WriteLines(Serilog.Core.Logger log)
        {
            for (var i = 0; i < Lines; i++)
                log.Information("A line of some hundred bytes, so that a few hundred of them are what is written at once: {Number}", i);
        }
    }

    private Task<RunningService> StartAsync(string name, string value, TimeProvider? clock = null) => RunningService.StartAsync(configure: builder =>
    {
        ServiceWithKeys.Configure(builder);
        builder.Configuration[name] = value;
        if (clock is not null) builder.Services.AddSingleton(clock);
        builder.Services.AddSerilog(logger => logger.MinimumLevel.Information().MinimumLevel.Override("Microsoft", LogEventLevel.Warning).WriteTo.Sink(_log), preserveStaticLogger: true);
    });

    /// <summary>The line is written when the request is done, which may be after its answer has come.</summary>
    private async Task<IReadOnlyDictionary<string, LogEventPropertyValue>> LineOf(HttpResponseMessage response)
    {
        var id = $"\"{Assert.Single(response.Headers.GetValues("Request-Id"))}\"";
        for (var wait = 0; wait < 500; wait++)
        {
            if (_log.Events.FirstOrDefault(one => one.Properties.TryGetValue("RequestId", out var told) && told.ToString() == id) is { } line)
                return line.Properties;
            await Task.Delay(20);
        }

        throw new InvalidOperationException("The request has no line.");
    }

    private sealed class FullDisk : MemoryStream
    {
        public volatile bool IsFull;

        public volatile int Refused;

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            if (IsFull)
            {
                Refused++;
                throw new IOException("No space left on device");
            }

            base.Write(buffer);
        }
    }

    private sealed class SlowReader : MemoryStream
    {
        private readonly TaskCompletionSource _begun = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly ManualResetEventSlim _reads = new();

        public Task Begun => _begun.Task;

        public void Read() => _reads.Set();

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            _begun.TrySetResult();
            _reads.Wait();
            base.Write(buffer);
        }

        protected override void Dispose(bool disposing)
        {
            base.Dispose(false);
            _reads.Set();
        }
    }

    private sealed class NeverClosed : MemoryStream
    {
        // Of a memory stream nothing closes where nobody says that it is being disposed of.
        protected override void Dispose(bool disposing) => base.Dispose(false);
    }
}

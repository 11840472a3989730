using System.Net;
using System.Net.Http.Headers;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using Serilog;
using Serilog.Events;
using SetupService.Api.Fitment.Batch;
using SetupService.Api.Tests.Fitment.Catalogue;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment.Batch;

/// <summary>Streams over HTTP/2 (RFC 9113), as browsers and most clients speak it over HTTPS: they are answered, paced and ended as over HTTP/1.1.</summary>
public sealed class Http2StreamTests
{
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task Lines_are_answered_while_they_are_sent()
    {
        await using var service = await StartAsync(new BatchSettings());
        using var batch = Begin(service);
        await batch.SendAsync(BatchCalls.CarLine() + "\n");
        for (var i = 0; i < 3; i++)
        {
            await batch.SendAsync(BatchCalls.CandidateLine(i) + "\n");
            Assert.Contains($"\"id\":{i},", await batch.ReadLineAsync(), StringComparison.Ordinal);
        }

        batch.End();
        Assert.Contains("\"answeredCount\":3,", await batch.ReadLineAsync(), StringComparison.Ordinal);
        Assert.Null(await batch.ReadLineAsync());
    }

    [Fact]
    public async Task A_table_and_a_catalogue_are_answered()
    {
        await using var service = await StartAsync(new BatchSettings());
        Assert.Single(await service.Client.RowsOf("id,wheelMarking,tyreMarking\na,8Jx17 ET40,225/45R17 91W\n"));

        var lines = await service.Client.CatalogueOf($"{CatalogueCalls.Car("one").ToJsonString()}\n", $"{BatchCalls.CandidateLine("a")}\n", "?only=pass,caution,fail,unknown");
        Assert.True(BatchCalls.Summary(lines).GetProperty("isComplete").GetBoolean());
    }

    [Fact]
    public async Task One_that_pauses_for_longer_than_the_servers_own_least_rate_allows_goes_on()
    {
        // The server's own: 240 bytes a second, after 5 s.
        await using var service = await StartAsync(new BatchSettings());
        using var batch = Begin(service);
        await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine(1)}\n");
        Assert.Contains("\"id\":1,", await batch.ReadLineAsync(), StringComparison.Ordinal);

        await Task.Delay(TimeSpan.FromSeconds(9));

        await batch.SendAsync($"{BatchCalls.CandidateLine(2)}\n");
        Assert.Contains("\"id\":2,", await batch.ReadLineAsync(), StringComparison.Ordinal);
        batch.End();
        Assert.Contains("\"isComplete\":true", await batch.ReadLineAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_that_comes_too_slowly_is_closed_with_the_reason()
    {
        await using var service = await StartAsync(new BatchSettings { LeastBytesPerSecond = 1_000_000, LeastRateAfterSeconds = 2 });
        using var batch = Begin(service);
        await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n");
        Assert.Contains("\"line\":2,", await batch.ReadLineAsync(), StringComparison.Ordinal);

        Assert.Contains("\"isComplete\":false,\"reason\":\"The lines came more slowly than 1000000 bytes a second", await batch.ReadLineAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_in_which_nothing_comes_is_closed_with_the_reason()
    {
        await using var service = await StartAsync(new BatchSettings { SilenceSeconds = 1 });
        using var batch = Begin(service);
        await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n");
        Assert.Contains("\"line\":2,", await batch.ReadLineAsync(), StringComparison.Ordinal);

        Assert.Contains("\"isComplete\":false,\"reason\":\"No bytes came for 1 s", await batch.ReadLineAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Http1")]
    [InlineData("Http2")]
    public async Task One_whose_answer_nobody_reads_is_cut_off_soon_after_its_time_is_over(string protocol)
    {
        CapturedLog log = new();
        await using var service = await StartAsync(new BatchSettings { LongestSeconds = 2, LeastRateAfterSeconds = 2, LeastBytesPerSecond = 1 }, log, protocol);
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri(Calls.Batch + "?detail=full", UriKind.Relative))
        {
            Content = new StringContent($"{BatchCalls.CarLine()}\n{string.Concat(Enumerable.Repeat(BatchCalls.CandidateLine() + "\n", 5000))}", Encoding.UTF8, BatchCalls.Ndjson),
            Version = service.Client.DefaultRequestVersion,
            VersionPolicy = HttpVersionPolicy.RequestVersionExact,
        };
        var sending = service.Client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);

        // By the least rate the megabytes that wait to be read could wait for days.
        await UntilGone(log);
        Assert.DoesNotContain(log.Events, static one => one.Level >= LogEventLevel.Warning);

        // Who still sends when it is cut off is told nothing.
        _ = await Record.ExceptionAsync(async () => (await sending).Dispose());
    }

    [Fact]
    public async Task A_caller_that_resets_its_stream_is_no_failure_and_leaves_its_connection_to_others()
    {
        CapturedLog log = new();
        await using var service = await StartAsync(new BatchSettings(), log);
        using (var batch = Begin(service))
        {
            await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n");
            Assert.Contains("\"line\":2,", await batch.ReadLineAsync(), StringComparison.Ordinal);
        }

        BatchCalls.AssertSummary(await service.Client.LinesOf($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n"), answered: 1, refused: 0);
        await UntilGone(log);
        Assert.DoesNotContain(log.Events, static one => one.Level >= LogEventLevel.Warning);
    }

    /// <summary>Waits until the log tells, once and as no failure, that the caller went away.</summary>
    private static async Task UntilGone(CapturedLog log)
    {
        for (var wait = 0; wait < 300 && !log.Events.Any(IsGone); wait++)
            await Task.Delay(50);
        Assert.Null(Assert.Single(log.Events, IsGone).Exception);
    }

    private static bool IsGone(LogEvent one) => one.MessageTemplate.Text.Contains("went away", StringComparison.Ordinal);

    private static async Task<RunningService> StartAsync(BatchSettings settings, CapturedLog? log = null, string protocol = "Http2")
    {
        var service = await RunningService.StartAsync(configure: builder =>
        {
            builder.Configuration["Kestrel:EndpointDefaults:Protocols"] = protocol;
            builder.Services.AddSingleton(settings);
            if (log is not null)
                builder.Services.AddSerilog(logger => logger.MinimumLevel.Information().MinimumLevel.Override("Microsoft", LogEventLevel.Warning).WriteTo.Sink(log), preserveStaticLogger: true);
        });
        service.Client.DefaultRequestVersion = protocol == "Http2" ? HttpVersion.Version20 : HttpVersion.Version11;
        service.Client.DefaultVersionPolicy = HttpVersionPolicy.RequestVersionExact;
        return service;
    }

    private static DuplexBatch Begin(RunningService service) => new(service.Client);

    /// <summary>A batch whose lines are sent one by one while its answers are read; disposing of it before its end resets its stream.</summary>
    private sealed class DuplexBatch : IDisposable
    {
        private readonly System.IO.Pipelines.Pipe _body = new();
        private readonly HttpRequestMessage _request;
        private readonly Task<HttpResponseMessage> _sent;
        private StreamReader? _answer;

        public DuplexBatch(HttpClient client)
        {
            PipedContent content = new(_body.Reader);
            content.Headers.ContentType = new MediaTypeHeaderValue(BatchCalls.Ndjson);
            _request = new(HttpMethod.Post, new Uri(Calls.Batch, UriKind.Relative)) { Content = content, Version = HttpVersion.Version20, VersionPolicy = HttpVersionPolicy.RequestVersionExact };
            _sent = client.SendAsync(_request, HttpCompletionOption.ResponseHeadersRead);
        }

        public async Task SendAsync(string piece) => await _body.Writer.WriteAsync(Encoding.UTF8.GetBytes(piece));

        public void End() => _body.Writer.Complete();

        public async Task<string?> ReadLineAsync()
        {
            if (_answer is null)
            {
                var response = await _sent.WaitAsync(Soon);
                Assert.Equal(HttpStatusCode.OK, response.StatusCode);
                _answer = new StreamReader(await response.Content.ReadAsStreamAsync());
            }

            return await _answer.ReadLineAsync().WaitAsync(Soon);
        }

        public void Dispose()
        {
            _answer?.Dispose();
            _request.Dispose();
        }
    }
    /// <summary>A body that goes on its way piece by piece, while the answer is read already.</summary>
    private sealed class PipedContent(System.IO.Pipelines.PipeReader body) : HttpContent
    {
        protected override Task SerializeToStreamAsync(Stream stream, TransportContext? context) => SerializeToStreamAsync(stream, context, CancellationToken.None);

        protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context, CancellationToken cancellationToken)
        {
            while (true)
            {
                var read = await body.ReadAsync(cancellationToken);
                foreach (var piece in read.Buffer)
                    await stream.WriteAsync(piece, cancellationToken);
                await stream.FlushAsync(cancellationToken);
                body.AdvanceTo(read.Buffer.End);
                if (read.IsCompleted)
                    return;
            }
        }

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }
}

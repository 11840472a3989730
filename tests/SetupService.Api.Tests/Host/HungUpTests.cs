using Serilog;
using Serilog.Events;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Fitment.Batch;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Host;

/// <summary>
/// A caller that drops its connection in the middle of a request leaves one quiet line in the log, and no trace. A reset that comes before
/// the service has read the first byte leaves none, because there was no request: so each test here waits until its request is being read.
/// </summary>
public sealed class HungUpTests : IAsyncLifetime
{
    private readonly CapturedLog _log = new();
    private RunningService _service = null!;

    public async Task InitializeAsync() => _service = await RunningService.StartAsync(configure: builder =>
        builder.Services.AddSerilog(logger => logger.MinimumLevel.Information().MinimumLevel.Override("Microsoft", LogEventLevel.Warning).WriteTo.Sink(_log), preserveStaticLogger: true));

    public async Task DisposeAsync() => await _service.DisposeAsync();

    [Theory]
    [InlineData(Calls.Check, "application/json", "{\"vehicle\":")]
    [InlineData(Calls.Batch, BatchCalls.Ndjson, "{\"vehicle\":")]
    [InlineData(Calls.Batch, BatchCalls.Ndjson, "\n")]
    [InlineData(Calls.BatchCsv, "multipart/form-data; boundary=edge", "--edge\r\nContent-Disposition: form-data; name=\"car\"\r\n\r\n{")]
    public async Task A_reset_in_the_middle_of_a_body(string path, string mediaType, string body)
    {
        foreach (var head in new[] { $"Content-Length: {body.Length + 1000}\r\n\r\n{body}", $"Transfer-Encoding: chunked\r\n\r\n{body.Length:x}\r\n{body}\r\n" })
        {
            using var connection = await RawConnection.OpenAsync(_service.Client);

            // The interim answer says that the body is being read (RFC 9110, section 10.1.1).
            await connection.SendAsync($"POST {path} HTTP/1.1\r\nHost: test\r\nExpect: 100-continue\r\nContent-Type: {mediaType}\r\n{head}");
            await connection.ReadUntilAsync("HTTP/1.1 100 Continue");
            connection.Reset();
        }

        await IsQuiet(2);
    }

    [Theory]
    [InlineData(Calls.Check, "application/json", "{\"vehicle\":")]
    [InlineData(Calls.Batch, BatchCalls.Ndjson, "{\"vehicle\":")]
    [InlineData(Calls.Batch, BatchCalls.Ndjson, "\n")]
    [InlineData(Calls.BatchCsv, "multipart/form-data; boundary=edge", "--edge\r\nContent-Disposition: form-data; name=\"car\"\r\n\r\n{")]
    public async Task An_end_while_the_rest_of_a_body_is_awaited(string path, string mediaType, string body)
    {
        const int Times = 20;
        for (var i = 0; i < Times; i++)
        {
            var head = i % 2 == 0 ? $"Content-Length: {body.Length + 1000}\r\n\r\n{body}" : $"Transfer-Encoding: chunked\r\n\r\n{body.Length:x}\r\n{body}\r\n";
            using var connection = await RawConnection.OpenAsync(_service.Client);
            await connection.SendAsync($"POST {path} HTTP/1.1\r\nHost: test\r\nExpect: 100-continue\r\nContent-Type: {mediaType}\r\n{head}");
            await connection.ReadUntilAsync("HTTP/1.1 100 Continue");
            await Task.Delay(i % 5);
            connection.EndSending();
        }

        await IsQuiet(Times);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task A_reset_after_the_first_answers_of_a_batch(string? coding)
    {
        using var batch = await OpenBatch.StartAsync(_service.Client, acceptEncoding: coding);
        await batch.SendAsync($"{BatchCalls.CarLine()}\n{BatchCalls.CandidateLine()}\n");
        await batch.ReadLineAsync();
        batch.HangUp();

        await IsQuiet(1);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task A_reset_after_the_first_rows_of_a_table(string? coding)
    {
        using var batch = await OpenBatch.StartAsync(_service.Client, "multipart/form-data; boundary=edge", Calls.BatchCsv, coding);
        await batch.SendAsync(BatchCalls.OpenForm);
        for (var sent = 0; sent < 4; sent++)
            await batch.SendAsync(string.Concat(Enumerable.Range(sent * 4000, 4000).Select(BatchCalls.Row)));
        await batch.ReadLineAsync();
        batch.HangUp();

        await IsQuiet(1);
    }

    // The server closes a connection whose sender has ended in the middle of a body; it answers nothing.
    [Theory]
    [InlineData(Calls.Check, "application/json", "Content-Length: 1000\r\n\r\n{")]
    [InlineData(Calls.Check, "application/json", "Transfer-Encoding: chunked\r\n\r\n40\r\n{\"vehicle\"")]
    [InlineData(Calls.Batch, BatchCalls.Ndjson, "Transfer-Encoding: chunked\r\n\r\n40\r\n{\"vehicle\"")]
    [InlineData(Calls.BatchCsv, "multipart/form-data; boundary=edge", "Transfer-Encoding: chunked\r\n\r\n40\r\n--edge\r\n")]
    public async Task An_end_in_the_middle_of_a_body(string path, string mediaType, string rest)
    {
        using var connection = await RawConnection.OpenAsync(_service.Client);
        await connection.SendAsync($"POST {path} HTTP/1.1\r\nHost: test\r\nContent-Type: {mediaType}\r\n{rest}");
        connection.EndSending();

        await IsQuiet(1);
    }

    /// <summary>The log has a line of each request, below warning, and no exception.</summary>
    private async Task IsQuiet(int requests)
    {
        for (var wait = 0; wait < 100 && Told().Length < requests; wait++)
            await Task.Delay(100);
        await Task.Delay(200);

        Assert.All(_log.Events, one => Assert.True(one.Exception is null && one.Level < LogEventLevel.Warning, one.RenderMessage(System.Globalization.CultureInfo.InvariantCulture) + one.Exception));
        var told = string.Join("\n", Told().Select(one => one.RenderMessage(System.Globalization.CultureInfo.InvariantCulture)));
        Assert.True(Told().Length == requests, told);
    }

    private LogEvent[] Told() => [.. _log.Events.Where(one => one.Properties.ContainsKey("RequestId") && one.MessageTemplate.Text.StartsWith("Request ", StringComparison.Ordinal))];
}

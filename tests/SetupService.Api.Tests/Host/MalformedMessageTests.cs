using System.Text.Json;
using SetupService.Api.Tests.Fitment;

namespace SetupService.Api.Tests.Host;

/// <summary>Messages that break the framing of HTTP/1.1 (RFC 9112), over a bare connection.</summary>
public sealed class MalformedMessageTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    // RFC 9112, section 7.1: a chunk is its size in hexadecimal, CR LF, the octets, CR LF.
    [Theory]
    [InlineData("FFFFFFFFFFFFFFFF\r\n{}\r\n0\r\n\r\n")]
    [InlineData("7FFFFFFFFFFFFFFF1\r\n{}\r\n0\r\n\r\n")]
    [InlineData("2\n{}\n0\n\n")]
    [InlineData("2\r\n{}\n0\r\n\r\n")]
    [InlineData("xyz\r\n{}\r\n0\r\n\r\n")]
    [InlineData("-2\r\n{}\r\n0\r\n\r\n")]
    public async Task A_chunk_that_cannot_be_read_is_a_fault_of_the_body(string chunks)
    {
        foreach (var path in new[] { Calls.Check, Calls.Batch, Calls.BatchCsv })
        {
            var answer = await RawConnection.ExchangeAsync(fixture.Client, Post(path) + chunks);

            Assert.StartsWith("HTTP/1.1 400 ", answer, StringComparison.Ordinal);
            using var problem = JsonDocument.Parse(BodyOf(answer));
            Assert.Equal("/docs/problems/invalid-request", problem.RootElement.GetProperty("type").GetString());
            Assert.Equal([" syntax"], problem.RootElement.FaultsOf());
            Assert.Contains("chunk", problem.RootElement.GetProperty("detail").GetString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_batch_whose_chunks_break_off_ends_with_a_summary_that_says_so()
    {
        var head = Post(Calls.Batch);
        var car = Fitment.Batch.BatchCalls.CarLine() + "\n" + Fitment.Batch.BatchCalls.CandidateLine() + "\n";
        using var connection = await RawConnection.OpenAsync(fixture.Client);
        await connection.SendAsync($"{head}{System.Text.Encoding.UTF8.GetByteCount(car):x}\r\n");
        await connection.SendAsync(System.Text.Encoding.Latin1.GetString(System.Text.Encoding.UTF8.GetBytes(car)) + "\r\n");
        await connection.ReadUntilAsync("verdict");
        await connection.SendAsync("FFFFFFFFFFFFFFFF\r\n");
        var answer = await connection.ReadToEndAsync();

        Assert.Contains("\"answeredCount\":1,\"refusedCount\":0,", answer, StringComparison.Ordinal);
        Assert.Contains("\"isComplete\":false,\"reason\":\"The body could not be read to its end", answer, StringComparison.Ordinal);
    }

    // What the server refuses before it has read a request has no body; docs/problems/without-body says so.
    [Theory]
    [InlineData("this is no request\r\n\r\n", 400)]
    [InlineData("GET /health/live HTTP/1.1\r\n\r\n", 400)]
    [InlineData("GET /health/live HTTP/1.1\r\nHost: test\r\nno colon\r\n\r\n", 400)]
    [InlineData("GET /health/live HTTP/3.7\r\nHost: test\r\n\r\n", 505)]
    [InlineData("long line", 414)]
    [InlineData("long headers", 431)]
    public async Task What_is_refused_before_it_is_read_has_no_body(string request, int status)
    {
        var sent = request switch
        {
            "long line" => $"GET /{new string('a', 9000)} HTTP/1.1\r\nHost: test\r\n\r\n",
            "long headers" => $"GET /health/live HTTP/1.1\r\nHost: test\r\nA: {new string('a', 40_000)}\r\n\r\n",
            _ => request,
        };
        var answer = await RawConnection.ExchangeAsync(fixture.Client, sent);

        Assert.StartsWith($"HTTP/1.1 {status} ", answer, StringComparison.Ordinal);
        Assert.Contains("Content-Length: 0\r\n", answer, StringComparison.Ordinal);
        Assert.Equal("", BodyOf(answer));
        var page = await fixture.Client.GetStringAsync(new Uri("/docs/problems/without-body", UriKind.Relative));
        Assert.Contains($"{status}", page, StringComparison.Ordinal);
    }

    private static string Post(string path)
    {
        var type = path switch
        {
            Calls.Batch => "application/x-ndjson",
            Calls.BatchCsv => "multipart/form-data; boundary=edge",
            _ => "application/json",
        };
        return $"POST {path} HTTP/1.1\r\nHost: test\r\nContent-Type: {type}\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n";
    }

    /// <summary>What comes after the headers.</summary>
    private static string BodyOf(string answer) => answer.Split("\r\n\r\n", 2)[1];
}

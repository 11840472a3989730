using System.IO.Compression;
using System.Net;
using System.Text;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Fitment.Batch;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Http;

/// <summary>Answers compressed for who accepts it (RFC 9110, sections 8.4 and 12.5.3), read back by .NET's own decoders.</summary>
public sealed class CompressionTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("/v1/reference/load-indices", "application/json")]
    [InlineData("/openapi/v1.json", "application/json")]
    [InlineData("/openapi/v1.yaml", "application/yaml")]
    [InlineData("/docs/methods/fitment-check", "text/markdown")]
    [InlineData("/docs/methods/wear-calibration.svg", "image/svg+xml")]
    public async Task What_is_kept_is_the_same_in_every_coding(string path, string mediaType)
    {
        var plain = await GetAsync(path, null);

        foreach (var coding in new[] { "br", "gzip" })
        {
            using var response = await SendAsync(HttpMethod.Get, path, coding);
            var sent = await response.Content.ReadAsByteArrayAsync();

            Assert.Equal([coding], response.Content.Headers.ContentEncoding);
            Assert.Equal(sent.Length, response.Content.Headers.ContentLength);
            Assert.Equal(mediaType, response.Content.Headers.ContentType!.MediaType);
            Assert.Contains("Accept-Encoding", response.Headers.Vary);
            Assert.True(sent.Length < plain.Length / 2, $"{sent.Length} of {plain.Length} bytes");
            Assert.Equal(plain, Decoded(sent, coding));
        }
    }

    [Fact]
    public async Task Each_coding_has_a_strong_tag_of_its_own_that_answers_304()
    {
        const string Path = "/v1/reference/load-indices";
        List<string> tags = [];
        foreach (var coding in new[] { null, "br", "gzip" })
        {
            using var first = await SendAsync(HttpMethod.Get, Path, coding);
            var tag = first.Headers.ETag!;
            using var again = await SendAsync(HttpMethod.Get, Path, coding, tag.ToString());

            Assert.False(tag.IsWeak);
            Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
            Assert.Equal(tag, again.Headers.ETag);
            Assert.Contains("Accept-Encoding", again.Headers.Vary);
            Assert.Empty(await again.Content.ReadAsByteArrayAsync());
            tags.Add(tag.ToString());
        }

        Assert.Equal(3, tags.Distinct().Count());
        using var other = await SendAsync(HttpMethod.Get, Path, "br", tags[0]);
        Assert.Equal(HttpStatusCode.OK, other.StatusCode);
    }

    [Theory]
    [InlineData(Calls.Check)]
    [InlineData(Calls.Drawing)]
    public async Task A_computed_answer_is_compressed(string path)
    {
        using var plain = await SendAsync(HttpMethod.Post, path, null, body: Requests.Check().ToJsonString());
        using var compressed = await SendAsync(HttpMethod.Post, path, "gzip;q=0.5, br", body: Requests.Check().ToJsonString());

        Assert.Empty(plain.Content.Headers.ContentEncoding);
        Assert.Equal(["br"], compressed.Content.Headers.ContentEncoding);
        var sent = await compressed.Content.ReadAsByteArrayAsync();
        var whole = await plain.Content.ReadAsByteArrayAsync();
        Assert.True(sent.Length < whole.Length / 2, $"{sent.Length} of {whole.Length} bytes");
        Assert.Equal(whole, Decoded(sent, "br"));
    }

    [Theory]
    [InlineData("/v1/wheels/decode?marking=8.5Jx18%20ET44", "br, gzip")]
    [InlineData("/v1/reference/load-indices", "identity")]
    [InlineData("/v1/reference/load-indices", "br;q=0, gzip;q=0")]
    [InlineData("/v1/reference/load-indices", "compress")]
    public async Task Small_answers_and_who_accepts_no_coding_get_it_plain(string path, string accepted)
    {
        using var response = await SendAsync(HttpMethod.Get, path, accepted);

        Assert.Empty(response.Content.Headers.ContentEncoding);
        Assert.Contains("Accept-Encoding", response.Headers.Vary);
        Calls.Parse(await Calls.Text(response));
    }

    [Fact]
    public async Task A_refusal_is_compressed_where_it_is_long()
    {
        var body = $"{{ {string.Join(",", Enumerable.Range(0, 40).Select(i => $"\"unknown{i}\": 1"))} }}";
        using var response = await SendAsync(HttpMethod.Post, Calls.Check, "br", body: body);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Equal(["br"], response.Content.Headers.ContentEncoding);
        Assert.Contains(ProblemTypes.InvalidRequest.Uri, Encoding.UTF8.GetString(Decoded(await response.Content.ReadAsByteArrayAsync(), "br")), StringComparison.Ordinal);
    }

    /// <summary>The first line of a compressed batch must be there, and readable, while its caller still holds the second back.</summary>
    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task A_compressed_batch_sends_its_lines_at_once(string coding)
    {
        using var batch = await OpenBatch.StartAsync(fixture.Client, acceptEncoding: coding);
        await batch.SendAsync(BatchCalls.CarLine() + "\n");
        foreach (var id in new[] { "a", "b" })
        {
            await batch.SendAsync(BatchCalls.CandidateLine(id) + "\n");
            Assert.Contains($"\"id\":\"{id}\"", await batch.ReadLineAsync(), StringComparison.Ordinal);
        }

        await batch.EndAsync();
        Assert.Contains("\"isComplete\":true", await batch.ReadToEndAsync(), StringComparison.Ordinal);
        Assert.Contains($"Content-Encoding: {coding}\n", batch.Head, StringComparison.Ordinal);
    }

    /// <summary>A table is answered by the block, compressed too: the first row is there well before the table ends.</summary>
    [Fact]
    public async Task A_compressed_table_sends_its_rows_while_more_come()
    {
        using var batch = await OpenBatch.StartAsync(fixture.Client, "multipart/form-data; boundary=edge", Calls.BatchCsv, "br");
        await batch.SendAsync(BatchCalls.OpenForm);
        await batch.SendAsync(string.Concat(Enumerable.Range(0, 4000).Select(BatchCalls.Row)));

        Assert.StartsWith("line,", await batch.ReadLineAsync(), StringComparison.Ordinal);
        Assert.StartsWith("2,0,", await batch.ReadLineAsync(), StringComparison.Ordinal);
        await batch.SendAsync("\r\n--edge--\r\n");
        await batch.EndAsync();
        Assert.Equal(3999, (await batch.ReadToEndAsync()).Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Contains("Content-Encoding: br\n", batch.Head, StringComparison.Ordinal);
    }

    private async Task<byte[]> GetAsync(string path, string? accepted)
    {
        using var response = await SendAsync(HttpMethod.Get, path, accepted);
        Assert.Empty(response.Content.Headers.ContentEncoding);
        Assert.Contains("Accept-Encoding", response.Headers.Vary);
        return await response.Content.ReadAsByteArrayAsync();
    }

    private Task<HttpResponseMessage> SendAsync(HttpMethod method, string path, string? accepted, string? ifNoneMatch = null, string? body = null)
    {
        HttpRequestMessage request = new(method, new Uri(path, UriKind.Relative));
        if (accepted is not null) request.Headers.TryAddWithoutValidation("Accept-Encoding", accepted);
        if (ifNoneMatch is not null) request.Headers.TryAddWithoutValidation("If-None-Match", ifNoneMatch);
        if (body is not null) request.Content = new StringContent(body, Encoding.UTF8, "application/json");
        return fixture.Client.SendAsync(request);
    }

    private static byte[] Decoded(byte[] sent, string coding)
    {
        using MemoryStream source = new(sent);
        using var decoder = Decoder(source, coding);
        using MemoryStream whole = new();
        decoder.CopyTo(whole);
        return whole.ToArray();
    }

    private static Stream Decoder(Stream source, string coding) =>
        coding == "br" ? new BrotliStream(source, CompressionMode.Decompress) : new GZipStream(source, CompressionMode.Decompress);
}

using System.Net;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Host;

/// <summary>HEAD answers what GET does, without the body (RFC 9110, section 9.3.2).</summary>
public sealed class HeadTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    [InlineData("/version")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/openapi/v1.yaml")]
    [InlineData("/docs")]
    [InlineData("/docs/methods/fitment-check")]
    [InlineData("/docs/methods/wear-calibration.svg")]
    [InlineData("/docs/problems/codes")]
    [InlineData("/v1/tyres/decode?marking=225/45R17%2094W")]
    [InlineData("/v1/wheels/decode?marking=8.5Jx18%20ET44")]
    [InlineData("/v1/reference/load-indices")]
    [InlineData("/v1/reference/speed-symbols")]
    [InlineData("/v1/fitment/drawing?new=8Jx17%20ET40,225/45R17%2094W")]
    [InlineData("/v1/fitment/badge?new=8Jx17%20ET40,225/45R17%2094W")]
    [InlineData("/v1/fitment/badge")]
    [InlineData("/v1/tyres/decode")]
    [InlineData("/docs/methods/none")]
    [InlineData("/none")]
    public async Task It_has_the_headers_of_get_and_no_body(string path)
    {
        using var got = await fixture.Client.GetAsync(new Uri(path, UriKind.Relative));
        using var head = await SendAsync(path);

        Assert.Equal(got.StatusCode, head.StatusCode);
        Assert.Empty(await head.Content.ReadAsByteArrayAsync());
        Assert.Equal(HeadersOf(got), HeadersOf(head));
        Assert.Contains(HeadersOf(head), header => header.StartsWith("Content-Type", StringComparison.Ordinal));
    }

    [Fact]
    public async Task No_bytes_follow_the_headers()
    {
        var answer = await RawConnection.ExchangeAsync(fixture.Client, "HEAD /version HTTP/1.1\r\nHost: test\r\nConnection: close\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 200 ", answer, StringComparison.Ordinal);
        Assert.EndsWith("\r\n\r\n", answer, StringComparison.Ordinal);
        Assert.Equal(answer.Length - 4, answer.IndexOf("\r\n\r\n", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_call_that_takes_post_refuses_it()
    {
        using var response = await SendAsync(Calls.Check);

        Assert.Equal(HttpStatusCode.MethodNotAllowed, response.StatusCode);
        Assert.Equal(["POST"], response.Content.Headers.Allow);
    }

    [Fact]
    public async Task It_is_among_the_methods_a_table_allows()
    {
        using var response = await fixture.Client.PostAsync("/v1/reference/load-indices", "{}");

        Assert.Contains("GET, HEAD", (await Problems.Read(response, ProblemTypes.MethodNotAllowed)).GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal(["GET", "HEAD"], response.Content.Headers.Allow);
    }

    private Task<HttpResponseMessage> SendAsync(string path) =>
        fixture.Client.SendAsync(new HttpRequestMessage(HttpMethod.Head, new Uri(path, UriKind.Relative)));

    /// <summary>All headers but those that differ between any two answers, and how a body is framed where its length is not stated.</summary>
    private static string[] HeadersOf(HttpResponseMessage response) =>
    [
        .. response.Headers.Concat(response.Content.Headers)
            .Where(header => header.Key is not ("Date" or "Request-Id" or "Transfer-Encoding"))
            .Where(header => header.Key != "Content-Length" || response.StatusCode == HttpStatusCode.OK)
            .Select(header => $"{header.Key}: {string.Join(", ", header.Value)}").Order(StringComparer.Ordinal),
    ];
}

using System.Net;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Tests.Http;

/// <summary>Conditional requests as RFC 9110, section 13, has them.</summary>
public sealed class CacheableAnswerTests(ProductionEcho fixture) : IClassFixture<ProductionEcho>
{
    [Theory]
    [InlineData("/test/table")]
    [InlineData("/version")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/docs/problems/codes")]
    [InlineData("/v1/reference/load-indices")]
    [InlineData("/v1/tyres/decode?marking=225/45R17%2094W")]
    [InlineData("/v1/wheels/decode?marking=8.5Jx18%20ET44")]
    public async Task A_table_has_a_strong_tag_that_stays(string path)
    {
        using var first = await Get(path);
        using var second = await Get(path);

        Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        Assert.False(first.Headers.ETag!.IsWeak);
        Assert.Equal(first.Headers.ETag, second.Headers.ETag);
        Assert.True(first.Headers.CacheControl!.Public);
    }

    [Theory]
    [InlineData("{0}", HttpStatusCode.NotModified)]
    [InlineData("W/{0}", HttpStatusCode.NotModified)]
    [InlineData("\"other\", {0}", HttpStatusCode.NotModified)]
    [InlineData("*", HttpStatusCode.NotModified)]
    [InlineData("\"other\"", HttpStatusCode.OK)]
    [InlineData("not a tag", HttpStatusCode.OK)]
    public async Task Who_has_it_already_gets_304(string header, HttpStatusCode status)
    {
        using var first = await Get("/test/table");
        var tag = first.Headers.ETag!.ToString();

        using var again = await Get("/test/table", header.Replace("{0}", tag, StringComparison.Ordinal));

        Assert.Equal(status, again.StatusCode);
        Assert.Equal(tag, again.Headers.ETag!.ToString());
        Assert.Equal(status == HttpStatusCode.OK, (await again.Content.ReadAsByteArrayAsync()).Length > 0);
    }

    [Fact]
    public async Task Another_address_has_another_tag()
    {
        using var one = await Get("/v1/tyres/decode?marking=225/45R17%2094W");
        using var other = await Get("/v1/tyres/decode?marking=225/45R17%2094V");

        Assert.NotEqual(one.Headers.ETag, other.Headers.ETag);
    }

    [Theory]
    [InlineData("/health/live")]
    [InlineData("/v1/tyres/decode?marking=45Q17")]
    public async Task What_may_be_otherwise_a_moment_later_is_not_kept(string path)
    {
        using var response = await Get(path);

        Assert.Null(response.Headers.ETag);
        Assert.True(response.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task A_table_takes_no_parameters()
    {
        using var response = await Get("/test/table?x=1");

        await Problems.Read(response, ProblemTypes.InvalidRequest);
    }

    private async Task<HttpResponseMessage> Get(string path, string? ifNoneMatch = null)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri(path, UriKind.Relative));
        request.Headers.TryAddWithoutValidation("If-None-Match", ifNoneMatch);
        return await fixture.Client.SendAsync(request);
    }
}

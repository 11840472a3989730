using System.Net;
using Microsoft.Extensions.Configuration;
using SetupService.Api.Host;
using SetupService.Api.Tests.Fitment;

namespace SetupService.Api.Tests.Host;

/// <summary>Which pages' scripts may read answers (WHATWG Fetch, 3.2, HTTP extensions of CORS).</summary>
public sealed class AllowedOriginsTests
{
    private const string Shop = "https://shop.example";
    private const string Other = "http://127.0.0.1:8031";
    private const string Stranger = "https://stranger.example";

    [Theory]
    [InlineData("GET", "/v1/reference/speed-symbols")]
    [InlineData("GET", "/v1/tyres/decode?marking=45Q17")]
    [InlineData("POST", Calls.Check)]
    [InlineData("GET", "/none")]
    public async Task A_page_named_may_read_answers_and_refusals(string method, string path)
    {
        await using var service = await StartAsync($"{Shop}, {Other}");
        foreach (var origin in new[] { Shop, Other })
        {
            using var response = await SendAsync(service, method, path, origin);

            Assert.Equal(origin, Header(response, "Access-Control-Allow-Origin"));
            Assert.Equal(["ETag", "RateLimit", "RateLimit-Policy", "Request-Id", "Retry-After"], Header(response, "Access-Control-Expose-Headers")!.Split(',').Order());
            Assert.Null(Header(response, "Access-Control-Allow-Credentials"));
            Assert.Single(response.Headers.Vary, name => name == "Origin");
        }
    }

    [Theory]
    [InlineData(Stranger)]
    [InlineData("https://shop.example.stranger.example")]
    [InlineData("http://shop.example")]
    [InlineData("null")]
    [InlineData(null)]
    public async Task No_other_page_is_told_so_but_every_answer_varies(string? origin)
    {
        await using var service = await StartAsync(Shop);
        using var response = await SendAsync(service, "GET", "/v1/reference/speed-symbols", origin);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Null(Header(response, "Access-Control-Allow-Origin"));
        Assert.Single(response.Headers.Vary, name => name == "Origin");
    }

    [Fact]
    public async Task A_browser_that_asks_first_is_told_what_it_may_send()
    {
        await using var service = await StartAsync(Shop);
        using var response = await PreflightAsync(service, Shop);

        Assert.Equal(HttpStatusCode.NoContent, response.StatusCode);
        Assert.Equal(Shop, Header(response, "Access-Control-Allow-Origin"));
        Assert.Contains("POST", Header(response, "Access-Control-Allow-Methods")!.Split(','));
        Assert.Contains("Content-Type", Header(response, "Access-Control-Allow-Headers")!.Split(','), StringComparer.OrdinalIgnoreCase);
        Assert.Equal("3600", Header(response, "Access-Control-Max-Age"));
        using var stranger = await PreflightAsync(service, Stranger);
        Assert.Null(Header(stranger, "Access-Control-Allow-Origin"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    public async Task Without_the_setting_no_page_is_allowed_and_nothing_is_said(string? setting)
    {
        await using var service = await StartAsync(setting);
        using var response = await SendAsync(service, "GET", "/v1/reference/speed-symbols", Shop);
        using var preflight = await PreflightAsync(service, Shop);

        Assert.Null(Header(response, "Access-Control-Allow-Origin"));
        Assert.DoesNotContain("Origin", response.Headers.Vary);
        Assert.Equal(HttpStatusCode.MethodNotAllowed, preflight.StatusCode);
    }

    [Theory]
    [InlineData("*")]
    [InlineData("shop.example")]
    [InlineData("https://shop.example/")]
    [InlineData("https://shop.example/page")]
    [InlineData("https://*.shop.example")]
    [InlineData("https://Shop.example")]
    [InlineData("https://shop.example:443")]
    [InlineData("ftp://shop.example")]
    [InlineData("https://me@shop.example")]
    [InlineData("null")]
    public void What_is_no_origin_stops_the_start(string wrong)
    {
        var fault = Assert.ThrowsAny<InvalidOperationException>(() => SetupServiceHost.Build([], builder => builder.Configuration[AllowedOrigins.Setting] = $"{Shop} {wrong}"));

        Assert.Contains($"“{wrong}”", fault.Message, StringComparison.Ordinal);
    }

    private static Task<RunningService> StartAsync(string? origins) =>
        RunningService.StartAsync(configure: builder => builder.Configuration[AllowedOrigins.Setting] = origins);

    private static Task<HttpResponseMessage> SendAsync(RunningService service, string method, string path, string? origin)
    {
        HttpRequestMessage request = new(new HttpMethod(method), new Uri(path, UriKind.Relative));
        if (origin is not null) request.Headers.TryAddWithoutValidation("Origin", origin);
        if (method == "POST") request.Content = new StringContent(Requests.Check().ToJsonString(), System.Text.Encoding.UTF8, "application/json");
        return service.Client.SendAsync(request);
    }

    private static Task<HttpResponseMessage> PreflightAsync(RunningService service, string origin)
    {
        HttpRequestMessage request = new(HttpMethod.Options, new Uri(Calls.Check, UriKind.Relative));
        request.Headers.TryAddWithoutValidation("Origin", origin);
        request.Headers.TryAddWithoutValidation("Access-Control-Request-Method", "POST");
        request.Headers.TryAddWithoutValidation("Access-Control-Request-Headers", "content-type");
        return service.Client.SendAsync(request);
    }

    private static string? Header(HttpResponseMessage response, string name) =>
        response.Headers.TryGetValues(name, out var values) ? string.Join(',', values) : null;
}

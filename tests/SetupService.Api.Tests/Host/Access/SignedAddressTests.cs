using System.Net;
using Microsoft.Extensions.Time.Testing;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Host.Access;

/// <summary>Pictures for a page, by addresses that a client has signed.</summary>
public sealed class SignedAddressTests : IAsyncLifetime
{
    private const string Badge = "/v1/fitment/badge?new=8Jx17%20ET40,225/45R17%2094W%20XL&in=14";

    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 11, 30, 12, 0, 0, TimeSpan.Zero));
    private RunningService _service = null!;

    private DateTimeOffset Soon => _clock.GetUtcNow().AddMinutes(5);

    public async Task InitializeAsync() => _service = await ServiceWithKeys.StartAsync(_clock);

    public async Task DisposeAsync() => await _service.DisposeAsync();

    [Theory]
    [InlineData(Badge)]
    [InlineData("/v1/fitment/drawing?new=8Jx17%20ET40,225/45R17%2094W%20XL")]
    public async Task A_signed_address_needs_no_key_and_counts_as_its_clients(string address)
    {
        using var answer = await _service.SendAsync("GET", ServiceWithKeys.Sign(address, Soon), null);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType!.MediaType);
        Assert.True(answer.Headers.Contains("RateLimit"));
    }

    // RFC 4231 has known answers of HMAC-SHA-256 itself; this is the text that is signed, worked beforehand with Python's hmac.
    [Fact]
    public async Task The_text_signed_is_path_and_query_as_they_are_sent()
    {
        using var answer = await _service.SendAsync(
            "GET", "/v1/fitment/badge?new=8Jx17%20ET40,225/45R17%2091W&expires=1796040300&signature=shop.9bf2ea1243a787d0005c083fde8507cdea97d9bc2285cabda94137342212749e", null);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task It_holds_until_its_time_and_not_beyond()
    {
        var address = ServiceWithKeys.Sign(Badge, Soon);
        _clock.Advance(TimeSpan.FromSeconds(299));
        using (var answer = await _service.SendAsync("GET", address, null))
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        _clock.Advance(TimeSpan.FromSeconds(1));
        await IsRefused(address, "The address has expired; sign a new one.");
    }

    [Theory]
    [InlineData(86_400, 3600)]
    [InlineData(300, 300)]
    [InlineData(1, 1)]
    public async Task A_cache_keeps_its_answer_for_an_hour_at_most_and_no_longer_than_it_holds(int holds, int kept)
    {
        using var answer = await _service.SendAsync("GET", ServiceWithKeys.Sign(Badge, _clock.GetUtcNow().AddSeconds(holds)), null);

        Assert.Equal($"public, max-age={kept}", answer.Headers.CacheControl!.ToString());
    }

    [Fact]
    public async Task What_a_key_has_opened_is_kept_by_nobody_on_the_way()
    {
        foreach (var address in new[] { Badge, "/v1/reference/load-indices", "/v1/tyres/decode?marking=225/45R17%2091W" })
        {
            using var answer = await _service.SendAsync("GET", address, ServiceWithKeys.First);
            Assert.Equal("max-age=3600, private", answer.Headers.CacheControl!.ToString());
        }

        using var open = await _service.SendAsync("GET", "/docs", null);
        Assert.Equal("public, max-age=3600", open.Headers.CacheControl!.ToString());
    }

    [Fact]
    public async Task It_holds_no_longer_than_is_allowed()
    {
        using (var answer = await _service.SendAsync("GET", ServiceWithKeys.Sign(Badge, _clock.GetUtcNow().AddSeconds(2_678_400)), null))
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        await IsRefused(ServiceWithKeys.Sign(Badge, _clock.GetUtcNow().AddSeconds(2_678_401)), "The address holds for longer than the 2678400 s that are allowed.");
    }

    [Fact]
    public async Task Whatever_is_changed_in_it_it_holds_no_more()
    {
        const string Unsigned = "The signature is not that of a client for this path and query.";
        var address = ServiceWithKeys.Sign(Badge, Soon);
        await IsRefused(address.Replace("in=14", "in=15", StringComparison.Ordinal), Unsigned);
        await IsRefused(address.Replace("/badge", "/drawing", StringComparison.Ordinal), Unsigned);
        await IsRefused(address.Replace("expires=17", "expires=18", StringComparison.Ordinal), "The address holds for longer than the 2678400 s that are allowed.");
        await IsRefused(address.Replace("shop.", "other.", StringComparison.Ordinal), Unsigned);
        await IsRefused(ServiceWithKeys.Sign(Badge, Soon, secret: ServiceWithKeys.Secret), Unsigned);
        await IsRefused(address[..^1] + (address[^1] == '0' ? '1' : '0'), Unsigned);
        await IsRefused(address[..^64] + new string('g', 64), Unsigned);
        await IsRefused(address[..^1], "Signature must be the last parameter: the client's name, a dot, and 64 hexadecimal digits.");
        await IsRefused(address + "&out=18", "Signature must be the last parameter: the client's name, a dot, and 64 hexadecimal digits.");
        await IsRefused(ServiceWithKeys.Sign(Badge, Soon).Replace("&expires", "&until", StringComparison.Ordinal), "Expires is missing in what was signed: give it, in seconds since 1970-01-01 UTC, before signature.");
    }

    [Theory]
    [InlineData("GET", "/v1/reference/load-indices?a=1")]
    [InlineData("POST", Calls.Check + "?units=metric")]
    public async Task Only_pictures_can_be_signed(string method, string path)
    {
        using var refused = await _service.SendAsync(method, ServiceWithKeys.Sign(path, Soon), null, method == "POST" ? Requests.Check().ToJsonString() : null);

        var problem = await Problems.Read(refused, ProblemTypes.KeyNeeded);
        Assert.Equal(["Api-Key required"], problem.FaultsOf());
    }

    private async Task IsRefused(string address, string reason)
    {
        using var refused = await _service.SendAsync("GET", address, null);
        var problem = await Problems.Read(refused, ProblemTypes.KeyNeeded);
        Assert.Equal(["signature badSignature"], problem.FaultsOf());
        Assert.Equal(reason, problem.GetProperty("detail").GetString());
    }
}

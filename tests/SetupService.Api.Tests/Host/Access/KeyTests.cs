using System.Net;
using Microsoft.Extensions.Configuration;
using SetupService.Api.Host;
using SetupService.Api.Host.Access;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Host.Access;

/// <summary>Who is answered where clients have keys.</summary>
public sealed class KeyTests : IAsyncLifetime
{
    private const string Table = "/v1/reference/load-indices";

    private RunningService _service = null!;

    public async Task InitializeAsync() => _service = await ServiceWithKeys.StartAsync();

    public async Task DisposeAsync() => await _service.DisposeAsync();

    [Fact]
    public async Task Each_key_of_a_client_is_taken_so_that_one_can_follow_the_other()
    {
        foreach (var key in new[] { ServiceWithKeys.First, ServiceWithKeys.Second, ServiceWithKeys.OfOther })
        {
            using var answer = await _service.SendAsync("GET", Table, key);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            using var check = await _service.SendAsync("POST", Calls.Check, key, Requests.Check().ToJsonString());
            Assert.Equal(HttpStatusCode.OK, check.StatusCode);
        }
    }

    [Theory]
    [InlineData("GET", Table)]
    [InlineData("HEAD", Table)]
    [InlineData("POST", Calls.Check)]
    [InlineData("POST", Calls.Batch)]
    [InlineData("POST", "/v1/handling/cornering")]
    [InlineData("GET", "/v1/fitment/badge?new=8Jx17%20ET40,225/45R17")]
    [InlineData("GET", "/v1/none")]
    public async Task Without_a_key_nothing_is_computed(string method, string path)
    {
        using var refused = await _service.SendAsync(method, path, null, method == "POST" ? "{}" : null);

        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
        Assert.Equal("Api-Key realm=\"setup-service\"", refused.Headers.WwwAuthenticate.ToString());
        if (method != "HEAD")
        {
            var problem = await Problems.Read(refused, ProblemTypes.KeyNeeded);
            Assert.Equal(["Api-Key required"], problem.FaultsOf());
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("key")]
    [InlineData("BAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQ")]
    [InlineData("AQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEB")]
    [InlineData("AQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQ")]
    [InlineData("AQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQEBAQE=AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    public async Task Another_key_is_refused_and_not_told(string key)
    {
        using var refused = await _service.SendAsync("GET", Table, key);

        var problem = await Problems.Read(refused, ProblemTypes.KeyNeeded);
        Assert.Equal(["Api-Key unknownKey"], problem.FaultsOf());
        Assert.DoesNotContain("BAQEBAQ", problem.GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_keys_in_one_request_are_none()
    {
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri(Table, UriKind.Relative));
        request.Headers.TryAddWithoutValidation("Api-Key", [ServiceWithKeys.First, ServiceWithKeys.Second]);
        using var refused = await _service.Client.SendAsync(request);

        await Problems.Read(refused, ProblemTypes.KeyNeeded);
    }

    [Theory]
    [InlineData("/health/live")]
    [InlineData("/health/ready")]
    [InlineData("/version")]
    [InlineData("/docs")]
    [InlineData("/docs/problems/key-needed")]
    [InlineData("/openapi/v1.json")]
    public async Task What_is_about_the_service_is_everybodys(string path)
    {
        using var answer = await _service.SendAsync("GET", path, null);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.False(answer.Headers.Contains("RateLimit"));
    }

    [Theory]
    [InlineData("Access:HashSecret", "", "Access:HashSecret is no secret")]
    [InlineData("Access:HashSecret", "c2hvcnQ=", "Access:HashSecret is no secret: at least 32 random bytes in base64")]
    [InlineData("Access:Clients:shop:Keys:0", "abc", "Access:Clients:shop:Keys:0 is no kept key: 64 hexadecimal digits")]
    [InlineData("Access:Clients:shop:Keys:2", "0000000000000000000000000000000000000000000000000000000000000000", "Access:Clients:shop:Keys has 3 keys; 1 or 2 are allowed")]
    [InlineData("Access:Clients:Shop 2:Keys:0", "0000000000000000000000000000000000000000000000000000000000000000", "a client's name has 1 to 64 small letters, digits and hyphens")]
    [InlineData("Access:Clients:shop:SigningSecret", "c2hvcnQ=", "Access:Clients:shop:SigningSecret is no secret")]
    [InlineData("Access:Clients:shop:BurstUnits", "0", "Access:Clients:shop:BurstUnits must be at least 1")]
    [InlineData("Access:Clients:shop:Key", "abc", "Key")]
    [InlineData("Access:LongestSignedSeconds", "0", "Access:LongestSignedSeconds must be between 1 and")]
    [InlineData("Limits:BurstUnits", "0", "Limits:BurstUnits must be between 1 and 1000000000")]
    [InlineData("Proxy:Networks", "10.0.0.0/8", "Proxy:Networks is a list: give its networks one by one, Proxy:Networks:0=10.0.0.0/8 and so on.")]
    [InlineData("Log:Format", "7", "Log:Format must be Text or Json.")]
    [InlineData("Proxy:Networks:0", "10.0.0.0/33", "Proxy:Networks:0 is “10.0.0.0/33”, which is no network")]
    [InlineData("Proxy:Hops", "0", "Proxy:Hops must be between 1 and 10")]
    public void A_setting_that_is_wrong_stops_the_start_and_is_named(string name, string value, string told)
    {
        var fault = Assert.ThrowsAny<Exception>(() => SetupServiceHost.Build([], builder =>
        {
            ServiceWithKeys.Configure(builder);
            builder.Configuration[name] = value;
        }));

        Assert.Contains(told, fault.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_key_the_command_makes_is_taken()
    {
        using StringWriter output = new();
        Assert.Equal(0, KeyCommand.Run(["new-key", "garage"], output));
        var lines = output.ToString().Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        await using var service = await RunningService.StartAsync(configure: builder =>
        {
            foreach (var line in lines.Where(line => line.StartsWith("Access__", StringComparison.Ordinal)))
                builder.Configuration[line[..line.IndexOf('=', StringComparison.Ordinal)].Replace("__", ":", StringComparison.Ordinal)] = line[(line.IndexOf('=', StringComparison.Ordinal) + 1)..];
        });

        using var answer = await service.SendAsync("GET", Table, lines[1]);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        using var refused = await service.SendAsync("GET", Table, ServiceWithKeys.First);
        Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
    }

    [Theory]
    [InlineData("new-key")]
    [InlineData("new-key", "garage", "c2hvcnQ=")]
    [InlineData("new-key", "garage", "no base64")]
    public void The_command_says_what_it_wants(params string[] args)
    {
        using StringWriter output = new();

        Assert.Equal(2, KeyCommand.Run(args, output));
        Assert.NotEmpty(output.ToString());
    }
}

using System.Net;
using Microsoft.AspNetCore.Mvc.Testing;
using SetupService.Api.Http.Documents;

namespace SetupService.Api.Tests.Host;

/// <summary>The program itself, started as it starts in production, in memory.</summary>
public sealed class EntryPointTests(WebApplicationFactory<JsonContract> factory) : IClassFixture<WebApplicationFactory<JsonContract>>
{
    [Fact]
    public async Task The_program_starts_the_same_service()
    {
        using var client = factory.CreateClient();

        using var response = await client.GetAsync(new Uri("/health/ready", UriKind.Relative));

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    /// <summary>The contract test holds these files to the code; here they are held to be what callers get.</summary>
    [Theory]
    [InlineData("json")]
    [InlineData("yaml")]
    public async Task It_serves_the_committed_description(string form)
    {
        using var client = factory.CreateClient();

        var served = await client.GetByteArrayAsync(new Uri($"/openapi/v1.{form}", UriKind.Relative));

        await using var builtIn = typeof(Api.Host.SetupServiceHost).Assembly.GetManifestResourceStream($"api/openapi.{form}");
        using StreamReader reader = new(builtIn!);
        Assert.Equal(await reader.ReadToEndAsync(), System.Text.Encoding.UTF8.GetString(served));
    }

    [Theory]
    [InlineData("--Work:Steps", "0")]
    [InlineData("--Work:Stepz", "1")]
    [InlineData("--Log:Format", "Xml")]
    [InlineData("--SecretsFolder", "/no/such/folder")]
    [InlineData("--urls", "nonsense")]
    [InlineData("--urls", "http://203.0.113.9:0", "--Access:AllowWithoutKeys", "true")]
    [InlineData("--urls", "https://127.0.0.1:0")]
    [InlineData("--Kestrel:Endpoints:A:Url", "https://127.0.0.1:0", "--Kestrel:Endpoints:A:Certificate:Path", "/no/such.pem", "--Kestrel:Endpoints:A:Certificate:KeyPath", "/no/such.key")]
    public void A_setting_that_is_wrong_ends_it_with_a_code_of_its_own(params string[] settings) =>
        Assert.Equal(2, typeof(Api.Host.SetupServiceHost).Assembly.EntryPoint!.Invoke(null, [settings]));

    [Fact]
    public void An_address_that_another_program_has_stops_the_start_and_is_named()
    {
        using System.Net.Sockets.TcpListener other = new(IPAddress.Loopback, 0);
        other.Start();
        var url = $"http://127.0.0.1:{((IPEndPoint)other.LocalEndpoint).Port}";

        Assert.Equal(2, typeof(Api.Host.SetupServiceHost).Assembly.EntryPoint!.Invoke(null, [new[] { "--urls", url }]));
    }

    [Fact]
    public async Task A_body_the_in_memory_server_took_can_be_refused_and_read_again()
    {
        using var client = factory.CreateClient();
        using StringContent body = new("""{ "current": { "wheel": {}, "tyre": { "marking": "45Q17" } } }""", System.Text.Encoding.UTF8, "application/json");

        using var response = await client.PostAsync(new Uri("/v1/fitment/comparison", UriKind.Relative), body);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
        Assert.Contains("/current/tyre/marking", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}

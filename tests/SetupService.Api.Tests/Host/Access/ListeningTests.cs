using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Host;

namespace SetupService.Api.Tests.Host.Access;

/// <summary>Where the service listens, and what it says to browsers.</summary>
public sealed class ListeningTests
{
    [Theory]
    [InlineData("http://0.0.0.0:0")]
    [InlineData("http://[::]:0")]
    [InlineData("http://+:0")]
    public async Task An_address_beyond_this_machine_is_refused_without_keys(string address)
    {
        await using var app = SetupServiceHost.Build(["--urls", address]);

        var fault = await Assert.ThrowsAnyAsync<Exception>(() => app.StartAsync());

        Assert.Contains("beyond this machine, and no client has a key", fault.ToString(), StringComparison.Ordinal);
        Assert.Contains("Access:AllowWithoutKeys=true", fault.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task So_is_one_of_the_servers_own_settings()
    {
        await using var app = SetupServiceHost.Build(["--Kestrel:Endpoints:Wide:Url", "http://0.0.0.0:0"]);

        await Assert.ThrowsAnyAsync<Exception>(() => app.StartAsync());
    }

    [Fact]
    public async Task It_is_taken_with_keys_and_on_purpose()
    {
        await using (var keyed = SetupServiceHost.Build(["--urls", "http://0.0.0.0:0"], ServiceWithKeys.Configure))
        {
            await keyed.StartAsync();
            await keyed.StopAsync();
        }

        await using var open = SetupServiceHost.Build(["--urls", "http://0.0.0.0:0", "--Access:AllowWithoutKeys", "true"]);
        await open.StartAsync();
        await open.StopAsync();
    }

    [Theory]
    [InlineData("GET", "/v1/reference/load-indices", HttpStatusCode.OK)]
    [InlineData("GET", "/none", HttpStatusCode.NotFound)]
    [InlineData("POST", "/v1/fitment/check", HttpStatusCode.BadRequest)]
    public async Task Every_answer_keeps_browsers_from_taking_it_for_something_else(string method, string path, HttpStatusCode status)
    {
        await using var service = await RunningService.StartAsync();
        using var answer = await service.SendAsync(method, path, null, method == "POST" ? "{}" : null);

        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("nosniff", Header(answer, "X-Content-Type-Options"));
        Assert.Equal("no-referrer", Header(answer, "Referrer-Policy"));
        Assert.Contains("default-src 'none'", Header(answer, "Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", Header(answer, "Content-Security-Policy"), StringComparison.Ordinal);
        Assert.False(answer.Headers.Contains("Strict-Transport-Security"));
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Fact]
    public async Task Https_by_settings_speaks_http_2_and_asks_to_be_kept_to()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
            using var certificate = new CertificateRequest("CN=localhost", key, HashAlgorithmName.SHA256).CreateSelfSigned(DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(1));
            await File.WriteAllTextAsync(Path.Combine(folder.FullName, "cert.pem"), certificate.ExportCertificatePem());
            await File.WriteAllTextAsync(Path.Combine(folder.FullName, "key.pem"), key.ExportPkcs8PrivateKeyPem());
            await using var app = SetupServiceHost.Build(
            [
                "--Kestrel:Endpoints:Secure:Url", "https://127.0.0.1:0",
                "--Kestrel:Endpoints:Secure:Certificate:Path", Path.Combine(folder.FullName, "cert.pem"),
                "--Kestrel:Endpoints:Secure:Certificate:KeyPath", Path.Combine(folder.FullName, "key.pem"),
            ]);
            using var answer = await Ask(app);

            Assert.Equal(HttpVersion.Version20, answer.Version);
            Assert.Equal("max-age=31536000", Header(answer, "Strict-Transport-Security"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task Http_2_has_a_cleartext_port_by_settings()
    {
        await using var app = SetupServiceHost.Build(["--Kestrel:Endpoints:Plain:Url", "http://127.0.0.1:0", "--Kestrel:Endpoints:Plain:Protocols", "Http2"]);
        using var answer = await Ask(app);

        Assert.Equal(HttpVersion.Version20, answer.Version);
    }

    private static async Task<HttpResponseMessage> Ask(WebApplication app)
    {
        await app.StartAsync();
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();
        using HttpClientHandler handler = new() { ServerCertificateCustomValidationCallback = HttpClientHandler.DangerousAcceptAnyServerCertificateValidator };
        using HttpClient client = new(handler) { DefaultRequestVersion = HttpVersion.Version20, DefaultVersionPolicy = HttpVersionPolicy.RequestVersionExact };
        var answer = await client.GetAsync(new Uri(address + "/health/live"));
        await app.StopAsync();
        return answer;
    }

    private static string Header(HttpResponseMessage response, string name) => string.Join(", ", response.Headers.GetValues(name));
}

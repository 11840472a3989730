using System.Net;
using System.Net.Sockets;
using Microsoft.Extensions.Configuration;
using SetupService.Api.Host;

namespace SetupService.Api.Tests.Host;

/// <summary>What a container asks its own program for: is the service beside it ready?</summary>
public sealed class HealthCommandTests
{
    [Fact]
    public async Task A_service_that_takes_requests_is_healthy()
    {
        await using var service = await RunningService.StartAsync();
        using StringWriter output = new();

        Assert.Equal(0, HealthCommand.Run(["health", service.Client.BaseAddress!.ToString()], output));
        Assert.EndsWith("/health/ready: 200", output.ToString().TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nobody_listens_it_is_not()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        var port = ((IPEndPoint)listener.LocalEndpoint).Port;
        listener.Stop();
        using StringWriter output = new();

        Assert.Equal(1, HealthCommand.Run(["health", $"http://127.0.0.1:{port}"], output));
        Assert.Contains($":{port}/: ", output.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("8080")]
    [InlineData("ftp://localhost")]
    public void What_is_no_address_of_the_service_is_said_to_be_none(string url)
    {
        using StringWriter output = new();

        Assert.Equal(2, HealthCommand.Run(["health", url], output));
        Assert.StartsWith("usage: health URL", output.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("http://localhost:5080")]
    [InlineData("http://localhost:8080", "urls", "http://+:8080")]
    [InlineData("http://localhost:8080", "urls", "https://+:8443;http://0.0.0.0:8080;http://+:9464")]
    [InlineData("http://localhost:9464", "urls", "https://+:8443;http://0.0.0.0:8080;http://+:9464", "Telemetry:MetricsPort", "9464")]
    [InlineData("http://localhost:8080", "urls", "http://0.0.0.0:8080", "Telemetry:MetricsPort", "0")]
    [InlineData(null, "urls", "https://+:8443")]
    [InlineData("http://localhost:8081", "http_ports", "8081;8082")]
    [InlineData(null, "https_ports", "8443")]
    [InlineData("http://127.0.0.1:8083", "Kestrel:Endpoints:clear:Url", "http://127.0.0.1:8083")]
    [InlineData(null, "Kestrel:Endpoints:tls:Url", "https://127.0.0.1:8443")]
    [InlineData("http://127.0.0.1:8083", "Kestrel:Endpoints:a:Url", "http://127.0.0.1:8082", "Kestrel:Endpoints:a:Protocols", "Http2", "Kestrel:Endpoints:b:Url", "http://127.0.0.1:8083")]
    [InlineData(null, "Kestrel:Endpoints:a:Url", "http://127.0.0.1:8082", "Kestrel:Endpoints:a:Protocols", "Http2")]
    [InlineData(null, "Kestrel:Endpoints:a:Url", "http://127.0.0.1:8082", "Kestrel:EndpointDefaults:Protocols", "http2")]
    public void It_asks_where_the_settings_let_the_service_listen(string? address, params string[] settings)
    {
        ConfigurationBuilder builder = new();
        builder.AddInMemoryCollection(settings.Chunk(2).Select(static pair => KeyValuePair.Create(pair[0], (string?)pair[1])));

        Assert.Equal(address, HealthCommand.Address(builder.Build()));
    }
}

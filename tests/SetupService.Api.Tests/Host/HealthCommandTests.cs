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
    [InlineData(null, null, "http://localhost:5080")]
    [InlineData("urls", "http://+:8080", "http://localhost:8080")]
    [InlineData("urls", "https://+:8443;http://0.0.0.0:8080;http://+:9464", "http://localhost:8080")]
    [InlineData("urls", "https://+:8443", null)]
    [InlineData("http_ports", "8081;8082", "http://localhost:8081")]
    [InlineData("https_ports", "8443", null)]
    [InlineData("Kestrel:Endpoints:clear:Url", "http://127.0.0.1:8083", "http://127.0.0.1:8083")]
    [InlineData("Kestrel:Endpoints:tls:Url", "https://127.0.0.1:8443", null)]
    public void It_asks_where_the_settings_let_the_service_listen(string? name, string? value, string? address)
    {
        ConfigurationBuilder settings = new();
        if (name is not null)
            settings.AddInMemoryCollection([new(name, value)]);

        Assert.Equal(address, HealthCommand.Address(settings.Build()));
    }
}

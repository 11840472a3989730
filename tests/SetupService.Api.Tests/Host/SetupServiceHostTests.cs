using System.Net;
using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;
using SetupService.Api.Host;
using SetupService.Domain.Answers;

namespace SetupService.Api.Tests.Host;

public sealed class SetupServiceHostTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("/health/live", "live")]
    [InlineData("/health/ready", "ready")]
    public async Task Health_is_told(string path, string status)
    {
        using var answer = JsonDocument.Parse(await fixture.Client.GetStringAsync(new Uri(path, UriKind.Relative)));

        Assert.Equal(status, answer.RootElement.GetProperty("status").GetString());
    }

    [Fact]
    public async Task The_version_names_edition_commit_and_runtime()
    {
        using var answer = JsonDocument.Parse(await fixture.Client.GetStringAsync(new Uri("/version", UriKind.Relative)));
        var built = typeof(SetupServiceHost).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

        Assert.Equal(Edition.Current, answer.RootElement.GetProperty("edition").GetString());
        Assert.EndsWith(answer.RootElement.GetProperty("commit").GetString()!, built.Contains('+', StringComparison.Ordinal) ? built : "unknown", StringComparison.Ordinal);
        Assert.Equal($".NET {Environment.Version}", answer.RootElement.GetProperty("runtime").GetString());
    }

    [Theory]
    [InlineData("/docs", "text/html")]
    [InlineData("/docs/page.css", "text/css")]
    [InlineData("/docs/page.js", "text/javascript")]
    [InlineData("/docs/methods/fitment-check", "text/markdown")]
    [InlineData("/openapi/v1.json", "application/json")]
    [InlineData("/openapi/v1.yaml", "application/yaml")]
    public async Task Its_pages_are_served(string path, string mediaType)
    {
        using var response = await fixture.Client.GetAsync(new Uri(path, UriKind.Relative));

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(mediaType, response.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task The_page_of_calls_names_calls_that_there_are()
    {
        var page = await fixture.Client.GetStringAsync(new Uri("/docs", UriKind.Relative));
        var contract = await fixture.Client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative));

        Assert.All(Regex.Matches(page, "href=\"#(\\w+)\"").Select(link => link.Groups[1].Value), name => Assert.Contains($"\"operationId\":\"{name}\"", contract, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_settings_it_listens_at_its_own_address()
    {
        await using var app = SetupServiceHost.Build([]);

        Assert.Equal(SetupServiceHost.DefaultUrl, app.Configuration["urls"]);
    }

    [Fact]
    public async Task An_address_asked_for_wins()
    {
        await using var app = SetupServiceHost.Build(["--urls", "http://127.0.0.1:5999"]);

        Assert.Equal("http://127.0.0.1:5999", app.Configuration["urls"]);
    }
}

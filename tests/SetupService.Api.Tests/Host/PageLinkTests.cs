using System.Net;
using System.Text.RegularExpressions;
using SetupService.Api.Tests.Contract;

namespace SetupService.Api.Tests.Host;

/// <summary>Every link of a served page leads somewhere.</summary>
public sealed partial class PageLinkTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Theory]
    [InlineData("methods")]
    [InlineData("problems")]
    public async Task Every_link_of_a_page_is_served(string folder)
    {
        var pages = Directory.GetFiles(Path.Combine(ContractFile.Path("."), "..", "docs", folder), "*.md").Select(file => Path.GetFileNameWithoutExtension(file)!).ToArray();
        Assert.NotEmpty(pages);

        var count = 0;
        foreach (var name in pages)
        {
            Uri page = new(fixture.Client.BaseAddress!, $"/docs/{folder}/{name}");
            foreach (Match link in Links().Matches(await fixture.Client.GetStringAsync(page)))
            {
                using var response = await fixture.Client.GetAsync(new Uri(page, link.Groups[1].Value));
                Assert.True(response.StatusCode == HttpStatusCode.OK, $"{name}: {link.Value}");
                count++;
            }
        }

        Assert.True(count > 0, folder);
    }

    [Fact]
    public async Task The_calibration_is_served_as_a_picture()
    {
        using var response = await fixture.Client.GetAsync(new Uri("/docs/methods/wear-calibration.svg", UriKind.Relative));

        Assert.Equal("image/svg+xml", response.Content.Headers.ContentType!.MediaType);
        Assert.StartsWith("<svg", await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\]\(([^)#]+)\)")]
    private static partial Regex Links();
}

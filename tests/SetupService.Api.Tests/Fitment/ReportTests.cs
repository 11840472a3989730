using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using System.Xml;
using System.Xml.Linq;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment;

/// <summary>The fit report: the check's own answer as a page that runs nothing and needs nothing.</summary>
public sealed class ReportTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Report = "/v1/fitment/check/report";

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    public async Task It_says_what_the_check_says(string units)
    {
        var body = Requests.Check().Without("/vehicle/front/clearance/springSeatMm").With("/candidate/wheel/boltCircle", "5x112");
        var check = await fixture.Client.AnswerOf($"{Calls.Check}?units={units}", body);
        var (page, _) = await PageAsync(body, units);
        var text = Words(page.Descendants("body").Single());

        Assert.Contains(check.GetProperty("summary").GetString()!, text, StringComparison.Ordinal);
        Assert.Contains("Does not fit the front axle", text, StringComparison.Ordinal);
        Assert.All(check.GetProperty("checks").EnumerateArray(), one => Assert.Contains(one.GetProperty("explanation").GetString()!, text, StringComparison.Ordinal));
        Assert.All(check.GetProperty("checks").EnumerateArray(), one => Assert.Contains(one.GetProperty("title").GetString()!, text, StringComparison.Ordinal));
        Assert.All(check.GetProperty("unknown").EnumerateArray(), one => Assert.Contains(one.GetProperty("reason").GetString()!, text, StringComparison.Ordinal));
        Assert.All(check.GetProperty("cautions").EnumerateArray(), one => Assert.Contains(one.GetProperty("text").GetString()!, text, StringComparison.Ordinal));
        Assert.All(check.GetProperty("assumptions").EnumerateArray(), one => Assert.Contains(one.GetProperty("reason").GetString()!, text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_drawing_in_it_is_the_drawing()
    {
        var body = Requests.Check();
        using var drawn = await fixture.Client.PostAsync(Calls.Drawing, body.ToJsonString());
        using var response = await fixture.Client.PostAsync(Report, body.ToJsonString());

        Assert.Contains(await drawn.Content.ReadAsStringAsync(), await response.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    /// <summary>Without the tyre's dimensions there is nothing to draw; the rest is told.</summary>
    [Fact]
    public async Task A_size_without_a_rule_is_reported_without_a_drawing()
    {
        var (page, _) = await PageAsync(Requests.Check().With("/candidate/tyre/marking", "6.00-16"));

        Assert.Empty(page.Descendants("figure"));
        Assert.Contains("Tyre and rim of one diameter", Words(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_caller_sent_is_text_and_nothing_else()
    {
        const string Label = "<script>alert(1)</script> \"&' <img src=x onerror=alert(1)> \u0001\ufffe";
        var (page, source) = await PageAsync(Requests.Check().With("/vehicle/label", Label));

        Assert.Empty(page.Descendants("script"));
        Assert.Empty(page.Descendants("img"));
        Assert.DoesNotContain("<script", source, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("<script>alert(1)</script> \"&' <img src=x onerror=alert(1)> \ufffd\ufffd", Words(page.Descendants("body").Single()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_runs_and_nothing_is_fetched()
    {
        var (page, source) = await PageAsync(Requests.Check());

        Assert.DoesNotContain(
            page.Descendants().Attributes(),
            attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase) || attribute.Name.LocalName is "src" or "href" or "style" or "action");
        Assert.DoesNotContain("url(", source, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", source, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(["body", "div", "figure", "footer", "h1", "h2", "head", "html", "li", "main", "meta", "p", "style", "table", "tbody", "td", "th", "thead", "title", "tr", "ul"],
            page.Descendants().Where(element => element.Name.Namespace == XNamespace.None).Select(element => element.Name.LocalName).Distinct().Order(StringComparer.Ordinal));

        // An element that ends in itself would swallow the rest of the page where HTML has content for it.
        Assert.All(page.Descendants().Where(element => element.IsEmpty && element.Name.Namespace == XNamespace.None), element => Assert.Equal("meta", element.Name.LocalName));
    }

    /// <summary>Content Security Policy Level 3, 2.3.1: the digest of a style element's text, in base64.</summary>
    [Fact]
    public async Task The_policy_allows_the_style_sheets_there_are_and_no_others()
    {
        using var response = await fixture.Client.PostAsync(Report, Requests.Check().ToJsonString());
        var page = Parsed(await Calls.Text(response));
        var policy = Assert.Single(response.Headers.GetValues("Content-Security-Policy"));
        var digests = page.Descendants().Where(element => element.Name.LocalName == "style").Select(style => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style.Value)))}'").ToArray();

        Assert.Equal(2, digests.Length);
        Assert.StartsWith("default-src 'none'; base-uri 'none'; form-action 'none'; style-src " + string.Join(' ', digests), policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Contains(page.Descendants("meta"), meta => policy.StartsWith(meta.Attribute("content")?.Value ?? "none of it", StringComparison.Ordinal));
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("text/html", response.Content.Headers.ContentType!.MediaType);
        Assert.True(response.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task It_refuses_what_the_check_refuses()
    {
        var body = Requests.Check().With("/candidate/wheel/offsetMm", 900).With("/candidate/tyre/marking", "45Q17").ToJsonString();
        using var check = await fixture.Client.PostAsync(Calls.Check, body);
        using var report = await fixture.Client.PostAsync(Report, body);

        Assert.Equal(
            (await Problems.Read(check, ProblemTypes.InvalidRequest)).FaultsOf(),
            (await Problems.Read(report, ProblemTypes.InvalidRequest)).FaultsOf());
    }

    private async Task<(XDocument Page, string Source)> PageAsync(JsonObject body, string units = "metric")
    {
        using var response = await fixture.Client.PostAsync($"{Report}?units={units}", body.ToJsonString());
        var source = await Calls.Text(response);
        return (Parsed(source), source);
    }

    private static XDocument Parsed(string source)
    {
        using var reader = XmlReader.Create(new StringReader(source), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        return XDocument.Load(reader, LoadOptions.PreserveWhitespace);
    }

    private static string Words(XContainer part) => string.Join('\n', part.DescendantNodes().OfType<XText>().Select(text => text.Value));
}

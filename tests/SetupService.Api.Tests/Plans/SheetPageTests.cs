using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml;
using System.Xml.Linq;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>The printable sheets: the answer's own words and numbers as a page that runs nothing and needs nothing.</summary>
public sealed class SheetPageTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Sheets = "/v1/plans/sheets";

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    public async Task It_says_what_the_answer_says(string units)
    {
        var answer = await fixture.Client.AnswerOf($"{Sheets}?units={units}", Example());
        var (page, _) = await PageAsync(Example(), units);
        var text = Words(page.Descendants("body").Single());

        Assert.All(
            answer.GetProperty("workOrder").GetProperty("steps").EnumerateArray().Select(one => one.GetProperty("text"))
                .Concat(answer.GetProperty("cautions").EnumerateArray().Select(one => one.GetProperty("text")))
                .Concat(answer.GetProperty("alignment").GetProperty("lines").EnumerateArray().Select(one => one.GetProperty("text")).Where(one => one.ValueKind == JsonValueKind.String))
                .Concat(answer.GetProperty("fit")[0].GetProperty("check").GetProperty("checks").EnumerateArray().Select(one => one.GetProperty("explanation")))
                .Concat([answer.GetProperty("summary"), answer.GetProperty("fitText"), answer.GetProperty("alignment").GetProperty("loaded"), answer.GetProperty("test").GetProperty("enough"), answer.GetProperty("test").GetProperty("proof"), answer.GetProperty("test").GetProperty("stop")]),
            one => Assert.Contains(one.GetString()!, text, StringComparison.Ordinal));
        Assert.Contains(units == "us" ? "81 lb ft" : "110 N m", text, StringComparison.Ordinal);
        Assert.Contains("maker's figure", text, StringComparison.Ordinal);
        Assert.DoesNotContain(units == "us" ? " kPa" : " psi", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_angle_and_depth_has_its_boxes()
    {
        var (page, _) = await PageAsync(Example());

        var angles = Rows(page, "fill angles").ToArray();
        Assert.Equal(9, angles.Length);
        Assert.All(angles, row => Assert.InRange(Boxes(row), 2, 4));
        Assert.All(Rows(page, "fill log"), row => Assert.Equal(row.Elements().Count() - 1, Boxes(row)));
        Assert.All(Rows(page, "fill").Take(4), row => Assert.Equal(3, Boxes(row)));
    }

    [Fact]
    public async Task Nothing_runs_and_nothing_is_fetched()
    {
        var (page, source) = await PageAsync(Example());

        Assert.DoesNotContain(
            page.Descendants().Attributes(),
            attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase) || attribute.Name.LocalName is "src" or "href" or "style" or "action");
        Assert.DoesNotContain("url(", source, StringComparison.OrdinalIgnoreCase);
        var ids = page.Descendants().Attributes("id").Select(one => one.Value).ToArray();
        Assert.Equal(ids.Distinct(), ids);
        using var response = await fixture.Client.PostAsync(Sheets + "/page", Example().ToJsonString());
        var policy = response.Headers.GetValues("Content-Security-Policy").Single();
        Assert.All(page.Descendants().Where(element => element.Name.LocalName == "style"), style => Assert.Contains(Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style.Value))), policy, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_a_caller_sent_is_text_and_nothing_else()
    {
        const string Label = "<script>alert(1)</script> \"&' <img src=x onerror=alert(1)>";
        var body = Example();
        body["vehicle"]!["label"] = Label;
        body["parts"]![0]!["id"] = "<b>mounts</b>";
        body["parts"]![2]!["apartWith"]![0]!["part"] = "<b>mounts</b>";
        body["chosen"]![0] = "<b>mounts</b>";
        var (page, source) = await PageAsync(body);

        Assert.Empty(page.Descendants("script"));
        Assert.Empty(page.Descendants("b"));
        Assert.DoesNotContain("<script", source, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(Label, Words(page.Descendants("body").Single()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Settings_alone_have_a_page_without_parts_or_drawings()
    {
        var body = Example();
        body["chosen"] = new JsonArray();
        var (page, _) = await PageAsync(body);

        Assert.Empty(page.Descendants("figure"));
        Assert.DoesNotContain("Spring under load", Words(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_choice_that_is_refused_is_refused_here_too()
    {
        var refusal = await fixture.Client.RefusalOf(Sheets + "/page", Put(Example(), "/chosen/0", "\"nothing\"").ToJsonString());

        Assert.Equal("/chosen/0", refusal.GetProperty("errors")[0].GetProperty("pointer").GetString());
    }

    private static JsonObject Example() => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("plan-sheets.request.json")))!.AsObject();

    private static IEnumerable<XElement> Rows(XDocument page, string kind) =>
        page.Descendants("table").Where(table => table.Attribute("class")?.Value == kind).SelectMany(table => table.Element("tbody")!.Elements("tr"));

    private static int Boxes(XElement row) => row.Elements("td").Count(cell => cell.Attribute("class")?.Value.Split(' ').Contains("box") == true);

    private static string Words(XContainer page) => string.Concat(page.DescendantNodes().OfType<XText>().Select(text => text.Value));

    private async Task<(XDocument Page, string Source)> PageAsync(JsonObject body, string units = "metric")
    {
        using var response = await fixture.Client.PostAsync($"{Sheets}/page?units={units}", body.ToJsonString());
        var source = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, source);
        Assert.Equal("text/html", response.Content.Headers.ContentType!.MediaType);
        using var reader = XmlReader.Create(new StringReader(source), new XmlReaderSettings { DtdProcessing = DtdProcessing.Parse });
        var page = XDocument.Load(reader);
        return (page, source);
    }
}

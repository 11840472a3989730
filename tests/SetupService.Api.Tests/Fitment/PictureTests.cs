using System.Net;
using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Drawings;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment;

/// <summary>The pictures of a page: what the check says, by an address that can be typed.</summary>
public sealed class PictureTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Drawing = "/v1/fitment/drawing";
    private const string Badge = "/v1/fitment/badge";

    private static readonly string[] Wheels = ["8Jx17 ET40 5x108 CB63.4", "7.5Jx17 ET45", "9Jx18 ET10 4x100 CB60.1", "8,5Jx18 ET35 5x108 CB67.1", "6Jx15 ET38 5x108 CB63.4"];
    private static readonly string[] Tyres = ["225/45R17 94W XL", "205/50R17 89V", "265/40R18 101Y", "195/65R15 91H", "225/45ZR17", "6.00-16"];

    /// <summary>A query, and the body of the check that says the same.</summary>
    private static readonly Gen<(string Query, JsonObject Body)> AnyQuery =
        Gen.Select(Gen.Int[0, Wheels.Length - 1].Select(i => Wheels[i]), Gen.Int[0, Tyres.Length - 1].Select(i => Tyres[i]), Gen.Int[0, Wheels.Length - 1].Select(i => Wheels[i]), Gen.Int[0, Tyres.Length - 1].Select(i => Tyres[i]), Gen.Bool.Array[8], Gen.Int[0, 40], Gen.Int[700, 1300])
            .Select((wheel, tyre, wheelNow, tyreNow, has, gapMm, loadKg) =>
            {
                JsonObject axle = [];
                JsonObject clearance = [];
                JsonObject vehicle = [];
                List<string> query = [$"new={Uri.EscapeDataString($"{wheel},{tyre}")}"];
                if (has[0])
                {
                    query.Add($"now={Uri.EscapeDataString($"{wheelNow} , {tyreNow}")}");
                    (axle["wheel"], axle["tyre"]) = (new JsonObject { ["marking"] = wheelNow }, new JsonObject { ["marking"] = tyreNow });
                }

                Take(has[1], "in", clearance, "inboardMm", gapMm);
                Take(has[2], "out", clearance, "outboardMm", gapMm + 4);
                Take(has[3], "over", clearance, "radialMm", gapMm + 1);
                Take(has[4], "maximumAxleLoadKg", axle, "maximumAxleLoadKg", loadKg);
                Take(has[5], "minimumLoadIndex", axle, "minimumLoadIndex", 91);
                Take(has[6], "topSpeedKmh", vehicle, "topSpeedKmh", 228);
                axle["clearance"] = clearance;
                axle["hub"] = has[4] ? new JsonObject { ["centreBoreMm"] = 63.4 } : new JsonObject();
                if (has[4]) query.Add("centreBoreMm=63.4");
                var position = has[7] ? "rear" : "front";
                if (has[7]) query.Add("axle=rear");
                vehicle[position] = axle;
                return ($"?{string.Join('&', query)}", new JsonObject
                {
                    ["axle"] = position,
                    ["vehicle"] = vehicle,
                    ["candidate"] = new JsonObject { ["wheel"] = new JsonObject { ["marking"] = wheel }, ["tyre"] = new JsonObject { ["marking"] = tyre } },
                });

                void Take(bool isGiven, string parameter, JsonObject into, string member, int value)
                {
                    if (!isGiven) return;
                    query.Add($"{parameter}={value}");
                    into[member] = value;
                }
            });

    [Fact]
    public async Task The_card_says_what_the_check_says() => await AnyQuery.SampleAsync(
        async pair =>
        {
            var card = await PictureAsync(Badge + pair.Query);
            var check = await fixture.Client.AnswerOf(Calls.Check, pair.Body);
            var headline = (check.GetProperty("verdict").GetString(), pair.Body["axle"]!.GetValue<string>()) switch
            {
                ("pass", var axle) => $"Fits the {axle} axle",
                ("caution", var axle) => $"Fits the {axle} axle, with care",
                ("fail", var axle) => $"Does not fit the {axle} axle",
                (_, var axle) => $"Not known yet to fit the {axle} axle",
            };

            Assert.StartsWith(headline + ": ", card.Title, StringComparison.Ordinal);
            Assert.Equal(check.GetProperty("summary").GetString(), card.Description);
            Assert.StartsWith(headline, string.Join(' ', card.Texts.Select(text => text.Value)), StringComparison.Ordinal);
        },
        iter: 150);

    [Fact]
    public async Task The_picture_by_its_address_is_the_picture_by_its_body() => await AnyQuery.SampleAsync(
        async pair =>
        {
            using var got = await GetAsync(Drawing + pair.Query);
            using var posted = await fixture.Client.PostAsync(Drawing, pair.Body.ToJsonString());

            Assert.Equal(posted.StatusCode, got.StatusCode);
            if (got.StatusCode == HttpStatusCode.OK)
                Assert.Equal(await posted.Content.ReadAsStringAsync(), await got.Content.ReadAsStringAsync());
        },
        iter: 60);

    [Fact]
    public async Task A_card_is_nothing_but_a_picture_and_can_be_read() => await AnyQuery.SampleAsync(
        async pair =>
        {
            var card = await PictureAsync(Badge + pair.Query);
            Harmlessness.Holds(card);
            Harmlessness.IsDescribed(card);
            Harmlessness.IdsAreSingle(card);
            Legibility.TextsKeepClear(card);
            var (widthPx, heightPx) = (SvgPicture.Length(card.Root, "width"), SvgPicture.Length(card.Root, "height"));
            Assert.Equal([0, 0, widthPx, heightPx], card.ViewBox);
            Assert.InRange(widthPx, 150, 440);
            Legibility.LettersHaveAtLeast(12, card, widthPx);
        },
        iter: 80);

    // The candidate of the demo car, whose check leaves 11.6 mm inboard and 5.6 mm to the arch lip (KnownAnswersTests), told in whole mm from 10 mm on.
    private const string Known = "?now=7.5Jx17%20ET45%205x108,225/45R17%2091W&new=8Jx17%20ET40%205x108%20CB63.4,225/45R17%2094W%20XL&in=14&out=18&over=12&maximumAxleLoadKg=870&topSpeedKmh=228&centreBoreMm=63.4";

    [Theory]
    [InlineData("", "Fits the front axle", "Leaves 12 mm inboard and 5.6 mm to the arch lip")]
    [InlineData("&units=us", "Fits the front axle", "Leaves 0.46 in inboard and 0.22 in to the arch lip")]
    public async Task A_card_that_fits_says_how_much_is_left(string more, string headline, string reason)
    {
        var card = await PictureAsync(Badge + Known + more);

        Assert.StartsWith(headline, card.Title, StringComparison.Ordinal);
        Assert.Contains(reason, string.Join(' ', card.Texts.Select(text => text.Value)), StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme:dark", card.Source, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_known_is_called_so()
    {
        var card = await PictureAsync(Badge + "?new=8Jx17%20ET40,225/45R17%2094W");

        Assert.StartsWith("Not known yet to fit the front axle", card.Title, StringComparison.Ordinal);
        Assert.Contains("Still to be measured or given", string.Join(' ', card.Texts.Select(text => text.Value)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Drawing)]
    [InlineData(Badge)]
    public async Task A_page_may_keep_it(string path)
    {
        using var first = await GetAsync(path + Known);
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri(path + Known, UriKind.Relative));
        request.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        using var again = await fixture.Client.SendAsync(request);

        Assert.Equal("image/svg+xml", first.Content.Headers.ContentType!.MediaType);
        Assert.True(first.Headers.CacheControl!.Public);
        Assert.False(first.Headers.ETag!.IsWeak);
        Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
    }

    [Theory]
    [InlineData("", "new required")]
    [InlineData("?new=8Jx17%20ET40", "new unreadable")]
    [InlineData("?new=,", "new unreadable|new unreadable")] // the wheel and the tyre
    [InlineData("?new=8Jx17%20ET40,45Q17&now=8Jx17%20ET40,nothing", "new unreadable|now unreadable")]
    [InlineData("?new=8Jx17,225/45R17%2094W", "new required")]
    [InlineData("?new=8Jx17%20ET40,225/45R17%2094W&in=wide&out=501&over=1e999", "in wrongType|out outOfRange|over notFinite")]
    [InlineData("?new=8Jx17%20ET40,225/45R17%2094W&minimumLoadIndex=87.5&axle=middle", "axle unknownWord|minimumLoadIndex wrongType")]
    [InlineData("?new=8Jx17%20ET40,225/45R17%2094W&new=x&inboard=3", "inboard unknownParameter|new repeatedParameter")]
    public async Task Every_fault_stands_under_the_name_of_its_parameter(string query, string faults)
    {
        foreach (var path in new[] { Drawing, Badge })
        {
            using var response = await GetAsync(path + query);
            var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);

            Assert.Equal(faults, string.Join('|', problem.FaultsOf().Order(StringComparer.Ordinal)));
            Assert.DoesNotContain(problem.GetProperty("errors").EnumerateArray(), fault => fault.TryGetProperty("pointer", out _));
        }
    }

    [Fact]
    public async Task A_size_without_a_rule_has_a_card_but_no_drawing()
    {
        const string Query = "?new=6Jx16%20ET30,6.00-16";
        using var drawing = await GetAsync(Drawing + Query);
        var problem = await Problems.Read(drawing, ProblemTypes.NotComputable);

        Assert.Equal("new", problem.GetProperty("errors")[0].GetProperty("parameter").GetString());
        Assert.StartsWith("Not known yet", (await PictureAsync(Badge + Query)).Title, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_person_typed_is_text_and_nothing_else() =>
        Assert.Contains("M&S", (await PictureAsync(Badge + "?new=8Jx17%20ET40,225/45R17%2094W%20M%26S")).Title, StringComparison.Ordinal);

    private Task<HttpResponseMessage> GetAsync(string path) => fixture.Client.GetAsync(new Uri(path, UriKind.Relative));

    private async Task<SvgPicture> PictureAsync(string path)
    {
        using var response = await GetAsync(path);
        return new SvgPicture(await Calls.Text(response));
    }
}

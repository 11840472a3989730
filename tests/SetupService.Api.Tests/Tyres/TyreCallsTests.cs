using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Tyres;

/// <summary>The calls that read tyre markings and hand out tables.</summary>
public sealed class TyreCallsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Decode = "/v1/tyres/decode";

    // Load index 94 is 670 kg (French order of 24 October 1994, Annex I); W is 270 km/h (handbook table of load capacity
    // against top speed); d of 17 is 432 mm and D = d + 2H (a lecture note's rule; H rounded from memory).
    [Fact]
    public async Task A_marking_is_read_into_what_it_says()
    {
        var tyre = await fixture.Client.GetAnswer(Decode + "?marking=225/45R17%2094W%20XL");

        Assert.Equal(
            (225, 45, "radial", 17, 94, 670, "W", 270, "XL", 634),
            (
                tyre.GetProperty("nominalSectionWidthMm").GetDouble(), tyre.GetProperty("aspectRatioPct").GetDouble(), tyre.GetProperty("construction").GetString(),
                tyre.GetProperty("rimDiameterIn").GetDouble(), tyre.GetProperty("loadIndex").GetInt32(), tyre.GetProperty("loadCapacityKg").GetDouble(),
                tyre.GetProperty("speedSymbol").GetString(), tyre.GetProperty("maximumSpeedKmh").GetDouble(), tyre.GetProperty("loadVersion").GetString(),
                tyre.GetProperty("overallDiameterMm").GetDouble()));
        Assert.Equal(JsonValueKind.Null, tyre.GetProperty("inUse").ValueKind);
        Assert.Empty(tyre.GetProperty("unreadMarks").Strings());
        Assert.NotEqual(0, tyre.GetProperty("cautions").GetArrayLength());
    }

    [Theory]
    [InlineData("225/45 r 17 94w xl", "225/45R17 94W XL")]
    [InlineData("225/45r17 94W reinforced", "225/45R17 94W XL")]
    [InlineData("235/45ZR17 (97Y)", "235/45ZR17 (97Y)")]
    [InlineData("195 R 15 C 106/104 R", "195R15C 106/104R")]
    public async Task It_is_read_as_people_type_it(string typed, string standard)
    {
        var tyre = await fixture.Client.GetAnswer($"{Decode}?marking={Uri.EscapeDataString(typed)}");

        Assert.Equal(typed, tyre.GetProperty("marking").GetString());
        Assert.Equal(standard, tyre.GetProperty("standardMarking").GetString());
    }

    [Fact]
    public async Task Letters_that_mean_nothing_here_come_back()
    {
        var tyre = await fixture.Client.GetAnswer(Decode + "?marking=225/45R17%2094W%20FR%20ABCDE");

        Assert.Equal(["FR", "ABCDE"], tyre.GetProperty("unreadMarks").Strings());
    }

    // (230/290)^0.8 of 670 kg: the standard's formula at the reference pressure of an extra-load tyre; half a turn more of
    // rim is 0.4 of it in section width (the standard's rule, from memory).
    [Fact]
    public async Task In_use_it_carries_what_its_pressure_allows()
    {
        var use = (await fixture.Client.GetAnswer(Decode + "?marking=225/45R17%2094W%20XL&pressureKpa=230&topSpeedKmh=200&rimWidthIn=8")).GetProperty("inUse");

        Assert.Equal(670 * Math.Pow(230.0 / 290, 0.8), use.GetProperty("loadCapacityAtPressureKg").GetDouble(), 1e-6);
        Assert.Equal(225 + (0.4 * 12.7), use.GetProperty("sectionWidthOnRimMm").GetDouble(), 0.051);
    }

    [Theory]
    [InlineData("", "marking required")]
    [InlineData("?marking=", "marking required")]
    [InlineData("?marking=225/45Q17", "marking unreadable")]
    [InlineData("?marking=225", "marking unreadable")]
    [InlineData("?marking=225&rimWidthIn=2&speed=3", "marking unreadable rimWidthIn outOfRange speed unknownParameter")]
    [InlineData("?marking=225/45R17&marking=225/45R17", "marking repeatedParameter")]
    [InlineData("?Marking=225/45R17", "Marking unknownParameter")]
    [InlineData("?marking=225/45R17&pressureKpa=79.9", "pressureKpa outOfRange")]
    [InlineData("?marking=225/45R17&pressureKpa=1e999", "pressureKpa notFinite")]
    [InlineData("?marking=225/45R17&pressureKpa=2,5", "pressureKpa wrongType")]
    [InlineData("?marking=225/45R17&rimWidthIn=16.01&topSpeedKmh=fast&colour=red", "rimWidthIn outOfRange topSpeedKmh wrongType colour unknownParameter")]
    public async Task A_query_with_faults_has_them_all_named(string query, string faults)
    {
        using var response = await fixture.Client.GetAsync(new Uri(Decode + query, UriKind.Relative));

        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        Assert.Equal(faults.Split(' ').Order(StringComparer.Ordinal), string.Join(' ', problem.FaultsOf()).Split(' ').Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_marking_of_sixty_characters_is_read_and_one_more_is_not()
    {
        var sixty = "225/45R17 94W XL" + string.Concat(Enumerable.Repeat(" ABC", 11));
        using var longest = await fixture.Client.GetAsync(new Uri($"{Decode}?marking={Uri.EscapeDataString(sixty)}", UriKind.Relative));
        using var longer = await fixture.Client.GetAsync(new Uri($"{Decode}?marking={Uri.EscapeDataString(sixty)}A", UriKind.Relative));

        Assert.Equal(60, sixty.Length);
        await Calls.Text(longest);
        Assert.Equal(["marking tooLong"], (await Problems.Read(longer, ProblemTypes.InvalidRequest)).FaultsOf());
    }

    // French order of 24 October 1994, Annex I, as the domain's tests hold the whole table against it.
    [Theory]
    [InlineData(0, 45)]
    [InlineData(91, 615)]
    [InlineData(100, 800)]
    [InlineData(200, 14000)]
    public async Task The_load_index_table_is_whole(int index, double kg)
    {
        var table = await fixture.Client.GetAnswer("/v1/reference/load-indices");

        var rows = table.GetProperty("loadIndices");
        Assert.Equal(Enumerable.Range(0, 201), rows.EnumerateArray().Select(row => row.GetProperty("loadIndex").GetInt32()));
        Assert.Equal(kg, rows[index].GetProperty("loadCapacityKg").GetDouble());
    }

    [Theory]
    [InlineData("T", 190)]
    [InlineData("H", 210)]
    [InlineData("V", 240)]
    [InlineData("W", 270)]
    [InlineData("Y", 300)]
    public async Task The_speed_symbol_table_has_the_symbols_of_road_cars(string symbol, double kmh)
    {
        var table = await fixture.Client.GetAnswer("/v1/reference/speed-symbols");

        var row = table.GetProperty("speedSymbols").EnumerateArray().Single(one => one.GetProperty("speedSymbol").GetString() == symbol);
        Assert.Equal(kmh, row.GetProperty("maximumSpeedKmh").GetDouble());
    }

    [Theory]
    [InlineData("/v1/reference/load-indices")]
    [InlineData("/v1/reference/speed-symbols")]
    public async Task A_table_that_is_known_is_not_sent_again(string path)
    {
        using var first = await fixture.Client.GetAsync(new Uri(path, UriKind.Relative));
        await Calls.Text(first);
        using HttpRequestMessage again = new(HttpMethod.Get, new Uri(path, UriKind.Relative));
        again.Headers.IfNoneMatch.Add(new EntityTagHeaderValue(first.Headers.ETag!.Tag));
        using var second = await fixture.Client.SendAsync(again);

        Assert.True(second.StatusCode == HttpStatusCode.NotModified, await second.Content.ReadAsStringAsync());
        Assert.Empty(await second.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("/v1/reference/load-indices")]
    [InlineData("/v1/reference/speed-symbols")]
    [InlineData(Decode + "?marking=225/45R17")]
    public async Task Only_get_is_answered_and_only_in_json(string path)
    {
        using var post = await fixture.Client.PostAsync(path, "{}");
        using HttpRequestMessage asksForSvg = new(HttpMethod.Get, new Uri(path, UriKind.Relative));
        asksForSvg.Headers.Accept.ParseAdd("image/svg+xml");
        using var svg = await fixture.Client.SendAsync(asksForSvg);

        await Problems.Read(post, ProblemTypes.MethodNotAllowed);
        Assert.Contains("GET", post.Content.Headers.Allow);
        await Problems.Read(svg, ProblemTypes.NotAcceptable);
    }
}

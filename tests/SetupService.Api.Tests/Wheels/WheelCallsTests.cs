using System.Text.Json;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Wheels;

/// <summary>The call that reads wheel markings.</summary>
public sealed class WheelCallsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Decode = "/v1/wheels/decode";

    // Over two J flanges of at least 11.0 mm (JIS D 4218:2021, Table 3): 8.5 · 25.4 + 22 = 237.9 mm; half of it and the
    // offset of 44 mm to the inboard edge, the rest to the outboard one.
    [Theory]
    [InlineData("8.5Jx18 ET44")]
    [InlineData("18x8.5 +44")]
    [InlineData("8 1/2 J x 18 H2 ET 44")]
    [InlineData("8,5 J X 18 ET44")]
    public async Task A_marking_is_read_in_each_way_it_is_stamped(string marking)
    {
        var wheel = await fixture.Client.GetAnswer($"{Decode}?marking={Uri.EscapeDataString(marking)}");

        Assert.Equal(
            (marking, 18.0, 8.5, 44.0),
            (wheel.GetProperty("marking").GetString(), wheel.GetProperty("rimDiameterIn").GetDouble(), wheel.GetProperty("rimWidthIn").GetDouble(), wheel.GetProperty("offsetMm").GetDouble()));
        Assert.Equal(237.9, wheel.GetProperty("overFlangesMm").GetDouble(), 1e-6);
        Assert.Equal(162.95, wheel.GetProperty("backspacingMm").GetDouble(), 1e-6);
        Assert.Equal(74.95, wheel.GetProperty("frontspacingMm").GetDouble(), 1e-6);
    }

    [Fact]
    public async Task Without_an_offset_there_are_no_spacings()
    {
        var wheel = await fixture.Client.GetAnswer(Decode + "?marking=8.5Jx18");

        Assert.All(new[] { "offsetMm", "backspacingMm", "frontspacingMm" }, name => Assert.Equal(JsonValueKind.Null, wheel.GetProperty(name).ValueKind));
    }

    [Theory]
    [InlineData("8.5Jx18 5x114,3 ET44", "5x114.3")]
    [InlineData("8.5Jx18 4/100 ET44", "4x100")]
    public async Task A_bolt_circle_comes_back_as_people_write_it(string marking, string circle)
    {
        var wheel = await fixture.Client.GetAnswer($"{Decode}?marking={Uri.EscapeDataString(marking)}");

        Assert.Equal(circle, wheel.GetProperty("boltCircle").GetString());
    }

    [Theory]
    [InlineData("", "marking required")]
    [InlineData("?marking=round", "marking unreadable")]
    [InlineData("?marking=8.5Jx", "marking unreadable")]
    [InlineData("?marking=8.5Jx18&unit=us", "unit unknownParameter")]
    public async Task A_query_with_faults_is_refused(string query, string fault)
    {
        using var response = await fixture.Client.GetAsync(new Uri(Decode + query, UriKind.Relative));

        Assert.Equal([fault], (await Problems.Read(response, ProblemTypes.InvalidRequest)).FaultsOf());
    }
}

using System.Globalization;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Fitment;

/// <summary>Each range of the contract: both ends are taken, the next number beyond is a 400 that gives the limits.</summary>
public sealed class RangeTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    /// <summary>The contract's list of ranges, where these calls have the member; then those it is silent on.</summary>
    public static TheoryData<string, string, double, double, string> Ranges() => new()
    {
        { Calls.Check, "/candidate/wheel/rimDiameterIn", 8, 26, "in" },
        { Calls.Check, "/vehicle/front/wheel/rimDiameterIn", 8, 26, "in" },
        { Calls.Check, "/vehicle/front/hub/minimumRimDiameterIn", 8, 26, "in" },
        { Calls.Check, "/candidate/wheel/rimWidthIn", 3, 16, "in" },
        { Calls.Check, "/vehicle/rear/wheel/rimWidthIn", 3, 16, "in" },
        { Calls.Window, "/rimWidthsIn/1", 3, 16, "in" },
        { Calls.Check, "/candidate/wheel/offsetMm", -150, 150, "mm" },
        { Calls.Comparison, "/current/wheel/offsetMm", -150, 150, "mm" },
        { Calls.Check, "/candidate/wheel/spacerMm", 0, 80, "mm" },
        { Calls.Check, "/vehicle/front/trackMm", 900, 2200, "mm" },
        { Calls.Check, "/vehicle/wheelbaseMm", 1500, 4500, "mm" },
        { Calls.Check, "/vehicle/frontAxleLoadKg", 50, 5000, "kg" },
        { Calls.Check, "/vehicle/rearAxleLoadKg", 50, 5000, "kg" },
        { Calls.Check, "/vehicle/front/maximumAxleLoadKg", 50, 5000, "kg" },
        { Calls.Check, "/candidate/tyre/pressureKpa", 80, 500, "kPa" },
        { Calls.Check, "/vehicle/front/tyre/pressureKpa", 80, 500, "kPa" },
        { Calls.Check, "/vehicle/front/alignment/camberDeg", -15, 15, "deg" },
        { Calls.Check, "/camberChange/changeDeg", -15, 15, "deg" },
        { Calls.Check, "/vehicle/front/alignment/casterDeg", -5, 20, "deg" },
        { Calls.Check, "/vehicle/front/alignment/toeDeg", -5, 5, "deg" },
        { Calls.Check, "/vehicle/front/suspension/points/wheelCentre/yMm", -5000, 5000, "mm" },
        { Calls.Check, "/vehicle/topSpeedKmh", 20, 500, "km/h" },
        { Calls.Check, "/vehicle/front/clearance/inboardMm", -100, 500, "mm" },
        { Calls.Check, "/vehicle/front/clearance/outboardMm", -200, 500, "mm" },
        { Calls.Check, "/vehicle/front/clearance/uncertaintyMm", 0, 50, "mm" },
        { Calls.Check, "/tolerances/minimumMarginMm", 0, 50, "mm" },
        { Calls.Window, "/tolerances/minimumMarginMm", 0, 50, "mm" },
        { Calls.Comparison, "/steeringAxisInclinationDeg", -10, 40, "deg" },
        { Calls.Comparison, "/indicatedKmh", 1, 500, "km/h" },
    };

    [Theory]
    [MemberData(nameof(Ranges))]
    public async Task Both_ends_are_taken_and_the_next_number_is_not(string path, string place, double minimum, double maximum, string unit)
    {
        foreach (var end in new[] { minimum, maximum })
        {
            // An inside measured for 17 inches lies beyond a smaller rim, and is refused for that.
            var body = Requests.Of(path).With(place, end);
            if (place.EndsWith("rimDiameterIn", StringComparison.Ordinal))
                body.Inside(place).Remove("innerProfile");
            await fixture.Client.AnswerOf(path, body);
        }

        foreach (var beyond in new[] { Math.BitDecrement(minimum), Math.BitIncrement(maximum) })
        {
            var problem = await fixture.Client.RefusalOf(path, Requests.Of(path).With(place, beyond).ToJsonString());
            Assert.Equal([$"{place} outOfRange"], problem.FaultsOf());
            var fault = problem.GetProperty("errors")[0];
            var limits = fault.GetProperty("limits");
            Assert.Equal((minimum, maximum), (limits.GetProperty("minimum").GetDouble(), limits.GetProperty("maximum").GetDouble()));
            Assert.Equal(unit, limits.GetProperty("unit").GetString());
            Assert.Contains(beyond.ToString("R", CultureInfo.InvariantCulture), fault.GetProperty("message").GetString(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(0, "tooFew")]
    [InlineData(51, "tooMany")]
    public async Task A_window_has_one_to_fifty_rim_widths(int count, string code)
    {
        JsonArray widths = [.. Enumerable.Repeat(8, count).Select(width => (JsonNode)width)];
        var problem = await fixture.Client.RefusalOf(Calls.Window, Requests.Window().With("/rimWidthsIn", widths).ToJsonString());

        Assert.Equal([$"/rimWidthsIn {code}"], problem.FaultsOf());
    }

    [Fact]
    public async Task Fifty_rim_widths_get_fifty_windows_in_order()
    {
        double[] asked = [.. Enumerable.Range(0, 50).Select(step => Math.Round(12 - (step * 0.1), 1))];
        var answer = await fixture.Client.AnswerOf(Calls.Window, Requests.Window().With("/rimWidthsIn", new JsonArray([.. asked.Select(width => (JsonNode)width)])));

        Assert.Equal(asked, answer.GetProperty("windows").EnumerateArray().Select(window => window.GetProperty("rimWidthIn").GetDouble()));
    }
}

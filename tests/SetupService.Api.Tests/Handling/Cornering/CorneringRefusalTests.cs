using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>Requests on turns that are refused, with the place and the reason.</summary>
public sealed class CorneringRefusalTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Turn = CorneringCalls.Turn;

    [Theory]
    [InlineData("/vehicle/wheelbaseMm", "/vehicle/wheelbaseMm required")]
    [InlineData("/vehicle/frontAxleLoadKg", "/vehicle/frontAxleLoadKg required")]
    [InlineData("/vehicle/rear/trackMm", "/vehicle/rear/trackMm required")]
    [InlineData("/vehicle/rear/spring", "/vehicle/rear/spring/rateNPerMm required")]
    [InlineData("/turn", "/turn required")]
    [InlineData("/lateralG", "/lateralG required")]
    [InlineData("/cornerRadiusM", "/cornerRadiusM required")]
    public async Task What_a_turn_cannot_do_without_is_named(string place, string expected) =>
        Assert.Equal([expected], (await fixture.Client.RefusalOf(Turn, CorneringCalls.Example().Without(place).ToJsonString())).FaultsOf());

    [Fact]
    public async Task The_points_tell_the_track() =>
        await fixture.Client.AnswerOf(Turn, CorneringCalls.Example().Without("/vehicle/front/trackMm"));

    [Theory]
    [MemberData(nameof(CorneringCalls.Both), MemberType = typeof(CorneringCalls))]
    public async Task An_empty_car_lacks_everything_at_once(string path)
    {
        var faults = (await fixture.Client.RefusalOf(path, CorneringCalls.Of(path).With("/vehicle", new JsonObject()).ToJsonString())).FaultsOf();

        Assert.Equal(7, faults.Length);
        Assert.All(faults, fault => Assert.EndsWith(" required", fault, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("/speedKmh", "80", "/speedKmh inconsistent")]
    [InlineData("/lateralG", "3.0001", "/lateralG outOfRange")]
    [InlineData("/lateralG", "-0.1", "/lateralG outOfRange")]
    [InlineData("/turn", "\"straight\"", "/turn unknownWord")]
    [InlineData("/cornerRadiusM", "3.9", "/cornerRadiusM outOfRange")]
    [InlineData("/heldLateralG", "4", "/heldLateralG outOfRange")]
    [InlineData("/vehicle/front/unsprungMassKg", "350", "/vehicle/front/unsprungMassKg inconsistent")]
    [InlineData("/vehicle/cornerWeightsKg", """{ "frontLeft": 300, "frontRight": 300 }""", "/vehicle/frontAxleLoadKg inconsistent")]
    [InlineData("/vehicle/cornerWeightsKg", """{ "rearLeft": 320 }""", "/vehicle/cornerWeightsKg/rearRight required")]
    [InlineData("/vehicle/frontAxleLoadKg", "7000", "/vehicle/frontAxleLoadKg outOfRange")]
    [InlineData("/vehicle/front/suspension", """{ "kind": "measured", "readings": [{ "travelMm": 0, "camberDeg": 0 }, { "travelMm": 0.5, "camberDeg": 4 }, { "travelMm": 9, "camberDeg": 0 }] }""", "/vehicle/front/suspension inconsistent")]
    public async Task A_value_that_cannot_be_is_refused_at_its_place(string place, string raw, string expected) =>
        Assert.Equal([expected], (await fixture.Client.RefusalOf(Turn, CorneringCalls.Example().WithRaw(place, raw))).FaultsOf());

    [Fact]
    public async Task Faults_of_the_car_and_of_the_turn_come_together()
    {
        var body = CorneringCalls.Example().With("/vehicle/front/tyre/marking", "45Q17").With("/vehicle/rear/trackMm", 10).Without("/vehicle/wheelbaseMm").With("/speedKmh", 80);

        var faults = (await fixture.Client.RefusalOf(Turn, body.ToJsonString())).FaultsOf();

        Assert.Equal(
            ["/speedKmh inconsistent", "/vehicle/front/tyre/marking unreadable", "/vehicle/rear/trackMm outOfRange", "/vehicle/wheelbaseMm required"],
            faults.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_turn_tighter_than_a_car_can_drive_is_refused_with_the_least_speed()
    {
        var body = CorneringCalls.Example(1).Without("/cornerRadiusM").With("/speedKmh", 10);
        var fault = (await fixture.Client.RefusalOf(Turn, body.ToJsonString())).OnlyFault();

        Assert.Equal("/speedKmh", fault.GetProperty("pointer").GetString());

        // √(9.80665 · 4) m/s.
        Assert.Contains("22.5 km/h", fault.Message(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 1, 0, "/lateralG/step inconsistent")]
    [InlineData(0, 1, -0.1, "/lateralG/step inconsistent")]
    [InlineData(0, 1, 0.0009, "/lateralG/step tooMany")]
    public async Task A_range_must_lead_somewhere_in_a_thousand_rows(double fromG, double toG, double stepG, string expected) =>
        Assert.Equal([expected], (await fixture.Client.RefusalOf(CorneringCalls.Sweep, CorneringCalls.Swept(CorneringCalls.Example(), fromG, toG, stepG).ToJsonString())).FaultsOf());

    [Fact]
    public async Task A_car_that_would_roll_over_is_told_up_to_where_it_stands()
    {
        var body = CorneringCalls.Plain(2).Without("/heldLateralG");
        var fault = (await fixture.Client.NotComputableOf(Turn, body.ToJsonString())).OnlyFault();
        var limitG = fault.Number("limits", "maximum");

        Assert.Equal("/lateralG", fault.GetProperty("pointer").GetString());
        Assert.Equal("unreachable", fault.GetProperty("code").GetString());

        // Roll aside a car tips at half its track over the height of its centre of gravity: the static stability factor. Roll takes some of it.
        Assert.InRange(limitG, 0.8 * 1505 / (2 * 505.0), 1505 / (2 * 505.0));
        var standing = await fixture.Client.AnswerOf(Turn, body.With("/lateralG", limitG - 1e-3));
        Assert.Contains("nearRollOver", standing.Codes());
        Assert.Contains("wheelLifted", standing.Codes());
    }

    [Fact]
    public async Task A_suspension_that_does_not_reach_the_travel_is_named()
    {
        var body = CorneringCalls.Plain(0.9).Without("/heldLateralG").With("/vehicle/rear/suspension", JsonNode.Parse(
            """{ "kind": "measured", "readings": [{ "travelMm": -5, "camberDeg": -1 }, { "travelMm": 0, "camberDeg": -1.2 }, { "travelMm": 5, "camberDeg": -1.4 }] }"""));
        var fault = (await fixture.Client.NotComputableOf(Turn, body.ToJsonString())).OnlyFault();

        Assert.Equal("/vehicle/rear/suspension", fault.GetProperty("pointer").GetString());
        await fixture.Client.AnswerOf(Turn, body.With("/lateralG", fault.Number("limits", "maximum") - 1e-3));
    }

    [Fact]
    public async Task A_rack_that_does_not_steer_so_far_names_the_front_suspension()
    {
        // Long steering arms in a turn too tight for them.
        var body = CorneringCalls.Example(0.05).Without("/heldLateralG").With("/cornerRadiusM", 4.6).With("/vehicle/wheelbaseMm", 4500)
            .With("/vehicle/front/suspension/points/tieRodInner/xMm", -400).With("/vehicle/front/suspension/points/tieRodOuter/xMm", -400);
        var fault = (await fixture.Client.NotComputableOf(Turn, body.ToJsonString())).OnlyFault();

        Assert.Equal("/vehicle/front/suspension", fault.GetProperty("pointer").GetString());
    }

    [Fact]
    public async Task Points_that_hold_no_wheel_are_named()
    {
        // A tie rod that lies in the lower arm's own plane through the strut's foot holds nothing against steering.
        var body = CorneringCalls.Example().With("/vehicle/front/suspension/points/tieRodOuter", Corners.Point(-138, 347, 230)).With("/vehicle/front/rideHeightChangeMm", 150);
        var fault = (await fixture.Client.NotComputableOf(Turn, body.ToJsonString())).OnlyFault();

        Assert.Equal("/vehicle/front/suspension/points", fault.GetProperty("pointer").GetString());
    }
}

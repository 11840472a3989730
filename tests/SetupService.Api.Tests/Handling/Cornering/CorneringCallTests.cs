using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>What must hold of any answer about a turn, over HTTP.</summary>
public sealed class CorneringCallTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const double G = 9.80665;

    public static TheoryData<string, double> Cars() => new()
    {
        { "example", 0.3 }, { "example", 0.9 }, { "example", 1.2 }, { "plain", 0.0 }, { "plain", 0.9 }, { "whole", 0.5 }, { "whole", 1.0 },
    };

    [Theory]
    [MemberData(nameof(Cars))]
    public async Task The_five_contributions_are_the_inclination(string car, double lateralG)
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, Car(car, lateralG));

        Assert.All(CorneringCalls.Wheels, name => Assert.Equal(answer.Wheel(name).Number("inclinationDeg"), answer.Wheel(name).SumOfContributions(), 1e-6));
    }

    // Points of no car, met by chance: the wheels lean so far that the front tyres give nothing sideways.
    [Fact]
    public async Task Tyres_that_give_nothing_are_told_as_used_beyond_all()
    {
        var body = CorneringCalls.Example(0.9).With("/cornerRadiusM", 55).With("/vehicle/rear/trackMm", 900);
        var points = body["vehicle"]!["front"]!["suspension"]!["points"]!;
        points["lowerArmRear"]!["yMm"] = 0;
        points["lowerArmRear"]!["zMm"] = 2002.7552591636777;
        points["lowerBallJoint"]!["xMm"] = 1e-9;
        points["tieRodInner"]!["xMm"] = 0;
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn + "?detail=full", body);

        Assert.Equal(1000, answer.GetProperty("axles").GetProperty("front").Number("gripUsedPct"));
        Assert.Contains("Here the front uses more than 1000 % of its grip", answer.GetProperty("balance").GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public async Task The_wheels_carry_the_car_and_each_axle_its_own_load(string car, double lateralG)
    {
        var body = Car(car, lateralG);
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, body);

        Assert.Equal(1, (Load("frontLeft") + Load("frontRight")) / (690 * G), 1e-6);
        Assert.Equal(1, (Load("rearLeft") + Load("rearRight")) / (640 * G), 1e-6);

        double Load(string wheel) => answer.Wheel(wheel).Number("loadN");
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public async Task The_three_parts_are_the_load_transfer_and_that_is_what_the_wheels_carry(string car, double lateralG)
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, Car(car, lateralG));
        foreach (var name in (string[])["front", "rear"])
        {
            var axle = answer.GetProperty("axles").GetProperty(name);
            var crossed = axle.Number("loadTransferN");
            Assert.Equal(crossed, axle.Number("elasticN") + axle.Number("geometricN") + axle.Number("unsprungN"), 2e-5);
            Assert.Equal(crossed, (answer.Wheel(name + "Right").Number("loadN") - answer.Wheel(name + "Left").Number("loadN")) / 2, 2e-5);
        }
    }

    // Axle by axle the side forces are the axle's mass times the acceleration: what yaw balance without moment asks.
    [Theory]
    [MemberData(nameof(Cars))]
    public async Task The_tyres_of_an_axle_give_what_its_mass_takes(string car, double lateralG)
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, Car(car, lateralG));

        Assert.Equal(690 * G * lateralG, answer.Wheel("frontLeft").Number("sideForceN") + answer.Wheel("frontRight").Number("sideForceN"), 1e-5);
        Assert.Equal(640 * G * lateralG, answer.Wheel("rearLeft").Number("sideForceN") + answer.Wheel("rearRight").Number("sideForceN"), 1e-5);
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public async Task A_right_turn_is_the_left_turn_seen_in_a_mirror(string car, double lateralG)
    {
        var body = Alike(Car(car, lateralG));
        var left = await fixture.Client.AnswerOf(CorneringCalls.Turn, body);
        var right = await fixture.Client.AnswerOf(CorneringCalls.Turn, body.With("/turn", "right"));

        Assert.Equal(left.Number("rollDeg"), right.Number("rollDeg"), 1e-6);
        Assert.Equal(left.Number("steerDeg"), -right.Number("steerDeg"), 1e-7);
        foreach (var axle in (string[])["front", "rear"])
        {
            foreach (var (ofLeft, ofRight) in (ReadOnlySpan<(string, string)>)[("Left", "Right"), ("Right", "Left")])
            {
                var (one, other) = (left.Wheel(axle + ofLeft), right.Wheel(axle + ofRight));
                Assert.Equal(one.Number("loadN"), other.Number("loadN"), 1e-5);
                Assert.Equal(one.Number("inclinationDeg"), other.Number("inclinationDeg"), 1e-7);
                Assert.Equal(one.Number("steerDeg"), -other.Number("steerDeg"), 1e-7);
                Assert.Equal(one.GetProperty("isOuter").GetBoolean(), other.GetProperty("isOuter").GetBoolean());
            }
        }
    }

    [Fact]
    public async Task In_a_left_turn_the_right_wheels_are_the_outer_ones_and_carry_more()
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Example());

        Assert.Equal([false, true, false, true], CorneringCalls.Wheels.Select(name => answer.Wheel(name).GetProperty("isOuter").GetBoolean()));
        Assert.True(answer.Wheel("frontRight").Number("loadN") > answer.Wheel("frontLeft").Number("loadN"));
        Assert.True(answer.Number("rollDeg") > 0 && answer.Number("steerDeg") > 0);
    }

    // v² = a r: physics, no model.
    [Fact]
    public async Task Speed_and_radius_follow_from_each_other()
    {
        var byRadius = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Example(0.9).Without("/heldLateralG"));
        var speedKmh = 3.6 * Math.Sqrt(0.9 * G * 60);
        Assert.Equal(speedKmh, byRadius.Number("speedKmh"), 1e-6);

        var bySpeed = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Example(0.9).Without("/heldLateralG").Without("/cornerRadiusM").With("/speedKmh", speedKmh));
        Assert.Equal(60, bySpeed.Number("cornerRadiusM"), 1e-6);
        Assert.Equal(byRadius.Number("rollDeg"), bySpeed.Number("rollDeg"), 1e-6);
    }

    [Fact]
    public async Task Straight_ahead_at_a_speed_there_is_no_radius_and_the_answer_says_why()
    {
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, Alike(CorneringCalls.Plain(0)).Without("/cornerRadiusM").With("/speedKmh", 80));

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("cornerRadiusM").ValueKind);
        Assert.Equal(0, answer.Number("rollDeg"), 1e-6);
        Assert.Equal(
            ["cornerRadiusM", "frontLoadTransferPct"],
            answer.GetProperty("unknown").EnumerateArray().Select(one => one.GetProperty("id").GetString()));
    }

    [Fact]
    public async Task The_steering_wheel_is_turned_by_the_ratio()
    {
        // What travel and side force turn at the road wheels the driver does not: the wheel's angle is the rack's times the ratio, near the mean steer's.
        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Example());
        var quicker = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Example().With("/vehicle/steeringRatio", 7.1));
        Assert.Equal(answer.Number("steeringWheelDeg") / 2, quicker.Number("steeringWheelDeg"), 1e-6);
        Assert.Equal(14.2 * answer.Number("steerDeg"), answer.Number("steeringWheelDeg"), 3.0);

        var without = await fixture.Client.AnswerOf(CorneringCalls.Turn, CorneringCalls.Example().Without("/vehicle/steeringRatio"));
        Assert.Equal(JsonValueKind.Null, without.GetProperty("steeringWheelDeg").ValueKind);
        Assert.Contains("steeringRatio", without.GetProperty("unknown")[0].GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false, "published one in your sizes")]
    [InlineData(true, "cornering stiffness is yours")]
    public async Task The_balance_says_whose_tyres_it_is_of(bool isGiven, string expected)
    {
        var body = CorneringCalls.Example();
        foreach (var axle in (string[])["front", "rear"])
        {
            if (isGiven) body.With($"/vehicle/{axle}/tyre/corneringStiffnessNPerDeg", 1050);
        }

        var answer = await fixture.Client.AnswerOf(CorneringCalls.Turn, body);

        Assert.Contains(expected, answer.GetProperty("balance").GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    private static JsonObject Car(string name, double lateralG) => name switch
    {
        "example" => CorneringCalls.Example(lateralG).Without("/heldLateralG"),
        "plain" => CorneringCalls.Plain(lateralG),
        _ => CorneringCalls.Whole(lateralG),
    };

    private static JsonObject Alike(JsonObject body)
    {
        foreach (var axle in (string[])["front", "rear"])
            body["vehicle"]![axle]!["alignment"]!.AsObject().Remove("right");
        return body;
    }
}

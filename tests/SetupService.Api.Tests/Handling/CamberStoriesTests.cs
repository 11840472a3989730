using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Handling.Cornering;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling;

/// <summary>
/// Whole cases: car, setting and use as somebody has them, and what must be said and what must not. What a careful practitioner would do first is common practice, no source.
/// </summary>
public sealed class CamberStoriesTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Path = "/v1/handling/camber-target";

    // A strut in front, −0.7°, driven on tracks to 0.95 g; the adjuster ends at −3.2°, short of flat.
    [Fact]
    public async Task The_demo_car_is_given_a_first_step_towards_flat_and_told_what_to_read()
    {
        var answer = await Answer(Demo());
        var (camber, step, text) = Recommended(answer);

        Assert.Equal((-2.2, -1.5), (camber, step));
        Says(text, "Set the front camber to −2.2°, 1.5° more negative than now.", "depth or temperature across the tread", "outer shoulder is more worn or hotter", "The adjuster ends at −3.2°", "toe");
        SaysNot(text, "leave", "−6", "best");
        Assert.True(answer.GetProperty("bestGripCamberDeg").Number("value") < answer.GetProperty("staticCamberDeg").Number("value"));
        Says(answer.GetProperty("summary").GetString()!, "judgement", "nobody has published");
        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), one => one.GetProperty("code").GetString() == "innerShoulder");
    }

    // The same car in milder bends and set to −2.6°: the tread is flat, and there it ends.
    [Fact]
    public async Task A_car_whose_tread_is_flat_is_left_alone()
    {
        var body = Demo();
        foreach (var corner in body["corners"]!.AsArray()) corner!["lateralG"] = 0.78 * corner["lateralG"]!.GetValue<double>();
        var flat = (await Answer(body)).GetProperty("staticCamberDeg").Number("value");
        Assert.InRange(flat, -3, -2.2);

        body["vehicle"]!["front"]!["alignment"]!["camberDeg"] = -2.6;
        var (camber, step, text) = Recommended(await Answer(body));

        Assert.Equal((-2.6, 0.0), (camber, step));
        Says(text, "Leave the front camber at −2.6°.", "within half a degree", "Its range includes what is set", "Change it only if");
        SaysNot(text, "Set the", "Have toe reset");
    }

    // Rear twist beam, nothing said of what can be set.
    [Fact]
    public async Task A_twist_beam_cannot_be_set_and_is_told_which_part_would_allow_it()
    {
        var body = TwistBeamRear();
        var answer = await Answer(body);
        var (camber, step, text) = Recommended(answer);

        Assert.Equal((-1.4, 0.0), (camber, step));
        Assert.False(answer.GetProperty("isReachable").GetBoolean());
        Assert.Equal(-1.4, answer.GetProperty("nearest").Number("staticCamberDeg"));
        Says(text, "Leave the rear camber at −1.4°: a twist beam has no camber to set.", "tapered shims between beam and stub axle", "local law");
        SaysNot(text, "Set the");
        Assert.Contains("cannot be set", answer.Assumed("/vehicle/rear/adjustable/camberDeg").Single().GetProperty("text").GetString(), StringComparison.Ordinal);

        // With such shims fitted and said, it is set as any other.
        body["vehicle"]!["rear"]!["adjustable"] = JsonNode.Parse("""{ "camberDeg": { "from": -2.4, "to": -1.4 } }""");
        var (_, shimmed, _) = Recommended(await Answer(body));
        Assert.True(shimmed < 0);
    }

    // null is said, not left out: it cannot be set, whatever the kind.
    [Fact]
    public async Task Null_says_not_at_all_and_left_out_says_nothing()
    {
        var none = Demo();
        none["vehicle"]!["front"]!["adjustable"] = JsonNode.Parse("""{ "camberDeg": null }""");
        var silent = Demo();
        silent["vehicle"]!["front"]!.AsObject().Remove("adjustable");
        var (ofNone, ofSilent) = (await Answer(none), await Answer(silent));

        Says(Recommended(ofNone).Text, "it cannot be set as the car is", "adjustable top mounts");
        Assert.Equal(0, Recommended(ofNone).Step);
        Assert.Empty(ofNone.Assumed("/vehicle/front/adjustable/camberDeg"));
        Assert.Equal(-1.5, Recommended(ofSilent).Step);
        Assert.Equal(JsonValueKind.Null, ofSilent.GetProperty("isReachable").ValueKind);
        Assert.Single(ofSilent.Assumed("/vehicle/front/adjustable/camberDeg"));
        Assert.All(ofNone.GetProperty("tradeOff").EnumerateArray(), row => Assert.False(row.GetProperty("isReachable").GetBoolean()));
    }

    // A tall van on the road: it leans, and its inner shoulders pay for camber. Never more than a step, and never beyond what the road allows.
    [Fact]
    public async Task A_tall_van_is_not_sent_to_a_race_cars_camber()
    {
        var body = Demo().With("/vehicle/body", "van").Without("/vehicle/centreOfGravityHeightMm").With("/vehicle/front/alignment/camberDeg", -0.2).Without("/corners").Without("/heldLateralG")
            .With("/lateralG", 0.6).With("/cornerRadiusM", 60).Without("/vehicle/front/adjustable");
        var answer = await Answer(body);
        var (camber, step, text) = Recommended(answer);

        Assert.InRange(step!.Value, -1.5, -0.5);
        Assert.InRange(camber!.Value, -1.8, -0.6);
        Says(text, "more negative");
        SaysNot(text, "race");
        Assert.InRange(answer.GetProperty("staticCamberDeg").Number("value"), -6, -1);
    }

    // Semi-slicks hold more, so the same car is driven harder; what grips best stays judgement.
    [Fact]
    public async Task Semi_slicks_change_what_is_held_and_not_that_the_best_lean_is_judgement()
    {
        var body = Demo().Without("/heldLateralG").With("/vehicle/front/tyre/category", "semiSlick").With("/vehicle/rear/tyre/category", "semiSlick");
        foreach (var corner in body["corners"]!.AsArray()) corner!["lateralG"] = 1.15 * corner["lateralG"]!.GetValue<double>();
        var answer = await Answer(body);
        var best = answer.GetProperty("bestGripCamberDeg");

        Assert.True(best.Number("upper") - best.Number("lower") >= 3);
        Assert.InRange(Recommended(answer).Step!.Value, -1.5, -0.5);
        Assert.True(Recommended(answer).Camber >= -3.5);
        Says(answer.GetProperty("summary").GetString()!, "judgement");
    }

    // A track driven one way round: both sides' bends count, each wheel by its own.
    [Fact]
    public async Task Right_and_left_bends_mixed_give_one_setting_and_what_each_side_would_want()
    {
        var body = Demo();
        var answer = await Answer(body);
        var (left, right) = (answer.Number("leftStaticCamberDeg"), answer.Number("rightStaticCamberDeg"));
        var flat = answer.GetProperty("staticCamberDeg").Number("value");

        Assert.InRange(flat, Math.Min(left, right), Math.Max(left, right));
        Assert.NotEqual(left, right);
        Assert.Single(answer.GetProperty("tradeOff").EnumerateArray(), row => row.Number("staticCamberDeg") == -0.7);
    }

    [Fact]
    public async Task An_adjuster_that_ends_short_is_used_and_then_another_way_is_named()
    {
        var body = Demo().With("/vehicle/front/adjustable", JsonNode.Parse("""{ "camberDeg": { "from": -1.6, "to": 0 } }"""));
        var first = Recommended(await Answer(body));
        var last = Recommended(await Answer(body.With("/vehicle/front/alignment/camberDeg", -1.6)));

        Assert.Equal(-1.6, first.Camber!.Value, 1e-9);
        Says(first.Text, "There the adjuster ends");
        Assert.Equal(0, last.Step);
        Says(last.Text, "Leave the front camber at −1.6°: the adjuster goes no further.", "less roll", "caster");
    }

    [Fact]
    public async Task A_camber_nobody_measured_is_measured_first()
    {
        var answer = await Answer(Demo().Without("/vehicle/front/alignment/camberDeg"));

        Assert.Null(Recommended(answer).Camber);
        Says(Recommended(answer).Text, "Measure the front camber first");
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), one => one.GetProperty("id").GetString() == "/recommended/camberDeg" && one.GetProperty("needs")[0].GetString() == "/vehicle/front/alignment/camberDeg");
    }

    // One story of braking: what the rows say the caution must not contradict, and both leave room for none.
    [Fact]
    public async Task Rows_and_caution_tell_one_story_of_braking()
    {
        var answer = await Answer(Demo());
        var rows = answer.GetProperty("tradeOff").EnumerateArray().Where(row => row.Number("staticCamberDeg") < -0.71).ToList();

        Assert.All(rows, row => Assert.True(row.GetProperty("brakingChangePct").Number("value") < 0 && row.GetProperty("brakingChangePct").Number("upper") == 0));
        Assert.Contains("may lengthen braking", answer.GetProperty("cautions").EnumerateArray().Single(one => one.GetProperty("code").GetString() == "muchCamber").GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("brakingPatchPct", answer.GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ends_of_a_range_the_wrong_way_round_are_refused_where_they_stand()
    {
        var body = Demo().With("/vehicle/front/adjustable", JsonNode.Parse("""{ "camberDeg": { "from": 0, "to": -3 }, "toeDeg": { "from": 0.2, "to": -0.2 } }"""))
            .With("/vehicle/rear/adjustable", JsonNode.Parse("""{ "casterDeg": { "from": 8, "to": 5 } }"""));

        Assert.Equal(
            ["/vehicle/front/adjustable/camberDeg/to inconsistent", "/vehicle/front/adjustable/toeDeg/to inconsistent", "/vehicle/rear/adjustable/casterDeg/to inconsistent"],
            (await fixture.Client.RefusalOf(Path, body.ToJsonString())).FaultsOf().Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task The_chart_shows_what_the_answer_says()
    {
        using var response = await fixture.Client.PostAsync(Path + "/chart", Demo().ToJsonString());
        var svg = await Calls.Text(response);

        Says(svg, "grip in these corners", "braking on the straight", "set now: −0.7° (gauge error −0.9° to −0.5°)", "outer tyre flat on the road: −3.7°", "recommended: −2.2°", "can be set: −3.2° to −0.2°", "judgement");
    }

    private static JsonObject Demo() => JsonNode.Parse(File.ReadAllText(ExampleCall.FileOf("camber-target.request.json")))!.AsObject();

    private static JsonObject TwistBeamRear() => Demo().With("/axle", "rear").With("/vehicle/rear/suspension", JsonNode.Parse("""
        { "kind": "twistBeam", "points": { "pivotLeft": { "xMm": 430, "yMm": 560, "zMm": 335 }, "beamShearCentre": { "xMm": 245, "yMm": 0, "zMm": 318 }, "wheelCentre": { "xMm": 0, "yMm": 735, "zMm": 306 } } }
        """));

    private static (double? Camber, double? Step, string Text) Recommended(JsonElement answer)
    {
        var one = answer.GetProperty("recommended");
        return (Number("camberDeg"), Number("stepDeg"), one.GetProperty("text").GetString()!);

        double? Number(string member) => one.GetProperty(member) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;
    }

    private static void Says(string text, params string[] parts) => Assert.All(parts, part => Assert.Contains(part, text, StringComparison.Ordinal));

    private static void SaysNot(string text, params string[] parts) => Assert.All(parts, part => Assert.DoesNotContain(part, text, StringComparison.OrdinalIgnoreCase));

    private Task<JsonElement> Answer(JsonObject body) => fixture.Client.AnswerOf(Path, body);
}

using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Geometry;

/// <summary>What the calls on a suspension refuse, the same in Production and in Development.</summary>
public abstract class RefusedSuspensionTests(HttpClient client)
{
    public static TheoryData<string> EveryPath() => GeometryCalls.All();

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task A_body_that_is_no_object_of_the_call_has_one_fault(string path)
    {
        foreach ((var body, var code) in new[] { ("", "required"), ("null", "required"), ("[]", "wrongType"), ("{", "syntax"), ("{}}", "syntax"), ("{\"vehicle\":NaN}", "syntax") })
        {
            var fault = (await client.RefusalOf(path, body)).OnlyFault();
            Assert.Equal(("", code), (fault.GetProperty("pointer").GetString(), fault.GetProperty("code").GetString()));
        }
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task An_empty_object_lacks_all_that_is_needed(string path)
    {
        var faults = (await client.RefusalOf(path, "{}")).FaultsOf();

        Assert.Equal(["/vehicle required", "/axle required", path == GeometryCalls.Sweep ? "/travelMm required" : "/adjustments required"], faults);
    }

    // What a call cannot do without is named where it should stand; the tyre and its load tell the loaded radius too.
    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task A_car_of_which_nothing_is_said_lacks_the_corner(string path)
    {
        var bare = GeometryRequests.Of(path).With("/vehicle", new JsonObject());
        Assert.Equal(
            ["/vehicle/front/suspension required", "/vehicle/front/alignment/camberDeg required", "/vehicle/front/alignment/toeDeg required", "/vehicle/front/loadedRadiusMm required"],
            (await client.RefusalOf(path, bare.ToJsonString())).FaultsOf());

        var estimated = GeometryRequests.Of(path).Without("/vehicle/front/loadedRadiusMm").With("/vehicle/frontAxleLoadKg", 690)
            .With("/vehicle/front/tyre", JsonNode.Parse("""{ "marking": "225/45R17 91W", "verticalRateNPerMm": 210 }"""));
        var answer = await client.AnswerOf(path, estimated);
        var radius = answer.GetProperty("assumptions").EnumerateArray().Single(one => one.GetProperty("input").GetString() == "/vehicle/front/loadedRadiusMm" && one.GetProperty("value").ValueKind == JsonValueKind.Number);

        // Half of 2 × 225 × 0.45 + 17 × 25.4 mm less half of 690 kg × 9.80665 m/s² over 210 N/mm: 317.15 − 16.111.
        GeometryCalls.Near(317.15 - (690 * 9.80665 / 2 / 210), radius.Number("value"), 0.26, "loaded radius");
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task A_contradiction_is_no_failure(string path)
    {
        var body = GeometryRequests.Of(path).With("/vehicle/front/suspension/points/tieRodOuter", Corners.Point(5, 720, 175)).ToJsonString();

        Assert.Equal(["/vehicle/front/suspension/points/tieRodOuter inconsistent"], (await client.RefusalOf(path, body)).FaultsOf());
    }

    [Theory]
    [InlineData(GeometryCalls.Sweep)]
    [InlineData(GeometryCalls.Adjustment)]
    public async Task What_cannot_be_computed_is_no_failure(string path)
    {
        // The rod points at the steering axis.
        var body = GeometryRequests.Of(path)
            .With("/vehicle/front/suspension/points/lowerBallJoint", Corners.Point(0, 700, 175)).With("/vehicle/front/suspension/points/strutTop", Corners.Point(0, 700, 840))
            .With("/vehicle/front/suspension/points/strutLower", Corners.Point(0, 700, 400))
            .With("/vehicle/front/suspension/points/tieRodInner", Corners.Point(0, 300, 225)).With("/vehicle/front/suspension/points/tieRodOuter", Corners.Point(0, 690, 225));

        await client.NotComputableOf(path, body.ToJsonString());
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Other_media_types_are_not_read_or_sent_and_bodies_end_somewhere(string path)
    {
        var body = GeometryRequests.Of(path).ToJsonString();
        using var text = await client.PostAsync(path, body, "text/plain");
        using var html = await client.PostAsync(path, body, accept: "text/html");
        using var refused = await client.PostAsync(path, body, accept: "application/json;q=0, text/html");
        using var overlong = await client.PostAsync(path, body + new string(' ', new CapSettings().BodyBytes));
        using var got = await client.GetAsync(new Uri(path, UriKind.Relative));

        await Problems.Read(text, ProblemTypes.UnsupportedMediaType);
        await Problems.Read(html, ProblemTypes.NotAcceptable);
        await Problems.Read(refused, ProblemTypes.NotAcceptable);
        await Problems.Read(overlong, ProblemTypes.TooLarge);
        await Problems.Read(got, ProblemTypes.MethodNotAllowed);
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Json_is_sent_to_all_who_take_it(string path)
    {
        foreach (var accept in new[] { null, "application/json", "*/*;q=0.1", "application/*", "text/html, application/json;q=0.5" })
        {
            using var response = await client.PostAsync(path, GeometryRequests.Of(path).ToJsonString(), accept: accept);
            await Calls.Text(response);
            Assert.Equal("application/json", response.Content.Headers.ContentType!.MediaType);
        }
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task A_query_the_call_does_not_know_is_a_fault(string path) =>
        Assert.Equal(["unit unknownParameter"], (await client.RefusalOf(path + "?unit=us", GeometryRequests.Of(path).ToJsonString())).FaultsOf());
}

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
        foreach ((var body, var code) in new[] { ("", "required"), ("null", "required"), ("[]", "wrongType"), ("{", "syntax"), ("{}}", "syntax"), ("{\"suspension\":NaN}", "syntax") })
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

        Assert.Equal(["/suspension required", "/alignment required", "/loadedRadiusMm required"], faults[..3]);
        Assert.Equal([path switch { GeometryCalls.Sweep => "/travelMm required", GeometryCalls.TopMount => "/moveMm required", _ => "/adjustments required" }], faults[3..]);
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task A_contradiction_is_no_failure(string path)
    {
        var body = GeometryRequests.Of(path).With("/suspension/points/tieRodOuter", Corners.Point(5, 720, 175)).ToJsonString();

        Assert.Equal(["/suspension/points/tieRodOuter inconsistent"], (await client.RefusalOf(path, body)).FaultsOf());
    }

    [Theory]
    [InlineData(GeometryCalls.Sweep)]
    [InlineData(GeometryCalls.TopMount)]
    [InlineData(GeometryCalls.Adjustment)]
    public async Task What_cannot_be_computed_is_no_failure(string path)
    {
        // The rod points at the steering axis.
        var body = GeometryRequests.Of(path)
            .With("/suspension/points/lowerBallJoint", Corners.Point(0, 700, 175)).With("/suspension/points/strutTop", Corners.Point(0, 700, 840))
            .With("/suspension/points/strutLower", Corners.Point(0, 700, 400))
            .With("/suspension/points/tieRodInner", Corners.Point(0, 300, 225)).With("/suspension/points/tieRodOuter", Corners.Point(0, 690, 225));

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
        using var overlong = await client.PostAsync(path, body + new string(' ', ServiceLimits.BodyBytes));
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

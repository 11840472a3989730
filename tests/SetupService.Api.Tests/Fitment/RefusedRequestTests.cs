using System.Net;
using SetupService.Api.Http;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Fitment;

/// <summary>What the fitment calls refuse, with every fault named: the same in Production and in Development, whatever is accepted.</summary>
public abstract class RefusedRequestTests(HttpClient client)
{
    private static readonly string[] Paths = [Calls.Comparison, Calls.Check, Calls.Window, Calls.Drawing];

    public static TheoryData<string> EveryPath() => [.. Paths];

    /// <summary>Path, place, the raw text put there, and the fault wanted.</summary>
    public static TheoryData<string, string, string, string> OneFault() => new()
    {
        { Calls.Check, "/candidate/tyre/marking", "\"225/45Q17\"", "/candidate/tyre/marking unreadable" },
        { Calls.Check, "/vehicle/rear/tyre/marking", "\"wide ones\"", "/vehicle/rear/tyre/marking unreadable" },
        { Calls.Check, "/candidate/tyre/marking", "\"\"", "/candidate/tyre/marking unreadable" },
        { Calls.Check, "/candidate/wheel/boltCircle", "\"five by one-oh-eight\"", "/candidate/wheel/boltCircle unreadable" },
        { Calls.Check, "/vehicle/front/wheel/boltCircle", "\"5x\"", "/vehicle/front/wheel/boltCircle unreadable" },
        { Calls.Check, "/vehicle/front/hub/boltCircle", "\"108\"", "/vehicle/front/hub/boltCircle unreadable" },
        { Calls.Check, "/vehicle/front/hub/fastenerThread", "\"14 by 1.5\"", "/vehicle/front/hub/fastenerThread unreadable" },
        { Calls.Window, "/tyre/marking", "\"225\"", "/tyre/marking unreadable" },
        { Calls.Comparison, "/current/tyre/marking", "\"225/45R\"", "/current/tyre/marking unreadable" },
        { Calls.Drawing, "/candidate/tyre/marking", "\"225/45Q17\"", "/candidate/tyre/marking unreadable" },
        { Calls.Check, "/axle", "\"Front\"", "/axle unknownWord" },
        { Calls.Check, "/axle", "0", "/axle wrongType" },
        { Calls.Check, "/axle", "null", "/axle required" },
        { Calls.Check, "/Axle", "\"front\"", "/Axle unknownMember" },
        { Calls.Check, "/candidate/wheel/rimwidthIn", "8", "/candidate/wheel/rimwidthIn unknownMember" },
        { Calls.Check, "/candidate/wheel/rimWidthIn", "\"1.5\"", "/candidate/wheel/rimWidthIn wrongType" },
        { Calls.Check, "/candidate/wheel/rimWidthIn", "1e999", "/candidate/wheel/rimWidthIn notFinite" },
        { Calls.Check, "/candidate/wheel/rimWidthIn", "null", "/candidate/wheel/rimWidthIn required" },
        { Calls.Check, "/candidate/wheel", "null", "/candidate/wheel required" },
        { Calls.Check, "/candidate", "[]", "/candidate wrongType" },
        { Calls.Check, "/vehicle", "null", "/vehicle required" },
        { Calls.Check, "/vehicle/front/minimumLoadIndex", "87.5", "/vehicle/front/minimumLoadIndex wrongType" },
        { Calls.Check, "/required", "[\"inboardClearance\",\"nothing\"]", "/required/1 unknownWord" },
        { Calls.Check, "/camberChange/at", "\"top\"", "/camberChange/at unknownWord" },
        { Calls.Window, "/rimWidthsIn", "[8,\"8\"]", "/rimWidthsIn/1 wrongType" },
        { Calls.Window, "/rimWidthsIn", "8", "/rimWidthsIn wrongType" },
        { Calls.Comparison, "/indicatedKmh", "true", "/indicatedKmh wrongType" },
        { Calls.Comparison, "/vehicle", "{}", "/vehicle unknownMember" },
    };

    [Theory]
    [MemberData(nameof(OneFault))]
    public async Task A_fault_is_named_at_its_place(string path, string place, string raw, string fault) =>
        Assert.Equal([fault], (await client.RefusalOf(path, Requests.Of(path).WithRaw(place, raw))).FaultsOf());

    [Fact]
    public async Task A_member_named_twice_is_a_fault()
    {
        var body = Requests.Check().ToJsonString().Replace("\"offsetMm\":40", "\"offsetMm\":40,\"offsetMm\":41", StringComparison.Ordinal);

        Assert.Equal(["/candidate/wheel/offsetMm duplicateMember"], (await client.RefusalOf(Calls.Check, body)).FaultsOf());
    }

    [Fact]
    public async Task Every_fault_comes_in_one_answer()
    {
        var body = Requests.Check()
            .With("/candidate/wheel/rimWidthIn", 21).With("/candidate/wheel/boltCircle", "round").With("/candidate/tyre/marking", "45Q17")
            .With("/vehicle/front/hub/fastenerThread", "thick").With("/vehicle/drivenAxle", "left").With("/surplus", 1).Without("/candidate/wheel/offsetMm").Without("/axle");

        var faults = (await client.RefusalOf(Calls.Check, body.ToJsonString())).FaultsOf();

        Assert.Equal(
            new[]
            {
                "/axle required", "/candidate/tyre/marking unreadable", "/candidate/wheel/boltCircle unreadable", "/candidate/wheel/offsetMm required",
                "/candidate/wheel/rimWidthIn outOfRange", "/surplus unknownMember", "/vehicle/drivenAxle unknownWord", "/vehicle/front/hub/fastenerThread unreadable",
            },
            faults.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task A_body_that_is_no_object_of_the_call_has_one_fault(string path)
    {
        foreach ((var body, var code) in new[] { ("", "required"), ("null", "required"), ("[]", "wrongType"), ("\"text\"", "wrongType"), ("{", "syntax"), ("{}}", "syntax"), ("{'axle':1}", "syntax") })
        {
            var fault = Assert.Single((await client.RefusalOf(path, body)).GetProperty("errors").EnumerateArray());
            Assert.Equal(("", code), (fault.GetProperty("pointer").GetString(), fault.GetProperty("code").GetString()));
        }
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Other_media_types_are_not_read_or_sent_and_bodies_end_somewhere(string path)
    {
        var body = Requests.Of(path).ToJsonString();
        using var text = await client.PostAsync(path, body, "text/plain");
        using var lines = await client.PostAsync(path, body, "application/x-ndjson");
        using var silent = await client.PostAsync(path, body, contentType: null);
        using var notAccepted = await client.PostAsync(path, body, accept: "text/html");
        using var overlong = await client.PostAsync(path, body + new string(' ', new CapSettings().BodyBytes));

        await Problems.Read(text, ProblemTypes.UnsupportedMediaType);
        await Problems.Read(lines, ProblemTypes.UnsupportedMediaType);
        await Problems.Read(silent, ProblemTypes.UnsupportedMediaType);
        await Problems.Read(notAccepted, ProblemTypes.NotAcceptable);
        await Problems.Read(overlong, ProblemTypes.TooLarge);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("application/json")]
    [InlineData("image/svg+xml, application/json")]
    [InlineData("*/*;q=0.1")]
    public async Task A_refusal_is_problem_json_whatever_is_accepted(string? accept)
    {
        foreach (var path in Paths)
        {
            using var response = await client.PostAsync(path, "{", accept: path == Calls.Drawing && accept == "application/json" ? "image/svg+xml" : accept);
            await Problems.Read(response, ProblemTypes.InvalidRequest);
        }
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Only_post_is_answered(string path)
    {
        // The drawing has a form for pages, by its address alone.
        var isPicture = path == Calls.Drawing;
        foreach (var method in new[] { HttpMethod.Get, HttpMethod.Put, HttpMethod.Delete }.Skip(isPicture ? 1 : 0))
        {
            using HttpRequestMessage request = new(method, new Uri(path, UriKind.Relative));
            using var response = await client.SendAsync(request);

            await Problems.Read(response, ProblemTypes.MethodNotAllowed);
            Assert.Equal(isPicture ? ["GET", "HEAD", "POST"] : ["POST"], response.Content.Headers.Allow);
        }
    }

    [Theory]
    [InlineData(Calls.Check, "?units=imperial", "units unknownWord")]
    [InlineData(Calls.Drawing, "?units=US", "units unknownWord")]
    [InlineData(Calls.Check, "?units=us&units=us", "units repeatedParameter")]
    [InlineData(Calls.Check, "?unit=us", "unit unknownParameter")]
    [InlineData(Calls.Window, "?detail=full", "detail unknownParameter")]
    [InlineData(Calls.Comparison, "?detail=full", "detail unknownParameter")]
    public async Task A_query_the_call_does_not_know_is_a_fault(string path, string query, string fault) =>
        Assert.Equal([fault], (await client.RefusalOf(path + query, Requests.Of(path).ToJsonString())).FaultsOf());

    [Fact]
    public async Task Faults_of_query_and_body_come_together()
    {
        var body = Requests.Check().With("/candidate/wheel/rimWidthIn", 21).ToJsonString();

        Assert.Equal(["units unknownWord", "/candidate/wheel/rimWidthIn outOfRange"], (await client.RefusalOf(Calls.Check + "?units=old", body)).FaultsOf());
    }

    [Fact]
    public async Task An_unreadable_marking_is_quoted_with_the_part_that_cannot_be_read()
    {
        var problem = await client.RefusalOf(Calls.Check, Requests.Check().With("/candidate/tyre/marking", "225/45Q17").ToJsonString());

        Assert.Contains("45Q17", problem.GetProperty("errors")[0].GetProperty("message").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Calls.Batch, "application/json", null, "", 415)]
    [InlineData(Calls.Batch, "multipart/form-data; boundary=edge", null, "", 415)]
    [InlineData(Calls.Batch, null, null, "", 415)]
    [InlineData(Calls.BatchCsv, "text/csv", null, "", 415)]
    [InlineData(Calls.BatchCsv, "application/x-ndjson", null, "", 415)]
    [InlineData(Calls.BatchCsv, "multipart/form-data", null, "", 415)]
    [InlineData(Calls.BatchCsv, "multipart/form-data; boundary=\"\"", null, "", 415)]
    [InlineData(Calls.BatchCsv, "multipart/mixed; boundary=edge", null, "", 415)]
    [InlineData(Calls.Batch, "application/x-ndjson", "application/json", "", 406)]
    [InlineData(Calls.Batch, "application/x-ndjson", "text/csv", "", 406)]
    [InlineData(Calls.BatchCsv, "multipart/form-data; boundary=edge", "application/x-ndjson", "", 406)]
    [InlineData(Calls.Batch, "application/x-ndjson", null, "?detail=Full", 400)]
    [InlineData(Calls.Batch, "application/x-ndjson", null, "?details=full", 400)]
    [InlineData(Calls.BatchCsv, "multipart/form-data; boundary=edge", null, "?detail=full", 400)]
    [InlineData(Calls.BatchCsv, "multipart/form-data; boundary=edge", null, "?units=us", 400)]
    public async Task A_batch_that_cannot_start_is_refused_as_a_whole(string path, string? contentType, string? accept, string query, int status)
    {
        using var response = await client.PostAsync(path + query, "{}", contentType, accept);

        await Problems.Read(response, ProblemTypes.ForStatus(status));
    }

    [Fact]
    public async Task A_batch_answers_no_other_method()
    {
        using var response = await client.GetAsync(new Uri(Calls.Batch, UriKind.Relative));

        await Problems.Read(response, ProblemTypes.MethodNotAllowed);
        Assert.Equal(["POST"], response.Content.Headers.Allow);
    }

    [Fact]
    public async Task A_good_request_is_answered_here_too()
    {
        using var response = await client.PostAsync(Calls.Check, Requests.Check().ToJsonString());

        Assert.True(response.StatusCode == HttpStatusCode.OK, await response.Content.ReadAsStringAsync());
    }
}

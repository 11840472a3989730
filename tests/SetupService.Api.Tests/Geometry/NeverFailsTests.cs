using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Geometry;

/// <summary>
/// Any request gets an answer that keeps its described schema, or a refusal that says why: never a failure of the service, never a
/// number that is none.
/// </summary>
public sealed class NeverFailsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const int Requests = 250;

    /// <summary>What is put in some place of a request now and then.</summary>
    private static readonly string[] Hostile =
        ["null", "true", "\"\"", "[]", "{}", "[[[[]]]]", "-0", "1e999", "-1e308", "5e-324", "5000.0000000000009", "\"many\"", "{\"xMm\":0}", "1,\"kind\":\"measured\""];

    public static TheoryData<string> EveryPath() => GeometryCalls.All();

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Any_corner_gets_an_answer_or_a_reason(string path)
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        int answered = 0, refused = 0;
        await RequestOf(path).SampleAsync(
            async body =>
            {
                var status = await CheckAsync(schemas, path, body.ToJsonString());
                Interlocked.Increment(ref status == 200 ? ref answered : ref refused);
            },
            iter: Requests);

        Assert.True(answered > Requests / 10 && refused > Requests / 20, $"The requests are one-sided: {answered} answered, {refused} refused.");
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason(string path)
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        await Gen.Select(RequestOf(path), Gen.Int[0, 10_000], Gen.OneOf(Hostile), Gen.Bool).SampleAsync(
            async (body, place, raw, removes) =>
            {
                var places = BodyPlaces.Of(body).ToArray();
                var chosen = places[place % places.Length];
                var text = removes && BodyPlaces.IsMember(chosen) ? body.Without(chosen).ToJsonString() : body.WithRaw(chosen, raw);
                await CheckAsync(schemas, path, text);
            },
            iter: Requests);
    }

    private static Gen<JsonObject> RequestOf(string path) => path switch
    {
        GeometryCalls.Sweep => AnyRequest.Sweep,
        GeometryCalls.TopMount => AnyRequest.TopMount,
        _ => AnyRequest.Adjustment,
    };

    private async Task<int> CheckAsync(DescribedSchemas schemas, string path, string body)
    {
        using var response = await fixture.Client.PostAsync(path, body);
        var text = await response.Content.ReadAsStringAsync();
        var status = (int)response.StatusCode;
        Assert.True(status is 200 or 400 or 422, $"{status} for {body}: {text}");
        Assert.Null(schemas.FaultOf("post", path, status, text));
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
        if (status != 200)
            Assert.NotEmpty((await Problems.Read(response, ProblemTypes.OfStatus(status))).GetProperty("errors").EnumerateArray());
        return status;
    }
}

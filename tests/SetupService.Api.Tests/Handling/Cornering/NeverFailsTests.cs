using CsCheck;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>
/// Any request on a turn gets an answer that keeps its described schema, or a refusal that says why: never a failure of the service,
/// never a number that is none.
/// </summary>
public sealed class NeverFailsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const int Requests = 300;

    /// <summary>What is put in some place of a request now and then.</summary>
    private static readonly string[] Hostile =
        ["null", "true", "\"\"", "[]", "{}", "[[[[]]]]", "-0", "1e999", "-1e308", "5e-324", "3.0000000000000004", "\"left\"", "{\"xMm\":0}", "1,\"kind\":\"measured\""];

    public static TheoryData<string> EveryPath() => CorneringCalls.Both();

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Any_car_gets_an_answer_or_a_reason(string path)
    {
        var schemas = await DescribedSchemas.ReadAsync(fixture.Client);
        int answered = 0, refused = 0;
        await AnyTurn.Of(path).SampleAsync(
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
        await Gen.Select(AnyTurn.Of(path), Gen.Int[0, 10_000], Gen.OneOf(Hostile), Gen.Bool).SampleAsync(
            async (body, place, raw, removes) =>
            {
                var places = BodyPlaces.Of(body).ToArray();
                var chosen = places[place % places.Length];
                var text = removes && BodyPlaces.IsMember(chosen) ? body.Without(chosen).ToJsonString() : body.WithRaw(chosen, raw);
                await CheckAsync(schemas, path, text);
            },
            iter: Requests);
    }

    private async Task<int> CheckAsync(DescribedSchemas schemas, string path, string body)
    {
        using var response = await fixture.Client.PostAsync(path, body);
        var text = await response.Content.ReadAsStringAsync();
        var status = (int)response.StatusCode;
        Assert.True(status is 200 or 400 or 422, $"{status} for {body}: {text}");
        Assert.Null(schemas.FaultOf("post", path, status, text));
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
        if (status == 200)
            CheckSums(Calls.Parse(text), body);
        else
            Assert.NotEmpty((await Problems.Read(response, ProblemTypes.OfStatus(status))).GetProperty("errors").EnumerateArray());
        return status;
    }

    /// <summary>Whatever the car, contributions make the inclination and the wheels carry it.</summary>
    private static void CheckSums(System.Text.Json.JsonElement answer, string body)
    {
        System.Text.Json.JsonElement[] rows = answer.TryGetProperty("rows", out var list) ? [.. list.EnumerateArray()] : [answer];
        foreach (var row in rows)
        {
            Assert.All(CorneringCalls.Wheels, name => Assert.Equal(row.Wheel(name).Number("inclinationDeg"), row.Wheel(name).SumOfContributions(), 1e-9));
            Assert.All(CorneringCalls.Wheels, name => Assert.True(row.Wheel(name).Number("loadN") >= 0, body));
        }

        var loads = rows.Select(row => CorneringCalls.Wheels.Sum(name => row.Wheel(name).Number("loadN"))).ToArray();
        Assert.All(loads, load => Assert.Equal(1, load / loads[0], 1e-8));
    }
}

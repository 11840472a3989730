using CsCheck;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Geometry;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>
/// Any request on a turn gets an answer that keeps its described schema, or a refusal that says why: never a failure of the service,
/// never a number that is none.
/// </summary>
public sealed class NeverFailsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const int Requests = 300;

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
                var status = await AnswerOrReason.CheckAsync(fixture.Client, schemas, path, body.ToJsonString(), CheckSums);
                Interlocked.Increment(ref status == 200 ? ref answered : ref refused);
            },
            iter: Requests);

        Assert.True(answered > Requests / 10 && refused > Requests / 20, $"The requests are one-sided: {answered} answered, {refused} refused.");
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason(string path) =>
        await AnswerOrReason.CheckHostileAsync(fixture.Client, path, AnyTurn.Of(path), Requests, CheckSums);

    /// <summary>Whatever the car, contributions make the inclination and the wheels carry it.</summary>
    private static void CheckSums(System.Text.Json.JsonElement answer, string body)
    {
        System.Text.Json.JsonElement[] rows = answer.TryGetProperty("rows", out var list) ? [.. list.EnumerateArray()] : [answer];
        foreach (var row in rows)
        {
            Assert.All(CorneringCalls.Wheels, name => Assert.Equal(row.Wheel(name).Number("inclinationDeg"), row.Wheel(name).SumOfContributions(), 1e-6));
            Assert.All(CorneringCalls.Wheels, name => Assert.True(row.Wheel(name).Number("loadN") >= 0, body));
        }

        var loads = rows.Select(row => CorneringCalls.Wheels.Sum(name => row.Wheel(name).Number("loadN"))).ToArray();
        Assert.All(loads, load => Assert.Equal(1, load / loads[0], 1e-6));
    }
}

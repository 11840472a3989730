using System.Text.Json.Nodes;
using CsCheck;
using SetupService.Api.Tests.Examples;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>
/// Any request gets an answer that keeps its described schema, or a refusal that says why: never a failure of the service, never a
/// number that is none.
/// </summary>
public sealed class NeverFailsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const int Requests = 250;

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
                var status = await AnswerOrReason.CheckAsync(fixture.Client, schemas, path, body.ToJsonString());
                Interlocked.Increment(ref status == 200 ? ref answered : ref refused);
            },
            iter: Requests);

        Assert.True(answered > Requests / 10 && refused > Requests / 20, $"The requests are one-sided: {answered} answered, {refused} refused.");
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Any_value_anywhere_gets_an_answer_or_a_reason(string path) =>
        await AnswerOrReason.CheckHostileAsync(fixture.Client, path, RequestOf(path), Requests);

    private static Gen<JsonObject> RequestOf(string path) => path switch
    {
        GeometryCalls.Sweep => AnyRequest.Sweep,
        _ => AnyRequest.Adjustment,
    };
}

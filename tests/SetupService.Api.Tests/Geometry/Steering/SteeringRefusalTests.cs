using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Geometry.Steering;

public sealed class SteeringRefusalTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private static readonly string[] Paths =
        [SteeringRequests.AxisPath, SteeringRequests.SweepPath, SteeringRequests.ReadingsPath, SteeringRequests.AlignmentPath];

    public static TheoryData<string> EveryPath() => [.. Paths];

    public static TheoryData<string, string> Needed() => new()
    {
        { SteeringRequests.AxisPath, "/lower" },
        { SteeringRequests.AxisPath, "/upper/zMm" },
        { SteeringRequests.AxisPath, "/wheelCentre" },
        { SteeringRequests.AxisPath, "/loadedRadiusMm" },
        { SteeringRequests.AxisPath, "/camberDeg" },
        { SteeringRequests.AxisPath, "/toeDeg" },
        { SteeringRequests.SweepPath, "/casterDeg" },
        { SteeringRequests.SweepPath, "/steeringAxisInclinationDeg" },
        { SteeringRequests.SweepPath, "/camberDeg" },
        { SteeringRequests.SweepPath, "/toeDeg" },
        { SteeringRequests.SweepPath, "/steerDeg" },
        { SteeringRequests.SweepPath, "/steerDeg/from" },
        { SteeringRequests.SweepPath, "/steerDeg/step" },
        { SteeringRequests.ReadingsPath, "/readings" },
        { SteeringRequests.ReadingsPath, "/readings/2/camberDeg" },
    };

    [Theory]
    [MemberData(nameof(Needed))]
    public async Task What_a_call_cannot_do_without_is_required_at_its_place(string path, string place)
    {
        foreach (var body in new[] { SteeringRequests.Of(path).Without(place), SteeringRequests.Of(path).With(place, null) })
            Assert.Equal([$"{place} required"], (await fixture.Client.RefusalOf(path, body.ToJsonString())).FaultsOf());
    }

    public static TheoryData<string, string, string, string> OneFault() => new()
    {
        { SteeringRequests.AxisPath, "/lower", "[8, 716, 178]", "/lower wrongType" },
        { SteeringRequests.AxisPath, "/lower/xMm", "\"8\"", "/lower/xMm wrongType" },
        { SteeringRequests.AxisPath, "/camberDeg", "1e999", "/camberDeg notFinite" },
        { SteeringRequests.AxisPath, "/side", "\"left\"", "/side unknownMember" },
        { SteeringRequests.SweepPath, "/steerDeg", "20", "/steerDeg wrongType" },
        { SteeringRequests.SweepPath, "/steerDeg/stepDeg", "1", "/steerDeg/stepDeg unknownMember" },
        { SteeringRequests.SweepPath, "/side", "\"Left\"", "/side unknownWord" },
        { SteeringRequests.SweepPath, "/side", "0", "/side wrongType" },
        { SteeringRequests.ReadingsPath, "/readings", "{}", "/readings wrongType" },
        { SteeringRequests.ReadingsPath, "/readings/1", "null", "/readings/1 required" },
        { SteeringRequests.ReadingsPath, "/readings/1/toeDeg", "0.1", "/readings/1/toeDeg unknownMember" },
        { SteeringRequests.ReadingsPath, "/gaugeErrorDeg", "true", "/gaugeErrorDeg wrongType" },
        { SteeringRequests.AlignmentPath, "/vehicle/front", "[]", "/vehicle/front wrongType" },
        { SteeringRequests.AlignmentPath, "/vehicle/front/alignment/toeDeg", "\"0.1\"", "/vehicle/front/alignment/toeDeg wrongType" },
        { SteeringRequests.AlignmentPath, "/vehicle/front/alignment/toeMm", "1", "/vehicle/front/alignment/toeMm unknownMember" },
        { SteeringRequests.AlignmentPath, "/vehicle/middle", "{}", "/vehicle/middle unknownMember" },
    };

    [Theory]
    [MemberData(nameof(OneFault))]
    public async Task A_fault_is_named_at_its_place(string path, string place, string raw, string fault) =>
        Assert.Equal([fault], (await fixture.Client.RefusalOf(path, SteeringRequests.Of(path).WithRaw(place, raw))).FaultsOf());

    [Fact]
    public async Task Every_fault_comes_in_one_answer()
    {
        var body = SteeringRequests.Sweep().With("/casterDeg", 30).With("/steerDeg/step", 0).With("/side", "both").With("/surplus", 1).Without("/toeDeg");

        Assert.Equal(
            ["/casterDeg outOfRange", "/side unknownWord", "/steerDeg/step inconsistent", "/surplus unknownMember", "/toeDeg required"],
            (await fixture.Client.RefusalOf(SteeringRequests.SweepPath, body.ToJsonString())).FaultsOf().Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Bodies_queries_media_types_and_methods_of_another_kind_are_refused(string path)
    {
        var body = SteeringRequests.Of(path).ToJsonString();
        using var text = await fixture.Client.PostAsync(path, body, "text/plain");
        using var notAccepted = await fixture.Client.PostAsync(path, body, accept: "text/html");
        using var got = await fixture.Client.GetAsync(new Uri(path, UriKind.Relative));

        await Problems.Read(text, ProblemTypes.UnsupportedMediaType);
        await Problems.Read(notAccepted, ProblemTypes.NotAcceptable);
        await Problems.Read(got, ProblemTypes.MethodNotAllowed);
        Assert.Equal([" required"], (await fixture.Client.RefusalOf(path, "null")).FaultsOf());
        Assert.Equal([" wrongType"], (await fixture.Client.RefusalOf(path, "[]")).FaultsOf());
        Assert.Equal([" syntax"], (await fixture.Client.RefusalOf(path, body[..^1])).FaultsOf());
        Assert.Equal(["unit unknownParameter"], (await fixture.Client.RefusalOf(path + "?unit=us", body)).FaultsOf());
    }
}

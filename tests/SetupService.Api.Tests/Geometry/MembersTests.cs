using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Every member of suspension, alignment and ranges, missing, null, of another type, unknown, doubled: one fault, at its place.</summary>
public sealed class MembersTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    /// <summary>A sweep of each kind with a rack where it has one, and the other two calls with all they can hold.</summary>
    public static TheoryData<string, string> Bodies()
    {
        TheoryData<string, string> bodies = [];
        foreach (var kind in Corners.Kinds)
            bodies.Add(GeometryCalls.Sweep, WithRack(kind).ToJsonString());
        bodies.Add(GeometryCalls.Adjustment, GeometryRequests.Move(5).ToJsonString());
        bodies.Add(GeometryCalls.Adjustment, GeometryRequests.AdjustedFor(
            GeometryRequests.Strut, -2, null, """{ "adjuster": "strutTopInboard", "rangeMm": { "from": -5, "to": 30 } }""").ToJsonString());
        bodies.Add(GeometryCalls.Adjustment, GeometryRequests.Adjusted(GeometryRequests.FiveLink, GeometryRequests.Lowered).ToJsonString());
        bodies.Add(GeometryCalls.Adjustment, GeometryRequests.AdjustedFor(
            GeometryRequests.Strut, -2, null, """{ "adjuster": "knuckleEccentric", "boltSpacingMm": 58, "pivot": { "xMm": 0, "yMm": 630, "zMm": 400 } }""").ToJsonString());
        return bodies;
    }

    // These may be left out; what a target needs is told at another place, which ChangeOrTargetTests holds.
    private static readonly string[] Free = ["front", "alignment", "springOn", "pivot", "rangeMm", "rackMm", "target", "target/camberDeg"];

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_missing_member_is_required_where_it_should_stand(string path, string body)
    {
        foreach (var place in Members(body).Where(IsNeeded))
            Assert.Equal([$"{place} required"], await FaultsOf(path, Requests.Object(body).Without(place).ToJsonString()));
    }

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_null_is_a_member_that_is_missing(string path, string body)
    {
        foreach (var place in Members(body).Where(IsNeeded))
            Assert.Equal([$"{place} required"], await FaultsOf(path, Requests.Object(body).With(place, null).ToJsonString()));
    }

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_value_of_another_type_is_the_only_fault(string path, string body)
    {
        foreach (var place in BodyPlaces.Of(Requests.Object(body)))
        {
            var isNumber = BodyPlaces.At(Requests.Object(body), place) is JsonValue value && value.GetValueKind() == System.Text.Json.JsonValueKind.Number;
            var isList = BodyPlaces.At(Requests.Object(body), place) is JsonArray;
            foreach (var wrong in new[] { "true", isNumber ? "\"5\"" : "5", isNumber || isList ? "{}" : "[[]]" })
            {
                Assert.Equal([$"{place} wrongType"], await FaultsOf(path, Requests.Object(body).WithRaw(place, wrong)));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_member_nobody_knows_is_named_where_it_stands(string path, string body)
    {
        var objects = BodyPlaces.Of(Requests.Object(body)).Where(place => BodyPlaces.At(Requests.Object(body), place) is JsonObject).Prepend("");
        foreach (var place in objects)
            Assert.Equal([$"{place}/surplus unknownMember"], await FaultsOf(path, Requests.Object(body).With(place + "/surplus", 1).ToJsonString()));
    }

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_member_given_twice_is_named(string path, string body)
    {
        foreach (var place in Members(body))
        {
            var value = BodyPlaces.At(Requests.Object(body), place).ToJsonString();
            var twice = Requests.Object(body).WithRaw(place, $"{value},\"{place[(place.LastIndexOf('/') + 1)..]}\":{value}");
            Assert.Equal([$"{place} duplicateMember"], await FaultsOf(path, twice));
        }
    }

    private static JsonObject WithRack(string kind)
    {
        var body = GeometryRequests.Sweep(kind);
        return kind is GeometryRequests.Arm or GeometryRequests.Beam ? body : body.With("/rackMm", GeometryRequests.Range(-10, 10, 10));
    }

    private static IEnumerable<string> Members(string body) => BodyPlaces.Of(Requests.Object(body)).Where(BodyPlaces.IsMember);

    private static bool IsNeeded(string place) => !Free.Any(name => place.EndsWith("/" + name, StringComparison.Ordinal));

    private async Task<string[]> FaultsOf(string path, string body) => (await fixture.Client.RefusalOf(path, body)).FaultsOf();
}

using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Spring and damper: both ends or none, on a part that the kind has, and a length between them.</summary>
public sealed class SpringPointTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    public static TheoryData<string, string> KindsAndNames()
    {
        TheoryData<string, string> all = [];
        foreach (var kind in Corners.Kinds)
        {
            all.Add(kind, "spring");
            all.Add(kind, "damper");
        }

        return all;
    }

    [Theory]
    [MemberData(nameof(KindsAndNames))]
    public async Task Half_a_line_is_refused_where_its_other_end_is_missing(string kind, string name)
    {
        foreach ((var given, var missing) in new[] { ("Chassis", "Moving"), ("Moving", "Chassis") })
        {
            var body = Bare(kind).With($"/vehicle/front/suspension/points/{name}{given}", Corners.Point(20, 500, 600));
            Assert.Equal([$"/vehicle/front/suspension/points/{name}{missing} required"], await FaultsOf(body));
        }

        Assert.Equal([$"/vehicle/front/suspension/points/{name}Chassis required"], await FaultsOf(Bare(kind).With($"/vehicle/front/suspension/points/{name}On", "upright")));
    }

    [Theory]
    [MemberData(nameof(KindsAndNames))]
    public async Task A_part_that_the_kind_has_not_carries_nothing(string kind, string name)
    {
        string[] has = kind switch
        {
            GeometryRequests.Strut => ["lowerArm", "upright"],
            GeometryRequests.Wishbone => ["lowerArm", "upperArm", "upright"],
            GeometryRequests.FiveLink => ["upright"],
            _ => ["upright", "beam"],
        };
        foreach (var part in new[] { "lowerArm", "upperArm", "upright", "beam" })
        {
            var body = Whole(kind, name).With($"/vehicle/front/suspension/points/{name}On", part);
            if (has.Contains(part))
            {
                await fixture.Client.AnswerOf(GeometryCalls.Sweep, body);
                continue;
            }

            var fault = (await fixture.Client.RefusalOf(GeometryCalls.Sweep, body.ToJsonString())).OnlyFault();
            Assert.Equal(($"/vehicle/front/suspension/points/{name}On", "inconsistent"), (fault.GetProperty("pointer").GetString(), fault.GetProperty("code").GetString()));
            Assert.All(has, word => Assert.Contains(word, fault.Message(), StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(KindsAndNames))]
    public async Task A_line_of_no_length_is_refused(string kind, string name)
    {
        var body = Whole(kind, name).With($"/vehicle/front/suspension/points/{name}Moving", Corners.Point(20, 500, 600.5));

        var fault = (await fixture.Client.RefusalOf(GeometryCalls.Sweep, body.ToJsonString())).OnlyFault();

        Assert.Equal($"/vehicle/front/suspension/points/{name}Moving", fault.GetProperty("pointer").GetString());
        Assert.Contains("0.5 mm", fault.Message(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(KindsAndNames))]
    public async Task Where_nobody_says_what_carries_it_an_assumption_does(string kind, string name)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, Whole(kind, name));

        Assert.Contains(answer.GetProperty("assumptions").EnumerateArray(), one => one.GetProperty("input").GetString() == $"/vehicle/front/suspension/points/{name}On");
        Assert.True(double.IsFinite(answer.GetProperty("rows")[0].Number(name + "MotionRatio")));
        Assert.True(answer.GetProperty("rows")[0].Number(name + "LengthMm") > 0);
    }

    private static JsonObject Bare(string kind)
    {
        var body = GeometryRequests.Sweep(kind);
        foreach (var member in new[] { "springChassis", "springMoving", "springOn" })
            body["vehicle"]!["front"]!["suspension"]!["points"]!.AsObject().Remove(member);
        return body;
    }

    private static JsonObject Whole(string kind, string name) => Bare(kind)
        .With($"/vehicle/front/suspension/points/{name}Chassis", Corners.Point(20, 500, 600)).With($"/vehicle/front/suspension/points/{name}Moving", Corners.Point(10, 610, 230));

    private async Task<string[]> FaultsOf(JsonObject body) =>
        (await fixture.Client.RefusalOf(GeometryCalls.Sweep, body.ToJsonString())).FaultsOf();
}

using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Points that contradict each other, each by the name of its point, whichever call they come to.</summary>
public sealed class CornerContradictionTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    /// <summary>Kind, point moved, where to, where the fault stands, and a figure of the case that its message quotes.</summary>
    public static TheoryData<string, string, double[], string, string> Contradictions() => new()
    {
        { GeometryRequests.Strut, "lowerArmRear", [15, 380, 190.5], "lowerArmRear", "0.5 mm" },
        { GeometryRequests.Strut, "lowerBallJoint", [15, 380, 190.6], "lowerBallJoint", "0.6 mm" },
        { GeometryRequests.Strut, "lowerBallJoint", [-147.5, 385, 192.9], "lowerBallJoint", "0.4 mm" },
        { GeometryRequests.Strut, "strutLower", [-35, 565, 839.5], "strutLower", "0.5 mm" },
        { GeometryRequests.Strut, "strutLower", [-5, 630, 852.5], "strutLower", "12.5 mm" },
        { GeometryRequests.Strut, "tieRodOuter", [-150, 330, 235.2], "tieRodOuter", "0.2 mm" },
        { GeometryRequests.Strut, "tieRodOuter", [5, 720.4, 175], "tieRodOuter", "0.4 mm" },
        { GeometryRequests.Strut, "wheelCentre", [0, 700, 305], "wheelCentre", "20.0 mm" },
        { GeometryRequests.Strut, "wheelCentre", [0, 720, 305], "wheelCentre", "0.0 mm" },
        { GeometryRequests.Wishbone, "upperArmRear", [90, 480, 455.7], "upperArmRear", "0.7 mm" },
        { GeometryRequests.Wishbone, "upperBallJoint", [90, 480, 455.3], "upperBallJoint", "0.3 mm" },
        { GeometryRequests.Wishbone, "upperBallJoint", [-20, 485, 447.5], "upperBallJoint", "mm" },
        { GeometryRequests.Wishbone, "upperBallJoint", [-18, 690, 171.5], "upperBallJoint", "8.5 mm" },
        { GeometryRequests.Wishbone, "tieRodOuter", [-4, 702.5, 330], "tieRodOuter", "0.0 mm" },
        { GeometryRequests.FiveLink, "links/2/upright", [285, 478, 222.8], "links/2/upright", "0.8 mm" },
        { GeometryRequests.FiveLink, "wheelCentre", [0, 690, 312], "wheelCentre", "4.0 mm" },
        { GeometryRequests.Arm, "pivotOuter", [310, 255, 315.9], "pivotOuter", "0.9 mm" },
        { GeometryRequests.Arm, "wheelCentre", [437.5, 757.5, 292.5], "wheelCentre", "0.0 mm" },
        { GeometryRequests.Arm, "wheelCentre", [0, -742, 308], "wheelCentre", "742.0 mm" },
        { GeometryRequests.Beam, "pivotLeft", [430, -12.5, 335], "pivotLeft", "12.5 mm" },
        { GeometryRequests.Beam, "beamShearCentre", [245, 33, 318], "beamShearCentre", "33.0 mm" },
        { GeometryRequests.Beam, "wheelCentre", [430, 735, 335.2], "wheelCentre", "0.2 mm" },
        { GeometryRequests.Beam, "wheelCentre", [430, 735, 600], "wheelCentre", "no travel" },
    };

    [Theory]
    [MemberData(nameof(Contradictions))]
    public async Task A_contradiction_is_refused_by_the_name_of_its_point(string kind, string point, double[] moved, string faulty, string figure)
    {
        var body = Moved(GeometryRequests.Sweep(kind), point, moved);

        var problem = await fixture.Client.RefusalOf(GeometryCalls.Sweep, body.ToJsonString());

        Assert.All(problem.FaultsOf(), fault => Assert.EndsWith(" inconsistent", fault, StringComparison.Ordinal));
        var fault = problem.GetProperty("errors").EnumerateArray().First(each => each.GetProperty("pointer").GetString() == "/vehicle/front/suspension/points/" + faulty);
        Assert.Contains(figure, fault.Message(), StringComparison.Ordinal);
        Assert.DoesNotContain('-', fault.Message().Replace("y = ", "", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Contradictions))]
    public async Task Every_call_refuses_it_alike(string kind, string point, double[] moved, string faulty, string figure)
    {
        Assert.NotEmpty(faulty + figure);
        var sweep = (await fixture.Client.RefusalOf(GeometryCalls.Sweep, Moved(GeometryRequests.Sweep(kind), point, moved).ToJsonString())).FaultsOf();
        var adjusted = (await fixture.Client.RefusalOf(GeometryCalls.Adjustment, Moved(GeometryRequests.Adjusted(kind, GeometryRequests.Lowered), point, moved).ToJsonString())).FaultsOf();

        Assert.Equal(sweep, adjusted);
    }

    [Fact]
    public async Task Two_links_between_the_same_points_are_one()
    {
        var body = GeometryRequests.Sweep(GeometryRequests.FiveLink);
        body.With("/vehicle/front/suspension/points/links/3", BodyPlaces.At(body, "/vehicle/front/suspension/points/links/1").DeepClone());

        Assert.Equal(["/vehicle/front/suspension/points/links/3 inconsistent"], (await fixture.Client.RefusalOf(GeometryCalls.Sweep, body.ToJsonString())).FaultsOf());
    }

    [Theory]
    [MemberData(nameof(Corners.AllKinds), MemberType = typeof(Corners))]
    public async Task The_corners_as_they_are_contradict_nothing(string kind)
    {
        await fixture.Client.AnswerOf(GeometryCalls.Sweep, GeometryRequests.Sweep(kind));
        await fixture.Client.AnswerOf(GeometryCalls.Adjustment, GeometryRequests.Adjusted(kind, GeometryRequests.Lowered));
    }

    private static JsonObject Moved(JsonObject body, string point, double[] to) => body.With("/vehicle/front/suspension/points/" + point, Corners.Point(to[0], to[1], to[2]));
}

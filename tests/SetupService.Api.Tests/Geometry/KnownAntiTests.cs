using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>
/// What the links carry of the load shifted by braking and driving. Expected: worked by virtual work from dxc_dz and dxw_dz of
/// Domain.Tests/TestData/kinematics_cases.json, brake share 65 %, wheelbase over height of gravity 5.2; the rounded figures
/// (strut 12.9 %, wishbone −0.7 %) are those of the derivation there.
/// </summary>
public sealed class KnownAntiTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const double Share = 0.65;
    private const double WheelbasePerHeight = 5.2;

    // The slopes are written to 1e-7 and count 520-fold.
    private const double Within = 1e-4;

    [Theory]
    [InlineData(GeometryRequests.Strut, 0.0381152, 12.9)]
    [InlineData(GeometryRequests.Wishbone, -0.0020321, -0.7)]
    public async Task A_front_axle_resists_diving(string kind, double contactSlope, double roundedPct)
    {
        var row = await RowOf(kind, "front", "rear");

        GeometryCalls.Near(100 * Share * contactSlope * WheelbasePerHeight, row.Number("antiDivePct"), Within, "antiDivePct");
        GeometryCalls.Near(roundedPct, row.Number("antiDivePct"), 0.05, "antiDivePct");
        Assert.Equal((JsonValueKind.Null, JsonValueKind.Null), (row.GetProperty("antiLiftPct").ValueKind, row.GetProperty("antiSquatPct").ValueKind));
    }

    [Theory]
    [InlineData(GeometryRequests.Strut, -0.0010218)]
    [InlineData(GeometryRequests.Wishbone, -0.0458107)]
    public async Task A_front_axle_that_drives_alone_resists_lifting(string kind, double centreSlope) =>
        GeometryCalls.Near(100 * centreSlope * WheelbasePerHeight, (await RowOf(kind, "front", "front")).Number("antiLiftPct"), Within, "antiLiftPct");

    [Theory]
    [InlineData(GeometryRequests.Strut, 0.0381152, -0.0010218)]
    [InlineData(GeometryRequests.Wishbone, -0.0020321, -0.0458107)]
    public async Task A_rear_axle_resists_lifting_and_squatting(string kind, double contactSlope, double centreSlope)
    {
        var row = await RowOf(kind, "rear", "rear");

        GeometryCalls.Near(100 * (1 - Share) * -contactSlope * WheelbasePerHeight, row.Number("antiLiftPct"), Within, "antiLiftPct");
        GeometryCalls.Near(100 * -centreSlope * WheelbasePerHeight, row.Number("antiSquatPct"), Within, "antiSquatPct");
        Assert.Equal(JsonValueKind.Null, row.GetProperty("antiDivePct").ValueKind);
    }

    [Theory]
    [InlineData("wheelbaseMm", "antiDivePct", "antiLiftPct")]
    [InlineData("centreOfGravityHeightMm", "antiDivePct", "antiLiftPct")]
    [InlineData("brakeShareFrontPct", "antiDivePct")]
    [InlineData("drivenAxle", "antiLiftPct")]
    public async Task What_an_input_is_missing_for_is_null_and_says_so(string missing, params string[] outputs)
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, Body(GeometryRequests.Strut, "front", "front").Without("/vehicle/" + missing));

        var unknown = answer.GetProperty("unknown").EnumerateArray().ToDictionary(gap => gap.GetProperty("id").GetString()!, gap => gap.GetProperty("reason").GetString()!);
        Assert.All(outputs, output =>
        {
            Assert.Equal(JsonValueKind.Null, answer.GetProperty("rows")[0].GetProperty(output).ValueKind);
            Assert.Contains(missing, unknown[output], StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task Where_both_axles_drive_nothing_is_said_of_driving()
    {
        var answer = await fixture.Client.AnswerOf(GeometryCalls.Sweep, Body(GeometryRequests.Strut, "rear", "both"));

        Assert.Equal(JsonValueKind.Null, answer.GetProperty("rows")[0].GetProperty("antiSquatPct").ValueKind);
        Assert.Contains(answer.GetProperty("unknown").EnumerateArray(), gap => gap.GetProperty("id").GetString() == "antiSquatPct");
    }

    private async Task<JsonElement> RowOf(string kind, string axle, string driven) =>
        (await fixture.Client.AnswerOf(GeometryCalls.Sweep, Body(kind, axle, driven))).GetProperty("rows")[0];

    private static JsonObject Body(string kind, string axle, string driven)
    {
        var body = GeometryRequests.Sweep(kind, 0, 0, 1)
            .With("/vehicle/drivenAxle", driven).With("/vehicle/wheelbaseMm", 2600).With("/vehicle/centreOfGravityHeightMm", 500).With("/vehicle/brakeShareFrontPct", 65);
        return axle == "rear" ? body.AtRear() : body;
    }
}

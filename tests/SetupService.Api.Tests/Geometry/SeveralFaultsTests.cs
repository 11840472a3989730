using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Every fault in one answer, and no fault made up from a value that was refused.</summary>
public sealed class SeveralFaultsTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    [Fact]
    public async Task A_sweep_names_all_its_faults()
    {
        var body = GeometryRequests.Sweep(GeometryRequests.Wishbone).With("/vehicle/front/suspension/points/wheelCentre", Corners.Point(0, 700, 310))
            .With("/travelMm/step", 0).With("/vehicle/front/alignment/toeDeg", 6).With("/vehicle/front/loadedRadiusMm", "big").With("/axel", "front").Without("/vehicle/front/alignment/camberDeg")
            .With("/rackMm", GeometryRequests.Range(0, 10, -1)).With("/motion", "sideways");

        Assert.Equal(
            [
                "/axel unknownMember", "/motion unknownWord", "/rackMm/step inconsistent", "/travelMm/step inconsistent", "/vehicle/front/alignment/camberDeg required",
                "/vehicle/front/alignment/toeDeg outOfRange", "/vehicle/front/loadedRadiusMm wrongType", "/vehicle/front/suspension/points/wheelCentre inconsistent",
            ],
            await FaultsOf(GeometryCalls.Sweep, body.ToJsonString()));
    }

    [Fact]
    public async Task An_adjustment_names_all_its_faults()
    {
        var body = GeometryRequests.Adjusted(
            GeometryRequests.Arm,
            """{ "adjuster": "strutTopInboard", "amountDeg": 1 }""", """{ "adjuster": "rideHeight", "amountMm": 200 }""", """{ "adjuster": "rideHeight", "amountMm": 2, "link": 1 }""")
            .With("/resetToe", true).With("/archGapMm", 3).With("/vehicle/front/suspension/points/pivotOuter", Corners.Point(310, 255, 315));

        Assert.Equal(
            [
                "/adjustments/0/adjuster inconsistent", "/adjustments/0/amountDeg inconsistent", "/adjustments/0/amountMm required", "/adjustments/1/amountMm outOfRange",
                "/adjustments/2 inconsistent", "/adjustments/2/link inconsistent", "/archGapMm inconsistent", "/resetToe inconsistent", "/vehicle/front/suspension/points/pivotOuter inconsistent",
            ],
            await FaultsOf(GeometryCalls.Adjustment, body.ToJsonString()));
    }

    /// <summary>Places refused, and what is put there: without them the rest would look like another fault too.</summary>
    public static TheoryData<string, string, string, string> Refused() => new()
    {
        { GeometryCalls.Sweep, "/travelMm/from", "-501", "outOfRange" },
        { GeometryCalls.Sweep, "/travelMm/to", "\"60\"", "wrongType" },
        { GeometryCalls.Sweep, "/vehicle/front/suspension/points/wheelCentre/yMm", "1e999", "notFinite" },
        { GeometryCalls.Sweep, "/vehicle/front/suspension/points/strutTop/zMm", "5001", "outOfRange" },
        { GeometryCalls.Sweep, "/vehicle/front/suspension/points/lowerBallJoint/yMm", "null", "required" },
        { GeometryCalls.Adjustment, "/target/camberDeg", "-16", "outOfRange" },
        { GeometryCalls.Adjustment, "/adjusters/0/rangeMm/to", "101", "outOfRange" },
        { GeometryCalls.Adjustment, "/target/camberDeg", "true", "wrongType" },
        { GeometryCalls.Adjustment, "/target", "[]", "wrongType" },
        { GeometryCalls.Adjustment, "/adjusters", "{}", "wrongType" },
        { GeometryCalls.Adjustment, "/adjusters/0/adjuster", "\"hubShimCambr\"", "unknownWord" },
        { GeometryCalls.Adjustment, "/adjusters/0/boltSpacingMm", "9", "outOfRange" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task A_value_refused_leads_to_no_second_fault(string path, string place, string raw, string code)
    {
        var body = path switch
        {
            GeometryCalls.Sweep => GeometryRequests.Sweep(fromMm: -60, toMm: -10, stepMm: 10),
            _ => GeometryRequests.AdjustedFor(GeometryRequests.Strut, -2, null, """{ "adjuster": "knuckleEccentric", "rangeMm": { "from": 1, "to": 12 }, "boltSpacingMm": 58, "pivot": { "xMm": 0, "yMm": 630, "zMm": 500 } }""").With("/archGapMm", 5),
        };

        Assert.Equal([$"{place} {code}"], await FaultsOf(path, body.WithRaw(place, raw)));
    }

    private async Task<string[]> FaultsOf(string path, string body) =>
        [.. (await fixture.Client.RefusalOf(path, body)).FaultsOf().Order(StringComparer.Ordinal)];
}

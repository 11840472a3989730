using System.Text.Json.Nodes;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Both ends of every range are in range, the next number beyond is not, and a number beyond double precision is none.</summary>
public sealed class NumberEdgeTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    private const string Eccentric = """{ "adjuster": "knuckleEccentric", "amountMm": 1, "boltSpacingMm": 58, "pivot": { "xMm": 0, "yMm": 630, "zMm": 400 } }""";

    /// <summary>Ends of the contract; where it is silent, those of the description.</summary>
    public static TheoryData<string, string, double, double, string> Ranges() => new()
    {
        { GeometryCalls.Sweep, "/vehicle/front/loadedRadiusMm", 100, 600, "mm" },
        { GeometryCalls.Sweep, "/vehicle/front/alignment/camberDeg", -15, 15, "deg" },
        { GeometryCalls.Sweep, "/vehicle/front/alignment/toeDeg", -5, 5, "deg" },
        { GeometryCalls.Sweep, "/vehicle/front/alignment/casterDeg", -5, 20, "deg" },
        { GeometryCalls.Sweep, "/vehicle/front/alignment/steeringAxisInclinationDeg", -10, 40, "deg" },
        { GeometryCalls.Sweep, "/travelMm/from", -500, 500, "mm" },
        { GeometryCalls.Sweep, "/travelMm/to", -500, 500, "mm" },
        { GeometryCalls.Sweep, "/travelMm/step", -500, 500, "mm" },
        { GeometryCalls.Sweep, "/rackMm/from", -200, 200, "mm" },
        { GeometryCalls.Sweep, "/rackMm/to", -200, 200, "mm" },
        { GeometryCalls.Sweep, "/rackMm/step", -200, 200, "mm" },
        { GeometryCalls.Sweep, "/vehicle/wheelbaseMm", 1500, 4500, "mm" },
        { GeometryCalls.Sweep, "/vehicle/centreOfGravityHeightMm", 100, 2000, "mm" },
        { GeometryCalls.Sweep, "/vehicle/brakeShareFrontPct", 0, 100, "%" },
        { GeometryCalls.Sweep, "/measuringDiameterMm", 200, 1000, "mm" },
        { GeometryCalls.Sweep, "/vehicle/front/trackMm", 900, 2200, "mm" },
        { GeometryCalls.Adjustment, "/target/camberDeg", -15, 15, "deg" },
        { GeometryCalls.Adjustment, "/target/toeDeg", -5, 5, "deg" },
        { GeometryCalls.Adjustment, "/vehicle/front/rideHeightChangeMm", -150, 150, "mm" },
        { GeometryCalls.Adjustment, "/target/casterDeg", -5, 20, "deg" },
        { GeometryCalls.Adjustment, "/adjustments/0/amountMm", -100, 100, "mm" },
        { GeometryCalls.Adjustment, "/adjustments/0/amountDeg", -5, 5, "deg" },
        { GeometryCalls.Adjustment, "/adjustments/0/boltSpacingMm", 10, 200, "mm" },
        { GeometryCalls.Adjustment, "/adjustments/0/pivot/zMm", -5000, 5000, "mm" },
        { GeometryCalls.Adjustment, "/adjusters/0/rangeMm/from", -100, 100, "mm" },
        { GeometryCalls.Adjustment, "/adjusters/0/rangeMm/to", -100, 100, "mm" },
        { GeometryCalls.Adjustment, "/adjusters/0/rangeDeg/from", -5, 5, "deg" },
        { GeometryCalls.Adjustment, "/adjusters/0/rangeDeg/to", -5, 5, "deg" },
        { GeometryCalls.Adjustment, "/archGapMm", 0, 200, "mm" },
    };

    [Theory]
    [MemberData(nameof(Ranges))]
    public async Task An_end_is_in_range_and_the_next_number_is_not(string path, string place, double minimum, double maximum, string unit)
    {
        Assert.Empty(await OutOfRange(path, place, minimum));
        Assert.Empty(await OutOfRange(path, place, maximum));
        foreach (var beyond in new[] { Math.BitDecrement(minimum), Math.BitIncrement(maximum) })
            Assert.Equal([(place, minimum, maximum, unit)], await OutOfRange(path, place, beyond));
    }

    [Theory]
    [MemberData(nameof(Corners.AllKinds), MemberType = typeof(Corners))]
    public async Task A_point_stands_within_five_metres(string kind)
    {
        var coordinates = BodyPlaces.Of(Corners.Of(kind)).Where(place => place.EndsWith("Mm", StringComparison.Ordinal) && place.StartsWith("/vehicle/front/suspension", StringComparison.Ordinal)).ToArray();
        Assert.True(coordinates.Length >= 9);
        foreach (var place in coordinates)
        {
            foreach (var end in new[] { -5000.0, 5000 })
            {
                Assert.Empty(await OutOfRange(GeometryCalls.Sweep, place, end, kind));
                Assert.Equal([(place, -5000, 5000, "mm")], await OutOfRange(GeometryCalls.Sweep, place, end < 0 ? Math.BitDecrement(end) : Math.BitIncrement(end), kind));
            }

            Assert.Equal([$"{place} notFinite"], (await fixture.Client.RefusalOf(GeometryCalls.Sweep, GeometryRequests.Sweep(kind).WithRaw(place, "-1e999"))).FaultsOf());
        }
    }

    [Theory]
    [MemberData(nameof(Ranges))]
    public async Task A_number_beyond_double_precision_is_no_number(string path, string place, double minimum, double maximum, string unit)
    {
        Assert.True(minimum < maximum && unit.Length > 0);
        var faults = (await fixture.Client.RefusalOf(path, Body(path, place).WithRaw(place, "1e999"))).FaultsOf();

        Assert.Contains($"{place} notFinite", faults);
    }

    /// <summary>What of an answer or refusal says that a number is out of range; other faults are other tests' business.</summary>
    private async Task<(string Place, double Minimum, double Maximum, string Unit)[]> OutOfRange(string path, string place, double value, string kind = GeometryRequests.Strut)
    {
        using var response = await fixture.Client.PostAsync(path, Body(path, place, kind).With(place, value).ToJsonString());
        if ((int)response.StatusCode is 200 or 422)
            return [];
        var problem = await Problems.Read(response, ProblemTypes.InvalidRequest);
        return
        [
            .. from fault in problem.GetProperty("errors").EnumerateArray()
               where fault.GetProperty("code").GetString() == "outOfRange"
               let limits = fault.GetProperty("limits")
               select (fault.GetProperty("pointer").GetString()!, limits.Number("minimum"), limits.Number("maximum"), limits.GetProperty("unit").GetString()!),
        ];
    }

    /// <summary>A request that has the place.</summary>
    private static JsonObject Body(string path, string place, string kind = GeometryRequests.Strut) => path switch
    {
        GeometryCalls.Sweep when place.StartsWith("/rackMm", StringComparison.Ordinal) => GeometryRequests.Sweep(kind).With("/rackMm", GeometryRequests.Range(0, 0, 1)),
        GeometryCalls.Sweep => GeometryRequests.Sweep(kind),
        _ when place.StartsWith("/adjustments", StringComparison.Ordinal) => GeometryRequests.Adjusted(kind, Eccentric),
        _ => GeometryRequests.AdjustedFor(kind, -2, null, """{ "adjuster": "strutTopInboard", "rangeMm": { "from": -5, "to": 30 }, "rangeDeg": { "from": -1, "to": 1 } }"""),
    };
}

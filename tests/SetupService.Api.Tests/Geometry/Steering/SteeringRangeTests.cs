using System.Globalization;
using System.Net;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Host;

namespace SetupService.Api.Tests.Geometry.Steering;

/// <summary>Each range of the contract on these calls: both ends are in it, the next number beyond is a 400 that gives the limits.</summary>
public sealed class SteeringRangeTests(ServiceFixture fixture) : IClassFixture<ServiceFixture>
{
    public static TheoryData<string, string, double, double, string> Ranges() => new()
    {
        { SteeringRequests.AxisPath, "/lower/xMm", -5000, 5000, "mm" },
        { SteeringRequests.AxisPath, "/upper/yMm", -5000, 5000, "mm" },
        { SteeringRequests.AxisPath, "/wheelCentre/zMm", -5000, 5000, "mm" },
        { SteeringRequests.AxisPath, "/loadedRadiusMm", 150, 600, "mm" },
        { SteeringRequests.AxisPath, "/camberDeg", -15, 15, "deg" },
        { SteeringRequests.AxisPath, "/toeDeg", -5, 5, "deg" },
        { SteeringRequests.SweepPath, "/casterDeg", -5, 20, "deg" },
        { SteeringRequests.SweepPath, "/steeringAxisInclinationDeg", -10, 40, "deg" },
        { SteeringRequests.SweepPath, "/camberDeg", -15, 15, "deg" },
        { SteeringRequests.SweepPath, "/toeDeg", -5, 5, "deg" },
        { SteeringRequests.SweepPath, "/steerDeg/from", -60, 60, "deg" },
        { SteeringRequests.SweepPath, "/steerDeg/to", -60, 60, "deg" },
        { SteeringRequests.SweepPath, "/steerDeg/step", -120, 120, "deg" },
        { SteeringRequests.SweepPath, "/loadedRadiusMm", 150, 600, "mm" },
        { SteeringRequests.SweepPath, "/spindleOffsetMm", -500, 500, "mm" },
        { SteeringRequests.SweepPath, "/wheelCentreTrailMm", -500, 500, "mm" },
        { SteeringRequests.ReadingsPath, "/readings/1/steerDeg", -60, 60, "deg" },
        { SteeringRequests.ReadingsPath, "/readings/1/camberDeg", -15, 15, "deg" },
        { SteeringRequests.ReadingsPath, "/gaugeErrorDeg", 0.001, 2, "deg" },
        { SteeringRequests.AlignmentPath, "/vehicle/front/alignment/camberDeg", -15, 15, "deg" },
        { SteeringRequests.AlignmentPath, "/vehicle/front/alignment/right/casterDeg", -5, 20, "deg" },
        { SteeringRequests.AlignmentPath, "/vehicle/rear/alignment/toeDeg", -5, 5, "deg" },
        { SteeringRequests.AlignmentPath, "/vehicle/rear/alignment/right/steeringAxisInclinationDeg", -10, 40, "deg" },
        { SteeringRequests.AlignmentPath, "/setbackMm", -200, 200, "mm" },
        { SteeringRequests.AlignmentPath, "/vehicle/front/trackMm", 900, 2200, "mm" },
        { SteeringRequests.AlignmentPath, "/measuringDiameterMm", 200, 1000, "mm" },
    };

    [Theory]
    [MemberData(nameof(Ranges))]
    public async Task Both_ends_are_in_it_and_the_next_number_is_not(string path, string place, double minimum, double maximum, string unit)
    {
        foreach (var end in new[] { minimum, maximum })
        {
            using var response = await fixture.Client.PostAsync(path, SteeringRequests.Of(path).With(place, end).ToJsonString());
            var text = await response.Content.ReadAsStringAsync();
            Assert.DoesNotContain("outOfRange", text, StringComparison.Ordinal);

            // A sweep's step has to lead somewhere, whatever its size, and readings have to make sense together.
            if (place.StartsWith("/steerDeg", StringComparison.Ordinal) || place.StartsWith("/readings", StringComparison.Ordinal)) continue;
            Assert.True(response.StatusCode == HttpStatusCode.OK, text);
        }

        foreach (var beyond in new[] { Math.BitDecrement(minimum), Math.BitIncrement(maximum) })
        {
            var problem = await fixture.Client.RefusalOf(path, SteeringRequests.Of(path).With(place, beyond).ToJsonString());
            Assert.Contains($"{place} outOfRange", problem.FaultsOf());
            var fault = problem.GetProperty("errors").EnumerateArray().First(one => one.GetProperty("pointer").GetString() == place);
            var limits = fault.GetProperty("limits");
            Assert.Equal((minimum, maximum), (limits.GetProperty("minimum").GetDouble(), limits.GetProperty("maximum").GetDouble()));
            Assert.Equal(unit, limits.GetProperty("unit").GetString());
            Assert.Contains(beyond.ToString("R", CultureInfo.InvariantCulture), fault.GetProperty("message").GetString(), StringComparison.Ordinal);
        }
    }
}

using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>
/// Wheels turned about a fixed axis by a rotation library, and axes fitted to readings by a general least-squares solver. See README.md
/// beside this file.
/// </summary>
public sealed class SteeringOracleTests
{
    private const double AngleDeg = 1e-6;

    // The second working's slopes come from differences of fourth order, good to 1e-10; a standard error is good to a share.
    private const double StandardErrorShare = 1e-6;

    [Fact]
    public void Camber_and_rotation_over_steer_agree()
    {
        var differences = new Disagreements();
        foreach (var (expected, number) in GeometryCases.All("steerSweeps").Select((one, index) => (one, index + 1)))
        {
            var sweep = SteerSweep.Create(new()
            {
                CasterDeg = expected.GetProperty("casterDeg").GetDouble(),
                SteeringAxisInclinationDeg = expected.GetProperty("steeringAxisInclinationDeg").GetDouble(),
                CamberDeg = expected.GetProperty("camberDeg").GetDouble(),
                ToeDeg = expected.GetProperty("toeDeg").GetDouble(),
            });
            for (var i = 0; i < expected.GetProperty("steerDeg").GetArrayLength(); i++)
            {
                var steerDeg = expected.GetProperty("steerDeg")[i].GetDouble();
                var row = sweep.At(steerDeg);
                differences.Number($"case {number}, camber at {steerDeg}", expected.GetProperty("camberOverSteerDeg")[i].GetDouble(), row?.CamberDeg, AngleDeg);
                differences.Number($"case {number}, rotation at {steerDeg}", expected.GetProperty("rotationDeg")[i].GetDouble(), row?.RotationDeg, AngleDeg);
            }
        }

        differences.AssertNone(atLeastCompared: 2 * 13 * 60);
    }

    [Fact]
    public void Axes_fitted_to_readings_agree()
    {
        var differences = new Disagreements();
        foreach (var (expected, number) in GeometryCases.All("casterReadings").Select((one, index) => (one, index + 1)))
        {
            SteerReading[] readings = [.. expected.GetProperty("readings").EnumerateArray().Select(reading =>
                new SteerReading(reading.GetProperty("steerDeg").GetDouble(), reading.GetProperty("camberDeg").GetDouble()))];
            var fit = CasterReadings.From(readings, OracleCar.Word<WheelSide>(expected, "side")!.Value, expected.GetProperty("gaugeErrorDeg").GetDouble()).Fit;
            Compare("casterDeg", fit?.CasterDeg, AngleDeg);
            Compare("steeringAxisInclinationDeg", fit?.SteeringAxisInclinationDeg, AngleDeg);
            Compare("straightAheadCamberDeg", fit?.CamberAheadDeg, AngleDeg);
            CompareShare("casterStandardErrorDeg", fit?.CasterStandardErrorDeg);
            CompareShare("steeringAxisInclinationStandardErrorDeg", fit?.InclinationStandardErrorDeg);
            CompareShare("straightAheadCamberStandardErrorDeg", fit?.CamberAheadStandardErrorDeg);
            Compare("residualStandardDeviationDeg", fit?.ResidualStandardDeviationDeg, AngleDeg);

            void Compare(string figure, double? actual, double tolerance) =>
                differences.Number($"case {number}, {figure}", GeometryCases.Number(expected, figure), actual, tolerance);

            void CompareShare(string figure, double? actual) =>
                Compare(figure, actual, StandardErrorShare * expected.GetProperty(figure).GetDouble());
        }

        differences.AssertNone(atLeastCompared: 7 * 30);
    }
}

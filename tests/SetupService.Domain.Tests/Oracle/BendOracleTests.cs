using System.Text.Json;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>Turns braked or driven through, against a second working of them with SciPy (Oracle/handling_bend.py): brakes, drive, differential and air drawn at random.</summary>
public sealed class BendOracleTests
{
    private static readonly Lazy<JsonElement> Cases = new(() =>
        JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "TestData", "bend_oracle.json"))).RootElement);

    [Fact]
    public void Turns_limits_and_forces_are_as_the_second_working_has_them()
    {
        var cars = Cases.Value.GetProperty("limits").EnumerateArray().ToList();
        Assert.InRange(cars.Count, 198, 1000);
        Assert.All(cars, one =>
        {
            var (solver, path, demand) = Turn(one);
            var expected = one.GetProperty("expected");
            Assert.Null(solver.Solve(demand));
            var at = solver.Attitude(demand);

            Near(expected, "rollDeg", at.RollDeg, 1e-6);
            foreach (var (name, axle) in (IEnumerable<(string, AxleAttitude)>)[("front", at.Front), ("rear", at.Rear)])
            {
                Near(expected.GetProperty("heaveMm"), name, axle.HeaveMm, 1e-6);
                Near(expected.GetProperty("gripUsed"), name, axle.GripUsed, 1e-6);
                Near(expected.GetProperty("longitudinalUsed"), name, axle.LongitudinalUsed, 1e-6);
            }

            foreach (var position in Enum.GetValues<WheelPosition>())
            {
                var wheel = expected.GetProperty("wheels").GetProperty(JsonNamingPolicy.CamelCase.ConvertName(position.ToString()));
                Near(wheel, "loadN", at.At(position).LoadN, 5e-5);
                Near(wheel, "sideForceN", at.At(position).SideForceN, 5e-5);
                Near(wheel, "longitudinalN", at.At(position).LongitudinalN, 5e-5);
                Near(wheel, "travelMm", at.At(position).TravelMm, 1e-6);
            }

            var limits = GripLimits.Solve(solver, path, demand.LateralG);
            Near(expected.GetProperty("limitG"), "front", limits.Front.LimitG ?? double.NaN, 1e-6);
            Near(expected.GetProperty("limitG"), "rear", limits.Rear.LimitG ?? double.NaN, 1e-6);
        });
    }

    [Fact]
    public void Turns_on_points_are_as_the_second_working_has_them() =>
        Assert.All(Cases.Value.GetProperty("withPoints").EnumerateArray().ToList(), one =>
        {
            var (solver, _, demand) = Turn(one);
            var expected = one.GetProperty("expected");
            Assert.Null(solver.Solve(demand));
            var at = solver.Attitude(demand);

            Near(expected, "rollDeg", at.RollDeg, 1e-6);
            foreach (var position in Enum.GetValues<WheelPosition>())
            {
                var wheel = expected.GetProperty("wheels").GetProperty(JsonNamingPolicy.CamelCase.ConvertName(position.ToString()));
                Near(wheel, "loadN", at.At(position).LoadN, 5e-5);
                Near(wheel, "travelMm", at.At(position).TravelMm, 1e-6);
                Near(wheel, "steerDeg", at.At(position).SteerDeg, 1e-6);
                Near(wheel, "inclinationDeg", at.At(position).InclinationAngleDeg, 1e-6);
            }

            foreach (var (name, axle) in (IEnumerable<(string, AxleAttitude)>)[("front", at.Front), ("rear", at.Rear)])
            {
                Near(expected.GetProperty("axles").GetProperty(name), "heaveMm", axle.HeaveMm, 1e-6);
                Near(expected.GetProperty("axles").GetProperty(name), "gripUsed", axle.GripUsed, 1e-6);
            }
        });

    private static (CorneringSolver Solver, TurnPath Path, CorneringDemand Demand) Turn(JsonElement one)
    {
        var vehicle = one.GetProperty("vehicle");
        var car = HandlingCases.Car(one) with
        {
            BrakeShareFrontPct = vehicle.GetProperty("brakeShareFrontPct").GetDouble(),
            DriveShareFrontPct = vehicle.GetProperty("drivenAxle").GetString() switch { "front" => 100, "rear" => 0, _ => vehicle.GetProperty("driveShareFrontPct").GetDouble() },
            Differential = vehicle.GetProperty("differential") is var differential && differential.GetProperty("kind").GetString() == "limitedSlip"
                ? Differential.LimitedSlip(differential.GetProperty("biasRatio").GetDouble())
                : differential.GetProperty("kind").GetString() == "locked" ? Differential.Locked : Differential.Open,
            Aero = vehicle.TryGetProperty("aero", out var air)
                ? new Aero(air.GetProperty("referenceSpeedKmh").GetDouble(), air.GetProperty("frontDownforceN").GetDouble(), air.GetProperty("rearDownforceN").GetDouble(), air.GetProperty("dragN").GetDouble())
                : null,
        };
        var path = TurnPath.AtRadius(HandlingCases.Turn(one), one.GetProperty("cornerRadiusM").GetDouble()).WithLongitudinal(one.GetProperty("longitudinalG").GetDouble());
        return (CorneringSolver.Create(car, path.Turn)!, path, path.At(one.GetProperty("lateralG").GetDouble()));
    }

    private static void Near(JsonElement expected, string member, double value, double tolerance)
    {
        var wanted = expected.GetProperty(member).GetDouble();
        Assert.True(Math.Abs(wanted - value) <= tolerance, $"{member}: {value:R}, wanted {wanted:R}, apart {Math.Abs(wanted - value):0.#e0}");
    }
}

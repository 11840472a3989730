using System.Text.Json;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>
/// Steady turns against a second working of them: thirteen equations solved at once by SciPy, with its own corner solver (Oracle/handling_equilibrium.py).
/// </summary>
public sealed class HandlingOracleTests
{
    public static TheoryData<string, string> Turns() => HandlingCases.Names("withoutPoints", "withPoints");

    public static TheoryData<string, string> Limits() => HandlingCases.Names("limits");

    [Theory]
    [MemberData(nameof(Turns))]
    public void A_turn_stands_as_the_second_working_has_it(string part, string name)
    {
        var one = HandlingCases.Named(part, name);
        var turn = HandlingCases.Turn(one);
        var demand = new CorneringDemand(one.GetProperty("lateralG").GetDouble(), one.GetProperty("cornerRadiusM").GetDouble(), turn);
        var expected = one.GetProperty("expected");
        var wheels = expected.GetProperty("wheels");
        var isOnSolid = wheels.EnumerateObject().Any(wheel => name.Contains("solid", StringComparison.Ordinal) || wheel.Value.GetProperty("stopForceN").GetDouble() < 0);

        // What is solid gives a little here and nothing there: a stop pressed flat, a damper at its end.
        var scale = isOnSolid ? 20_000 : 1.0;

        var stands = SteadyTurn.Solve(CorneringSolver.Create(HandlingCases.Car(one), turn)!, demand, out var failure);

        Assert.Null(failure);
        var attitude = stands!.Value.Attitude;
        Near(expected, "rollDeg", attitude.RollDeg, 2e-7 * scale);
        foreach (var position in Enum.GetValues<WheelPosition>()) Wheel(wheels.GetProperty(JsonNamingPolicy.CamelCase.ConvertName(position.ToString())), attitude.At(position), scale);
        Axle(expected.GetProperty("axles").GetProperty("front"), attitude.Front, scale);
        Axle(expected.GetProperty("axles").GetProperty("rear"), attitude.Rear, scale);
        Near(expected.GetProperty("balance"), "frontLoadTransferPct", attitude.FrontLoadTransferPct!.Value, 1e-6 * scale);
        // Differences over ±0.0005 g here, extrapolated there.
        if (stands.Value.UndersteerDegPerG is { } understeer) Near(expected.GetProperty("balance"), "understeerDegPerG", understeer, 0.003);
        else Assert.True(attitude.HasLiftedWheel || attitude.Front.GripUsed > 0.9 || attitude.Rear.GripUsed > 0.9);
    }

    [Theory]
    [MemberData(nameof(Limits))]
    public void The_car_rolls_over_where_the_second_working_has_it(string part, string name)
    {
        var one = HandlingCases.Named(part, name);
        var turn = HandlingCases.Turn(one);
        var solver = CorneringSolver.Create(HandlingCases.Car(one), turn)!;
        var radiusM = one.GetProperty("cornerRadiusM").GetDouble();
        Assert.Equal(CorneringFailure.RollsOver, solver.Solve(3, radiusM));

        Assert.Equal(one.GetProperty("limitG").GetDouble(), RollOver.LimitG(solver, radiusM, 3), 3e-4);
    }

    /// <summary>198 cars with tyres of many sizes and grips: what each axle can hold, what of it the turn asked for takes, and how the steer grows there.</summary>
    [Fact]
    public void Limits_and_grip_used_are_as_the_second_working_has_them()
    {
        var cars = HandlingCases.Of("grip").ToList();
        Assert.All(cars, one =>
        {
            var path = TurnPath.AtRadius(HandlingCases.Turn(one), one.GetProperty("cornerRadiusM").GetDouble());
            var demand = path.At(one.GetProperty("lateralG").GetDouble());
            var expected = one.GetProperty("expected");
            var solver = CorneringSolver.Create(HandlingCases.Car(one), path.Turn)!;

            var turn = SteadyTurn.Solve(solver, demand, out _)!.Value;
            var limits = GripLimits.Solve(solver, path, demand.LateralG);

            Near(expected.GetProperty("gripUsed"), "front", turn.Attitude.Front.GripUsed, 1e-6);
            Near(expected.GetProperty("gripUsed"), "rear", turn.Attitude.Rear.GripUsed, 1e-6);
            Near(expected.GetProperty("limitG"), "front", limits.Front.LimitG!.Value, 1e-6);
            Near(expected.GetProperty("limitG"), "rear", limits.Rear.LimitG!.Value, 1e-6);
            Assert.Equal(expected.GetProperty("isLifted").GetBoolean(), turn.Attitude.HasLiftedWheel);
            if (turn.UndersteerDegPerG is { } understeer) Near(expected, "understeerDegPerG", understeer, 0.003);
        });
    }

    private static void Wheel(JsonElement expected, in WheelAttitude wheel, double scale)
    {
        Near(expected, "loadN", wheel.LoadN, 2e-5 * scale);
        Near(expected, "travelMm", wheel.TravelMm, 1e-6 * scale);
        Near(expected, "sideForceN", wheel.SideForceN, 2e-5 * scale);
        Near(expected, "slipDeg", wheel.SlipDeg, 1e-6 * scale);
        Near(expected, "steerDeg", wheel.SteerDeg, 1e-6 * scale);
        Near(expected, "inclinationDeg", wheel.InclinationAngleDeg, 1e-6 * scale);
        var parts = expected.GetProperty("contributions");
        Near(parts, "static", wheel.Camber.StaticDeg, 1e-12);
        Near(parts, "kinematic", wheel.Camber.KinematicDeg, 1e-6 * scale);
        Near(parts, "roll", wheel.Camber.RollDeg, 1e-6 * scale);
        Near(parts, "steer", wheel.Camber.SteerDeg, 1e-6 * scale);
        Near(parts, "compliance", wheel.Camber.ComplianceDeg, 1e-6 * scale);
    }

    private static void Axle(JsonElement expected, in AxleAttitude axle, double scale)
    {
        Near(expected, "gripUsed", axle.GripUsed, 1e-7 * scale);
        Near(expected, "loadTransferN", axle.LoadTransferN, 2e-5 * scale);
        Near(expected, "geometricN", axle.GeometricN, 2e-5 * scale);
        Near(expected, "elasticN", axle.ElasticN, 2e-5 * scale);
        Near(expected, "unsprungN", axle.UnsprungN, 1e-9);
        Near(expected, "heaveMm", axle.HeaveMm, 1e-6 * scale);
        Near(expected, "rollCentreHeightMm", axle.RollCentreHeightMm, 1e-6);
    }

    private static void Near(JsonElement expected, string member, double value, double tolerance)
    {
        var wanted = expected.GetProperty(member).GetDouble();
        Assert.True(Math.Abs(wanted - value) <= tolerance, $"{member}: {value:R}, wanted {wanted:R}, apart {Math.Abs(wanted - value):0.#e0}");
    }
}

using System.Text.Json;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>
/// Camber and caster asked for: the least movement within limits, or the nearest they allow, as a general optimiser and the conditions
/// of optimality have it. See README.md beside this file.
/// </summary>
public sealed class TargetOracleTests
{
    private const double AngleDeg = 1e-6;
    private const double MovementMm = 1e-5;

    public static TheoryData<string> Targets() => GeometryCases.Names("targets");

    [Theory]
    [MemberData(nameof(Targets))]
    public void The_least_movement_is_the_one_the_second_working_finds(string name)
    {
        var (expected, found) = Find(name);
        var differences = new Disagreements();
        var amounts = expected.GetProperty("amounts");
        for (var i = 0; i < found.Amounts.Length; i++)
        {
            differences.Number($"amount {i}", amounts[i].GetDouble(), found.Amounts[i], MovementMm);
        }

        differences.Number("camber", GeometryCases.Number(expected.GetProperty("reached"), "camberDeg"), ((AdjustedCorner)found.After).Wheel.CamberDeg, AngleDeg);
        differences.Number("caster", GeometryCases.Number(expected.GetProperty("reached"), "casterDeg"), found.After.CasterDeg, AngleDeg);
        differences.AssertNone(atLeastCompared: amounts.GetArrayLength() + 2);
        Assert.Equal(GeometryCases.Flag(expected, "met"), found.IsReached);
    }

    // What the second working finds touched is named, and nothing else; where the target is met nothing stands in its way.
    [Theory]
    [MemberData(nameof(Targets))]
    public void What_stands_in_the_way_is_what_the_second_working_finds_touched(string name)
    {
        var (expected, found) = Find(name);
        var rooms = OracleAdjuster.Rooms(expected);
        var touched = expected.GetProperty("atLimit").EnumerateArray().Select(one => one.GetString()!.ToUpperInvariant());
        var named = found.BindingLimits.Select(one => one.Obstacle == Obstacle.ArchGap
            ? "ARCHGAP"
            : rooms[one.AdjusterIndex!.Value].Adjustment.By.ToString().ToUpperInvariant());

        Assert.Equal(found.IsReached ? [] : touched, named);
    }

    private static (JsonElement Expected, MovementSearch Found) Find(string name)
    {
        var expected = GeometryCases.Named("targets", name);
        var targets = expected.GetProperty("targets");
        var found = LeastMovement.Find(
            AdjustedCorner.AsStated(OracleCorner.Setting(GeometryCases.RequestOf(expected)))!,
            OracleAdjuster.Rooms(expected),
            new AngleTarget(OracleCar.Number(targets, "camberDeg"), OracleCar.Number(targets, "casterDeg")),
            OracleCar.Number(expected, "archGapMm"),
            GeometryCases.Flag(expected, "resetToe"));
        return (expected, found!);
    }
}

using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Domain.Tests.Suspension.Search;

/// <summary>Moved top mounts, longer arms and tie rods, as the reference's independent solution has them.</summary>
public sealed partial class AdjustmentReferenceTests
{
    public static TheoryData<string, string> Changes()
    {
        var data = new TheoryData<string, string>();
        foreach (var id in new[] { "ST1", "DW1" })
        {
            foreach (var one in KinematicsCases.Adjustments(id)) data.Add(id, one.GetProperty("change").GetString()!);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Changes))]
    public void An_adjustment_changes_what_the_reference_says(string id, string change)
    {
        var expected = KinematicsCases.Adjustments(id).Single(one => one.GetProperty("change").GetString() == change).GetProperty("delta");
        var before = AdjustedCorner.AsStated(KinematicsCases.Setting(id))!;
        var after = before.With([Read(change)], resetToe: false)!;

        Check(expected, "camber", after.Figures.CamberDeg - before.Figures.CamberDeg);
        Check(expected, "toe_in", after.Figures.ToeDeg - before.Figures.ToeDeg);
        Check(expected, "caster", after.Figures.CasterDeg - before.Figures.CasterDeg);
        Check(expected, "sai", after.Figures.SteeringAxisInclinationDeg - before.Figures.SteeringAxisInclinationDeg);
        Check(expected, "wc_x", after.Wheel.Centre.X - before.Wheel.Centre.X);
        Check(expected, "wc_y", after.Wheel.Centre.Y - before.Wheel.Centre.Y);
        Check(expected, "wc_z", after.Wheel.Centre.Z - before.Wheel.Centre.Z);
    }

    [Theory]
    [InlineData(-2.0, 4.2)]
    [InlineData(-1.2, null)]
    [InlineData(null, 2.9)]
    public void The_least_movement_gives_the_angles_asked_for(double? camberDeg, double? casterDeg)
    {
        var start = AdjustedCorner.AsStated(KinematicsCases.Setting("ST1"))!;
        var found = LeastMovement.Find(
            start,
            [new(new(Adjuster.StrutTopInboard, 0), -20, 20), new(new(Adjuster.StrutTopRearward, 0), -20, 20)],
            new AngleTarget(camberDeg, casterDeg), archGapMm: null, resetToe: true)!;

        Assert.True(found.IsReached);
        if (camberDeg is { } camber) Assert.Equal(camber, ((AdjustedCorner)found.After).Wheel.CamberDeg, 1e-9);
        if (casterDeg is { } caster) Assert.Equal(caster, found.After.CasterDeg!.Value, 1e-9);
        Assert.Equal(0, ((AdjustedCorner)found.After).Wheel.ToeDeg, 1e-9);
    }

    private static void Check(JsonElement expected, string name, double? actual) =>
        Assert.Equal(expected.GetProperty(name).GetDouble(), actual!.Value, 2e-7);

    private static Adjustment Read(string change)
    {
        var amount = double.Parse(Amount().Match(change).Value, CultureInfo.InvariantCulture);
        return change switch
        {
            _ when change.StartsWith("strut top", StringComparison.Ordinal) && change.Contains("in y", StringComparison.Ordinal) => new(Adjuster.StrutTopInboard, -amount),
            _ when change.StartsWith("strut top", StringComparison.Ordinal) => new(Adjuster.StrutTopRearward, -amount),
            _ when change.StartsWith("lower arm", StringComparison.Ordinal) => new(Adjuster.LowerJointOutboard, amount),
            _ when change.StartsWith("upper arm", StringComparison.Ordinal) => new(Adjuster.UpperJointOutboard, amount),
            _ => new(Adjuster.TieRodLength, amount),
        };
    }

    [GeneratedRegex(@"[-+]\d+(\.\d+)?")]
    private static partial Regex Amount();
}

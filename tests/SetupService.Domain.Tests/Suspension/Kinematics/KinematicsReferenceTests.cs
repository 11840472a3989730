using System.Text.Json;
using SetupService.Domain.Suspension.Kinematics;

namespace SetupService.Domain.Tests.Suspension.Kinematics;

/// <summary>Every number of the reference corners' sweeps, to 2e-7 mm or degrees, the rounding they are written with.</summary>
public sealed class KinematicsReferenceTests
{
    // The reference took its slopes from differences of positions; what is made of them is as good as that.
    private const double FromDifferences = 1e-8;

    public static TheoryData<string> Corners() => [.. KinematicsCases.Ids];

    [Theory]
    [MemberData(nameof(Corners))]
    public void A_corner_moves_as_two_other_methods_say(string id)
    {
        var corner = MechanismBuilder.Build(KinematicsCases.Setting(id));
        var rows = 0;
        foreach (var row in KinematicsCases.Rows(id))
        {
            Assert.True(PoseContinuation.TryStart(corner, out var state));
            Assert.True(PoseContinuation.TryMove(corner, row.GetProperty("travel").GetDouble(), row.GetProperty("rack").GetDouble(), ref state));
            var wheel = WheelKinematics.Wheel(corner, state);
            var figures = WheelKinematics.Compute(corner, state);
            var contact = wheel.Contact(corner.Setting.LoadedRadiusMm);
            Check(row, "camber", figures.CamberDeg);
            Check(row, "toe_in", figures.ToeDeg);
            Check(row, "caster", figures.CasterDeg);
            Check(row, "sai", figures.SteeringAxisInclinationDeg);
            Check(row, "scrub", figures.ScrubRadiusMm);
            Check(row, "trail", figures.MechanicalTrailMm);
            Check(row, "wc_x", wheel.Centre.X);
            Check(row, "wc_y", wheel.Centre.Y);
            Check(row, "wc_z", wheel.Centre.Z);
            Check(row, "cp_x", contact.X);
            Check(row, "cp_y", contact.Y);
            Check(row, "cp_z", contact.Z);
            Check(row, "rc_height", figures.RollCentreHeightMm, absolute: FromDifferences * figures.HalfTrackMm);
            Check(row, "fvsa", figures.SwingArmMm, relative: 100 * FromDifferences);
            Check(row, "dxc_dz", figures.ContactForwardSlope);
            Check(row, "dxw_dz", figures.CentreForwardSlope);
            Check(row, "dcamber_dz", figures.CamberGainDegPerMm);
            Check(row, "dtoe_in_dz", figures.ToeGainDegPerMm);
            Check(row, "motion_ratio", figures.SpringMotionRatio);
            Check(row, "spring_length", figures.SpringLengthMm);
            Check(row, "strut_length", figures.SpringLengthMm);
            rows++;
        }

        Assert.True(rows > 5, $"{rows} rows");
    }

    // A degree of roll lifts the outer wheel against the body by half the track's share of it and takes it over by a degree, the
    // inner one the other way.
    [Theory]
    [InlineData("DW1")]
    [InlineData("ST1")]
    public void In_roll_both_wheels_stand_as_the_reference_says(string id)
    {
        var corner = MechanismBuilder.Build(KinematicsCases.Setting(id));
        var rows = 0;
        foreach (var row in KinematicsCases.RollRows(id))
        {
            var (rollDeg, travelMm) = (row.GetProperty("roll").GetDouble(), row.GetProperty("travel").GetDouble());
            var (outer, inner) = (At(corner, travelMm), At(corner, -travelMm));
            Check(row, "outer_camber_body", outer.CamberDeg);
            Check(row, "inner_camber_body", inner.CamberDeg);
            Check(row, "outer_camber_ground", outer.CamberDeg + rollDeg);
            Check(row, "inner_camber_ground", inner.CamberDeg - rollDeg);
            Check(row, "outer_toe_in", outer.ToeDeg);
            Check(row, "inner_toe_in", inner.ToeDeg);
            rows++;
        }

        Assert.True(rows > 3, $"{rows} rows");
    }

    private static WheelFigures At(CornerMechanism corner, double travelMm)
    {
        Assert.True(PoseContinuation.TryStart(corner, out var state));
        Assert.True(PoseContinuation.TryMove(corner, travelMm, 0, ref state));
        return WheelKinematics.Compute(corner, state);
    }

    private static void Check(JsonElement row, string name, double? actual, double relative = 0, double absolute = 0)
    {
        if (!row.TryGetProperty(name, out var expected) || expected.ValueKind != JsonValueKind.Number) return;
        var value = expected.GetDouble();
        Assert.True(actual is not null, $"{name} is not there");
        Assert.True(
            Math.Abs(actual.Value - value) <= 2e-7 + absolute + (relative * Math.Abs(value)),
            $"{name}: {actual.Value} instead of {value} in {row}");
    }
}

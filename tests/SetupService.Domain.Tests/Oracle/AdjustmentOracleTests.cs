using System.Text.Json;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Search;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>Every adjuster, alone and in pairs, with and without the toe reset: the figures before and after. See README.md beside this file.</summary>
public sealed class AdjustmentOracleTests
{
    private const double AngleDeg = 1e-6;
    private const double LengthMm = 1e-6;

    public static TheoryData<string> Adjustments() => GeometryCases.Names("adjustments");

    [Theory]
    [MemberData(nameof(Adjustments))]
    public void An_adjusted_corner_stands_as_the_second_working_says(string name)
    {
        var expected = GeometryCases.Named("adjustments", name);
        var resetToe = GeometryCases.Flag(expected, "resetToe");
        var before = AdjustedCorner.AsStated(OracleCorner.Setting(GeometryCases.RequestOf(expected)))!;
        var after = before.With(OracleAdjuster.Adjustments(expected), resetToe);
        Assert.NotNull(after);

        var differences = new Disagreements();
        Compare(differences, "before", expected.GetProperty("before"), before.Figures);
        Compare(differences, "after", expected.GetProperty("after"), after.Figures);
        differences.Number(
            "half-track change", GeometryCases.Number(expected, "halfTrackChangeMm"), after.Figures.HalfTrackMm - before.Figures.HalfTrackMm, LengthMm);
        differences.Number(
            "ride-height change",
            GeometryCases.Number(expected, "rideHeightChangeMm"),
            before.Figures.ContactHeightMm - after.Figures.ContactHeightMm,
            LengthMm);
        if (resetToe)
        {
            differences.Number("tie rod's change", GeometryCases.Number(expected, "tieRodChangeMm"), after.TieRodLengthMm - before.TieRodLengthMm, LengthMm);
        }

        differences.AssertNone(atLeastCompared: 14);
    }

    private static void Compare(Disagreements differences, string when, JsonElement expected, in WheelFigures figures)
    {
        Compare("camberDeg", figures.CamberDeg, AngleDeg);
        Compare("toeDeg", figures.ToeDeg, AngleDeg);
        Compare("casterDeg", figures.CasterDeg, AngleDeg);
        Compare("steeringAxisInclinationDeg", figures.SteeringAxisInclinationDeg, AngleDeg);
        Compare("scrubRadiusMm", figures.ScrubRadiusMm, LengthMm);
        Compare("mechanicalTrailMm", figures.MechanicalTrailMm, LengthMm);
        if (!figures.IsBeamInHeave) Compare("rollCentreHeightMm", figures.RollCentreHeightMm, LengthMm);

        void Compare(string figure, double? actual, double tolerance) =>
            differences.Number($"{figure} {when}", GeometryCases.Number(expected, figure), actual, tolerance);
    }
}

using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.PointErrors;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;
using SetupService.Domain.Tests.Oracle;

namespace SetupService.Domain.Tests.Suspension.PointErrors;

public sealed class PointErrorSweepTests
{
    private static readonly SweepFigure[] Compared =
    [
        SweepFigure.CamberDeg, SweepFigure.ToeDeg, SweepFigure.CasterDeg, SweepFigure.SteeringAxisInclinationDeg, SweepFigure.ScrubRadiusMm,
        SweepFigure.MechanicalTrailMm, SweepFigure.HalfTrackChangeMm, SweepFigure.RollCentreHeightMm, SweepFigure.CamberGainDegPerMm,
        SweepFigure.ToeGainDegPerMm, SweepFigure.SpringMotionRatio, SweepFigure.DamperMotionRatio,
    ];

    // Errors drawn by chance for every coordinate at once, 2,000 times, seed fixed: the standard deviation of what comes out is known to
    // 1.6 %, so a twelfth part is five of that and what is not straight.
    [Theory]
    [InlineData("ST1", 40, 0)]
    [InlineData("DW1", -35, 10)]
    [InlineData("fiveLink 2", 50, 0)]
    [InlineData("semiTrailingArm 2", 45, 0)]
    public void Derivatives_leave_open_what_drawn_errors_do(string name, double travelMm, double rackMm)
    {
        const int Trials = 2_000;
        const double ErrorMm = 0.5;
        var request = GeometryCases.Named("corners", name).GetProperty("request");
        var (setting, axle) = (OracleCorner.Setting(request), OracleCorner.Axle(request));
        var errors = PointErrorSweep.Start(setting, ErrorMm, SweepRange.Only(travelMm), SweepRange.Only(rackMm), axle)!;
        Assert.True(errors.TryNext(out var deviations));
        Assert.False(errors.TryNext(out _));

        var random = new Random(20261129);
        var (sums, squares, counts) = (new double[Compared.Length], new double[Compared.Length], new int[Compared.Length]);
        var first = new double?[Compared.Length];
        for (var trial = 0; trial < Trials; trial++)
        {
            var points = setting.Suspension;
            for (var i = 0; i < MovedPoints.List(points).Count; i++) points = MovedPoints.List(points)[i](ErrorMm * Chance.Normal(random));
            var sweep = TravelSweep.Start(MechanismBuilder.Build(setting with { Suspension = points }), SweepRange.Only(travelMm), SweepRange.Only(rackMm), axle)!;
            Assert.True(sweep.TryNext(out var row, out _));
            for (var i = 0; i < Compared.Length; i++)
            {
                if (SweepFigureValues.Read(Compared[i], row!.Value) is not { } value) continue;
                first[i] ??= value;
                sums[i] += value - first[i]!.Value;
                squares[i] += (value - first[i]!.Value) * (value - first[i]!.Value);
                counts[i]++;
            }
        }

        var compared = 0;
        for (var i = 0; i < Compared.Length; i++)
        {
            if (deviations![(int)Compared[i]] is not { } deviation || counts[i] < Trials) continue;
            var drawn = Math.Sqrt((squares[i] - (sums[i] * sums[i] / Trials)) / (Trials - 1));
            Assert.InRange(deviation, 0.92 * drawn - 1e-9, (1.08 * drawn) + 1e-9);
            compared++;
        }

        Assert.True(compared >= 6, $"{compared} figures");
    }

    // By hand: a trailing arm whose axis lies across the car keeps its camber whatever the wheel centre's error; a spring's length at the
    // stated position has the errors of both its ends along it.
    [Fact]
    public void A_springs_length_has_the_errors_of_both_its_ends()
    {
        var request = GeometryCases.Named("corners", "DW1").GetProperty("request");
        var setting = OracleCorner.Setting(request);
        setting = setting with { Suspension = setting.Suspension with { Spring = new SpringLine(new(0, 400, 700), new(0, 500, 250), SuspensionMember.LowerArm) } };
        var errors = PointErrorSweep.Start(setting, 2, SweepRange.Only(0), SweepRange.Only(0), OracleCorner.Axle(request))!;
        Assert.True(errors.TryNext(out var deviations));

        Assert.Equal(2 * Math.Sqrt(2), deviations![(int)SweepFigure.SpringLengthMm]!.Value, 0.01);
        Assert.Equal(0, deviations[(int)SweepFigure.CamberDeg]!.Value, 1e-9);
        Assert.Equal(0, deviations[(int)SweepFigure.ToeDeg]!.Value, 1e-9);
        Assert.True(deviations[(int)SweepFigure.CasterDeg] > 0.1);
    }

    [Fact]
    public void Twice_the_error_leaves_twice_as_much_open_and_none_nothing()
    {
        var request = GeometryCases.Named("corners", "ST1").GetProperty("request");
        var (once, twice, none) = (At(0.2), At(0.4), At(0));

        Assert.Equal(2, twice[(int)SweepFigure.CamberDeg]!.Value / once[(int)SweepFigure.CamberDeg]!.Value, 0.01);
        Assert.Equal(2, twice[(int)SweepFigure.RollCentreHeightMm]!.Value / once[(int)SweepFigure.RollCentreHeightMm]!.Value, 0.01);
        Assert.All(none, one => Assert.Equal(0, one ?? 0));

        IReadOnlyList<double?> At(double errorMm)
        {
            var sweep = PointErrorSweep.Start(OracleCorner.Setting(request), errorMm, SweepRange.Only(30), SweepRange.Only(0), OracleCorner.Axle(request))!;
            Assert.True(sweep.TryNext(out var deviations));
            return deviations!;
        }
    }
}

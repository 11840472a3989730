using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Search;
using SetupService.Domain.Tests.Oracle;

namespace SetupService.Domain.Tests.Suspension.Search;

public sealed class AdjustmentErrorsTests
{
    // Errors drawn for every coordinate at once, 2,000 times, seed fixed: the spread is known to 1.6 %.
    [Fact]
    public void Derivatives_leave_open_what_drawn_errors_do()
    {
        const double ErrorMm = 0.5;
        var setting = OracleCorner.Setting(GeometryCases.Named("corners", "ST1").GetProperty("request"));
        var setup = new WheelSetup { CamberDeg = setting.CamberDeg, ToeDeg = setting.ToeDeg, LoadedRadiusMm = setting.LoadedRadiusMm, RideHeightChangeMm = -20 };
        Adjustment[] made = [new(Adjuster.StrutTopInboard, 8)];
        var errors = AdjustmentErrors.After(SuspensionModel.From(setting.Suspension, ErrorMm), setup, made, resetToe: true)!.Value;
        var random = new Random(20261129);
        var (cambers, casters) = (new double[2_000], new double[2_000]);
        for (var trial = 0; trial < cambers.Length; trial++)
        {
            var points = setting.Suspension;
            for (var i = 0; i < MovedPoints.List(points).Count; i++) points = MovedPoints.List(points)[i](ErrorMm * Chance.Normal(random));
            var after = AdjustableCorner.AsStated(SuspensionModel.From(points), setup)!.With(made, resetToe: true)!;
            (cambers[trial], casters[trial]) = (after.CamberDeg, after.CasterDeg!.Value);
        }

        Assert.InRange(errors.CamberDeg, 0.92 * Spread(cambers), 1.08 * Spread(cambers));
        Assert.InRange(errors.CasterDeg!.Value, 0.92 * Spread(casters), 1.08 * Spread(casters));

        static double Spread(double[] values) => Math.Sqrt(values.Sum(value => Math.Pow(value - values.Average(), 2)) / (values.Length - 1));
    }

    [Fact]
    public void Exact_points_leave_nothing_open() =>
        Assert.Null(AdjustmentErrors.After(SuspensionModel.From(KinematicsCases.Setting("ST1").Suspension), new WheelSetup { CamberDeg = -1, ToeDeg = 0, LoadedRadiusMm = 300 }, [], resetToe: false));
}

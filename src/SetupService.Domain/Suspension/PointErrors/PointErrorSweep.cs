using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;
using SetupService.Domain.Suspension.Sweep;

namespace SetupService.Domain.Suspension.PointErrors;

/// <summary>
/// What errors of a suspension's points leave open in every figure of a sweep: independent errors of every coordinate, carried to the
/// figures by their derivatives. The derivatives are central differences of corners closed anew with one coordinate moved a standard
/// deviation either way; what is stated (camber, toe, loaded radius) stays as stated. To first order; the figures are near enough to
/// straight within a few millimetres (held against drawn errors by tests). Ask <see cref="TryNext"/> in step with a
/// <see cref="TravelSweep"/> over the same ranges.
/// </summary>
public sealed class PointErrorSweep
{
    // Differences closer than this drown in what the solver leaves open.
    private const double LeastStepMm = 1e-3;

    private readonly (TravelSweep More, TravelSweep Less)[] _moved;
    private readonly double _pointErrorMm;
    private readonly double _stepMm;

    private PointErrorSweep((TravelSweep More, TravelSweep Less)[] moved, double pointErrorMm, double stepMm) =>
        (_moved, _pointErrorMm, _stepMm) = (moved, pointErrorMm, stepMm);

    /// <summary>
    /// Makes a sweep; null where the corner, or one with a coordinate moved by <paramref name="pointErrorMm"/>, does not close at its stated
    /// position.
    /// </summary>
    /// <param name="setting">The corner as stated; its points must not contradict each other.</param>
    /// <param name="pointErrorMm">Standard deviation of each coordinate, mm, 0 or more.</param>
    /// <param name="travel">Wheel travels, mm.</param>
    /// <param name="rack">Rack travels, mm.</param>
    /// <param name="axle">What figures of the axle need.</param>
    /// <param name="budget">Work allowed; null = any.</param>
    /// <param name="rideHeightChangeMm">How much higher the body stands than at the stated position, mm; travel counts from there.</param>
    public static PointErrorSweep? Start(CornerSetting setting, double pointErrorMm, SweepRange travel, SweepRange rack, AxleInputs axle, WorkBudget? budget = null, double rideHeightChangeMm = 0)
    {
        ArgumentNullException.ThrowIfNull(setting);
        var stepMm = Math.Max(LeastStepMm, pointErrorMm);
        var coordinates = MovedPoints.List(setting.Suspension);
        var moved = new (TravelSweep More, TravelSweep Less)[coordinates.Count];
        for (var i = 0; i < moved.Length; i++)
        {
            if (Begin(coordinates[i](stepMm)) is not { } more || Begin(coordinates[i](-stepMm)) is not { } less) return null;
            moved[i] = (more, less);
        }

        return new(moved, pointErrorMm, stepMm);

        TravelSweep? Begin(Hardpoints points) => TravelSweep.Start(MechanismBuilder.Build(setting with { Suspension = points }), travel, rack, axle, budget, rideHeightChangeMm);
    }

    /// <summary>
    /// The next position's standard deviations, by <see cref="SweepFigure"/>; null where a corner with a coordinate moved does not reach it.
    /// A figure is null where one of those corners has none. False at the end.
    /// </summary>
    public bool TryNext(out IReadOnlyList<double?>? standardDeviations)
    {
        standardDeviations = null;
        var variances = new double?[SweepFigureValues.Count];
        Array.Fill(variances, 0.0);
        var isReached = true;
        foreach (var (more, less) in _moved)
        {
            if (!more.TryNext(out var moreRow, out _) || !less.TryNext(out var lessRow, out _)) return false;
            if (moreRow is not { } high || lessRow is not { } low) isReached = false;
            else Add(variances, high, low);
        }

        if (!isReached) return true;
        for (var i = 0; i < variances.Length; i++) variances[i] = variances[i] is { } variance ? Math.Sqrt(variance) : null;
        standardDeviations = variances;
        return true;
    }

    private void Add(double?[] variances, in SweepRow high, in SweepRow low)
    {
        for (var i = 0; i < variances.Length; i++)
        {
            var change = (SweepFigureValues.Read((SweepFigure)i, high) - SweepFigureValues.Read((SweepFigure)i, low)) * _pointErrorMm / (2 * _stepMm);
            variances[i] += change * change;
        }
    }
}

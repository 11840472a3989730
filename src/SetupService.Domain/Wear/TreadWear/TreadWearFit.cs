using SetupService.Domain.Numerics.LeastSquares;
using static SetupService.Domain.Wear.TreadWear.TreadWearParameters;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>
/// The wear model fitted to the treads of an axle: what was read, each by its error, and what is believed beforehand, each by its spread, as one least-squares problem.
/// </summary>
internal readonly ref struct TreadWearFit : IFittedModel
{
    private readonly AxleUse _axle;
    private readonly TreadDepthObservation[] _readings;
    private readonly double _roadKm;
    private readonly double _trackKm;

    public TreadWearFit(AxleUse axle, TreadDepthObservation[] readings, double roadKm, double trackKm) =>
        (_axle, _readings, _roadKm, _trackKm) = (axle, readings, roadKm, trackKm);

    /// <inheritdoc />
    public int UnknownCount => Count;

    /// <inheritdoc />
    public int ReadingCount => _readings.Length + Count;

    /// <inheritdoc />
    public bool TryEvaluate(int reading, scoped ReadOnlySpan<double> unknowns, scoped Span<double> gradient, out double residual)
    {
        gradient.Clear();
        if (reading >= _readings.Length)
        {
            var unknown = reading - _readings.Length;
            var before = Priors[unknown];
            residual = (before.Value - unknowns[unknown]) / before.StandardError;
            gradient[unknown] = 1 / before.StandardError;
            return double.IsFinite(residual);
        }

        var read = _readings[reading];
        var wheel = _axle.At(read.IsLeft);
        var predicted = TreadWearModel.WornMm(wheel, read.Y, _roadKm, _trackKm, unknowns, gradient);
        residual = (read.WornMm + (read.IsFreshStated ? 0 : unknowns[NewDepthExcess]) - predicted) / read.ErrorMm;
        for (var k = 0; k < Count; k++) gradient[k] /= read.ErrorMm;
        if (!read.IsFreshStated) gradient[NewDepthExcess] = -1 / read.ErrorMm;
        return double.IsFinite(residual);
    }
}

/// <summary>One depth the wear model learns from.</summary>
/// <param name="IsLeft">True when it is the left tyre's.</param>
/// <param name="Y">The strip, from −1 at the outer edge to 1 at the inner one.</param>
/// <param name="WornMm">Wear there, mm, by the stated or the usual new depth.</param>
/// <param name="ErrorMm">Its standard deviation, mm.</param>
/// <param name="IsFreshStated">True when the new depth is stated.</param>
internal readonly record struct TreadDepthObservation(bool IsLeft, double Y, double WornMm, double ErrorMm, bool IsFreshStated);

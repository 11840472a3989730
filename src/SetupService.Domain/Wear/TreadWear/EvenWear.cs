using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;
using static SetupService.Domain.Wear.TreadWear.TreadWearParameters;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>
/// What the shoulders of an axle say of its camber: by the strip-wear law, its coefficients over their ranges, how far another static camber would even them out at the same use.
/// Needs no cornering model. Formula: docs/methods/wear-diagnosis.
/// </summary>
public static class EvenWear
{
    // A difference of the shoulders read less closely than this, as a share of the mean wear, is not known to be none.
    private const double SureEnough = 0.2;

    private static readonly double ShoulderY = new TreadZone(TreadZone.UsualPct.Inner, 0).Inward;

    /// <summary>Wear of the outer shoulder less that of the inner one of a sound car, by the mean wear, with its spread: outer grooves wear more (see <see cref="OuterEdgeExcess"/>).</summary>
    public static Estimate Usual { get; } = new(2 * ShoulderY * Priors[OuterEdgeExcess].Value, 2 * ShoulderY * Priors[OuterEdgeExcess].StandardError);

    /// <summary>True where a tread is known to be even within what a sound car's use explains, at 90 %.</summary>
    /// <param name="difference">Wear of the outer shoulder less that of the inner one, by the mean wear.</param>
    public static bool IsEven(in Estimate difference) =>
        IsKnown(difference) && Math.Abs(difference.Value - Usual.Value) <= Uncertainty.StandardErrorsAtNinetyPct * Usual.StandardError;

    /// <summary>True where the inner shoulder is known to be worn more than a sound car's use explains.</summary>
    public static bool IsInnerWorn(in Estimate difference) =>
        IsKnown(difference) && difference.Value < Usual.Value - (Uncertainty.StandardErrorsAtNinetyPct * Usual.StandardError);

    /// <summary>True where enough is worn, and read closely enough, to tell.</summary>
    public static bool IsKnown(in Estimate difference) => difference.StandardError <= SureEnough;

    /// <summary>By how much a degree of static camber, positive = top outward, moves the difference of the shoulders.</summary>
    /// <param name="axle">Loads, tyres and bends of the axle.</param>
    /// <param name="trackShare">The track's share of the wear, from 0 to 1.</param>
    public static double DifferencePerDeg(AxleUse axle, double trackShare)
    {
        ArgumentNullException.ThrowIfNull(axle);
        var road = (TreadStrip.LeanPerDeg(axle.Left, axle.Left.LoadN) + TreadStrip.LeanPerDeg(axle.Right, axle.Right.LoadN)) / 2;
        var (track, work) = (0.0, 0.0);
        Sum(axle.Left);
        Sum(axle.Right);
        return 2 * ShoulderY * Math.Exp(Priors[PressureShift].Value) * (((1 - trackShare) * road) + (trackShare * (work > 0 ? track / work : road)));

        void Sum(WheelUse wheel)
        {
            foreach (var corner in wheel.Corners)
                (track, work) = (track + (corner.Work * corner.PerCamber * TreadStrip.LeanPerDeg(wheel, corner.LoadN)), work + corner.Work);
        }
    }

    /// <summary>By how many degrees the static camber would have to be more negative to even the shoulders out; negative = less negative.</summary>
    /// <param name="difference">Wear of the outer shoulder less that of the inner one, by the mean wear.</param>
    /// <param name="perDeg">What a degree does to it, above 0.</param>
    public static Estimate CamberShortDeg(in Estimate difference, double perDeg)
    {
        var value = (difference.Value - Usual.Value) / perDeg;
        var (read, usual, law) = (difference.StandardError / perDeg, Usual.StandardError / perDeg, value * Priors[PressureShift].StandardError);
        return new(value, Math.Sqrt((read * read) + (usual * usual) + (law * law)));
    }

    /// <summary>By what the life of the tread's fastest-worn place is multiplied by another static camber, the same use and wear in all else.</summary>
    /// <param name="shoulders">Wear of the outer shoulder less that of the inner one, by the mean wear.</param>
    /// <param name="crown">Wear of the centre less the mean of the shoulders', by the mean wear.</param>
    /// <param name="perDeg">What a degree does to the shoulders' difference.</param>
    /// <param name="changeDeg">Change of the static camber, degrees; negative = more negative.</param>
    public static double LifeRatio(double shoulders, double crown, double perDeg, double changeDeg)
    {
        return Most(shoulders) / Most(shoulders + (perDeg * changeDeg));

        // Mean wear 1: the centre two thirds of the crown above it, the shoulders one third below.
        double Most(double difference) => Math.Max(1 + (2 * crown / 3), 1 - (crown / 3) + (Math.Abs(difference) / 2));
    }
}

using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Tyres;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>
/// What a static camber does on the straight. The tread is taken as a bed of springs across its width that together have the tyre's
/// vertical rate: leaned, it is pressed in further at the inner shoulder. A tyre's belt bends towards the road and takes part of that
/// back, so the model is an upper bound. Method page: docs/methods/camber-target.
/// </summary>
public readonly record struct StraightRunning
{
    /// <summary>Free rolling slip of a tread that neither leans nor toes; from memory, 0.1 to 0.5 % plausible.</summary>
    public const double BackgroundSlip = 0.002;

    private const double LeastBackgroundSlip = 0.001;
    private const double LargestBackgroundSlip = 0.005;
    private const int Strips = 96;

    /// <summary>Share of the load on the third of the tread towards the car's centre, percent; 33.3 upright.</summary>
    public required double InnerShoulderLoadPct { get; init; }

    /// <summary>Share of the load on the outer third, percent.</summary>
    public required double OuterShoulderLoadPct { get; init; }

    /// <summary>Mean square of what the pressure differs from its mean across the tread, over that mean squared; 0 upright.</summary>
    public required double PressureSpread { get; init; }

    /// <summary>
    /// Wear of the inner third by the mean of the tread, wear taken as pressure times slip; its range is that of the background slip (which nine tyres in ten lie in, from memory) and of
    /// <see cref="CamberSlip.Share"/> together.
    /// </summary>
    public required Uncertainty InnerShoulderWearRatio { get; init; }

    /// <summary>Computes it.</summary>
    /// <param name="camberDeg">Camber at ride height, degrees.</param>
    /// <param name="toeDeg">Toe of the wheel, degrees.</param>
    /// <param name="loadN">Static load, N, above zero.</param>
    /// <param name="rateNPerMm">The tyre's vertical rate, N/mm, above zero.</param>
    /// <param name="treadWidthMm">Width of the tread on the road, mm, above zero.</param>
    /// <param name="radiusMm">Loaded radius, mm, above zero.</param>
    public static StraightRunning Compute(double camberDeg, double toeDeg, double loadN, double rateNPerMm, double treadWidthMm, double radiusMm)
    {
        var lean = -Math.Sin(double.DegreesToRadians(camberDeg));
        var middleMm = Middle(Math.Abs(lean), loadN / rateNPerMm, treadWidthMm);
        var toe = double.DegreesToRadians(toeDeg);
        var (inner, outer, all, squares) = (0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < Strips; i++)
        {
            var y = treadWidthMm * (((i + 0.5) / Strips) - 0.5);
            var pressed = Math.Max(0, middleMm + (lean * y));
            all += pressed;
            squares += pressed * pressed;
            if (i >= 2 * Strips / 3) inner += pressed;
            if (i < Strips / 3) outer += pressed;
        }

        return new StraightRunning
        {
            InnerShoulderLoadPct = 100 * inner / all,
            OuterShoulderLoadPct = 100 * outer / all,
            PressureSpread = (Strips * squares / (all * all)) - 1,
            InnerShoulderWearRatio = WearRatio(),
        };

        // What either is not known by adds by squares.
        Uncertainty WearRatio()
        {
            var value = Wear(BackgroundSlip, CamberSlip.Share);
            var (below, above) = (0.0, 0.0);
            Add(Wear(LeastBackgroundSlip, CamberSlip.Share), Wear(LargestBackgroundSlip, CamberSlip.Share));
            Add(Wear(BackgroundSlip, CamberSlip.LeastShare), Wear(BackgroundSlip, CamberSlip.LargestShare));
            return new(value, value - Math.Sqrt(below), value + Math.Sqrt(above), Uncertainty.NinetyPct);

            void Add(double one, double other)
            {
                var (less, more) = (Math.Min(0, Math.Min(one, other) - value), Math.Max(0, Math.Max(one, other) - value));
                (below, above) = (below + (less * less), above + (more * more));
            }
        }

        // Each strip slips sideways by the toe and along by rolling on its own radius.
        double Wear(double background, double rollingShare)
        {
            var (ofInner, ofAll) = (0.0, 0.0);
            for (var i = 0; i < Strips; i++)
            {
                var y = treadWidthMm * (((i + 0.5) / Strips) - 0.5);
                var along = CamberSlip.Along(y, camberDeg, radiusMm, rollingShare);
                var wear = Math.Max(0, middleMm + (lean * y)) * Math.Sqrt((background * background) + (toe * toe) + (along * along));
                ofAll += wear;
                if (i >= 2 * Strips / 3) ofInner += wear;
            }

            return ofInner / ofAll * 3;
        }
    }

    /// <summary>How far the middle of the tread is pressed in so that the springs carry the load; a shoulder may be off the road.</summary>
    private static double Middle(double lean, double uprightMm, double widthMm)
    {
        if (uprightMm >= lean * widthMm / 2) return uprightMm;
        var bearingMm = Math.Sqrt(2 * uprightMm * widthMm / lean);
        return (lean * bearingMm) - (lean * widthMm / 2);
    }
}

/// <summary>Width of a tyre's tread on the road, estimated from its design section width.</summary>
public static class TreadWidth
{
    /// <summary>The width, mm.</summary>
    public static TypicalValue Mm(Tyre tyre)
    {
        ArgumentNullException.ThrowIfNull(tyre);
        var section = tyre.Marking.Dimensions.DesignSectionWidthMm;
        return new(0.85 * section, 0.78 * section, 0.92 * section, "common practice, no source: the tread is some 0.85 of the section width");
    }
}

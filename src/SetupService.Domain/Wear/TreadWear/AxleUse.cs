using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>What wears the four tyres of a car.</summary>
/// <param name="Front">The front axle's.</param>
/// <param name="Rear">The rear axle's.</param>
public sealed record TrackUse(AxleUse Front, AxleUse Rear)
{
    /// <summary>That of one axle.</summary>
    public AxleUse At(CarAxle axle) => axle == CarAxle.Front ? Front : Rear;
}

/// <summary>What wears the two tyres of an axle.</summary>
/// <param name="Axle">Which axle.</param>
/// <param name="Left">Its left tyre.</param>
/// <param name="Right">Its right tyre.</param>
public sealed record AxleUse(CarAxle Axle, WheelUse Left, WheelUse Right)
{
    /// <summary>
    /// What a cornering model misses of a wheel's inclination on the track, standard deviation, degrees, alike in all bends of an axle: how hard and how tight they are, roll,
    /// compliance, the camber reading, and at which inclination the tread of a tyre that rolls under its side force lies flat. Judgement, no source: of cars whose treads were
    /// even it asked for 1.7° and 3.1° more.
    /// </summary>
    public const double UnseenInclinationDeg = 1.5;

    /// <summary>What it misses beyond that where nobody told how hard the bends are taken, degrees; judgement: 0.2 g at some 5° per g.</summary>
    public const double UntoldBendsDeg = 1;

    private const double TypicalLoadN = 3500;
    private const double TypicalTreadWidthMm = 185;
    private const double TypicalTyreRateNPerMm = 210;
    private const double TypicalRadiusMm = 305;

    /// <summary>True when the bends' lateral acceleration was told.</summary>
    public bool AreBendsTold { get; init; } = true;

    /// <summary>
    /// How many degrees more negative the static camber would have to be to keep the outer tread flat on average over its work, by the cornering model alone, before any wear is
    /// read; negative = less than that.
    /// </summary>
    public Estimate CamberShortDeg => ShortBy(new Estimate(0, AreBendsTold ? UnseenInclinationDeg : Math.Sqrt((UnseenInclinationDeg * UnseenInclinationDeg) + (UntoldBendsDeg * UntoldBendsDeg))));

    /// <summary>
    /// An axle of which only its treads are known: a wheel of 350 kg, whose load in the bends is 1.6 and 0.4 times that, the outer wheel doing 0.85 of the work; common practice,
    /// no source. Only how strongly camber moves the pressure across the tread is taken from it.
    /// </summary>
    public static AxleUse Typical(CarAxle at)
    {
        var wheel = new WheelUse
        {
            Corners = [new(0.85, 1.6 * TypicalLoadN, 0, 1, true), new(0.15, 0.4 * TypicalLoadN, 0, 1, false)],
            CamberDeg = 0,
            ToeDeg = 0,
            LoadN = TypicalLoadN,
            TyreRateNPerMm = TypicalTyreRateNPerMm,
            TreadWidthMm = TypicalTreadWidthMm,
            RadiusMm = TypicalRadiusMm,
        };
        return new(at, wheel, wheel);
    }

    /// <summary>That of one tyre.</summary>
    public WheelUse At(bool isLeft) => isLeft ? Left : Right;

    /// <summary>The same with another static camber, to first order; see <see cref="WheelUse.Leaned"/>.</summary>
    public AxleUse Leaned(double camberChangeDeg) => this with { Left = Left.Leaned(camberChangeDeg), Right = Right.Leaned(camberChangeDeg) };

    /// <summary>The same with what is known of the inclination the model misses, degrees.</summary>
    public Estimate ShortBy(in Estimate unseenDeg)
    {
        var (inclination, perCamber, work) = (0.0, 0.0, 0.0);
        Sum(Left);
        Sum(Right);
        var slope = perCamber / work;
        return new(((inclination / work) + unseenDeg.Value) / slope, unseenDeg.StandardError / Math.Abs(slope));

        void Sum(WheelUse wheel)
        {
            foreach (var corner in wheel.Corners)
            {
                if (!corner.IsOuter) continue;
                inclination += corner.Work * corner.InclinationAngleDeg;
                perCamber += corner.Work * corner.PerCamber;
                work += corner.Work;
            }
        }
    }
}

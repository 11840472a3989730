using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.TreadWear;

/// <summary>What wears the two tyres of an axle.</summary>
/// <param name="Axle">Which axle.</param>
/// <param name="Left">Its left tyre.</param>
/// <param name="Right">Its right tyre.</param>
public sealed record AxleUse(CarAxle Axle, WheelUse Left, WheelUse Right)
{
    /// <summary>
    /// What a cornering model misses of a wheel's inclination on the track, standard deviation, degrees: how hard and how tight the corners are, roll, compliance, the
    /// camber reading. Judgement, no source.
    /// </summary>
    public const double UnseenInclinationDeg = 0.7;

    /// <summary>
    /// How many degrees more negative the static camber would have to be to keep the outer tread flat on average over its work, before any wear is read; negative = less
    /// than that.
    /// </summary>
    public Estimate CamberShortDeg => ShortBy(new Estimate(0, UnseenInclinationDeg));

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

using SetupService.Domain.Answers;
using SetupService.Domain.Wear.Readings;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>
/// What a tread was like when the lap ended: it cools towards the air as exp(−t/τ). No published τ could be read, so it is judgement and its range is
/// wide. Ten millimetres of rubber hold about 20 kJ/(m² K) and lose 10 to 40 W/(m² K) to the air, which makes 500 to 2000 s; what infrared sees is the
/// skin, which goes faster.
/// </summary>
public static class TreadCooling
{
    /// <summary>Where the time constants come from.</summary>
    public const string Source = "judgement from the heat ten millimetres of rubber hold and lose; no published value found";

    // Nine in ten lie between a third and three times the value.
    private const double PlausibleFactor = 3;

    /// <summary>Time in which the difference to the air falls to 1/e, s.</summary>
    public static double TimeConstantS(Thermometer by) => by == Thermometer.Probe ? 600 : 240;

    /// <summary>The range nine time constants in ten plausibly lie in, s.</summary>
    public static (double LowerS, double UpperS) PlausibleTimeConstantS(Thermometer by) =>
        (TimeConstantS(by) / PlausibleFactor, TimeConstantS(by) * PlausibleFactor);

    /// <summary>
    /// A temperature at the end of the lap, °C, with its 90 % range from the thermometer and the time constant together; null where the reading came too late
    /// or the tread is not hotter than the air, so that it has not cooled towards it.
    /// </summary>
    /// <param name="readC">As read, °C.</param>
    /// <param name="standardErrorC">Error of the reading, °C.</param>
    /// <param name="airC">The air around it, °C.</param>
    /// <param name="secondsAfterLap">From the end of the lap to the reading, s, not negative.</param>
    /// <param name="by">What it was read with.</param>
    public static Uncertainty? AtLapEndC(double readC, double standardErrorC, double airC, double secondsAfterLap, Thermometer by)
    {
        if (secondsAfterLap > TreadReading.TooLateAfterS || readC < airC) return null;
        var (leastS, mostS) = PlausibleTimeConstantS(by);
        var value = Back(TimeConstantS(by));
        var readingC = Uncertainty.StandardErrorsAtNinetyPct * standardErrorC * Math.Exp(secondsAfterLap / TimeConstantS(by));
        return new Uncertainty(
            value,
            value - RootSum(value - Back(mostS), readingC),
            value + RootSum(Back(leastS) - value, readingC),
            Uncertainty.NinetyPct);

        double Back(double timeConstantS) => airC + ((readC - airC) * Math.Exp(secondsAfterLap / timeConstantS));
    }

    /// <summary>
    /// The difference of two sets of wheels at the end of the lap, °C, with its 90 % range; null where a reading of them has no time, came too late or is not
    /// hotter than the air. All treads are taken to cool alike, so that the time constant moves both sets together.
    /// </summary>
    public static Uncertainty? DifferenceAtLapEndC(WheelGroups groups, double standardErrorC, double airC)
    {
        ArgumentNullException.ThrowIfNull(groups);
        if (groups.All.Any(tread => tread.SecondsAfterLap is null || tread.IsTooLate || tread.MeanC < airC)) return null;
        var (value, quick, slow) = (Difference(1), Difference(1 / PlausibleFactor), Difference(PlausibleFactor));
        var readingC = Uncertainty.StandardErrorsAtNinetyPct * standardErrorC * groups.All.Max(tread => Math.Exp(tread.SecondsAfterLap!.Value / TimeConstantS(tread.By)));
        return new Uncertainty(
            value,
            value - RootSum(value - Math.Min(value, Math.Min(quick, slow)), readingC),
            value + RootSum(Math.Max(value, Math.Max(quick, slow)) - value, readingC),
            Uncertainty.NinetyPct);

        double Difference(double factor) => Mean(groups.First, factor) - Mean(groups.Second, factor);

        double Mean(IReadOnlyList<TreadReading> treads, double factor) =>
            treads.Average(tread => airC + ((tread.MeanC - airC) * Math.Exp(tread.SecondsAfterLap!.Value / (factor * TimeConstantS(tread.By)))));
    }

    private static double RootSum(double one, double other) => Math.Sqrt((one * one) + (other * other));
}

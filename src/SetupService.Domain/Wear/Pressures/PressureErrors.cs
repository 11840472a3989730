using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Pressures;

/// <summary>How closely the inputs of a pressure are known, one standard deviation each, taken as independent.</summary>
/// <param name="GaugeKpa">One reading of the gauge.</param>
/// <param name="AirKpa">The air's pressure.</param>
/// <param name="ColdC">The gas when cold: it need not be as warm as the air.</param>
public readonly record struct PressureErrors(double GaugeKpa, double AirKpa, double ColdC)
{
    /// <summary>Error of a hand gauge, one standard deviation, kPa; common practice, no source.</summary>
    public const double UsualGaugeErrorKpa = 2;

    /// <summary>Error of taking the cold gas to be as warm as was said, °C; judgement.</summary>
    public const double UsualColdErrorC = 2;

    /// <summary>A figure of the pressures alone, with its error to first order.</summary>
    public Estimate Propagate(in PressureRise rise, Func<PressureRise, double> figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return new(figure(rise), Math.Sqrt(Variance(rise, figure)));
    }

    /// <summary>A figure that takes the cold gas's temperature too.</summary>
    public Estimate Propagate(PressureRise rise, double coldC, Func<PressureRise, double, double> figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var byCold = (figure(rise, coldC + ColdC) - figure(rise, coldC - ColdC)) / 2;
        return new(figure(rise, coldC), Math.Sqrt(Variance(rise, one => figure(one, coldC)) + (byCold * byCold)));
    }

    private double Variance(in PressureRise rise, Func<PressureRise, double> figure)
    {
        var byCold = (figure(rise with { ColdKpa = rise.ColdKpa + GaugeKpa }) - figure(rise with { ColdKpa = rise.ColdKpa - GaugeKpa })) / 2;
        var byHot = (figure(rise with { HotKpa = rise.HotKpa + GaugeKpa }) - figure(rise with { HotKpa = rise.HotKpa - GaugeKpa })) / 2;
        var byAir = (figure(rise with { AirKpa = rise.AirKpa + AirKpa }) - figure(rise with { AirKpa = rise.AirKpa - AirKpa })) / 2;
        return (byCold * byCold) + (byHot * byHot) + (byAir * byAir);
    }
}

/// <summary>What the pressures were read in.</summary>
/// <param name="ColdC">Temperature of the gas when the cold pressure was set, °C; null where it is not known.</param>
/// <param name="NextColdC">The same before the next session, °C; null where it is not known.</param>
/// <param name="AirKpa">Absolute pressure of the air, kPa.</param>
/// <param name="Errors">How closely all that is known.</param>
public readonly record struct PressureConditions(double? ColdC, double? NextColdC, double AirKpa, PressureErrors Errors);

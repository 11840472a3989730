using SetupService.Domain.Answers;
using SetupService.Domain.Suspension.Steering;

namespace SetupService.Domain.Geometry;

/// <summary>The cautions that go with steering axes: what can hurt somebody who acts on the answer, gravest first.</summary>
public static class SteeringCautions
{
    /// <summary>Scatter of the readings over the gauge's error above which they are not what they should be (our choice).</summary>
    public const double GreatestScatter = 2;

    private static readonly Caution AxisStandsStill = new(
        "axisStandsStill",
        "This takes the steering axis as fixed and the parts as stiff. On the car bushes give and links move the axis. Before driving with anything changed, turn and lift the wheel by hand over its whole travel, to both locks.");

    private static readonly Caution ReadingsOnly = new(
        "readingsOnly",
        "These readings cannot show bent or loose parts. Have a licensed workshop measure before anything is adjusted; local law decides what may be changed.");

    private static readonly Caution CarOnPlates = new(
        "carOnPlates",
        "Take readings with the car level on its wheels, the brakes held and the other wheels chocked. Keep hands and feet away from the plates while the steering is turned.");

    /// <summary>With a sweep of angles: it changes nothing on a car.</summary>
    public static IReadOnlyList<Caution> ForSweep { get; } = [AxisStandsStill];

    /// <summary>With the axis of points.</summary>
    public static IReadOnlyList<Caution> For(in SteeringAxisFigures figures) => UsualAxis.Holds(figures.CasterDeg, figures.SteeringAxisInclinationDeg)
        ? GeometryCautions.ForSweep
        : [Unusual(figures.CasterDeg, figures.SteeringAxisInclinationDeg), .. GeometryCautions.ForSweep];

    /// <summary>With the axis read from a wheel.</summary>
    public static IReadOnlyList<Caution> For(in CasterFit fit)
    {
        var list = new List<Caution>();
        if (!UsualAxis.Holds(fit.CasterDeg, fit.SteeringAxisInclinationDeg)) list.Add(Unusual(fit.CasterDeg, fit.SteeringAxisInclinationDeg));
        if (fit.ResidualStandardDeviationDeg is { } scatterDeg && scatterDeg > GreatestScatter * fit.GaugeErrorDeg) list.Add(Scattered(scatterDeg, fit.GaugeErrorDeg));
        list.Add(ReadingsOnly);
        list.Add(CarOnPlates);
        return list;
    }

    private static Caution Unusual(double casterDeg, double inclinationDeg) => new("unusualAxis", Prose.Write(
        UnitSystem.Metric,
        $"A caster of {casterDeg:deg} with a steering-axis inclination of {inclinationDeg:deg} is outside what cars have (caster {UsualAxis.LeastCasterDeg:n} to {UsualAxis.GreatestCasterDeg:n}°, inclination {UsualAxis.LeastInclinationDeg:n} to {UsualAxis.GreatestInclinationDeg:n}°). Check what was given first: measure again, look at the signs and at the side, and change nothing on the car until it is clear."));

    private static Caution Scattered(double scatterDeg, double gaugeErrorDeg) => new("scatteredReadings", Prose.Write(
        UnitSystem.Metric,
        $"The readings scatter by {scatterDeg:deg} about the fit, more than {GreatestScatter:n} times the gauge's error of {gaugeErrorDeg:deg}, so the axis is less certain than its ranges say. Read again with the plates level and free and the brakes held."));
}

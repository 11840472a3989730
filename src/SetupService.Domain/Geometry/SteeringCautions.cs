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
        "The axis is taken to stand still and the parts to be stiff: bushes that give, and a linkage whose axis wanders, show on the car and not here. Turn and lift the wheel by hand over the whole travel and lock before driving with anything changed.");

    private static readonly Caution ReadingsOnly = new(
        "readingsOnly",
        "Caster read this way says nothing about parts that may be bent or loose. Have a licensed workshop measure before anything is adjusted; local law decides what may be changed.");

    private static readonly Caution CarOnPlates = new(
        "carOnPlates",
        "Read with the car level on its wheels, the brakes held and the other wheels chocked, and keep hands and feet away from the plates while the steering is turned.");

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
        $"A caster of {casterDeg:deg} with a steering-axis inclination of {inclinationDeg:deg} is outside what cars have (caster {UsualAxis.LeastCasterDeg:n} to {UsualAxis.GreatestCasterDeg:n}°, inclination {UsualAxis.LeastInclinationDeg:n} to {UsualAxis.GreatestInclinationDeg:n}°). Suspect what was given first: measure again, look at the signs and at the side, and do nothing on the car until it is clear."));

    private static Caution Scattered(double scatterDeg, double gaugeErrorDeg) => new("scatteredReadings", Prose.Write(
        UnitSystem.Metric,
        $"The readings scatter by {scatterDeg:deg} about the fit, more than {GreatestScatter:n} times the gauge's error of {gaugeErrorDeg:deg}, so the axis is less certain than its ranges say. Read again, with the plates level and free and the brakes held."));
}

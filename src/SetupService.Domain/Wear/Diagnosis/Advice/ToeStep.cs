using SetupService.Domain.Answers;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>The step of toe an axle gets: towards what is usual, at most two millimetres across the rims at a time, and never against the gauge.</summary>
internal static class ToeStep
{
    /// <summary>The most of one step of total toe, mm.</summary>
    public const double MostMm = 2;

    private const double MillimetresPerInch = 25.4;
    private const double ErrorDeg = 0.05;

    // Where the rim is not told: the most of a step by a rim of this size.
    private const double TypicalRimIn = 17;

    /// <summary>The action.</summary>
    /// <param name="study">The diagnosis.</param>
    /// <param name="at">Which axle.</param>
    /// <param name="isIn">True where the wheels toe in too much, false where they toe out.</param>
    /// <param name="units">Units of the text.</param>
    public static WearAction Build(WearStudy study, CarAxle at, bool isIn, UnitSystem units)
    {
        var (end, axle, aim) = (at == CarAxle.Front ? "front" : "rear", study.Case.Vehicle.At(at), TypicalValues.ToeDeg(at).Value);
        var again = NextReading.When(study.Case, at, units);
        if (axle.Left.ToeDeg is not { } left || axle.Right.ToeDeg is not { } right)
            return new(Prose.Write(units, $"Have the {end} toe measured and set to about {aim:deg} per wheel, or as the car's maker states. Depths do not show how far it is off: toe wear grows with its square, and tyres differ."));
        var nowDeg = (left + right) / 2;
        var change = new Estimate(aim - nowDeg, ErrorDeg);
        if (isIn == change.Value >= 0 || Math.Abs(change.Value) < ErrorDeg)
        {
            return new(Prose.Write(
                units,
                $"Have the {end} toe measured again, loaded as driven: the tread points to too much {(isIn ? "toe-in" : "toe-out")}, the gauge reads {Math.Abs(nowDeg):deg} of {(nowDeg < 0 ? "toe-out" : "toe-in")} per wheel. Check tie rods and bushes for play, and change nothing before the two agree."));
        }

        if (axle.Adjustable.Toe is { CanBeSet: false })
            return new($"The {end} toe cannot be set on this suspension: shims or eccentric bushes would allow it, where the car's maker and local law do. Have its mounts and bushes checked first.");
        var mmPerDeg = 2 * ToeUnits.MillimetresFromDegrees(1, (axle.Wheel?.RimDiameterIn ?? TypicalRimIn) * MillimetresPerInch);
        var stepDeg = Math.Round(Math.Clamp(change.Value, -MostMm / mmPerDeg, MostMm / mmPerDeg), 2);
        var settingDeg = Math.Round(nowDeg + stepDeg, 2);
        var text = Prose.Write(
            units, $"Set the {end} toe to {Math.Abs(settingDeg):deg} of {(settingDeg < 0 ? "toe-out" : "toe-in")} per wheel, {Math.Abs(stepDeg):deg} towards {(stepDeg < 0 ? "toe-out" : "toe-in")} each, and read the treads again {again}. About {aim:deg} is usual (common practice; the car's maker decides).");
        var step = new WearAction(text)
        {
            ToeDeg = change,
            StepDeg = stepDeg,
            SettingDeg = settingDeg,
            Until = $"Feel and read both {end} treads again {again}.",
        };
        return axle.Wheel is null ? step : step with
        {
            Text = Prose.Write(units, $"{text} The step is {Math.Abs(stepDeg * mmPerDeg):mm} of total toe across the rims."),
            TotalToeMm = new(change.Value * mmPerDeg, ErrorDeg * mmPerDeg),
            StepMm = stepDeg * mmPerDeg,
            SettingMm = settingDeg * mmPerDeg,
        };
    }
}

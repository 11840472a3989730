using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>Says what was read, with its numbers.</summary>
public static class SignWords
{
    // Less than this, percent, reads as nothing.
    private const double Alike = 0.5;

    // The same of the centre against the shoulders, which three readings of a gauge do not tell from nothing.
    private const double CrownAlike = 8;

    // A centre less worn than the mean of the shoulders by up to this share of their difference: one shoulder is worn, not both.
    private const double OneSided = 0.6;

    /// <summary>A sign as a clause without full stop, with its number in the units of the text.</summary>
    /// <param name="sign">The sign.</param>
    /// <param name="value">Its value.</param>
    /// <param name="shoulders">The shoulders' difference beside it, by which one worn shoulder is told from two; 0 where it is not known.</param>
    /// <param name="at">Which axle.</param>
    /// <param name="units">Units of the text.</param>
    public static string Describe(WearSign sign, double value, double shoulders, CarAxle at, UnitSystem units)
    {
        var end = Name(at);
        var pct = Math.Abs(100 * value);
        return sign switch
        {
            WearSign.ShoulderDifference when pct < Alike => $"{end}: both shoulders are worn equally",
            WearSign.ShoulderDifferenceAcrossAxle when pct < Alike => $"{end}: both tyres are worn alike, outer shoulder against inner",
            WearSign.CrownDifferenceAcrossAxle when pct < Alike => $"{end}: both tyres are worn alike, centre against shoulders",
            WearSign.SideWearRatio when pct < Alike => $"{end}: both tyres have worn as much",
            WearSign.AxleWearRatio when pct < Alike => $"{end}: worn as much as the other axle",
            WearSign.PressureDeviation when Math.Abs(value) < Alike => $"{end}: pressure at its aim",
            WearSign.PressureDifference when Math.Abs(value) < Alike => $"{end}: both tyres are as near to their aim",
            WearSign.CrownDifference when pct < CrownAlike => $"{end}: centre and shoulders are worn about equally",
            WearSign.ShoulderDifference when value >= 0 => Prose.Write(units, $"{end}: the outer shoulder is worn more than the inner one, by {pct:pct0} of the mean wear"),
            WearSign.ShoulderDifference => Prose.Write(units, $"{end}: the inner shoulder is worn more than the outer one, by {pct:pct0} of the mean wear"),
            WearSign.ShoulderDifferenceAcrossAxle => Prose.Write(units, $"{end}: worn unevenly, left to right; the {Side(value)} tyre more on its outer shoulder, by {pct:pct0} of the mean wear"),
            WearSign.CrownDifference when value < 0 && -value <= OneSided * Math.Abs(shoulders) =>
                Prose.Write(units, $"{end}: only the {(shoulders > 0 ? "outer" : "inner")} shoulder is worn more than the centre, not both"),
            WearSign.CrownDifference when value >= 0 => Prose.Write(units, $"{end}: the centre is worn more than the shoulders, by {pct:pct0} of the mean wear"),
            WearSign.CrownDifference => Prose.Write(units, $"{end}: the shoulders are worn more than the centre, by {pct:pct0} of the mean wear"),
            WearSign.CrownDifferenceAcrossAxle => Prose.Write(units, $"{end}: the {Side(value)} tyre is worn more in its centre than the other, by {pct:pct0} of the mean wear"),
            WearSign.SideWearRatio => Prose.Write(units, $"{end}: the {Side(value)} tyre has worn {100 * (Math.Exp(Math.Abs(value)) - 1):pct0} more than the other"),
            WearSign.AxleWearRatio when value >= 0 => Prose.Write(units, $"{end}: worn {100 * (Math.Exp(value) - 1):pct0} more than the other axle"),
            WearSign.AxleWearRatio => Prose.Write(units, $"{end}: worn {100 * (1 - Math.Exp(value)):pct0} less than the other axle"),
            WearSign.SpreadAround => Prose.Write(units, $"{end}: depth varies round a tyre by {value:treadFine} beyond the gauge error"),
            WearSign.OncePerTurnShare => Prose.Write(units, $"{end}: {pct:pct0} of the variation round the tyre repeats once per turn"),
            WearSign.ShoulderTemperatureDifference when value >= 0 => Prose.Write(units, $"{end}: the outer shoulder is {value:cDiff} hotter than the inner one"),
            WearSign.ShoulderTemperatureDifference => Prose.Write(units, $"{end}: the inner shoulder is {-value:cDiff} hotter than the outer one"),
            WearSign.CrownTemperatureDifference when value >= 0 => Prose.Write(units, $"{end}: the centre is {value:cDiff} hotter than the mean of the shoulders"),
            WearSign.CrownTemperatureDifference => Prose.Write(units, $"{end}: the centre is {-value:cDiff} colder than the mean of the shoulders"),
            WearSign.TemperatureInWindow when value < -1 => Prose.Write(units, $"{end}: the tread is colder than its window"),
            WearSign.TemperatureInWindow when value > 1 => Prose.Write(units, $"{end}: the tread is hotter than its window"),
            WearSign.TemperatureInWindow => Prose.Write(units, $"{end}: the tread is within its temperature window"),
            WearSign.AxleTemperatureDifference when value >= 0 => Prose.Write(units, $"{end}: {value:cDiff} hotter than the other axle"),
            WearSign.AxleTemperatureDifference => Prose.Write(units, $"{end}: {-value:cDiff} colder than the other axle"),
            WearSign.PressureDeviation when value >= 0 => Prose.Write(units, $"{end}: pressure {value:pct0} above its aim"),
            WearSign.PressureDeviation => Prose.Write(units, $"{end}: pressure {-value:pct0} below its aim"),
            WearSign.PressureDifference => Prose.Write(units, $"{end}: the {Side(value)} tyre has the higher pressure against its aim, by {Math.Abs(value):pct0}"),
            WearSign.ToeSet when value >= 0 => Prose.Write(units, $"{end}: set to {value:deg} of toe-in per wheel"),
            WearSign.ToeSet => Prose.Write(units, $"{end}: set to {-value:deg} of toe-out per wheel"),
            WearSign.ThrustSet => Prose.Write(units, $"{end}: the axle points {Math.Abs(value):deg} to the {(value > 0 ? "right" : "left")}"),
            WearSign.CamberSet => Prose.Write(units, $"{end}: camber is set to {value:angle}"),
            WearSign.CamberShort when value >= 0 => Prose.Write(units, $"{end}: the model asks for {value:angle} more negative camber"),
            WearSign.CamberShort => Prose.Write(units, $"{end}: the model asks for {-value:angle} less negative camber"),
            WearSign.DampingRatio => Prose.Write(units, $"{end}: the dampers stated have a damping ratio of {value:n}"),
            _ => Prose.Write(units, $"{end}: camber differs by {Math.Abs(value):angle} from left to right; the {(value < 0 ? "left" : "right")} wheel leans in more"),
        };
    }

    /// <summary>A mark as a clause without full stop.</summary>
    public static string Describe(WearMark mark, bool isThere, CarAxle at)
    {
        var what = mark switch
        {
            WearMark.FeatheredSharpInboard => "feathered edges, sharp towards the car's centre",
            WearMark.FeatheredSharpOutboard => "feathered edges, sharp away from the car",
            WearMark.Cupping => "hollows round the tyre",
            WearMark.HeelAndToe => "heel-and-toe wear of the blocks",
            WearMark.FlatSpot => "a flat spot",
            WearMark.ShoulderGraining => "graining of the outer shoulder",
            WearMark.Blistering => "blisters",
            WearMark.Chunking => "pieces torn out of the tread",
            WearMark.WornPastShoulder => "scuffing past the shoulder onto the sidewall",
            WearMark.DiagonalScallop => "patches worn at an angle across the tread",
            WearMark.RimOutsidePermitted => "a rim outside the permitted widths",
            WearMark.MovedOrTurned => "a tyre that ran elsewhere on the car or was turned on its rim",
            _ => "two tyres made more than half a year apart, or with different new depths",
        };
        if (isThere) return $"{Name(at)}: {what}";
        return mark switch
        {
            WearMark.RimOutsidePermitted => $"{Name(at)}: the rim has a permitted width",
            WearMark.MovedOrTurned => $"{Name(at)}: the tyres have always run in this position",
            WearMark.TyresDiffer => $"{Name(at)}: both tyres are alike in age and new depth",
            _ => $"{Name(at)}: no sign of {what}",
        };
    }

    private static string Name(CarAxle at) => at == CarAxle.Front ? "front" : "rear";

    private static string Side(double value) => value >= 0 ? "left" : "right";
}

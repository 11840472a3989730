using SetupService.Domain.Answers;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Pressures;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Wear.Diagnosis;

/// <summary>What to do about each cause.</summary>
public static class WearActions
{
    private const double MillimetresPerInch = 25.4;
    private const double ToeErrorDeg = 0.05;
    private const double GaugeErrorKpa = 3;

    /// <summary>The actions against a cause.</summary>
    /// <param name="wear">What was read.</param>
    /// <param name="finding">The cause.</param>
    /// <param name="learned">The wear model of its axle; null where there is none.</param>
    /// <param name="units">Units of the texts.</param>
    public static IReadOnlyList<WearAction> Build(WearCase wear, CauseFinding finding, LearnedTread? learned, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(wear);
        ArgumentNullException.ThrowIfNull(finding);
        var end = finding.Axle == CarAxle.Rear ? "rear" : "front";
        return finding.Cause switch
        {
            WearCause.LowNegativeCamber => [LessShort(learned, end, units)],
            WearCause.HighNegativeCamber => [LessNegative(learned, end, units)],
            WearCause.ToeIn or WearCause.ToeOut => [Toe(wear.Vehicle.At(finding.Axle!.Value), finding.Axle.Value, end, units)],
            WearCause.UnderInflation or WearCause.OverInflation => Pressures(wear, finding, units),
            WearCause.WeakDamping => [new($"Have the {end} dampers, their mounts, the wheel bearings and the ball joints tested. Replace dampers in pairs, and cupped tyres if they are loud.")],
            WearCause.Imbalance => [new("Have the wheels balanced and checked for run-out, tyre and rim. Replace a bent rim; do not straighten it.")],
            WearCause.WheelLocking => [new("Have the brakes checked, and the anti-lock system where fitted; release some brake pressure towards the end of braking. Replace a flat-spotted tyre that shows cord or shakes.")],
            WearCause.Wheelspin => [new($"Feed the power in later and more slowly out of corners. A tyre or limited-slip setting with more grip cures what remains; more pressure does not. Swap the {end} tyres with the others where sizes and treads allow.")],
            WearCause.FrontOverdriven => [new("Turn in more slowly and wait for the front: less steering on the way to the apex. If the balance is wrong at the limit too, ask the what-if call for bars, springs and camber before buying.")],
            WearCause.MixedTyres => [new("Compare make, size, week of manufacture and history of the two tyres, and run a matching pair on an axle. Wear from another position says nothing about this one: read again after some driving here.")],
            WearCause.SideDifference => [new($"Measure camber, caster and toe left and right at the {end}, and look for a bent knuckle, arm or strut, worn bushes and joints, and unequal springs. Replace bent parts, never bend them back; have a workshop inspect them before fast driving.")],
            WearCause.AxleMisaligned => [new($"Have the toe of each {end} wheel measured against the car's centre line and the thrust angle set to zero. Check bushes and joints for wear first.")],
            WearCause.BelowTemperatureWindow => [new("Lower the pressure, within what the load needs, or fit a softer compound: the tyre stays cold. More laps per run warm it too.")],
            WearCause.AboveTemperatureWindow => [new("Drive fewer hot laps per run and let the tyres cool. Correct pressure and camber first; a tyre that blisters again is the wrong compound or too small for the work.")],
            WearCause.RimWidthMismatch => [new("Ask the fitment calls for the permitted rim widths, and choose rim or tyre to suit. A tyre on a rim outside them is not approved and can come off.")],
            _ => [new("Change nothing; read again after the next session.")],
        };
    }

    private static WearAction LessShort(LearnedTread? learned, string end, UnitSystem units)
    {
        if (learned is null)
            return new($"Set the {end} camber 0.5° more negative for now, and read the treads again. The full amount is unknown without the car: give axle loads, track, wheelbase, springs and alignment, or ask the camber-target call.");
        var shortDeg = learned.CamberShortDeg;
        var range = shortDeg.Ninety;
        if (shortDeg.Value <= 0)
            return new(Prose.Write(units, $"Check how hard the corners are, and the camber as set, before adding any: the wear model already finds {-shortDeg.Value:angle} more negative {end} camber than needed (90 % range {-range.Upper:angle} to {-range.Lower:angle}).")) { CamberDeg = Negative(shortDeg) };
        return new(Prose.Write(units, $"Set the {end} camber {shortDeg.Value:angle} more negative (90 % range {Math.Max(0, range.Lower):angle} to {range.Upper:angle}), in steps, and read the treads between them. Have toe set afterwards: it moves with camber.{Life(learned, units)}")) { CamberDeg = Negative(shortDeg) };
    }

    /// <summary>What the change does to the life of the axle's tyres: the camber that is flat in corners is not the one that lasts longest.</summary>
    private static string Life(LearnedTread learned, UnitSystem units)
    {
        if (!learned.HasUse) return "";
        var longestDeg = learned.LongestLifeChangeDeg();
        var whole = learned.LifeRatio(-learned.CamberShortDeg.Value);
        return longestDeg >= 0
            ? Prose.Write(units, $" With the whole change the axle's tyres wear out {Sooner(whole, units)} at the use stated; they last longest with no more camber.")
            : Prose.Write(units, $" With the whole change the axle's fastest-wearing place wears out {Sooner(whole, units)} at the use stated; it lasts longest with {-longestDeg:angle} more negative camber ({Sooner(learned.LifeRatio(longestDeg), units)}).");
    }

    /// <summary>A life against the present one: "11 % sooner".</summary>
    /// <param name="lifeRatio">New life by present life, above 0.</param>
    /// <param name="units">Units of the text.</param>
    private static string Sooner(double lifeRatio, UnitSystem units) => Math.Round(100 * (lifeRatio - 1), MidpointRounding.AwayFromZero) switch
    {
        < 0 => Prose.Write(units, $"{100 * (1 - lifeRatio):pct0} sooner"),
        > 0 => Prose.Write(units, $"{100 * (lifeRatio - 1):pct0} later"),
        _ => "as soon as now",
    };

    private static WearAction LessNegative(LearnedTread? learned, string end, UnitSystem units)
    {
        if (learned is null)
            return new($"Set toe first: camber with toe wears the inner shoulder much faster than camber alone. How much {end} camber the cornering can spare is unknown without the car.");
        var moreDeg = Negative(learned.CamberShortDeg);
        var range = moreDeg.Ninety;
        var amount = moreDeg.Value > 0
            ? Prose.Write(units, $"The cornering model can spare {moreDeg.Value:angle} of negative {end} camber (90 % range {Math.Max(0, range.Lower):angle} to {range.Upper:angle}).")
            : Prose.Write(units, $"Do not reduce the {end} camber yet: the cornering model asks for {-moreDeg.Value:angle} more negative camber.");
        return new($"{amount} Set toe first: camber with toe wears the inner shoulder much faster than camber alone.") { CamberDeg = moreDeg };
    }

    private static Estimate Negative(in Estimate estimate) => new(-estimate.Value, estimate.StandardError);

    private static WearAction Toe(Axle axle, CarAxle at, string end, UnitSystem units)
    {
        var aim = TypicalValues.ToeDeg(at).Value;
        if (axle.Left.ToeDeg is not { } left || axle.Right.ToeDeg is not { } right)
            return new(Prose.Write(units, $"Have the {end} toe measured and set to about {aim:deg} per wheel, or as the car's maker states. Depths do not show how far it is off: toe wear grows with its square, and tyres differ."));
        var change = new Estimate(aim - ((left + right) / 2), ToeErrorDeg);
        var text = Prose.Write(units, $"Set the {end} toe from {(left + right) / 2:deg} to about {aim:deg} per wheel, {Math.Abs(change.Value):deg} towards {(change.Value < 0 ? "toe-out" : "toe-in")} each (common practice; the car's maker decides).");
        if (axle.Wheel is not { } wheel) return new(text) { ToeDeg = change };
        var mmPerDeg = 2 * ToeUnits.MillimetresFromDegrees(1, wheel.RimDiameterIn * MillimetresPerInch);
        var totalMm = new Estimate(change.Value * mmPerDeg, ToeErrorDeg * mmPerDeg);
        return new(Prose.Write(units, $"{text} That is {Math.Abs(totalMm.Value):mm} of total toe across the rims.")) { ToeDeg = change, TotalToeMm = totalMm };
    }

    private static List<WearAction> Pressures(WearCase wear, CauseFinding finding, UnitSystem units)
    {
        var list = new List<WearAction>();
        foreach (var position in finding.Tyres)
        {
            if (wear.At(position) is not { } tyre) continue;
            if (tyre.Pressure is { ColdKpa: { } coldKpa, AimColdKpa: { } aimColdKpa })
            {
                list.Add(new(Prose.Write(units, $"Set the {CorneringWords.Name(position)} tyre to {aimColdKpa:kPa} cold; it has {coldKpa:kPa}."))
                {
                    ColdPressureKpa = new(aimColdKpa - coldKpa, GaugeErrorKpa),
                });
            }
            else if (tyre.Pressure is { HotKpa: { } hotKpa, AimHotKpa: { } aimHotKpa })
            {
                // At the same warming gauge pressure and its change scale alike, nearly: both are counted from the atmosphere's.
                var byWarming = tyre.Pressure.ColdKpa is { } cold ? (cold + StandardAtmosphere.SeaLevelKpa) / (hotKpa + StandardAtmosphere.SeaLevelKpa) : UsualColdByHot;
                var change = new Estimate((aimHotKpa - hotKpa) * byWarming, GaugeErrorKpa);
                list.Add(new(Prose.Write(units, $"{(change.Value < 0 ? "Lower" : "Raise")} the cold setting of the {CorneringWords.Name(position)} tyre by {Math.Abs(change.Value):kPa}, never below what the load needs: it has {hotKpa:kPa} hot against an aim of {aimHotKpa:kPa}. The temperatures call works it out for the day."))
                {
                    ColdPressureKpa = change,
                });
            }
        }

        if (list.Count == 0) list.Add(new("Set the cold pressure the car's plate states for the load. How far it is off is unknown until cold and hot pressures are given with their aim."));
        return list;
    }

    // From some 20 °C to some 60 °C of gas.
    private const double UsualColdByHot = 0.88;
}

/// <summary>What to do about a cause, with the amount where physics gives one.</summary>
/// <param name="Text">As an instruction.</param>
public sealed record WearAction(string Text)
{
    /// <summary>Change of the static camber of each wheel, degrees; negative = more negative.</summary>
    public Estimate? CamberDeg { get; init; }

    /// <summary>Change of the toe of each wheel, degrees; positive = towards toe-in.</summary>
    public Estimate? ToeDeg { get; init; }

    /// <summary>The same as the change of total toe across the rim's diameter, mm.</summary>
    public Estimate? TotalToeMm { get; init; }

    /// <summary>Change of the cold pressure, kPa.</summary>
    public Estimate? ColdPressureKpa { get; init; }
}

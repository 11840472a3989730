using SetupService.Domain.Answers;
using SetupService.Domain.Geometry.Alignment;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Inputs;
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
            WearCause.WeakDamping => [new($"Have the {end} dampers, their mounts, the wheel bearings and ball joints tested; replace dampers in pairs, and the hollowed tyres where they are loud.")],
            WearCause.Imbalance => [new("Have the wheels balanced and checked for running true, tyre and rim; a bent rim is not straightened but replaced.")],
            WearCause.WheelLocking => [new("Have the brakes and, where fitted, the anti-lock system checked; brake with less pressure towards the end. A tyre with a flat spot that shows cord, or that shakes, is done.")],
            WearCause.Wheelspin => [new($"Feed the power in later and more slowly out of corners; a tyre or limited-slip setting that holds more, not more pressure, mends what is left. The {end} tyres can change places with the others where sizes and treads allow.")],
            WearCause.FrontOverdriven => [new("Turn in more slowly and wait for the front: less steering on the way to the apex. If the balance is wrong at the limit too, ask the what-if call for bars, springs and camber before buying.")],
            WearCause.MixedTyres => [new("Compare make, size, week of making and history of the two tyres; run a matching pair on one axle. What was worn elsewhere tells of the other place: read again after some driving here.")],
            WearCause.SideDifference => [new($"Measure camber, caster and toe left and right at the {end}; look for a bent knuckle, arm or strut, worn bushes and joints, unlike springs. Bent parts are replaced, not bent back; have a workshop see it before fast driving.")],
            WearCause.AxleMisaligned => [new($"Have the toe of each {end} wheel measured against the car's centre line and the thrust angle set to none; worn bushes and joints first.")],
            WearCause.BelowTemperatureWindow => [new("A tyre that stays cold wants lower pressure within what its load needs, or a softer compound; more laps in one go warm it too.")],
            WearCause.AboveTemperatureWindow => [new("Drive fewer hot laps in one go and let the tyres cool; correct pressure and camber first. A tyre that blisters again is the wrong compound or too small for the work.")],
            WearCause.RimWidthMismatch => [new("Ask the fitment calls for the rim widths the tyre may stand on, and choose rim or tyre to suit. A tyre on a rim outside them is not approved and can come off.")],
            _ => [new("Change nothing; read again after the next session.")],
        };
    }

    private static WearAction LessShort(LearnedTread? learned, string end, UnitSystem units)
    {
        if (learned is null)
            return new($"How many degrees are lacking is unknown without the car: give axle loads, track, wheelbase, springs and alignment, or ask the camber-target call. Until then set the {end} half a degree more negative, and read again.");
        var shortDeg = learned.CamberShortDeg;
        var range = shortDeg.Ninety;
        if (shortDeg.Value <= 0)
            return new(Prose.Write(units, $"The wear model does not find the {end} camber short ({-shortDeg.Value:deg} more than is needed, {-range.Upper:deg} to {-range.Lower:deg} with 90 %): check how hard the corners are, and the camber as it stands, before setting more.")) { CamberDeg = Negative(shortDeg) };
        return new(Prose.Write(units, $"Set the {end} camber {shortDeg.Value:deg} more negative (with 90 % between {Math.Max(0, range.Lower):deg} and {range.Upper:deg}); in steps, reading the treads between them. Have toe set afterwards: it moves with camber.{Life(learned, units)}")) { CamberDeg = Negative(shortDeg) };
    }

    /// <summary>What the road takes of it: standing flat in corners and lasting longest are two settings.</summary>
    private static string Life(LearnedTread learned, UnitSystem units)
    {
        if (!learned.HasUse) return "";
        var longestDeg = learned.LongestLifeChangeDeg();
        var whole = learned.LifeRatio(-learned.CamberShortDeg.Value);
        return longestDeg >= 0
            ? Prose.Write(units, $" At the use stated the wear model has the axle last {whole:n} times as long with all of it: its treads last longest without more camber.")
            : Prose.Write(units, $" At the use stated the wear model has the axle's fastest-worn place last {whole:n} times as long with all of it, and longest, {learned.LifeRatio(longestDeg):n} times, with {-longestDeg:deg} more negative.");
    }

    private static WearAction LessNegative(LearnedTread? learned, string end, UnitSystem units)
    {
        if (learned is null)
            return new($"Bring toe to its setting first: camber with toe wears the inner shoulder much faster than camber alone. How much less {end} camber the cornering allows is unknown without the car.");
        var moreDeg = Negative(learned.CamberShortDeg);
        var range = moreDeg.Ninety;
        return new(Prose.Write(units, $"The cornering would be served with {moreDeg.Value:deg} less negative {end} camber (with 90 % between {range.Lower:deg} and {range.Upper:deg}). Bring toe to its setting first: camber with toe wears the inner shoulder much faster than camber alone.")) { CamberDeg = moreDeg };
    }

    private static Estimate Negative(in Estimate estimate) => new(-estimate.Value, estimate.StandardError);

    private static WearAction Toe(Axle axle, CarAxle at, string end, UnitSystem units)
    {
        var aim = TypicalValues.ToeDeg(at).Value;
        if (axle.Left.ToeDeg is not { } left || axle.Right.ToeDeg is not { } right)
            return new(Prose.Write(units, $"Have the {end} toe measured and set, about {aim:deg} a wheel or as the car's maker has it. How far it is off cannot be told from depths: wear by toe grows with the square of it, and tyres differ."));
        var change = new Estimate(aim - ((left + right) / 2), ToeErrorDeg);
        var text = Prose.Write(units, $"Set the {end} toe from {(left + right) / 2:deg} to about {aim:deg} a wheel (common practice; the car's maker decides), a change of {change.Value:deg} each.");
        if (axle.Wheel is not { } wheel) return new(text) { ToeDeg = change };
        var mmPerDeg = 2 * ToeUnits.MillimetresFromDegrees(1, wheel.RimDiameterIn * MillimetresPerInch);
        var totalMm = new Estimate(change.Value * mmPerDeg, ToeErrorDeg * mmPerDeg);
        return new(Prose.Write(units, $"{text} That is {totalMm.Value:mm} of total toe across the rims.")) { ToeDeg = change, TotalToeMm = totalMm };
    }

    private static List<WearAction> Pressures(WearCase wear, CauseFinding finding, UnitSystem units)
    {
        var list = new List<WearAction>();
        foreach (var position in finding.Tyres)
        {
            if (wear.At(position) is not { } tyre) continue;
            if (tyre.Pressure is { ColdKpa: { } coldKpa, AimColdKpa: { } aimColdKpa })
            {
                list.Add(new(Prose.Write(units, $"At the {CorneringWords.Name(position)} set {aimColdKpa:kPa} cold instead of {coldKpa:kPa}."))
                {
                    ColdPressureKpa = new(aimColdKpa - coldKpa, GaugeErrorKpa),
                });
            }
            else if (tyre.Pressure is { HotKpa: { } hotKpa, AimHotKpa: { } aimHotKpa })
            {
                // At the same warming gauge pressure and its change scale alike, nearly: both are counted from the atmosphere's.
                var byWarming = tyre.Pressure.ColdKpa is { } cold ? (cold + StandardAtmosphere.SeaLevelKpa) / (hotKpa + StandardAtmosphere.SeaLevelKpa) : UsualColdByHot;
                var change = new Estimate((aimHotKpa - hotKpa) * byWarming, GaugeErrorKpa);
                list.Add(new(Prose.Write(units, $"The {CorneringWords.Name(position)} tyre has {hotKpa:kPa} hot, the aim is {aimHotKpa:kPa}; change the cold setting by {change.Value:kPa}, never below what the load needs. The temperatures call works it out for the day."))
                {
                    ColdPressureKpa = change,
                });
            }
        }

        if (list.Count == 0) list.Add(new("Set the pressure cold to what the car's plate says for its load; by how much it is off is unknown until cold and hot pressures are read beside their aim."));
        return list;
    }

    // From some 20 °C to some 60 °C of gas.
    private const double UsualColdByHot = 0.88;
}

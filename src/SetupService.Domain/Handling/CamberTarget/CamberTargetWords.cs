using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>Says what a camber target means.</summary>
public static class CamberTargetWords
{
    private const double NPerMmPerPoundPerInch = 0.1751268;
    private const double NmPerPoundFoot = 1.3558179;
    private const double NewtonsPerPound = 4.4482216;
    private const double KgPerPound = 0.45359237;
    private const double MmPerInch = 25.4;
    private const double MPerFoot = 0.3048;
    private const double KmhPerMph = 1.609344;

    // Changes below these, degrees, read 0.0° or 0.00°.
    private const double Upright = 0.05;
    private const double Unseen = 0.005;

    // Two figures of a degree of caster closer than this, degrees, are one: no gauge tells them apart.
    private const double SeenDeg = 0.01;

    private const string PointError = "/points/pointErrorMm";

    // How each input ends, what it is, and the step that is told of it: in its own unit and as people say it. {0} is front or rear.
    private static readonly (string Ending, string Name, double Step, string StepText, double UsStep, string UsStepText)[] Steps =
    [
        ("/antiRollBar/rollRateNmPerDeg", "{0} anti-roll bar rate", 100, "100 N m/deg", 50 * NmPerPoundFoot, "50 lb ft/deg"),
        ("/bumpStop/rateNPerMm", "{0} bump stop rate", 10, "10 N/mm", 50 * NPerMmPerPoundPerInch, "50 lb/in"),
        ("/bumpStop/lengthMm", "{0} bump stop length", 5, "5 mm", 0.2 * MmPerInch, "0.2 in"),
        ("/spring/rateNPerMm", "{0} spring rate", 10, "10 N/mm", 50 * NPerMmPerPoundPerInch, "50 lb/in"),
        ("/spring/motionRatio", "{0} spring motion ratio", 0.1, "0.1", 0.1, "0.1"),
        ("/damper/motionRatio", "{0} damper motion ratio", 0.1, "0.1", 0.1, "0.1"),
        ("/tyre/verticalRateNPerMm", "vertical rate of the {0} tyres", 10, "10 N/mm", 50 * NPerMmPerPoundPerInch, "50 lb/in"),
        ("/trackMm", "{0} track", 10, "10 mm", 0.5 * MmPerInch, "0.5 in"),
        ("/unsprungMassKg", "unsprung mass at each {0} wheel", 5, "5 kg", 10 * KgPerPound, "10 lb"),
        ("AxleLoadKg", "{0} axle load", 10, "10 kg", 20 * KgPerPound, "20 lb"),
        ("/rollCentreHeightMm", "{0} roll centre height", 10, "10 mm", 0.5 * MmPerInch, "0.5 in"),
        ("/centreOfGravityHeightMm", "height of the centre of gravity", 10, "10 mm", 0.5 * MmPerInch, "0.5 in"),
        ("/alignment/camberDeg", "{0} camber", 0.1, "0.1°", 0.1, "0.1°"),
        ("/alignment/toeDeg", "{0} toe-in of each wheel", 0.1, "0.1°", 0.1, "0.1°"),
        ("/alignment/casterDeg", "caster", 1, "1°", 1, "1°"),
        ("/alignment/steeringAxisInclinationDeg", "steering-axis inclination", 1, "1°", 1, "1°"),
        ("/suspension", "length of the {0} front-view swing arm", 100, "100 mm", 5 * MmPerInch, "5 in"),
        (PointError, "the {0} suspension's points", 1, "millimetre", 0.04 * MmPerInch, "0.04 in"),
        ("/compliance/camberDegPerKn", "{0} camber compliance", 0.1, "0.1°/kN", 0.1, "0.1°/kN"),
        ("/compliance/toeDegPerKn", "{0} toe compliance", 0.1, "0.1°/kN", 0.1, "0.1°/kN"),
        ("/tyre", "nominal load of the {0} tyres", 200, "200 N", 50 * NewtonsPerPound, "50 lb"),
        ("/tyre/category", "friction of the {0} tyres", 0.05, "0.05", 0.05, "0.05"),
        ("/tyreModel/gripFactor", "friction of all tyres", 0.05, "5 %", 0.05, "5 %"),
        ("/tyreModel/nominalLoadFactor", "nominal load of all tyres", 0.1, "10 %", 0.1, "10 %"),
        ("/tyreModel/stiffnessPerDeg", "cornering stiffness over load, per degree,", 0.02, "0.02", 0.02, "0.02"),
        ("/tyreModel/stiffestLoads", "load of greatest cornering stiffness by nominal load", 0.1, "0.1", 0.1, "0.1"),
        ("/tyreModel/loadSensitivity", "loss of friction per nominal load", 0.02, "0.02", 0.02, "0.02"),
        ("/tyreModel/shape", "shape factor of the side force", 0.1, "0.1", 0.1, "0.1"),
        ("/tyreModel/curvature", "curvature of the side force", 0.1, "0.1", 0.1, "0.1"),
        ("/tyreModel/camberThrustPerDeg", "camber thrust over load, per degree,", 0.002, "0.002", 0.002, "0.002"),
        ("/tyreModel/leanGainPerDeg", "gain of grip per degree of lean", 0.001, "0.001", 0.001, "0.001"),
        ("/tyreModel/bestLeanDeg", "best lean of the tyre", 1, "1°", 1, "1°"),
        ("/lateralG", "lateral acceleration", 0.1, "0.1 g", 0.1, "0.1 g"),
        ("/cornerRadiusM", "radius of the bends", 10, "10 m", 30 * MPerFoot, "30 ft"),
        ("/speedKmh", "speed", 10, "10 km/h", 5 * KmhPerMph, "5 mph"),
    ];

    /// <summary>At most five sentences: what to do, the camber that is flat, the one of most grip, how it is now, how far the adjustment goes or what caster does.</summary>
    public static string Summarize(CamberTargetResult result, double targetDeg, CarAxle axle)
    {
        ArgumentNullException.ThrowIfNull(result);
        var (flat, best) = (result.StaticCamberDeg, result.BestGripCamberDeg);
        var sentences = new List<string>
        {
            result.Advice.Verdict,
            Prose.Write(UnitSystem.Metric, $"{flat.Value:angle} of static camber keeps the outer {(axle == CarAxle.Front ? "front" : "rear")} tyre {(Math.Abs(targetDeg) < Upright ? "flat on the road" : Lean("leaning", targetDeg))}, on average over its work (90 % range {flat.Lower:angle} to {flat.Upper:angle}); {(CamberSign.IsDoubtful(result.SetCamberDeg) ? Prose.Write(UnitSystem.Metric, $"at the +{result.SetCamberDeg:angle} given") : result.Advice.CamberDeg is null ? Prose.Write(UnitSystem.Metric, $"at the {result.SetCamberDeg:angle} assumed") : "set as it is now")}, it {Lean("leans", result.MeanInclinationNowDeg)}."),
            $"Most grip may lie about {CamberAdvice.Half(best.Value)} ({CamberAdvice.Half(best.Lower)} to {CamberAdvice.Half(best.Upper)}): that is judgement, as nobody has published it for road tyres.",
        };
        if (result.NearestCamberDeg != flat.Value && result.NearestCamberDeg != result.SetCamberDeg)
        {
            var left = result.MeanInclinationAtNearestDeg is { } deg ? $"; there the tyre {Lean("leans", deg)} on average" : "";
            sentences.Add(Prose.Write(UnitSystem.Metric, $"The adjustment stops at {result.NearestCamberDeg:angle}{left}."));
        }

        if (Caster(result) is { } caster) sentences.Add(caster);
        return string.Join(' ', sentences);
    }

    /// <summary>What a step of one input, as a workshop would take it, does to the camber wanted.</summary>
    /// <param name="place">JSON Pointer to the input, as <see cref="CamberSensitivity.Place"/>, or <c>/speedKmh</c>.</param>
    /// <param name="degPerUnit">Change of the camber wanted per unit of it, degrees.</param>
    /// <param name="units">The units people read.</param>
    public static string Explain(string place, double degPerUnit, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(place);
        var one = Array.Find(Steps, step => place.EndsWith(step.Ending, StringComparison.Ordinal));
        var (size, text) = units == UnitSystem.Us ? (one.UsStep, one.UsStepText) : (one.Step, one.StepText);
        var name = one.Name.Replace("{0}", place.Contains("/rear", StringComparison.Ordinal) ? "rear" : "front", StringComparison.Ordinal);
        var change = degPerUnit * size;
        if (one.Ending == PointError) return Prose.Write(units, $"Each {text} by which {name} err leaves {Math.Abs(change):deg} of this camber open.");
        return Math.Abs(change) < Unseen
            ? $"{text} more {name} changes this camber by less than 0.01°."
            : Prose.Write(units, $"{text} more {name} makes this camber {Math.Abs(change):deg} {(change > 0 ? "less" : "more")} negative.");
    }

    private static string? Caster(CamberTargetResult result)
    {
        if (result.SavedPerCasterDeg is not { } saved || Math.Abs(saved) < Unseen) return null;
        var tight = result.SavedPerCasterInTightestDeg is { } tightest && Math.Sign(tightest) == Math.Sign(saved) && Math.Abs(tightest - saved) >= SeenDeg
            ? Prose.Write(UnitSystem.Metric, $", {Math.Abs(tightest):deg} in the tightest bend")
            : "";
        return Prose.Write(UnitSystem.Metric, $"Each further degree of caster {(saved < 0 ? "costs" : "saves")} {Math.Abs(saved):deg} of static camber{tight}.");
    }

    /// <summary>"leans 1.9° outward"; "leans neither way" where a gauge shows nothing.</summary>
    private static string Lean(string verb, double inclinationDeg) => Math.Abs(inclinationDeg) < Upright
        ? verb + " neither way"
        : Prose.Write(UnitSystem.Metric, $"{verb} {Math.Abs(inclinationDeg):angle} {(inclinationDeg > 0 ? "outward" : "inward")}");
}

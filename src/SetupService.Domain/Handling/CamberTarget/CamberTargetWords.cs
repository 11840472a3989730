using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.CamberTarget;

/// <summary>Says what a camber target means.</summary>
public static class CamberTargetWords
{
    /// <summary>The sentences.</summary>
    public static IReadOnlyList<string> Describe(CamberTargetResult result, double targetDeg, CarAxle axle)
    {
        ArgumentNullException.ThrowIfNull(result);
        var range = result.StaticCamberDeg.Ninety;
        var name = axle == CarAxle.Front ? "front" : "rear";
        var list = new List<string>
        {
            FormattableString.Invariant($"{Deg(result.StaticCamberDeg.Value)} of static camber keeps the outer {name} tyre {(Deg(targetDeg) == "0.0°" ? "flat on the road" : "at " + Deg(targetDeg) + " to the road")}, on average over the work it does (90 % range {Deg(range.Lower)} to {Deg(range.Upper)})."),
            FormattableString.Invariant($"As set now it averages {Deg(result.MeanInclinationNowDeg)} to the road."),
        };
        foreach (var end in (string[])["front", "rear"])
        {
            if (Slope(result, $"/vehicle/{end}/spring/rateNPerMm") is { } spring)
                list.Add(FormattableString.Invariant($"Each N/mm more {end} spring rate changes this camber by {spring:+0.000;−0.000}°."));
            if (Slope(result, $"/vehicle/{end}/antiRollBar/rollRateNmPerDeg") is { } bar)
                list.Add(FormattableString.Invariant($"Each 100 N m/deg more {end} bar changes it by {100 * bar:+0.00;−0.00}°."));
        }

        if (result.SavedPerCasterDeg is { } saved)
        {
            var tight = result.SavedPerCasterInTightestDeg is { } tightest ? FormattableString.Invariant($", {tightest:0.00}° in the tightest corner") : "";
            list.Add(FormattableString.Invariant($"Each further degree of caster saves {saved:0.00}° of static camber{tight}."));
        }

        return list;
    }

    private static double? Slope(CamberTargetResult result, string place)
    {
        foreach (var one in result.Sensitivities)
        {
            if (one.Place == place) return one.DegPerUnit;
        }

        return null;
    }

    private static string Deg(double value)
    {
        var rounded = Math.Round(value, 1, MidpointRounding.AwayFromZero);
        return FormattableString.Invariant($"{(rounded < 0 ? "−" : "")}{Math.Abs(rounded):0.0}°");
    }
}

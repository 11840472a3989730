using SetupService.Domain.Answers;

namespace SetupService.Domain.Wear.Temperatures;

/// <summary>What wheels held against each other say, as sentences.</summary>
public static class PairWords
{
    /// <summary>One comparison.</summary>
    public static string Describe(in PairComparison pairs, UnitSystem units)
    {
        var valueC = pairs.DifferenceC.Value;
        var openC = Uncertainty.StandardErrorsAtNinetyPct * pairs.DifferenceC.StandardError;
        var (first, second) = Names(pairs.Pairs);
        var (hotter, other) = valueC < 0 ? (second, first) : (first, second);
        var figure = valueC == 0
            ? Prose.Write(units, $"The {first} and the {second} are as hot as each other (±{openC:cDiff}).")
            : Prose.Write(units, $"The {hotter} is {Math.Abs(valueC):cDiff} hotter than the {other} (±{openC:cDiff}).");
        return Prose.Write(units, $"{figure} {Meaning(pairs, units)}{Doubt(pairs)}{Order(pairs, first, second, units)}");
    }

    /// <summary>A difference beyond the usual, as one sentence.</summary>
    public static string Headline(in PairComparison pairs, UnitSystem units)
    {
        var (first, second) = Names(pairs.Pairs);
        var (hotter, other) = pairs.DifferenceC.Value < 0 ? (second, first) : (first, second);
        return Prose.Write(units, $"The {hotter} is {Math.Abs(pairs.DifferenceC.Value):cDiff} hotter than the {other}; up to about {UsualTemperatures.BetweenPairs.ToC:cDiff} is usual.");
    }

    /// <summary>The readings a left-out comparison needs.</summary>
    public static string Lacking(WheelPairs pairs)
    {
        var (first, second) = Names(pairs);
        return pairs == WheelPairs.FrontLessRear
            ? $"{first} against {second} needs the temperatures of all four treads"
            : $"{first} against {second} needs the temperatures of both treads";
    }

    private static (string First, string Second) Names(WheelPairs pairs) => pairs switch
    {
        WheelPairs.FrontLessRear => ("front axle", "rear axle"),
        WheelPairs.FrontLeftLessRight => ("front left tyre", "front right tyre"),
        _ => ("rear left tyre", "rear right tyre"),
    };

    private static string Meaning(in PairComparison pairs, UnitSystem units)
    {
        var usual = UsualTemperatures.BetweenPairs.ToC;
        return (pairs.Pairs, pairs.Verdict) switch
        {
            (_, RangeVerdict.Unknown) when !pairs.IsTooLate => Prose.Write(units, $"Up to about {usual:cDiff} is usual; by the thermometer's error it may be no more."),
            (_, RangeVerdict.Unknown) => Prose.Write(units, $"A reading more than {TreadReading.TooLateAfterS:n} s after the lap does not show what it was on the lap."),
            (_, RangeVerdict.Within) => Prose.Write(units, $"Up to about {usual:cDiff} is usual."),
            (WheelPairs.FrontLessRear, RangeVerdict.Above) => Prose.Write(units, $"More than about {usual:cDiff}: the front tyres do more of the work, as in a car that understeers."),
            (WheelPairs.FrontLessRear, _) => Prose.Write(units, $"More than about {usual:cDiff}: the rear tyres do more of the work, as in a car that oversteers or spins its wheels under power."),
            _ => Prose.Write(units, $"More than about {usual:cDiff}. A track that turns more one way heats the tyres outside its turns; where that does not explain it, look at load, camber and pressure from side to side."),
        };
    }

    private static string Doubt(in PairComparison pairs) => pairs.Verdict == RangeVerdict.Unknown || pairs.IsClear ? "" : " By the thermometer's error it may also be more.";

    private static string Order(in PairComparison pairs, string first, string second, UnitSystem units)
    {
        if (pairs.Order == ReadingOrder.Alike) return "";
        if (pairs.WaitedS is not { } waitedS) return " The times of reading are not given; what was read last cooled longest and looks colder than it was.";
        var late = waitedS > 0 ? second : first;
        var isLateHotter = waitedS > 0 ? pairs.DifferenceC.Value < 0 : pairs.DifferenceC.Value > 0;
        var does = isLateHotter ? "so on the lap the difference was larger" : "so part of the difference comes from the order of measuring";
        var later = Prose.Write(units, $" The {late} was read {Math.Abs(waitedS):n} s later and had longer to cool, {does}.");
        return pairs.AtLapEndC is { } end
            ? Prose.Write(units, $"{later} At the end of the lap the {first} less the {second} was {end.Lower:cDiff} to {end.Upper:cDiff}.")
            : later;
    }
}

using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics.Statistics;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Handling.WhatIf;

/// <summary>What a change does in at most three sentences: what both axles can hold, which gives up first, and what else a driver or a fitter would notice.</summary>
public static class WhatIfWords
{
    // What a driver or an instrument in a car can tell (common practice, no source); smaller differences are not told.
    private const double LeastLimitG = 0.005;
    private const double LeastHeightMm = 2;
    private const double LoweredMm = 10;
    private const double LeastLeanDeg = 0.3;
    private const double LeastTravelMm = 5;
    private const double LittleTravelMm = 15;
    private const double LeastFrequencyHz = 0.1;
    private const double LeastRollDeg = 0.3;
    private const double LeastCamberDeg = 0.1;
    private const double LeastRollCentreMm = 3;

    // A probability by draws that is nothing or everything.
    private const double LeastShare = 0.001;

    // More of them no buyer reads.
    private const int MostTold = 3;

    /// <summary>The sentences.</summary>
    /// <param name="given">The car as given.</param>
    /// <param name="before">What it reaches.</param>
    /// <param name="study">Its limits with what all inputs leave open.</param>
    /// <param name="changed">The changed car.</param>
    /// <param name="after">What that reaches, in a turn it has an equilibrium in.</param>
    /// <param name="units">Units of the sentences.</param>
    public static string Describe(StandingCar given, WhatIfOutcome before, LimitStudy study, StandingCar changed, WhatIfOutcome after, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(changed);
        ArgumentNullException.ThrowIfNull(after);
        var difference = after.Figures.Less(before.Figures);
        if (difference.AreNothing) return changed.Unknown.Count > 0
            ? "It moves none of the figures here that can be told: " + changed.Unknown[0].Reason + "."
            : "It moves none of the figures here: it sets what the car already has, or what none of them goes by.";
        var others = Others(given, before, after, difference, changed, units);
        string[] sentences = [Limits(after), First(before, after, study), others.Count > 0 ? Sentence(string.Join("; ", others.Take(MostTold))) : ""];
        return string.Join(' ', sentences.Where(one => one.Length > 0));
    }

    /// <summary>True when a change of a limit is larger than what the tyres leave open, and large enough to be noticed.</summary>
    public static bool IsShown(in Uncertainty change) => IsApart(change) && Math.Abs(change.Value) >= LeastLimitG;

    private static bool IsApart(in Uncertainty change) => change.Lower > 0 || change.Upper < 0;

    private static string Limits(WhatIfOutcome after)
    {
        if (after.LimitChange is not { } change || (after.Figures.FrontLimitG, after.Figures.RearLimitG) is not ({ } frontG, { } rearG))
            return (after.Figures.FrontLimitG, after.Figures.RearLimitG) switch
            {
                (null, null) => "What either axle can hold is not known.",
                (null, { } rear) => FormattableString.Invariant($"The rear can hold {rear:0.00} g; what the front can hold is not known."),
                ({ } front, null) => FormattableString.Invariant($"The front can hold {front:0.00} g; what the rear can hold is not known."),
                _ => "What it does to what the axles can hold is not known.",
            };
        return (IsShown(change.Front), IsShown(change.Rear)) switch
        {
            (false, false) when IsApart(change.Front) || IsApart(change.Rear) =>
                FormattableString.Invariant($"It hardly moves what the axles can hold: the front {frontG:0.00} g ({Signed(change.Front.Value)}), the rear {rearG:0.00} g ({Signed(change.Rear.Value)})."),
            (false, false) => FormattableString.Invariant($"What it does to grip is too little to tell: the front can hold about {frontG:0.00} g, the rear about {rearG:0.00} g, as before."),
            (true, true) when change.Front.Value > 0 == change.Rear.Value > 0 =>
                FormattableString.Invariant($"Both axles can hold {(change.Front.Value > 0 ? "more" : "less")}: the front {frontG:0.00} g ({Signed(change.Front.Value)}), the rear {rearG:0.00} g ({Signed(change.Rear.Value)})."),
            _ => FormattableString.Invariant($"The front can hold {One(change.Front, frontG)}, the rear {One(change.Rear, rearG)}."),
        };

        // A hundredth that rounding alone moves is not "as before" to whoever reads both figures.
        static string One(in Uncertainty change, double limitG) => IsShown(change) || (IsApart(change) && !IsNothing(change.Value)) ? $"{Told(limitG)} g ({Signed(change.Value)})"
            : Math.Abs(change.Value) >= LeastLimitG ? $"about {Told(limitG)} g ({Signed(change.Value)}, uncertain)"
            : Told(limitG) == Told(limitG - change.Value) ? $"about {Told(limitG)} g as before"
            : $"about {Told(limitG)} g, hardly changed";

        static string Told(double limitG) => FormattableString.Invariant($"{limitG:0.00}");
    }

    private static string Signed(double changeG) => FormattableString.Invariant($"{(IsNothing(changeG) ? "" : changeG < 0 ? "−" : "+")}{Math.Abs(changeG):0.000}");

    // Told in thousandths, it is none.
    private static bool IsNothing(double changeG) => Math.Round(changeG, 3) == 0;

    private static string First(WhatIfOutcome before, WhatIfOutcome after, LimitStudy study)
    {
        if (before.Limits.MarginG is not { } was || after.Limits.MarginG is not { } now || study.Margin is not { } open) return "";
        var (lower, upper) = (open.Lower + now - was, open.Upper + now - was);
        var (isClearBefore, isClearNow) = (study.First is not FirstAxle.Unclear, lower > 0 || upper < 0);
        var (wasFirst, nowFirst) = (Axle(was), Axle(now));
        var (isOpenBefore, isOpenNow) = (!isClearBefore && IsOpen(0), !isClearNow && IsOpen(now - was));
        var isShown = after.LimitChange is { } change && IsShown(change.Margin);
        var by = isShown ? FormattableString.Invariant($", {Math.Abs(now):0.000} g before the {Axle(-now)} instead of {Math.Abs(was):0.000}") : "";
        var spins = now < 0 ? "; a car whose rear lets go first may spin" : "";
        if (isOpenNow) return $"Which axle gives up first is {(!isOpenBefore ? wasFirst == "front" ? "open now; where the rear does, the car may spin" : "open now" : isShown ? "still open" : "as open as before")}.";
        if (wasFirst == nowFirst)
        {
            return isOpenBefore ? $"Which axle gave up first was open; now {(isClearNow ? "" : "probably ")}the {nowFirst} does{by}."
                : $"{(isClearNow ? "The" : "Probably the")} {nowFirst} still gives up first{by}.";
        }

        if (!isShown) return "Which axle gives up first is as open as before.";
        var earlier = isOpenBefore ? "Which axle gave up first was open" : $"Before, {(isClearBefore ? "" : "probably ")}the {wasFirst} gave up first";
        return $"{earlier}; now {(isClearNow ? "" : "probably ")}the {nowFirst} does{spins}.";

        static string Axle(double margin) => margin >= 0 ? "front" : "rear";

        // By the probability told of the car as given, moved by as many standard errors of the margin as the change moves that.
        bool IsOpen(double movedG)
        {
            var error = (open.Upper - open.Lower) / (2 * Uncertainty.StandardErrorsAtNinetyPct);
            if (study.FrontFirst is not { } frontFirst || !(error > 0)) return false;
            var frontNow = NormalDistribution.Below(NormalDistribution.Quantile(Math.Clamp(frontFirst, LeastShare, 1 - LeastShare)) + (movedG / error));
            return Math.Max(frontNow, 1 - frontNow) < CorneringWords.LeastProbable;
        }
    }

    /// <summary>What else is noticed, what can hurt somebody first, as clauses.</summary>
    private static List<string> Others(StandingCar given, WhatIfOutcome before, WhatIfOutcome after, in WhatIfFigures change, StandingCar changed, UnitSystem units)
    {
        var list = new List<string>();
        if (before.Turn is { } turnBefore && after.Turn is { } turnAfter)
        {
            AddWheels(turnBefore, turnAfter, wheel => wheel.IsLifted, "now leaves the road in this turn", "now leave the road in this turn", "now stays on the road in this turn", "now stay on the road in this turn");
            AddWheels(turnBefore, turnAfter, wheel => wheel.IsOnBumpStop, "is now on its bump stop in this turn", "are now on their bump stops in this turn", "is no longer on its bump stop in this turn", "are no longer on their bump stops in this turn");
        }

        foreach (var at in (ReadOnlySpan<CarAxle>)[CarAxle.Front, CarAxle.Rear])
        {
            if (changed.At(at).BumpLeftMm <= 0) list.Add($"the {CorneringWords.Name(at)} stands on its bump stops");
        }

        if (Heights(change, given.Stated, changed.Stated, units) is { } heights)
        {
            var isTravelUnknown = IsLowered(change.FrontRideHeightMm, changed.Front) || IsLowered(change.RearRideHeightMm, changed.Rear);
            list.Add(isTravelUnknown ? heights + "; how much bump travel that leaves is not known, and on its stops it grips less than is told here: measure it first" : heights);
        }

        var (figures, then) = (after.Figures, before.Figures);
        AddLean("front", then.FrontInclinationDeg, figures.FrontInclinationDeg);
        AddLean("rear", then.RearInclinationDeg, figures.RearInclinationDeg);
        AddTravel("front", then.FrontBumpLeftMm, figures.FrontBumpLeftMm);
        AddTravel("rear", then.RearBumpLeftMm, figures.RearBumpLeftMm);
        AddFrequency("front", then.FrontRideFrequencyHz, figures.FrontRideFrequencyHz);
        AddFrequency("rear", then.RearRideFrequencyHz, figures.RearRideFrequencyHz);
        if (then.RollDeg is { } rollBefore && figures.RollDeg is { } roll && Math.Abs(roll - rollBefore) >= LeastRollDeg)
            list.Add(Prose.Write(units, $"the body rolls {roll:angle} instead of {rollBefore:angle}"));
        return list;

        void AddWheels(SteadyTurn was, SteadyTurn now, Predicate<WheelAttitude> holds, string one, string several, string noMore, string noneMore)
        {
            var wheels = Enum.GetValues<WheelPosition>();
            var begins = Array.FindAll(wheels, wheel => holds(now.Attitude.At(wheel)) && !holds(was.Attitude.At(wheel)));
            var ends = Array.FindAll(wheels, wheel => !holds(now.Attitude.At(wheel)) && holds(was.Attitude.At(wheel)));
            if (begins.Length > 0) list.Add($"the {CorneringWords.Wheels(begins)} wheel{(begins.Length > 1 ? "s" : "")} {(begins.Length > 1 ? several : one)}");
            if (ends.Length > 0) list.Add($"the {CorneringWords.Wheels(ends)} wheel{(ends.Length > 1 ? "s" : "")} {(ends.Length > 1 ? noneMore : noMore)}");
        }

        void AddLean(string name, double? was, double? now)
        {
            if (was is { } beforeDeg && now is { } afterDeg && Math.Abs(afterDeg - beforeDeg) >= LeastLeanDeg)
                list.Add($"the outer {name} tyre leans {Lean(afterDeg, units, true)} instead of {Lean(beforeDeg, units, beforeDeg > 0 != afterDeg > 0)}");
        }

        void AddTravel(string name, double? was, double? now)
        {
            if (was is { } beforeMm && now is >= 0 and { } afterMm && Math.Abs(afterMm - beforeMm) >= LeastTravelMm && (afterMm < LittleTravelMm || beforeMm is < LittleTravelMm and >= 0))
                list.Add(Prose.Write(units, $"{afterMm:room} of travel left at the outer {name} wheel instead of {beforeMm:room}"));
        }

        void AddFrequency(string name, double? was, double? now)
        {
            if (was is { } beforeHz && now is { } afterHz && Math.Abs(afterHz - beforeHz) >= LeastFrequencyHz)
                list.Add(FormattableString.Invariant($"the {name} rides {(afterHz > beforeHz ? "harder" : "softer")}, {afterHz:0.00} Hz instead of {beforeHz:0.00}"));
        }
    }

    private static string Lean(double degrees, UnitSystem units, bool isWayTold) => Math.Abs(degrees) < LeastCamberDeg / 2
        ? "not at all"
        : Prose.Write(units, $"{Math.Abs(degrees):angle}{(!isWayTold ? "" : degrees > 0 ? " out of the turn" : " into the turn")}");

    private static string? Heights(in WhatIfFigures change, Vehicle given, Vehicle changed, UnitSystem units)
    {
        var (front, rear) = (Height("in front", change.FrontRideHeightMm, units), Height("behind", change.RearRideHeightMm, units));
        if (front is null && rear is null) return null;
        string?[] with =
        [
            Camber("front", change.FrontRideHeightMm, ByHeight(change.FrontCamberDeg, given.Front, changed.Front), units),
            Camber("rear", change.RearRideHeightMm, ByHeight(change.RearCamberDeg, given.Rear, changed.Rear), units),
            RollCentre("front", change.FrontRideHeightMm, change.FrontRollCentreHeightMm, units),
            RollCentre("rear", change.RearRideHeightMm, change.RearRollCentreHeightMm, units),
        ];
        var moved = with.OfType<string>().ToArray();
        return $"it stands {string.Join(" and ", new[] { front, rear }.OfType<string>())}{(moved.Length > 0 ? $" (with it {string.Join(", ", moved)})" : "")}";
    }

    private static bool IsLowered(double? changeMm, RideAxle axle) => changeMm <= -LoweredMm && axle.BumpLeftMm is null;

    private static string? Height(string where, double? changeMm, UnitSystem units) => changeMm is { } mm && Math.Abs(mm) >= LeastHeightMm
        ? Prose.Write(units, $"{Math.Round(Math.Abs(mm)):gap} {(mm < 0 ? "lower" : "higher")} {where}")
        : null;

    private static string? Camber(string name, double? heightMm, double? changeDeg, UnitSystem units) => heightMm is { } mm && Math.Abs(mm) >= LeastHeightMm && changeDeg is { } degrees && Math.Abs(degrees) >= LeastCamberDeg
        ? Prose.Write(units, $"{Math.Abs(degrees):angle} {(degrees < 0 ? "more" : "less")} negative camber at the {name}")
        : null;

    /// <summary>What of a change of camber the height brings: all but what the angles as stated were changed by; null where that is not known.</summary>
    private static double? ByHeight(double? changeDeg, Axle before, Axle after) => (Mean(before), Mean(after)) switch
    {
        (null, null) => changeDeg,
        var (was, now) => changeDeg - (now - was),
    };

    private static double? Mean(Axle axle) => (axle.Left.CamberDeg + axle.Right.CamberDeg) / 2;

    private static string? RollCentre(string name, double? heightMm, double? changeMm, UnitSystem units) => heightMm is { } mm && Math.Abs(mm) >= LeastHeightMm && changeMm is { } rise && Math.Abs(rise) >= LeastRollCentreMm
        ? Prose.Write(units, $"the {name} roll centre {Math.Round(Math.Abs(rise)):gap} {(rise < 0 ? "lower" : "higher")}")
        : null;

    private static string Sentence(string clauses) => $"{char.ToUpperInvariant(clauses[0])}{clauses[1..]}.";
}

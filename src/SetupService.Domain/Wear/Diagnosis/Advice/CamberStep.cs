using SetupService.Domain.Answers;
using SetupService.Domain.Handling.CamberTarget;
using SetupService.Domain.Suspension;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>
/// The step of camber an axle gets: what treads and model want together, at most a degree and a half at a time, possible on the suspension, and on a car used mostly on the road
/// none that shortens the tread's life.
/// </summary>
internal static class CamberStep
{
    /// <summary>The most of one step, degrees.</summary>
    public const double MostDeg = 1.5;

    // The most of a step where the amount is not known to be one, degrees; judgement.
    private const double UnsureDeg = 0.5;

    // As a camber gauge shows it, degrees.
    private const double GaugeDeg = 0.1;

    // Where the steps end whatever the treads ask for, degrees: hardly a car is set beyond (common practice, no source). A car for the road ends where the camber target and a plan end it.
    private const double MostUprightDeg = -0.5;
    private const double MostOnTrackDeg = -4;

    // From this difference of left and right, degrees, no one setting is named for both.
    private const double UnlikeDeg = 0.2;

    /// <summary>The action.</summary>
    /// <param name="study">The diagnosis.</param>
    /// <param name="at">Which axle.</param>
    /// <param name="isMore">True where more negative camber is called for, false where less.</param>
    /// <param name="units">Units of the text.</param>
    public static WearAction Build(WearStudy study, CarAxle at, bool isMore, UnitSystem units)
    {
        var end = at == CarAxle.Front ? "front" : "rear";
        var again = NextReading.When(study.Case, at, units);
        var voices = study.ShortAt(at);
        var way = isMore ? -1 : 1;
        var word = isMore ? "more" : "less";
        if (voices.IsEven is true)
            return new($"Leave the {end} camber as it is: the shoulders are worn evenly. Read again {again}.");
        if (voices is { IsEven: null, Shoulders: not null })
            return new($"Leave the {end} camber as it is for now: too little is worn, or read too roughly, to tell. Read again {again}.");
        if (voices.Together is { } asked && -asked.Value * way <= 0)
        {
            return new(isMore
                ? $"Check how hard the bends are taken, and the {end} camber as set, before adding any: the treads do not ask for more. Read again {again}."
                : $"Leave the {end} camber as it is: the treads do not ask for less. Read again {again}.");
        }

        var axle = study.Case.Vehicle.At(at);

        // One shoulder worn on the road is a matter of the alignment before it is one of the cornering.
        if ((!isMore || TrackShare.Compute(study.Case.Use).SeesTrack < 1) && (axle.Left.ToeDeg is null || axle.Right.ToeDeg is null)) return ToeFirst(end, again);
        if (axle.Adjustable.Camber is { CanBeSet: false } && Cannot(axle.Suspension.Layout, end) is var cannot) return new($"{cannot} Until then swap the {end} tyres with the others where sizes and treads allow, and read again {again}.");
        var whole = voices.Together is { } known ? new Estimate(-known.Value, known.StandardError) : (Estimate?)null;
        var wantedDeg = whole is { } change ? Rounded(Math.Abs(change.Value)) : UnsureDeg;
        var isSure = whole is { } sure && Math.Abs(sure.Value) > Uncertainty.StandardErrorsAtNinetyPct * sure.StandardError;
        var mostDeg = study.Case.Use.RoadKm is 0 ? MostOnTrackDeg : CamberAdvice.MostOnRoadDeg;
        var roomDeg = Room(axle, way, wantedDeg, mostDeg);
        var life = LifeOf(study, at);
        var headingDeg = way * Allowed(study, life, way, roomDeg);
        var stepDeg = way * Math.Min(Math.Abs(headingDeg), isSure || whole is null ? MostDeg : Math.Max(UnsureDeg, Rounded(wantedDeg / 2)));
        if (stepDeg == 0 && IsAtItsEnd(axle, way, mostDeg))
            return new($"The {end} camber's adjuster goes no further that way: eccentric bolts, bushes or an adjustable mount would allow more, where the car's maker and local law do. Until then turn or swap the tyres to even them out, and read again {again}.");
        if (stepDeg == 0)
        {
            var why = roomDeg > 0 ? $"{word} negative camber would wear these treads out sooner on the road, where this car is mostly driven"
                : wantedDeg < GaugeDeg ? "what the treads ask for is less than a camber gauge shows"
                : $"{word} negative camber is beyond what cars are set to";
            return new($"Leave the {end} camber as it is: {why}. Turn or swap the tyres to even them out, and read again {again}.");
        }

        var (nowDeg, settingDeg) = Setting(axle, stepDeg);
        var to = settingDeg is { } set ? Prose.Write(units, $"Set the {end} camber to {set:angle}, {Math.Abs(stepDeg):angle} {word} negative than now")
            : axle.Left.CamberDeg is null || axle.Right.CamberDeg is null
                ? Prose.Write(units, $"Have the {end} camber measured, then set it {Math.Abs(stepDeg):angle} {word} negative on each wheel, no further than {(isMore ? mostDeg : MostUprightDeg):angle}")
            : Prose.Write(units, $"Set the {end} camber {Math.Abs(stepDeg):angle} {word} negative on each wheel");
        var trades = Trades(study, at, life, nowDeg, [0, stepDeg, headingDeg]);
        return new($"{to}, and read the treads again {again}. Have toe set afterwards: it moves with camber.{Heading(stepDeg, headingDeg, nowDeg, word, units)}{Life(trades[1], units)}{Handling(trades[1], units)}")
        {
            CamberDeg = new(headingDeg, whole?.StandardError ?? UnsureDeg),
            StepDeg = Tidy(stepDeg),
            SettingDeg = settingDeg,
            Until = $"Read both {end} treads again {again}.",
            TradeOff = trades,
        };
    }

    /// <summary>Has toe measured before any camber is set.</summary>
    public static WearAction ToeFirst(string end, string again) =>
        new($"Have the {end} toe measured and set first, and read the treads again {again}. Toe wears a shoulder much faster than camber alone.");

    /// <summary>Why the camber of a suspension cannot be set, and which part would allow it.</summary>
    private static string Cannot(SuspensionLayout? layout, string end) => layout switch
    {
        SuspensionLayout.TwistBeam => $"The {end} camber cannot be set on a twist beam: wedge-shaped shims between beam and stub axle would allow it, where the car's maker and local law do.",
        SuspensionLayout.SemiTrailingArm => $"The {end} camber cannot be set on a trailing arm as it is: eccentric bushes or brackets would allow it, where the car's maker and local law do.",
        _ => $"The {end} camber is said not to be adjustable: eccentric bolts, bushes or an adjustable mount would allow it, where the car's maker and local law do.",
    };

    /// <summary>How far the change may go, degrees, not negative: all of it, but on a car used mostly on the road no further than the treads last as long as now.</summary>
    private static double Allowed(WearStudy study, Func<double, double?> life, int way, double wantedDeg)
    {
        if (!IsMostlyRoad(study)) return wantedDeg;
        for (var tenths = (int)Math.Round(wantedDeg / GaugeDeg); tenths > 0; tenths--)
        {
            if (life(way * tenths * GaugeDeg) is not < 1) return tenths * GaugeDeg;
        }

        return 0;
    }

    /// <summary>How much of a change the present camber, and what it can be set to, leave room for, degrees, not negative.</summary>
    private static double Room(Axle axle, int way, double wantedDeg, double mostDeg)
    {
        if (Setting(axle, 0).NowDeg is not { } now) return wantedDeg;
        var toDeg = WithinUsual(now, now + (way * wantedDeg), mostDeg);
        var reached = axle.Adjustable.Camber is { CanBeSet: true } reach ? reach.Nearest(toDeg, now) : toDeg;
        return Math.Clamp(Math.Floor((way * (reached - now) / GaugeDeg) + 1e-6) * GaugeDeg, 0, wantedDeg);
    }

    private static double WithinUsual(double nowDeg, double toDeg, double mostDeg) => Math.Clamp(toDeg, Math.Min(nowDeg, mostDeg), Math.Max(nowDeg, MostUprightDeg));

    /// <summary>True where cars are set further that way than the adjuster of this one reaches.</summary>
    private static bool IsAtItsEnd(Axle axle, int way, double mostDeg) =>
        axle.Adjustable.Camber is { CanBeSet: true } reach && Setting(axle, 0).NowDeg is { } now
        && WithinUsual(now, now + (way * GaugeDeg), mostDeg) is var next && next != now && way * (reach.Nearest(next, now) - now) < GaugeDeg / 2;

    private static bool IsMostlyRoad(WearStudy study) => TrackShare.Compute(study.Case.Use).Value < 0.5;

    /// <summary>By what a change of camber, degrees, multiplies the life of the axle's fastest-worn place: by the wear model learned, else, and where that contradicts them, by the shoulders read.</summary>
    private static Func<double, double?> LifeOf(WearStudy study, CarAxle at) =>
        study.At(at) is { HasUse: true, ReadingCount: > 0 } && !TreadLifeVoice.ModelContradictsShoulders(study, at)
            ? changeDeg => TreadLifeVoice.ByModel(study, at, changeDeg)
            : changeDeg => TreadLifeVoice.ByShoulders(study, at, changeDeg);

    private static (double? NowDeg, double? SettingDeg) Setting(Axle axle, double stepDeg)
    {
        if ((axle.Left.CamberDeg, axle.Right.CamberDeg) is not ({ } left, { } right) || Math.Abs(left - right) > UnlikeDeg) return (null, null);
        var now = (left + right) / 2;
        return (now, Tidy(now + stepDeg));
    }

    private static List<CamberTrade> Trades(WearStudy study, CarAxle at, Func<double, double?> life, double? nowDeg, ReadOnlySpan<double> changesDeg)
    {
        var trades = new List<CamberTrade>();
        var handling = CamberHandling.Create(study, at);
        foreach (var changeDeg in changesDeg)
        {
            if (trades.Count > 0 && trades[^1].ChangeDeg == Tidy(changeDeg)) continue;
            trades.Add(new(Tidy(changeDeg), nowDeg is { } now ? Tidy(now + changeDeg) : null, life(changeDeg), handling?.GripChangePct(changeDeg), handling?.BrakingChangePct(changeDeg)));
        }

        return trades;
    }

    private static string Heading(double stepDeg, double headingDeg, double? nowDeg, string word, UnitSystem units)
    {
        if (Math.Abs(headingDeg) < Math.Abs(stepDeg) + (GaugeDeg / 2)) return "";
        return nowDeg is { } now
            ? Prose.Write(units, $" It is heading for about {now + headingDeg:angle}, if the treads still ask for it.")
            : Prose.Write(units, $" It is heading for about {Math.Abs(headingDeg):angle} {word} negative in all, if the treads still ask for it.");
    }

    private static string Life(in CamberTrade step, UnitSystem units) => step.TreadLifeFactor is not { } factor ? "" : Math.Round(100 * (factor - 1), MidpointRounding.AwayFromZero) switch
    {
        < 0 => Prose.Write(units, $" With this step the fastest-worn place wears out {100 * (1 - factor):pct0} sooner at the same use."),
        > 0 => Prose.Write(units, $" With this step the fastest-worn place lasts {100 * (factor - 1):pct0} longer at the same use."),
        _ => " This step does not change how long the treads last.",
    };

    private static string Handling(in CamberTrade step, UnitSystem units) => (step.GripChangePct, step.BrakingChangePct) switch
    {
        ({ } grip, { } braking) => Prose.Write(units, $" Grip in bends: {Change(grip.Value)}; braking: {Change(braking.Value)}."),
        ({ } grip, null) => Prose.Write(units, $" Grip in bends: {Change(grip.Value)}."),
        _ => "",
    };

    private static string Change(double pct) => Math.Round(pct, MidpointRounding.AwayFromZero) switch
    {
        > 0 => Prose.Write(UnitSystem.Metric, $"{pct:pct0} more"),
        < 0 => Prose.Write(UnitSystem.Metric, $"{-pct:pct0} less"),
        _ => "as now",
    };

    private static double Rounded(double deg) => Math.Round(deg / GaugeDeg) * GaugeDeg;

    /// <summary>Without the rounding error of tenths, and without a negative nothing.</summary>
    private static double Tidy(double deg) => Math.Round(deg, 6) + 0.0;
}

using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Wear.BeforeAfter;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.Temperatures;

namespace SetupService.Domain.Planning.Sheets;

/// <summary>Something to read in a test.</summary>
/// <param name="When">When.</param>
/// <param name="What">What.</param>
public readonly record struct TestReading(string When, string What);

/// <summary>
/// How to find out whether a package worked: what to drive and read, and what counts as proof, by the power calculation of before-after. Method page: docs/methods/plan-sheets.
/// </summary>
public sealed record TestPlan
{
    /// <summary>Sessions of a day, where nobody says; common practice, no source.</summary>
    public const int UsualSessions = 4;

    // Kilometres of road between two readings, where no laps are driven; common practice, no source.
    private const double RoadKmBetween = 1000;

    private const int SecondsPerMinute = 60;

    // A test that fails to show a real change as often as not proves nothing; judgement.
    private const double LeastPower = 0.5;

    /// <summary>Sessions to drive.</summary>
    public required int Sessions { get; init; }

    /// <summary>Laps in each; null on a car that sees no track.</summary>
    public required double? LapsPerSession { get; init; }

    /// <summary>The ratio of wear rates, after by before, that is looked for; null where nothing tells it.</summary>
    public required double? ExpectedRatio { get; init; }

    /// <summary>True where nothing is fitted and nothing set, so that there is nothing to prove.</summary>
    public bool IsAsItStands { get; init; }

    /// <summary>True where the package puts on other tyres than were read.</summary>
    public bool IsOnOtherTyres { get; init; }

    /// <summary>Each tyre read before the change, compared as before-after does; empty where none were.</summary>
    public IReadOnlyList<TyreComparison> Tyres { get; init; } = [];

    /// <summary>Readings of the depths: one at the start and one after each session.</summary>
    public int Readings => ReadingsOf(Sessions);

    /// <summary>Laps in all; null on a car that sees no track.</summary>
    public double? Laps => Sessions * LapsPerSession;

    /// <summary>Readings that go with so many sessions.</summary>
    public static int ReadingsOf(int sessions) => sessions + 1;

    /// <summary>The ratio that a package's tread life asks for: the rate of the tyre that ends first, after by before; null where that life is not known or stays.</summary>
    public static double? RatioOf(PackageFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return figures.TreadLifeFactor is { } factor and > 0 and not 1 ? 1 / factor : null;
    }

    /// <summary>What to read, in order.</summary>
    public IReadOnlyList<TestReading> ToRead(UnitSystem units)
    {
        const string Depths = "depth in the outer, middle and inner groove of all four tyres, at the same marked places";
        var list = new List<TestReading>
        {
            new(IsAsItStands ? "from now on" : "before the parts go on or the angles are set", $"{Depths}, with laps and the odometer so far: at least {WearComparison.FewestReadings} times after different laps or distances, else nothing can be compared"),
        };
        if (LapsPerSession is null)
        {
            list.Add(new(Prose.Write(units, $"every {RoadKmBetween:km}"), $"{Depths}; cold pressures; the wheel fasteners"));
        }
        else
        {
            list.Add(new("before each session, cold", "pressures of all four tyres, temperature of the air"));
            list.Add(new(
                Prose.Write(units, $"within {TreadReading.TooLateAfterS / SecondsPerMinute:n} minutes of the last quick lap of each session"),
                "hot pressures, and tread temperatures at outer shoulder, middle and inner shoulder, the wheels always in the same order"));
            list.Add(new("after each session", $"laps driven, weather, track; {Depths}; the wheel fasteners"));
        }

        if (!IsAsItStands) list.Add(new("at the end", "alignment and ride heights once more: what has moved is not proof of anything else"));
        return list;
    }

    /// <summary>What counts as proof.</summary>
    public string Proof => IsAsItStands ? "Nothing is changed, so there is nothing to prove. These readings are what a later change is compared with." : (IsOnOtherTyres ? "Other tyres are put on: how fast rubber wears cannot be compared with the old ones, only the shoulders against the centre. " : "")
        + "It worked where the comparison of before and after says so of one of these tyres: the 90 % range of a shoulder against the centre, or of the wear by distance, leaves 'as before' out, with what sessions vary counted in. One quick lap, or how it feels, is no proof.";

    /// <summary>How much driving would show it, by the power calculation of before-after; where that cannot be told, what would tell it.</summary>
    public string Enough(UnitSystem units)
    {
        if (IsAsItStands) return "Nothing is changed, so no number of laps would show a difference.";
        if (IsOnOtherTyres) return "How many laps would show it cannot be told before the new tyres are worn in: read them from new.";
        if (Tyres.Count == 0) return $"How many laps would show it cannot be told yet: it needs at least {WearComparison.FewestReadings} readings of the depths after different laps or distances with the car as it is.";
        if (ExpectedRatio is null) return "How many laps would show it cannot be told: nothing says by how much the wear should change.";
        if (Lead() is not { } lead) return "These readings do not tell a rate of wear yet, so how many laps would show a change cannot be told: " + Lower(ComparisonWords.NoComparison(Tyres[0].Wear));
        var hardly = lead.Tyre.Wear.Zones!.Value.At(lead.Place).PlannedPower < LeastPower
            ? " So these sessions alone will hardly prove it: go by tread temperatures meanwhile, and go on reading depths as the car is driven."
            : "";
        return $"{Capital(CorneringWords.Name(lead.Tyre.Position))}: {ComparisonWords.Zone(lead.Tyre, lead.Place, units)}{hardly}";
    }

    /// <summary>When to stop, so that it ends.</summary>
    public string Stop(IReadOnlyList<CamberSetting> settings, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(settings);
        const string AtOnce = "Stop at once at a vibration, a soft pedal, a loose fastener, or tread that blisters or shows cords.";
        if (IsAsItStands) return $"{AtOnce} After {WearComparison.FewestReadings} readings ask again which parts are worth their money.";
        var further = string.Concat(settings.Where(one => one.FirstDeg != one.ToDeg).Select(one => Prose.Write(
            units, $" Go on to {one.ToDeg:angle} {CorneringWords.Name(one.Axle)} camber only where its {(one.ToDeg < one.FirstDeg ? "outer" : "inner")} shoulders then still wear faster or read hotter than the others.")));
        var span = LapsPerSession is null ? "two of these stretches of road" : Sessions == 1 ? "this session" : FormattableString.Invariant($"these {Sessions} sessions");
        return $"{AtOnce}{further} If nothing is shown after {span}, stop testing: keep the setting where the treads look no worse than before, else go back to what was found.";
    }

    /// <summary>The zone that would show it with the least use, else with the fewest sessions, else the one that wore fastest before; null where no rate is known.</summary>
    private (TyreComparison Tyre, TreadPlace Place)? Lead()
    {
        var found = ((TyreComparison Tyre, TreadPlace Place)?)null;
        var least = (Use: double.PositiveInfinity, Sessions: int.MaxValue, Rate: double.NegativeInfinity);
        foreach (var tyre in Tyres)
        {
            if (tyre.Wear.Zones is not { } zones) continue;
            foreach (var place in (ReadOnlySpan<TreadPlace>)[TreadPlace.Outer, TreadPlace.Centre, TreadPlace.Inner])
            {
                if (zones.At(place) is not { Main: { } main } zone) continue;
                var one = (Use: zone.LeastUse ?? double.PositiveInfinity, Sessions: zone.FurtherSessions ?? int.MaxValue, Rate: main.BeforeMm.Value);
                if (found is not null && (one.Use, one.Sessions, -one.Rate).CompareTo((least.Use, least.Sessions, -least.Rate)) >= 0) continue;
                (found, least) = ((tyre, place), one);
            }
        }

        return found;
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}

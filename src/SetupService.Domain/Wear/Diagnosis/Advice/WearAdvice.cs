using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Readings;
using SetupService.Domain.Wear.TreadWear;

namespace SetupService.Domain.Wear.Diagnosis.Advice;

/// <summary>
/// What a diagnosis comes down to: what to do, one thing at a time where causes overlap, agreeing with every reading, and when it is done. An unsafe or over-aged tyre comes
/// before everything else.
/// </summary>
public sealed class WearAdvice
{
    /// <summary>A cause at least this likely is acted on; judgement.</summary>
    public const double Likely = 0.5;

    // The same where the shoulders are known to be worn unevenly, so that something wears them; judgement.
    private const double LikelyOfUneven = 0.3;

    // Against a cause less likely than this nothing is told to be done; judgement.
    private const double LeastLikely = 0.2;

    // Causes of one group show in the same wear: to act against two of them at once is to act twice.
    private static readonly WearCause[][] Groups =
    [
        [
            WearCause.LowNegativeCamber, WearCause.HighNegativeCamber, WearCause.ToeIn, WearCause.ToeOut, WearCause.FrontOverdriven, WearCause.SideDifference,
            WearCause.AxleMisaligned, WearCause.MixedTyres,
        ],
        [WearCause.UnderInflation, WearCause.OverInflation, WearCause.Wheelspin, WearCause.RimWidthMismatch],
        [WearCause.WeakDamping, WearCause.Imbalance, WearCause.WheelLocking],
        [WearCause.BelowTemperatureWindow, WearCause.AboveTemperatureWindow],
    ];

    // The causes acted against by setting, or driving, something otherwise.
    private static readonly WearCause[] Settings =
    [
        WearCause.LowNegativeCamber, WearCause.HighNegativeCamber, WearCause.ToeIn, WearCause.ToeOut, WearCause.UnderInflation, WearCause.OverInflation, WearCause.FrontOverdriven,
    ];

    private readonly UnitSystem _units;
    private readonly IReadOnlyList<TyreCondition> _tyres;
    private readonly IReadOnlyList<ReadingContradiction> _contradictions;
    private readonly List<CauseFinding> _acted = [];
    private readonly Dictionary<CauseFinding, IReadOnlyList<WearAction>> _actions = new(ReferenceEqualityComparer.Instance);

    private WearAdvice(WearStudy study, IReadOnlyList<TyreCondition> tyres, UnitSystem units)
    {
        (_tyres, _units) = (tyres, units);
        study = study with { Case = study.Case with { Unusable = UnusableTyres.Find(study.Case.Vehicle, tyres) } };
        var opposite = OppositeWear.Find(study);
        foreach (var one in opposite) study = one.WithoutMean(study);
        Study = study;
        _contradictions = [.. opposite.Select(one => one.Contradiction()), .. ReadingContradictions.Find(study.Case, units)];
        Lead = (TyreCautions.Unsafe(tyres, units) ?? UnusableTyres.Overloaded(study.Case.Vehicle, units)) is { } caution ? Sentences.First(caution.Text) : End(study.Case, units);
        Axles = [Advise(CarAxle.Front), Advise(CarAxle.Rear)];
        _acted.Sort((one, other) => other.Probability.CompareTo(one.Probability));
    }

    /// <summary>The diagnosis.</summary>
    public WearStudy Study { get; }

    /// <summary>What to do at the front, then at the rear.</summary>
    public IReadOnlyList<AxleAdvice> Axles { get; }

    /// <summary>The causes acted on, the likeliest first.</summary>
    public IReadOnlyList<CauseFinding> Acted => _acted;

    /// <summary>Readings that contradict each other; nothing is set by them.</summary>
    public IReadOnlyList<ReadingContradiction> Contradictions => _contradictions;

    /// <summary>What makes a tyre unsafe, too old or too worn to go on, as a sentence; null where nothing does.</summary>
    public string? Lead { get; }

    /// <summary>The advice on a diagnosis.</summary>
    /// <param name="study">The diagnosis.</param>
    /// <param name="tyres">The state of each tyre.</param>
    /// <param name="units">Units of the texts.</param>
    public static WearAdvice Create(WearStudy study, IReadOnlyList<TyreCondition> tyres, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(study);
        return new(study, tyres, units);
    }

    /// <summary>The actions against a cause; empty where it is unlikely, or a likelier one that shows in the same wear is acted on first.</summary>
    public IReadOnlyList<WearAction> ActionsFor(CauseFinding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        var isLeft = finding.Cause != WearCause.Normal && !_acted.Contains(finding)
            && (finding.Probability < LeastLikely || _acted.Exists(other => other.Axle == finding.Axle && IsSameGroup(other.Cause, finding.Cause)));
        var actions = isLeft ? [] : _actions.GetValueOrDefault(finding) ?? Of(finding);
        return Lead is { } first && ReferenceEquals(finding, Study.Diagnosis.Causes[0]) ? [new(first), .. actions] : actions;
    }

    /// <summary>That tyres are near their end; null where they are not.</summary>
    private static string? End(WearCase wear, UnitSystem units)
    {
        var (front, rear) = (Left(CarAxle.Front), Left(CarAxle.Rear));
        if (Math.Min(front, rear) >= TreadDepths.WetGripMm) return null;
        var which = Math.Max(front, rear) < TreadDepths.WetGripMm ? "" : front < rear ? "front " : "rear ";
        return Prose.Write(units, $"Plan new {which}tyres before changing anything: {Math.Min(front, rear):tread} is left at the shallowest, and below {TreadDepths.WetGripMm:tread} a tyre aquaplanes much sooner.");

        double Left(CarAxle at) => NextReading.EndMm(wear, at) ?? double.PositiveInfinity;
    }

    private IReadOnlyList<WearAction> Of(CauseFinding finding)
    {
        // Where something is to be done or measured again, finding no fault asks for nothing beside it.
        if (finding.Cause == WearCause.Normal && _contradictions.Count > 0) return [new(MeasureAgain(_contradictions[0]))];
        if (finding.Cause == WearCause.Normal && Axles.Any(axle => axle.Actions.Count > 0)) return [];
        if (Doubt(finding) is { } doubt) return [new(doubt)];
        return finding is { Cause: WearCause.SideDifference, Axle: { } at } && OneSidedWear.Find(Study, at) is { } corner ? [corner.Action()] : WearActions.Build(Study, finding, _units);
    }

    private static bool IsSameGroup(WearCause one, WearCause other) => Array.Exists(Groups, group => group.Contains(one) && group.Contains(other));

    /// <summary>What to measure again where the readings a cause rests on contradict each other; null where they do not.</summary>
    private string? Doubt(CauseFinding finding)
    {
        // Nothing is set at an axle where something is to be measured again first.
        if (finding.Axle is { } of && Settings.Contains(finding.Cause) && Doubted(of) is { } doubt) return doubt;
        foreach (var one in _contradictions)
        {
            if (one is { Subject: ContradictionOf.History, Position: var position } && finding.Cause is WearCause.MixedTyres && (position is not { } at || finding.Tyres.Contains(at))) return MeasureAgain(one);
        }

        return null;
    }

    private AxleAdvice Advise(CarAxle at)
    {
        var voices = Study.ShortAt(at);
        var end = at == CarAxle.Front ? "front" : "rear";
        var again = NextReading.When(Study.Case, at, _units);
        var actions = ActionsAt(at, voices);
        if (actions.Count == 0 && voices.IsEven is false && ByTreads(at, voices) is { } step) actions.Add(step);
        var voice = Voices(voices, _units);
        if (UnusableTyres.At(at, Study.Case.Vehicle, _tyres, _units) is { Count: > 0 } unusable) return Replace(at, voices, unusable, actions, voice);
        if (actions.Count > 0) return new(at, voices, false, actions, Sentences.First(actions[0].Text) + voice + NearEnd(at), Sentences.First(actions[0].Text));
        return voices.IsEven switch
        {
            true => new(at, voices, true, [], $"Nothing to change. Read again {again}.{voice}{NearEnd(at)}", $"The {end} treads are even: nothing to change, read again {again}."),
            false => new(
                at, voices, false, [], $"The {Worn(voices)} shoulders are worn more than the use explains, but no cause stands out: have camber and toe measured, change nothing yet and read again {again}.{voice}",
                $"The {end} {Worn(voices)} shoulders are worn more than the use explains, but no cause stands out: have camber and toe measured, change nothing yet and read again {again}."),
            null when voices.Shoulders is not null => new(at, voices, false, [], $"Too little is worn, or read too roughly, to tell. Change nothing yet and read again {again}.{voice}", null),
            null => new(at, voices, false, [], $"The depths across the {end} treads were not read.{voice}", null),
        };
    }

    /// <summary>An axle with a tyre that cannot be used is not done: that tyre first, then what its treads ask for.</summary>
    private AxleAdvice Replace(CarAxle at, CamberVoices voices, IReadOnlyList<string> unusable, List<WearAction> actions, string voice)
    {
        var then = actions.Count > 0 ? Sentences.First(actions[0].Text) : null;
        return new(
            at, voices, false, [.. unusable.Select(sentence => new WearAction(sentence)), .. actions], string.Join(' ', [.. unusable, .. then is null ? Array.Empty<string>() : [then]]) + voice,
            unusable.FirstOrDefault(sentence => sentence != Lead) ?? then);
    }

    private List<WearAction> ActionsAt(CarAxle at, CamberVoices voices)
    {
        var actions = new List<WearAction>();
        if (Doubted(at) is { } doubt) actions.Add(new(doubt));
        var corner = OneSidedWear.Find(Study, at);
        if (corner is not null)
        {
            actions.Add(corner.Action());
            if (Study.Diagnosis.CausesOf(at, 0).FirstOrDefault(one => one.Cause == WearCause.SideDifference) is { } side) _acted.Add(side);
        }

        foreach (var finding in Study.Diagnosis.CausesOf(at, LikelyOfUneven))
        {
            // A corner at fault is looked at before the axle is set.
            if (corner is not null && Groups[0].Contains(finding.Cause)) continue;

            // Even shoulders end the search for camber, whatever a model expects; shoulders known to be uneven have a cause, and its likeliest is acted on.
            if (IsSettled(finding) || _acted.Exists(other => other.Axle == at && IsSameGroup(other.Cause, finding.Cause))) continue;
            if (finding.Probability < Likely && !(voices.IsEven is false && Groups[0].Contains(finding.Cause))) continue;
            if (actions.Count > 0 && Settings.Contains(finding.Cause) && Doubt(finding) is not null) continue;
            _acted.Add(finding);
            actions.AddRange(_actions[finding] = Of(finding));
        }

        // A tyre below the cold pressure stated for it is set to that, whatever the treads say.
        if (!actions.Exists(action => action.ColdPressureKpa is not null) && PressureSteps.BelowAim(Study.Case, at) is { Tyres.Count: > 0 } low && !IsPressureDoubted(at))
            actions.AddRange(PressureSteps.Build(Study.Case, low, _units));
        return actions;
    }

    /// <summary>
    /// Where shoulders are uneven and no cause stands out, what the treads themselves ask for: toe measured first; then less negative camber, or more on a car driven on track.
    /// </summary>
    private WearAction? ByTreads(CarAxle at, CamberVoices voices)
    {
        if (voices.Together is not { } asked || Study.Case.Vehicle.At(at).Left.CamberDeg is null) return null;
        var axle = Study.Case.Vehicle.At(at);
        if (axle.Left.ToeDeg is null || axle.Right.ToeDeg is null) return CamberStep.ToeFirst(at == CarAxle.Front ? "front" : "rear", NextReading.When(Study.Case, at, _units));
        return asked.Value < 0 || Study.Case.Use.TrackLaps > 0 ? CamberStep.Build(Study, at, isMore: asked.Value > 0, _units) : null;
    }

    /// <summary>
    /// True where there is nothing to act on: too little or too much camber on an axle whose shoulders are worn evenly, and tyres of another place whose history is told, so that
    /// their wear is read for the place where it happened.
    /// </summary>
    public bool IsSettled(CauseFinding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        if (finding.Axle is not { } at) return false;
        return finding.Cause switch
        {
            WearCause.LowNegativeCamber or WearCause.HighNegativeCamber => Study.ShortAt(at).IsEven is true,
            WearCause.MixedTyres => WearActions.IsHistoryTold(Study, at),
            _ => false,
        };
    }

    /// <summary>What to measure again at an axle before anything is set by it; null where its readings agree.</summary>
    private string? Doubted(CarAxle at)
    {
        foreach (var one in _contradictions)
        {
            if (one.Subject != ContradictionOf.History && one.Axle == at) return MeasureAgain(one);
        }

        return null;
    }

    /// <summary>True where the pressures of an axle contradict each other: then none is set by them, however low one seems.</summary>
    private bool IsPressureDoubted(CarAxle at) => _contradictions.Any(one => one.Subject == ContradictionOf.Pressure && one.Axle == at);

    private static string MeasureAgain(ReadingContradiction one)
    {
        var where = one switch
        {
            { Position: { } at } => $" at the {CorneringWords.Name(at)} wheel",
            { Axle: { } axle } => axle == CarAxle.Front ? " at the front wheels" : " at the rear wheels",
            _ => "",
        };
        return $"Measure again{where} before changing anything: {What(one.Subject)}. {one.Text}";
    }

    private static string What(ContradictionOf subject) => subject switch
    {
        ContradictionOf.Toe => "the toe, and which way the edges are sharp",
        ContradictionOf.Pressure => "the pressures, cold and hot",
        ContradictionOf.Shoulders => "depths and temperatures of both shoulders",
        ContradictionOf.Camber => "the camber, and its sign",
        _ => "how far the tyres ran, and where",
    };

    private static string Voices(CamberVoices voices, UnitSystem units)
    {
        if (!voices.Disagree || (voices.ByTreads, voices.ByModel) is not ({ } treads, { } model)) return "";
        return Prose.Write(units, $" The cornering model expects {Asks(model, units)}, the treads {Asks(treads, units)}: the treads count.");
    }

    private string NearEnd(CarAxle at) => NextReading.EndMm(Study.Case, at) is { } leftMm
        ? Prose.Write(_units, $" Plan new tyres: {leftMm:tread} is left at the shallowest, and below {TreadDepths.WetGripMm:tread} a tyre aquaplanes much sooner.") : "";

    private static string Worn(CamberVoices voices) => voices.Shoulders is { Value: var difference } && difference < EvenWear.Usual.Value ? "inner" : "outer";

    private static string Asks(in Estimate shortDeg, UnitSystem units) => Math.Round(shortDeg.Value, 1) switch
    {
        > 0 => Prose.Write(units, $"{shortDeg.Value:angle} more negative camber"),
        < 0 => Prose.Write(units, $"{-shortDeg.Value:angle} less negative camber"),
        _ => "the camber as it is",
    };
}

/// <summary>What to do at one axle.</summary>
/// <param name="Axle">Which axle.</param>
/// <param name="CamberShort">By how much its camber is short, by the treads and by the model.</param>
/// <param name="IsDone">True where its treads are even within what the use explains, and nothing else stands out.</param>
/// <param name="Actions">What to do now; empty where nothing is.</param>
/// <param name="Text">As sentences.</param>
/// <param name="Summary">As one sentence that names the axle; null where there is nothing to say.</param>
public sealed record AxleAdvice(CarAxle Axle, CamberVoices CamberShort, bool IsDone, IReadOnlyList<WearAction> Actions, string Text, string? Summary);

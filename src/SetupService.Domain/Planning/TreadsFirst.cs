using SetupService.Domain.Answers;
using SetupService.Domain.Vehicles;
using SetupService.Domain.Wear.Cautions;
using SetupService.Domain.Wear.Diagnosis;
using SetupService.Domain.Wear.Diagnosis.Advice;

namespace SetupService.Domain.Planning;

/// <summary>
/// What the tyres of today ask for before anything is bought or set, by the diagnosis' own judgement of the same readings: tyres that nobody drives on, treads near their end, readings to take
/// again, and what costs nothing. Method page: docs/methods/plan.
/// </summary>
public sealed record TreadsFirst
{
    private const string Air = "muchTooLittleAir";

    // Pressures are told in whole kPa.
    private const double LeastKpa = 0.5;

    private readonly List<string> _unsafe = [];
    private readonly List<string> _holds = [];
    private readonly List<string> _free = [];
    private readonly Dictionary<CarAxle, (int Way, string Text)> _camber = [];
    private string? _nearEnd;
    private bool _isSeveral;

    private TreadsFirst()
    {
    }

    /// <summary>Nothing: the treads were not read, and the tyres carry the car.</summary>
    public static TreadsFirst None { get; } = new();

    /// <summary>Codes of the cautions that come before any work.</summary>
    public static IReadOnlyList<string> StopCodes { get; } = ["damagedTyre", "thinShoulder", "wornOut", "tooOld", "overloadedTyres", Air];

    /// <summary>Not to drive on a tyre, and to replace it before anything else; null where all may be driven on.</summary>
    public string? Stop => _unsafe.Count == 0 ? null : $"{string.Join(' ', _unsafe)} Before anything else have {(_isSeveral || _unsafe.Count > 1 ? "those tyres" : "that tyre")} replaced, or judged by a tyre professional.";

    /// <summary>What comes before anything is bought or set, as sentences; null where nothing does.</summary>
    public string? Lead => Hold is null || Stop is not null || _nearEnd is not null ? Hold : string.Join(' ', _holds.Concat(_free));

    /// <summary>The same without what is done beside it because it costs nothing.</summary>
    public string? Hold => Stop ?? _nearEnd ?? (_holds.Count == 0 ? null : string.Join(' ', _holds));

    /// <summary>What is done beside the plan's own first step because it costs nothing, or is looked at first, as sentences; empty where nothing is.</summary>
    public IReadOnlyList<string> Free => _free;

    /// <summary>True where something is to be done whatever is bought.</summary>
    public bool IsAny => Lead is not null || _free.Count > 0 || _camber.Values.Any(one => one.Way != 0);

    /// <summary>True where the diagnosis itself asks for another camber at an axle.</summary>
    public bool AsksCamber(CarAxle at) => _camber.TryGetValue(at, out var asked) && asked.Way != 0;

    /// <summary>What the diagnosis says of camber against or beside what is set, as sentences: where it asks for another way, leaves it, or asks for what the plan does not set.</summary>
    /// <param name="settings">The cambers to set.</param>
    /// <param name="given">The car as given.</param>
    public (IReadOnlyList<string> Texts, bool IsAgainst) OnCamber(IReadOnlyList<CamberSetting> settings, Vehicle given)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(given);
        var (texts, isAgainst) = (new List<string>(), false);
        foreach (var (at, asked) in _camber)
        {
            var setting = settings.Where(one => one.Axle == at).Select(one => (CamberSetting?)one).FirstOrDefault();
            if (setting is { } set && (asked.Way != 0 ? Math.Sign(set.ChangeDeg) != asked.Way : OwnReaches(set)))
            {
                texts.Add(asked.Text);
                isAgainst = true;
            }
            else if (setting is null && asked.Way != 0)
            {
                texts.Add(asked.Text);
            }
        }

        return (texts, isAgainst);

        // Where the car's own adjuster goes no further, parts are the answer to what the diagnosis says.
        bool OwnReaches(in CamberSetting set) => given.At(set.Axle).Adjustable.Camber is { CanBeSet: true } reach && Math.Abs(reach.Nearest(set.FirstDeg, set.GivenDeg) - set.GivenDeg) > LeastCamberDeg;
    }

    private const double LeastCamberDeg = 0.05;

    /// <summary>What the diagnosis of a plan's readings asks for first.</summary>
    /// <param name="advice">The advice of the diagnosis; null where no treads were read.</param>
    /// <param name="tyres">The state of each tyre read.</param>
    /// <param name="vehicle">The car as given.</param>
    /// <param name="units">Units of the sentences.</param>
    public static TreadsFirst Create(WearAdvice? advice, IReadOnlyList<TyreCondition> tyres, Vehicle vehicle, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tyres);
        ArgumentNullException.ThrowIfNull(vehicle);
        var first = new TreadsFirst();
        foreach (var tyre in tyres)
        {
            if (TyreCautions.Unsafe([tyre], units) is { } caution) first._unsafe.Add(Sentences.First(caution.Text));
        }

        Caution?[] ofSeveral = [UnusableTyres.Overloaded(vehicle, units), advice is null ? null : WearDiagnosisCautions.Build(tyres, advice, units).FirstOrDefault(one => one.Code == Air)];
        foreach (var caution in ofSeveral)
        {
            if (caution is null) continue;
            first._unsafe.Add(Sentences.First(caution.Text));
            first._isSeveral = true;
        }

        if (advice is null) return first;

        if (first._unsafe.Count == 0) first._nearEnd = advice.Lead;
        foreach (var axle in advice.Axles) first.Add(advice, axle, vehicle.At(axle.Axle).PlacardPressureKpa, units);
        return first;
    }

    private void Add(WearAdvice advice, AxleAdvice axle, double? plateKpa, UnitSystem units)
    {
        if (axle.Actions.Count == 0)
        {
            if (axle is { IsDone: false, Summary: { } measured }) _holds.Add(measured);
            return;
        }

        foreach (var action in axle.Actions)
        {
            var text = Sentences.First(action.Text);
            var cause = CauseOf(advice, axle.Axle, action);
            if (action.CamberDeg is not null) _camber[axle.Axle] = (Math.Sign(action.StepDeg ?? 0), text);
            else if (action.ColdPressureKpa is not null) _free.Add(action.SettingKpa < plateKpa - LeastKpa ? Prose.Write(units, $"{text.TrimEnd('.')}; on the road set the {plateKpa!.Value:kPaUp} of the car's plate.") : text);
            else if (cause is WearCause.LowNegativeCamber or WearCause.HighNegativeCamber) _camber[axle.Axle] = (0, text);
            else if (cause is null or WearCause.SideDifference or WearCause.AxleMisaligned or WearCause.ToeIn or WearCause.ToeOut) _holds.Add(text);
            else _free.Add(text);
        }
    }

    // What is measured again or inspected first is no finding's own action.
    private static WearCause? CauseOf(WearAdvice advice, CarAxle at, WearAction action)
    {
        foreach (var finding in advice.Acted)
        {
            if (finding.Axle == at && advice.ActionsFor(finding).Contains(action)) return finding.Cause;
        }

        return null;
    }
}

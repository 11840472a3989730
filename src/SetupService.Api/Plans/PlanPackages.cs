using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Work;
using SetupService.Api.Vehicles;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Planning;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans;

/// <summary>
/// Makes the car of every package and evaluates it: changes one after the other in the order of the parts, as what-if makes them together, each set of changes once whatever it costs.
/// Packages that begin alike share what they begin with.
/// </summary>
internal sealed class PlanPackages
{
    // Each share of the work begins from rest, so that the answer does not depend on how many processors there are.
    private const int ChunkSize = 50;

    private readonly PlanCase _plan;
    private readonly PartChanges _changes;
    private readonly UnitSystem _units;
    private readonly (double Front, double Rear) _treadsSay;
    private readonly RequestWork _work;
    private readonly State _start;

    /// <summary>The packages of a plan.</summary>
    /// <param name="plan">The car and what is wanted of it.</param>
    /// <param name="changes">What the parts change.</param>
    /// <param name="stated">The car's document.</param>
    /// <param name="units">Units of what is said about it.</param>
    /// <param name="treadsSay">What its treads say against the model.</param>
    /// <param name="work">The work allowed.</param>
    public PlanPackages(PlanCase plan, PartChanges changes, ChangedDocument<VehicleDocument> stated, UnitSystem units, (double Front, double Rear) treadsSay, RequestWork work)
    {
        (_plan, _changes, _units, _treadsSay, _work) = (plan, changes, units, treadsSay, work);
        _start = new(stated, plan.Given, plan.Given.Stated, null, null, null);
    }

    /// <summary>
    /// Evaluates packages; in the order given. One that only the alignment of its camber takes over the budget is evaluated with its camber left, and so is every one whose camber gains nothing
    /// anybody would notice, where that holds of the car without parts: nobody pays an alignment for it.
    /// </summary>
    /// <param name="packages">The packages.</param>
    /// <param name="isChosen">True where somebody chose these parts: what they set is set then, whatever it gains.</param>
    public IReadOnlyList<JudgedPackage> Evaluate(IReadOnlyList<PartPackage> packages, bool isChosen = false)
    {
        var judged = Reach(packages, setsCamber: true);
        Leave(judged, packages, Enumerable.Range(0, packages.Count).Where(i => judged[i].Package.Cost.Total > _plan.Limits.Budget && packages[i].Cost.Total <= _plan.Limits.Budget), (_, _) => true);
        if (isChosen) return judged;
        var bare = Array.Find(judged, one => one.Package.Count == 0) ?? Reach([default], setsCamber: true)[0];
        if (MayBeLeft(bare) && IsUnnoticed(bare, Reach([default], setsCamber: false)[0])) Leave(judged, packages, Enumerable.Range(0, packages.Count).Where(i => MayBeLeft(judged[i])), IsUnnoticed);
        return judged;
    }

    private void Leave(JudgedPackage[] judged, IReadOnlyList<PartPackage> packages, IEnumerable<int> which, Func<JudgedPackage, JudgedPackage, bool> isBetterLeft)
    {
        int[] places = [.. which];
        if (places.Length == 0) return;
        var left = Reach([.. places.Select(i => packages[i])], setsCamber: false);
        for (var i = 0; i < places.Length; i++)
        {
            if (isBetterLeft(judged[places[i]], left[i])) judged[places[i]] = left[i];
        }
    }

    private bool IsUnnoticed(JudgedPackage set, JudgedPackage left) =>
        left.Evaluated.Figures is { } before && !PlanChoice.IsNoticed(_plan.Goals, before, set.Figures) && PackageVerdict.Broken(_plan, _changes.Parts, left).Count == 0;

    // What the diagnosis asks for, the rule book ends, or new parts set by themselves, is set whatever it gains.
    private bool MayBeLeft(JudgedPackage one) => one.Evaluated is { Figures: not null, Settings: { Count: > 0 } settings } && settings.All(setting =>
        !_plan.First.AsksCamber(setting.Axle) && setting.GivenDeg >= _plan.MostCamberDeg && (setting.Reach is not { } reach || (setting.GivenDeg >= reach.FromDeg && setting.GivenDeg <= reach.ToDeg)));

    private JudgedPackage[] Reach(IReadOnlyList<PartPackage> packages, bool setsCamber)
    {
        // What only renews something changes no figure, and neither does what another part does as well.
        int[][] sequences = [.. packages.Select(package => package.Places().Where(place => _changes.Parts[place].Changes).ToArray())];
        var byNumbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var distinct = new List<int[]>();
        var evaluationOf = new int[packages.Count];
        for (var i = 0; i < sequences.Length; i++)
        {
            var key = string.Join(',', sequences[i].Select(place => _changes.Parts[place].ChangeNumber));
            if (!byNumbers.TryGetValue(key, out evaluationOf[i]))
            {
                evaluationOf[i] = byNumbers[key] = distinct.Count;
                distinct.Add(sequences[i]);
            }
        }

        // In lexical order, so that neighbours share most of their beginning.
        int[] order = [.. Enumerable.Range(0, distinct.Count)];
        Array.Sort(order, (one, other) => distinct[one].AsSpan().SequenceCompareTo(distinct[other]));
        var evaluated = new (EvaluatedPackage Package, PackageFit? Fit)[distinct.Count];
        var chunks = (order.Length + ChunkSize - 1) / ChunkSize;
        Parallel.For(0, chunks, new ParallelOptions { CancellationToken = _work.Cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount }, chunk =>
        {
            var walk = new Walk(this, setsCamber);
            for (var i = chunk * ChunkSize; i < Math.Min(order.Length, (chunk + 1) * ChunkSize); i++)
            {
                _work.Cancellation.ThrowIfCancellationRequested();
                evaluated[order[i]] = walk.Evaluate(distinct[order[i]]);
            }
        });

        return [.. packages.Select((package, i) => Judged(package, evaluated[evaluationOf[i]].Package, evaluated[evaluationOf[i]].Fit))];
    }

    // What a package's camber and its parts themselves add: an alignment, and how loud they are.
    private JudgedPackage Judged(in PartPackage package, EvaluatedPackage evaluated, PackageFit? fit) => new(
        evaluated.Settings.Count > 0 ? package with { Cost = package.Cost.WithAlignment(_plan.Prices) } : package,
        WithNoise(evaluated, PackageNoise.From(_changes.Parts, package, _plan.TyreNoiseDb).Steps),
        fit);

    private static EvaluatedPackage WithNoise(EvaluatedPackage evaluated, double? steps) => evaluated.Figures is not { } figures ? evaluated
        : evaluated with { Figures = figures with { NoiseSteps = steps }, FirstStep = evaluated.FirstStep is { } first ? first with { NoiseSteps = steps } : null };

    /// <summary>One thread's way through the packages: the cars of the beginning they share are kept.</summary>
    private sealed class Walk(PlanPackages owner, bool setsCamber)
    {
        private readonly PackageEvaluator _evaluator = new(owner._plan, owner._work.Budget.ForAnotherThread(), owner._treadsSay);
        private readonly List<(int Part, State State)> _path = [];

        public (EvaluatedPackage, PackageFit?) Evaluate(int[] parts)
        {
            var shared = 0;
            while (shared < _path.Count && shared < parts.Length && _path[shared].Part == parts[shared]) shared++;
            _path.RemoveRange(shared, _path.Count - shared);
            for (var i = shared; i < parts.Length; i++) _path.Add((parts[i], Next(_path.Count == 0 ? owner._start : _path[^1].State, parts[i])));
            var state = _path.Count == 0 ? owner._start : _path[^1].State;
            if (state is not { Car: { } car, Merged: { } merged }) return (new(null, [], null) { Fault = state.Fault, Problem = state.Problem }, null);
            var evaluated = _evaluator.Evaluate(new(car, merged, state.Change, settings => Set(state.Document, settings)), setsCamber);
            return (evaluated, PackageFit.Compute(owner._plan.Given.Stated, merged, evaluated.Car ?? car));
        }

        private static Vehicle? Set(ChangedDocument<VehicleDocument> document, IReadOnlyList<CamberSetting> settings)
        {
            foreach (var one in settings)
            {
                var axle = CarChange.PlaceOf(one.Axle);
                var members = new JsonObject { ["camberDeg"] = one.StatedDeg };
                if (document.Has(axle + "/alignment/right/camberDeg")) members["right"] = new JsonObject { ["camberDeg"] = one.StatedDeg };
                document = document.With(JsonElement.Parse(new JsonObject { [axle[1..]] = new JsonObject { ["alignment"] = members } }.ToJsonString()), axle);
            }

            return document.Read(PlanRules.Car).TryGet(out var read, out _) && VehicleMapper.Map(read).TryGet(out var merged, out _) ? merged : null;
        }

        private State Next(State before, int part)
        {
            if (before.Car is not { } previous) return before;
            var place = FormattableString.Invariant($"/parts/{part}/change");
            if (!CarChangeMapper.Make(before.Document, owner._changes.Document(part), place).TryGet(out var made, out var refusal)
                || !made.Document.Read(PlanRules.Car).TryGet(out var document, out refusal)
                || !VehicleMapper.Map(document).TryGet(out var merged, out refusal))
            {
                return before with { Car = null, Problem = refusal[0].Message };
            }

            var all = before.Change?.And(made.Change) ?? made.Change;
            var car = owner._plan.Given.Changed(merged, all, made.Change, previous, out var fault, owner._units);
            return new(made.Document, car, merged, all, fault, null);
        }
    }

    /// <summary>The car after some changes.</summary>
    /// <param name="Document">Its document.</param>
    /// <param name="Car">How it stands; null where it cannot, or its changes contradict each other.</param>
    /// <param name="Merged">The car with their values.</param>
    /// <param name="Change">What they say beside them.</param>
    /// <param name="Fault">Why it cannot stand.</param>
    /// <param name="Problem">How its changes contradict each other.</param>
    private sealed record State(ChangedDocument<VehicleDocument> Document, StandingCar? Car, Vehicle? Merged, CarChange? Change, StandingFault? Fault, string? Problem);
}

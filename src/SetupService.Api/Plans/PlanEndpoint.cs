using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Handling;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Api.Plans.Sheets;
using SetupService.Api.Wear;
using SetupService.Api.Wear.Diagnosis;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Numerics;
using SetupService.Domain.Planning;
using SetupService.Domain.Wear.Diagnosis.Advice;

namespace SetupService.Api.Plans;

/// <summary>The call that plans the parts of a car.</summary>
internal static class PlanEndpoint
{
    public static void MapPlans(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/v1").WithTags("Plans");
        group.MapPost("/plans", Plan)
            .WithWork()
            .WithQuery(QueryParameters.Units)
            .WithExample("plan")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("plan")
            .WithSummary("Which parts should I buy, if any?")
            .WithDescription("From the car, its use, what is wanted and the parts on offer (brought by the caller): the packages worth choosing between, each evaluated by the models of what-if, ride, camber-target, car-check and diagnosis; the recommended one with its first step; what was rejected and why; how the choice changes with budget and track use. At most 2,000 packages, every one evaluated; limits that conflict are a 422 that names them and the nearest package.");
        group.MapSheets();
    }

    private static Results<Answer<PlanAnswer>, Problem> Plan(
        Body<PlanRequest> body, JsonContract contract, QueryReader query, TimeProvider clock, RequestWork work)
    {
        if (body.Value is not { } request)
            return body.Problem!;
        if (!PlanMapper.Map(request).TryGet(out var inputs, out var refusal))
            return body.Refuse(refusal);
        var stated = contract.Changing(request.Vehicle, "/vehicle");
        if (!PartChanges.Read(request.Parts, inputs.Parts, stated).TryGet(out var changes, out refusal))
            return body.Refuse(refusal);
        var problem = PlannedCar.Compute(request, inputs, changes, stated, query.Units, clock, work, out var planned);
        return planned is not null ? new Answer<PlanAnswer>(PlanAnswers.Create(planned)) : problem!;
    }
}

/// <summary>A plan's car made ready to judge packages: how it stands, what its treads say, what it reaches as given.</summary>
internal sealed record PreparedPlan
{
    public required PlanRequest Request { get; init; }

    public required PlanInputs Inputs { get; init; }

    public required PartChanges Changes { get; init; }

    public required PlanCase Case { get; init; }

    public required DiagnosedCar? Wear { get; init; }

    public required UnitSystem Units { get; init; }

    /// <summary>What the car as given reaches.</summary>
    public required PackageFigures Before { get; init; }

    /// <summary>Evaluates packages.</summary>
    public required PlanPackages Packages { get; init; }

    /// <summary>What the treads say against the model.</summary>
    public required (double Front, double Rear) TreadsSay { get; init; }

    /// <summary>Makes a plan ready; null with the problem where it cannot be.</summary>
    public static Problem? Compute(
        PlanRequest request, PlanInputs inputs, PartChanges changes, ChangedDocument<Vehicles.VehicleDocument> stated, UnitSystem units, TimeProvider clock, RequestWork work, out PreparedPlan? prepared)
    {
        prepared = null;
        var budget = work.Budget;
        if (StandingCar.AsGiven(inputs.Vehicle, units) is not { } given) return HandlingProblems.NoCorner(inputs.Vehicle);
        var bends = PlanMapper.Bends(request).Corners;
        var hardest = bends.MaxBy(bend => bend.Demand.LateralG).Demand;
        var wear = request.Wear is { } read ? Study(read, inputs, units, clock, budget) : null;
        var plan = new PlanCase
        {
            Given = given,
            Bends = bends,
            Scale = GripScale.Find(given.Reading.Car, TurnPath.AtRadius(hardest.Turn, hardest.RadiusM), request.HeldLateralG, budget) ?? GripScale.ByTyres,
            Use = PlanMapper.Use(request.Use),
            Goals = PlanMapper.Goals(request),
            Limits = PlanMapper.Limits(request.Limits),
            Prices = PlanMapper.Prices(request),
            Currency = inputs.Currency,
            TyreNoiseDb = request.TyreNoiseDb,
            Wear = wear?.Study,
            First = TreadsFirst.Create(wear is null ? null : WearAdvice.Create(wear.Study, wear.Conditions, units), wear?.Conditions ?? [], inputs.Vehicle, units),
        };
        var evaluator = new PackageEvaluator(plan, budget);
        var asGiven = evaluator.Given();
        if (asGiven.Figures is not { } before)
        {
            work.Cancellation.ThrowIfCancellationRequested();
            return PlanProblems.NoTurn(asGiven, units);
        }

        prepared = new()
        {
            Request = request,
            Inputs = inputs,
            Changes = changes,
            Case = plan,
            Wear = wear,
            Units = units,
            Before = before,
            TreadsSay = evaluator.TreadsSay,
            Packages = new(plan, changes, stated, units, evaluator.TreadsSay, work),
        };
        return null;
    }

    /// <summary>Judges a package that was evaluated.</summary>
    public JudgedPackage Judge(JudgedPackage evaluated) => PackageVerdict.Judge(Case, Changes.Parts, Before, evaluated, Units);

    private static DiagnosedCar Study(PlanWearDocument read, PlanInputs inputs, UnitSystem units, TimeProvider clock, WorkBudget budget)
    {
        var today = read.ReadOn is { } day ? TyreReadingMapper.Day(day)!.Value : DateOnly.FromDateTime(clock.GetUtcNow().Date);
        return DiagnosedCar.From(new DiagnosisRequest { Use = read.Use, Tyres = read.Tyres, ReadOn = read.ReadOn }, inputs.Vehicle, today, units, budget);
    }
}

/// <summary>A plan worked out, with all its answer is made of.</summary>
internal sealed record PlannedCar
{
    public required PreparedPlan Prepared { get; init; }

    public required PlanResult Result { get; init; }

    public required OrderCertainty? Certainty { get; init; }

    public required int PackageCount { get; init; }

    public PlanRequest Request => Prepared.Request;

    public PlanInputs Inputs => Prepared.Inputs;

    public PartChanges Changes => Prepared.Changes;

    public PlanCase Case => Prepared.Case;

    public DiagnosedCar? Wear => Prepared.Wear;

    public UnitSystem Units => Prepared.Units;

    /// <summary>Works a plan out; null with the problem where there is none.</summary>
    public static Problem? Compute(
        PlanRequest request, PlanInputs inputs, PartChanges changes, ChangedDocument<Vehicles.VehicleDocument> stated, UnitSystem units, TimeProvider clock, RequestWork work, out PlannedCar? planned)
    {
        planned = null;
        var budget = work.Budget;
        if (PreparedPlan.Compute(request, inputs, changes, stated, units, clock, work, out var ready) is { } unready) return unready;
        var (prepared, plan) = (ready!, ready!.Case);
        var found = PackageSearch.Find(changes.Parts, plan.Limits.Budget, plan.Prices, work: budget);
        work.Cancellation.ThrowIfCancellationRequested();
        if (found.Count > PackageSearch.MostPackages) return PlanProblems.TooMany(found.Count);
        var evaluated = prepared.Packages.Evaluate(found.Packages);
        if (evaluated.Any(one => one.Evaluated.Failure is CorneringFailure.WorkSpent))
        {
            work.Cancellation.ThrowIfCancellationRequested();
            return work.Refuse();
        }

        if (PlanConflict.Find(plan, changes.Parts, evaluated) is not null)
        {
            // What more money would do belongs to the answer where the budget is among the limits that conflict.
            var any = PackageSearch.Find(changes.Parts, null, plan.Prices, work: budget);
            var all = any.Count <= PackageSearch.MostPackages ? prepared.Packages.Evaluate(any.Packages) : evaluated;
            return PlanProblems.Conflict(PlanConflict.Find(plan, changes.Parts, all)
                ?? PlanConflict.Find(plan, changes.Parts, evaluated)!, plan, changes.Parts, units);
        }

        JudgedPackage[] judged = [.. evaluated.Select(prepared.Judge)];
        var result = PlanResult.Compose(plan, changes.Parts, prepared.Before, judged);
        planned = new()
        {
            Prepared = prepared,
            Result = result,
            Certainty = result.Recommended is { } best ? OrderCertainty.Compute(plan, prepared.TreadsSay, result.Choice, prepared.Before, [best, .. result.Rivals], budget) : null,
            PackageCount = found.Count,
        };
        work.Cancellation.ThrowIfCancellationRequested();
        return null;
    }
}

/// <summary>The 422s of a plan.</summary>
internal static class PlanProblems
{
    /// <summary>The car as given has no equilibrium in a bend.</summary>
    public static Problem NoTurn(EvaluatedPackage asGiven, UnitSystem units)
    {
        var bend = asGiven.Failed;
        var reason = asGiven.Failure switch
        {
            CorneringFailure.RollsOver => Prose.Write(units, $"at {bend.LateralG:n} g and {bend.RadiusM:m} radius the car as given would roll over."),
            CorneringFailure.WorkSpent => "the work allowed for one request was spent before the car as given was solved; give fewer bends.",
            _ => Prose.Write(units, $"at {bend.LateralG:n} g and {bend.RadiusM:m} radius a wheel of the car as given would travel or steer further than its suspension, or its readings, reach."),
        };
        return Problem.NotComputable($"No plan is made: {reason}", [Fault.At("/bends", FaultCodes.Unreachable, reason)]);
    }

    /// <summary>More packages than are evaluated.</summary>
    public static Problem TooMany(int count)
    {
        var many = count >= PackageSearch.MostCounted ? "more than a million" : count.ToString("N0", System.Globalization.CultureInfo.InvariantCulture);
        var reason = $"There are {many} packages left after budget, requires and excludes; at most {PackageSearch.MostPackages:N0} are evaluated, every one. A lower budget, fewer parts, excludes between parts that do the same job, or pairsWith for parts bought together leave fewer.";
        return Problem.NotComputable(reason, [Fault.At("/parts", FaultCodes.TooMany, reason, new FaultLimits { Minimum = 0, Maximum = PackageSearch.MostPackages, Unit = "packages" })]);
    }

    /// <summary>Limits that no package keeps together.</summary>
    public static Problem Conflict(PlanConflict conflict, PlanCase plan, IReadOnlyList<OfferedPart> parts, UnitSystem units)
    {
        var names = string.Join(" and ", conflict.Limits.Select(limit => $"{Pointer(limit)[8..]} ({Value(limit)})"));
        var nearest = conflict.Nearest.Package.Count == 0 ? "no parts" : string.Join(" and ", conflict.Nearest.Package.Places().Select(place => $"'{parts[place].Id}'"));
        var detail = $"No package keeps {(conflict.Limits.Count == 1 ? "this limit" : "these limits together")}: {names}. Nearest is the package with {nearest}: it breaks only {string.Join(" and ", conflict.Broken.Select(limit => $"{Pointer(limit)[8..]}, {Reached(limit)}"))}.";
        return Problem.NotComputable(detail, [.. conflict.Limits.Select(limit => Fault.At(Pointer(limit), FaultCodes.Inconsistent, $"no package keeps {(conflict.Limits.Count == 1 ? "it" : "it together with " + string.Join(" and ", conflict.Limits.Where(other => other != limit).Select(other => Pointer(other)[8..])))}."))]);

        string Value(PlanLimit limit) => limit switch
        {
            PlanLimit.Budget => plan.Money(plan.Limits.Budget!.Value),
            PlanLimit.LowestRideHeight => Prose.Write(units, $"{plan.Limits.LowestRideHeightChangeMm!.Value:gap}"),
            PlanLimit.GreatestRimWidth => Number(plan.Limits.GreatestRimWidthIn, "in"),
            PlanLimit.MostNegativeCamber => Number(plan.Limits.MostNegativeCamberDeg, "°"),
            PlanLimit.HighestRideFrequency => Number(plan.Limits.HighestRideFrequencyHz, "Hz"),
            PlanLimit.LeastLimit => Number(plan.Limits.LeastLimitG, "g"),
            _ => "true",
        };

        string Reached(PlanLimit limit)
        {
            var (package, figures) = (conflict.Nearest.Package, conflict.Nearest.Evaluated.Figures);
            return limit switch
            {
                PlanLimit.Budget => $"costing {plan.Money(package.Cost.Total)}",
                PlanLimit.LowestRideHeight => Prose.Write(units, $"with {Math.Min(figures!.Front.HeightMm ?? 0, figures.Rear.HeightMm ?? 0):room}"),
                PlanLimit.GreatestRimWidth => "with " + Number(Math.Max(figures!.Front.RimWidthIn ?? 0, figures.Rear.RimWidthIn ?? 0), "in"),
                PlanLimit.MostNegativeCamber => "with " + Number(Math.Min(figures!.Front.CamberDeg, figures.Rear.CamberDeg), "°"),
                PlanLimit.HighestRideFrequency => "with " + Number(figures!.RideFrequencyHz, "Hz"),
                PlanLimit.LeastLimit => figures?.LimitG is { } holds ? "holding " + Number(holds, "g") : "what it holds not being known",
                _ => "with a part or tyre that is not allowed on the road",
            };
        }

        static string Number(double? value, string unit) => FormattableString.Invariant($"{value:0.##}{(unit == "°" ? "" : " ")}{unit}").Replace('-', '−');
    }

    private static string Pointer(PlanLimit limit) => "/limits/" + limit switch
    {
        PlanLimit.Budget => "budget",
        PlanLimit.LowestRideHeight => "lowestRideHeightChangeMm",
        PlanLimit.RoadLegalOnly => "roadLegalOnly",
        PlanLimit.GreatestRimWidth => "greatestRimWidthIn",
        PlanLimit.MostNegativeCamber => "mostNegativeCamberDeg",
        PlanLimit.HighestRideFrequency => "highestRideFrequencyHz",
        _ => "leastLimitG",
    };
}

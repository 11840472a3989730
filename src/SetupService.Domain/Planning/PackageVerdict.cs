using SetupService.Domain.Answers;
using SetupService.Domain.Fitment;
using SetupService.Domain.Fitment.Words;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Planning;

/// <summary>A package with all it is judged by.</summary>
/// <param name="Package">Its parts and cost.</param>
/// <param name="Evaluated">What it reaches.</param>
/// <param name="Fit">Whether its wheels and tyres fit; null where the car cannot stand.</param>
public sealed record JudgedPackage(PartPackage Package, EvaluatedPackage Evaluated, PackageFit? Fit)
{
    /// <summary>Why it is out of the question; empty where it is not.</summary>
    public IReadOnlyList<PackageReason> Rejected { get; init; } = [];

    /// <summary>Why it is not recommended although it may be chosen; empty where it may be.</summary>
    public IReadOnlyList<PackageReason> Doubts { get; init; } = [];

    /// <summary>What it reaches; only of a package that has figures.</summary>
    public PackageFigures Figures => Evaluated.Figures!;

    /// <summary>True where it may be recommended.</summary>
    public bool IsSound => Rejected.Count == 0 && Doubts.Count == 0;
}

/// <summary>Why a package, or a part, is rejected or not recommended.</summary>
/// <param name="Code">The kind of reason.</param>
/// <param name="Text">The reason in a sentence, with the numbers of the case.</param>
public sealed record PackageReason(RejectionCode Code, string Text);

/// <summary>Why something is rejected or not recommended.</summary>
public enum RejectionCode
{
    /// <summary>It costs more than the budget.</summary>
    OverBudget,

    /// <summary>With it the car cannot stand on its springs.</summary>
    CannotStand,

    /// <summary>With it the car has no equilibrium in the bends.</summary>
    CannotHoldTurn,

    /// <summary>Its wheel or tyre does not fit: too tight, or not made for the hub.</summary>
    DoesNotFit,

    /// <summary>Its tyre or wheel is loaded beyond its rating.</summary>
    Overloaded,

    /// <summary>Whether it fits is not known yet.</summary>
    FitUnknown,

    /// <summary>The dampers do not suit its springs.</summary>
    DamperOverwhelmed,

    /// <summary>Whether the dampers suit its springs is not known.</summary>
    DamperUnknown,

    /// <summary>It is beyond a limit the caller set.</summary>
    BeyondLimit,

    /// <summary>It is not allowed on the road, and only what is was asked for.</summary>
    NotRoadLegal,

    /// <summary>It spoils the car for the road.</summary>
    SpoilsRoad,

    /// <summary>It makes the rear give up first.</summary>
    RearFirst,

    /// <summary>It cannot be undone.</summary>
    NotReversible,

    /// <summary>It changes nothing the plan is judged by.</summary>
    ChangesNothing,

    /// <summary>Whatever it is put with, the same money or less does as well without it.</summary>
    NothingBetter,
}

/// <summary>Judges packages: what a careful shop would refuse, and what it would not recommend. Method page: docs/methods/plan.</summary>
public static class PackageVerdict
{
    /// <summary>The hardest ride taken for a car that is driven on the road, Hz; judgement: road cars 1.0 to 1.5, sporting ones to 2.0, from memory.</summary>
    public const double MostRoadFrequencyHz = 2.2;

    /// <summary>Least travel to the bump stop on the road, standing, mm; judgement: less is met at every bump.</summary>
    public const double LeastRoadTravelMm = 25;

    // Springs this much stiffer than those the dampers were made for need the damper's figures; common practice, no source.
    private const double MostStifferUnknown = 1.25;

    // How much the rear may hold less than the front before a road car is not to be recommended so, g; judgement.
    private const double LeastMarginG = 0;
    private const double LeastMarginMovedG = 0.005;
    private const double LeastToldG = 0.005;
    private const double Slack = 1e-9;

    // The category of slicks, as PackageFigures.DryBias counts it.
    private const int SlickBias = 3;

    // Angles are set to a tenth, and camber moves a little with height.
    private const double SlackDeg = 0.05;

    /// <summary>The limits a package breaks, but for the budget.</summary>
    public static IReadOnlyList<PlanLimit> Broken(PlanCase plan, IReadOnlyList<OfferedPart> parts, JudgedPackage one)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(one);
        var (limits, broken) = (plan.Limits, new List<PlanLimit>());
        if (limits.RoadLegalOnly && (one.Package.Places().Any(place => parts[place].IsRoadLegal == false) || one.Evaluated.Figures is { DryBias: >= SlickBias })) Add(PlanLimit.RoadLegalOnly);
        if (one.Evaluated.Figures is not { } figures) return broken;
        foreach (var at in (CarAxle[])[CarAxle.Front, CarAxle.Rear])
        {
            if (limits.GreatestRimWidthIn is { } widthIn && figures.At(at).RimWidthIn > widthIn + Slack) Add(PlanLimit.GreatestRimWidth);
            if (limits.MostNegativeCamberDeg is { } camberDeg && figures.At(at).CamberDeg < camberDeg - SlackDeg) Add(PlanLimit.MostNegativeCamber);
            if (limits.LowestRideHeightChangeMm is { } lowestMm && figures.At(at).HeightMm < lowestMm - Slack) Add(PlanLimit.LowestRideHeight);
        }

        if (limits.HighestRideFrequencyHz is { } highest && figures.RideFrequencyHz > highest + Slack) Add(PlanLimit.HighestRideFrequency);
        if (limits.LeastLimitG is { } least && !(figures.LimitG >= least - Slack)) Add(PlanLimit.LeastLimit);
        return broken;

        void Add(PlanLimit limit)
        {
            if (!broken.Contains(limit)) broken.Add(limit);
        }
    }

    /// <summary>A package with the reasons against it.</summary>
    /// <param name="plan">The car and what is wanted of it.</param>
    /// <param name="parts">The parts on offer.</param>
    /// <param name="given">What the car as given reaches.</param>
    /// <param name="one">The package.</param>
    /// <param name="units">Units of the sentences.</param>
    public static JudgedPackage Judge(PlanCase plan, IReadOnlyList<OfferedPart> parts, PackageFigures given, JudgedPackage one, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(one);
        var (rejected, doubts) = (new List<PackageReason>(), new List<PackageReason>());
        if (one.Evaluated.Fault is { } fault) rejected.Add(new(RejectionCode.CannotStand, fault.Describe(units)));
        else if (one.Evaluated.Problem is { } problem) rejected.Add(new(RejectionCode.CannotStand, $"Its parts do not go together: {problem}"));
        else if (one.Evaluated.Failure is { } failure) rejected.Add(new(RejectionCode.CannotHoldTurn, CannotHold(failure, one.Evaluated.Failed, units)));
        if (plan.Limits.Budget is { } budget && one.Package.Cost.Total > budget)
            rejected.Add(new(RejectionCode.OverBudget, $"{(one.Package.Cost.Alignment > 0 ? "With the alignment it" : "It")} costs {plan.Money(one.Package.Cost.Total)}; the budget is {plan.Money(budget)}."));
        foreach (var limit in Broken(plan, parts, one)) rejected.Add(Beyond(plan, limit, one, units));
        if (plan.Use.RoadKm > 0 && !plan.Limits.RoadLegalOnly && NotForTheRoad() is { } unlawful)
            doubts.Add(new(RejectionCode.NotRoadLegal, Prose.Write(units, $"{unlawful} not allowed on the road, and this car is driven {plan.Use.RoadKm:km} a year on it: local law decides, and the insurance may not pay.")));
        if (one.Fit is { } fit) AddFit(fit);
        if (one.Evaluated is { Figures: { } figures, Car: { } car }) AddFigures(figures, car);
        if (plan.Goals.Any(goal => goal.Goal == PlanGoal.KeepReversible) && one.Package.Places().FirstOrDefault(place => parts[place].IsReversible == false, -1) is >= 0 and var kept)
            doubts.Add(new(RejectionCode.NotReversible, $"'{parts[kept].Id}' cannot be undone, and the car is to stay reversible."));
        return one with { Rejected = rejected, Doubts = doubts };

        // What the car is on already is not the package's doing.
        string? NotForTheRoad()
        {
            string[] names = [.. one.Package.Places().Where(place => parts[place].IsRoadLegal == false).Select(place => $"'{parts[place].Id}'")];
            if (names.Length > 0) return $"By what is stated of {(names.Length == 1 ? "it" : "them")}, {string.Join(" and ", names)} {(names.Length == 1 ? "is" : "are")}";
            return one.Evaluated.Figures is { DryBias: >= SlickBias } && given.DryBias < SlickBias ? "Slicks are" : null;
        }

        void AddFit(PackageFit checkedFit)
        {
            foreach (var axle in checkedFit.Checked)
            {
                var end = axle.Axle == CarAxle.Front ? "front" : "rear";
                foreach (var id in axle.Sheet.Failed)
                {
                    var isLoad = id is CheckId.LoadCapacity or CheckId.WheelLoadRating;
                    var why = new PackageReason(isLoad ? RejectionCode.Overloaded : RejectionCode.DoesNotFit, $"At the {end} {Lower(SummaryWords.Reason(axle.Car, axle.Candidate, id, axle.Sheet[id], units))}");
                    var isArch = !plan.Limits.ArchesUntouched && (id is CheckId.OutboardClearance or CheckId.ArchCover);
                    (isArch ? doubts : rejected).Add(why);
                }

                if (one.Evaluated.Figures?.At(axle.Axle).HeightMm is null)
                    doubts.Add(new(RejectionCode.FitUnknown, $"How high the {end} stands on its new springs is not known, and its wheels were checked at the height of today: fit the springs and measure the gaps before buying them."));
                if (axle.Sheet.Verdict == CheckStatus.Unknown)
                    doubts.Add(new(RejectionCode.FitUnknown, $"At the {end} it is not known yet whether the wheel and tyre fit ({string.Join(", ", axle.Sheet.Unknown.ToArray().Where(id => axle.Car.RequiredFor(axle.Candidate).Contains(id)).Select(id => Lower(CheckWords.Title(id))))}): measure before buying."));
            }
        }

        void AddFigures(PackageFigures figures, StandingCar car)
        {
            foreach (var at in (CarAxle[])[CarAxle.Front, CarAxle.Rear])
            {
                var (before, after, end) = (given.At(at), figures.At(at), at == CarAxle.Front ? "front" : "rear");
                var range = DampingRange.RoadAndTrack;
                if (range.Judge(after.DampingRatio) == DamperVerdict.Replace && IsFurtherOut(range, before.DampingRatio, after.DampingRatio!.Value))
                    rejected.Add(new(RejectionCode.DamperOverwhelmed, FormattableString.Invariant($"The {end} dampers do not suit these springs: their damping ratio is {after.DampingRatio:0.00}, outside {range.From:0.00} to {range.To:0.00}.")));
                else if (after.DampingRatio is null && after.WheelRateNPerMm > MostStifferUnknown * before.WheelRateNPerMm)
                    doubts.Add(new(RejectionCode.DamperUnknown, FormattableString.Invariant($"The {end} is {Pct(after.WheelRateNPerMm, before.WheelRateNPerMm)} % stiffer at the wheel, and what the dampers do is not known: give the damper's bumpNsPerM and reboundNsPerM.")));
                if (!(plan.Use.RoadKm > 0)) continue;
                if (after.RideFrequencyHz > MostRoadFrequencyHz && after.RideFrequencyHz > before.RideFrequencyHz + Slack)
                    rejected.Add(new(RejectionCode.SpoilsRoad, FormattableString.Invariant($"The {end} rides at {after.RideFrequencyHz:0.00} Hz, harder than the {MostRoadFrequencyHz:0.0} Hz a road car bears.")));
                if (after.BumpLeftMm < LeastRoadTravelMm && after.BumpLeftMm < before.BumpLeftMm - Slack)
                    rejected.Add(new(RejectionCode.SpoilsRoad, Prose.Write(units, $"Standing, the {end} has {Math.Max(0, after.BumpLeftMm.Value):room} of travel left to its bump stops; on the road it would be on them at every bump.")));
            }

            if (figures.MarginG < LeastMarginG && given.MarginG is { } was && figures.MarginG < was - LeastMarginMovedG)
                doubts.Add(new(RejectionCode.RearFirst, FormattableString.Invariant($"The rear would give up first, {(-figures.MarginG >= LeastToldG ? FormattableString.Invariant($"{-figures.MarginG:0.00} g") : "just")} before the front: a car whose rear lets go first may spin.")));
        }

        static double Pct(double after, double before) => Math.Round(100 * ((after / before) - 1));
    }

    // Dampers that do not suit the springs of today are told of the car as given; a package is refused where it takes them further out.
    private static bool IsFurtherOut(DampingRange range, double? before, double after) =>
        before is not { } was || range.Judge(was) != DamperVerdict.Replace || (after < range.From ? after < was - Slack : after > was + Slack);

    private static string CannotHold(CorneringFailure failure, in CorneringDemand bend, UnitSystem units) => failure switch
    {
        CorneringFailure.RollsOver => Prose.Write(units, $"With it the car would roll over at {bend.LateralG:n} g and {bend.RadiusM:m} radius."),
        CorneringFailure.WorkSpent => "The work allowed for one request was spent before it was evaluated.",
        _ => Prose.Write(units, $"With it a wheel would travel or steer further than its suspension, or its readings, reach at {bend.LateralG:n} g and {bend.RadiusM:m} radius."),
    };

    private static PackageReason Beyond(PlanCase plan, PlanLimit limit, JudgedPackage one, UnitSystem units)
    {
        var (limits, figures) = (plan.Limits, one.Evaluated.Figures);
        return limit switch
        {
            PlanLimit.RoadLegalOnly => new(RejectionCode.NotRoadLegal, "It is not allowed on the road, and only parts that are were asked for."),
            PlanLimit.GreatestRimWidth => new(RejectionCode.BeyondLimit, FormattableString.Invariant($"Its rim is {Math.Max(figures!.Front.RimWidthIn ?? 0, figures.Rear.RimWidthIn ?? 0):0.#} in wide; the limit is {limits.GreatestRimWidthIn:0.#} in.")),
            PlanLimit.MostNegativeCamber => new(RejectionCode.BeyondLimit, Prose.Write(units, $"Its camber would be {Math.Min(figures!.Front.CamberDeg, figures.Rear.CamberDeg):angle}; the limit is {limits.MostNegativeCamberDeg!.Value:angle}.")),
            PlanLimit.LowestRideHeight => new(RejectionCode.BeyondLimit, Prose.Write(units, $"It would stand {-Math.Min(figures!.Front.HeightMm ?? 0, figures.Rear.HeightMm ?? 0):room} lower; at most {-limits.LowestRideHeightChangeMm!.Value:gap} is allowed.")),
            PlanLimit.HighestRideFrequency => new(RejectionCode.SpoilsRoad, FormattableString.Invariant($"It rides at {figures!.RideFrequencyHz:0.00} Hz; at most {limits.HighestRideFrequencyHz:0.00} Hz is wanted.")),
            _ => new(RejectionCode.BeyondLimit, figures!.LimitG is { } holds ? FormattableString.Invariant($"It holds {holds:0.00} g on average; {limits.LeastLimitG:0.00} g is wanted.") : "What it can hold is not known."),
        };
    }

    private static string Lower(string title) => char.ToLowerInvariant(title[0]) + title[1..];
}

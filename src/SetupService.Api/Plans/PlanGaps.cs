using SetupService.Api.Http.Shared;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Handling.Ride;
using SetupService.Domain.Planning;
using SetupService.Domain.Vehicles;

namespace SetupService.Api.Plans;

/// <summary>What a plan does not tell, each with the reason. A figure of a package that is not told of the car as given either has its reason there.</summary>
internal static class PlanGaps
{
    private static readonly CarAxle[] Axles = [CarAxle.Front, CarAxle.Rear];

    /// <summary>The gaps, in the order of the answer.</summary>
    public static IEnumerable<UnknownResponse> Find(PlannedCar planned)
    {
        var (plan, result) = (planned.Case, planned.Result);
        foreach (var one in Certainty(planned)) yield return one;
        if (planned.Wear is null) yield return UnknownResponse.Create("/before/treadLifeFactor", "needs the treads' depths and what the tyres did: tread life is told by the wear model learned from them", "/wear");
        else if (planned.Wear.NoModel is { } gap) yield return UnknownResponse.Create("/before/treadLifeFactor", gap.Reason, [.. gap.Needs.Select(need => need.StartsWith("/vehicle", StringComparison.Ordinal) ? need : "/wear" + need)]);
        else if (plan.ContradictedAt is { } contradicted)
            yield return UnknownResponse.Create("/before/treadLifeFactor", $"the {CorneringWords.Name(contradicted)} shoulders as read contradict what the wear model expects of another camber: the treads count, and by how much a package moves their life is not told");
        else if (result.Given.TreadLifeFactor is null) yield return UnknownResponse.Create("/before/treadLifeFactor", "needs depths of both axles, and use on road or track", "/wear/tyres");
        foreach (var one in Limits(result.Given, null, "/before")) yield return one;
        foreach (var at in Axles)
        {
            if (result.Given.At(at).DampingRatio is null) yield return Damping(at, "/before");
        }

        if (result.Given.InnerShoulderWearRatio is null) yield return UnknownResponse.Create("/before/road/innerShoulderWearRatio", "needs the tyres fitted", "/vehicle/front/tyre", "/vehicle/rear/tyre");
        for (var i = 0; i < result.Packages.Count; i++)
        {
            foreach (var one in Package(planned, result.Packages[i], FormattableString.Invariant($"/packages/{i}/after"))) yield return one;
        }

        foreach (var at in Axles)
        {
            var (axle, name) = (plan.Given.Stated.At(at), CorneringWords.Name(at));
            if (axle.Adjustable.Camber is null) yield return UnknownResponse.Create($"{name}Camber", $"how far the {name} camber can be set with the parts fitted now was not given, so it is left as it is", $"/vehicle/{name}/adjustable/camberDeg");
            else if (axle.Adjustable.Camber is { CanBeSet: true } && axle.Left.CamberDeg is null) yield return UnknownResponse.Create($"{name}Camber", $"the {name} camber was not measured, so no other one can be advised", $"/vehicle/{name}/alignment/camberDeg");
        }

        var parts = planned.Changes.Parts;
        if (plan.Prices.LabourPerHour is null && parts.Any(part => part.LabourHours > 0)) yield return UnknownResponse.Create("labour", "what labour costs was not given: it is told in hours and not in the cost", "/labourPerHour");
        if (plan.Prices.Alignment is null && result.Packages.Any(one => one.Evaluated.Settings.Count > 0 || one.Package.Places().Any(place => OfferedPart.MovesAngles(parts[place].Kind))))
            yield return UnknownResponse.Create("alignment", "what having toe and camber set costs was not given: the alignment that these packages need is not in the cost", "/alignment");
        if (plan.Goals.Any(goal => goal.Goal == PlanGoal.Wet)) yield return UnknownResponse.Create("wet", "how much a tyre holds on a wet road is not told by what is given; only how far its category is made for a dry track counts");
        if (plan.Goals.Any(goal => goal.Goal == PlanGoal.Noise) && Untold(planned.Prepared).ToArray() is { Length: > 0 } untold)
            yield return UnknownResponse.Create("noise", "how loud these parts make the car is not told: " + string.Join(", ", untold.Select(one => parts[one.Part].Id)), [.. untold.Select(one => one.Pointer).Distinct()]);
        if (plan.Limits.RoadLegalOnly && parts.Any(part => part.IsRoadLegal is null))
            yield return UnknownResponse.Create("roadLegal", "whether these parts may be used on the road was not given; ask before buying: " + string.Join(", ", parts.Where(part => part.IsRoadLegal is null).Select(part => part.Id)),
                [.. parts.Select((part, i) => (part, i)).Where(one => one.part.IsRoadLegal is null).Select(one => FormattableString.Invariant($"/parts/{one.i}/isRoadLegal"))]);
    }

    /// <summary>Parts on offer that would be heard, of which nobody said how much, with the member that would say it.</summary>
    public static IEnumerable<(int Part, string Pointer)> Untold(PreparedPlan planned)
    {
        var parts = planned.Changes.Parts;
        for (var i = 0; i < parts.Count; i++)
        {
            if (PackageNoise.From(parts, new PartPackage(1UL << i, default), planned.Case.TyreNoiseDb).Untold.Count == 0) continue;
            yield return (i, OfferedPart.HasJoint(parts[i].Kind) ? FormattableString.Invariant($"/parts/{i}/joint") : parts[i].NoiseDb is null ? FormattableString.Invariant($"/parts/{i}/noiseDb") : "/tyreNoiseDb");
        }
    }

    private static IEnumerable<UnknownResponse> Certainty(PlannedCar planned)
    {
        const string At = "/recommended/staysFirstPct";
        if (planned.Result.Recommended is null || planned.Certainty is { Rivals: > 0, IsDrawn: true }) yield break;
        yield return planned.Certainty is { Rivals: > 0 } ? UnknownResponse.Create(At, "nothing that is assumed of the car moves what these packages do for the goals, so no cases were drawn")
            : planned.Result.Rivals.Count == 0 ? UnknownResponse.Create(At, "no other package may be chosen, so there is no order to be sure of", "/parts")
            : UnknownResponse.Create(At, "in some of the draws the car has no equilibrium in a bend, or they took more work than is allowed: give fewer or slower bends, or measure what was assumed", "/bends");
    }

    private static IEnumerable<UnknownResponse> Package(PlannedCar planned, JudgedPackage one, string place)
    {
        var (figures, given, car) = (one.Figures, planned.Result.Given, one.Evaluated.Car!);
        foreach (var limit in Limits(figures, given, place)) yield return limit;
        foreach (var at in Axles)
        {
            var name = CorneringWords.Name(at);
            if (figures.At(at).DampingRatio is null && given.At(at).DampingRatio is not null) yield return Damping(at, place);
            if (figures.At(at).HeightMm is null)
            {
                var gap = car.Unknown.FirstOrDefault(other => other.At == at && other.Figure == FollowingFigure.RideHeight);
                yield return UnknownResponse.Create($"{place}/road/{name}RideHeightChangeMm", gap?.Reason ?? "how much lower or higher these springs stand is not told by what is known of them", [.. (gap?.Needs ?? []).Select(need => "/vehicle" + need)]);
            }
        }

        if (figures.InnerShoulderWearRatio is null && given.InnerShoulderWearRatio is not null) yield return UnknownResponse.Create(place + "/road/innerShoulderWearRatio", "needs the tyres fitted", "/parts");
        if (figures.NoiseSteps is null)
        {
            yield return UnknownResponse.Create(place + "/road/noiseSteps", "how loud some of its parts are was not told",
                [.. Untold(planned.Prepared).Where(untold => one.Package.Has(untold.Part)).Select(untold => untold.Pointer).Distinct()]);
        }

        if (figures.TreadLifeFactor is null && given.TreadLifeFactor is not null)
        {
            yield return UnknownResponse.Create(place + "/treadLifeFactor", planned.Case.HasOtherTyre(car)
                ? "another tyre wears by its own rubber, which the treads that were read do not tell"
                : "with it the car has no equilibrium in the bends its treads were learned in");
        }
    }

    private static IEnumerable<UnknownResponse> Limits(PackageFigures figures, PackageFigures? toldOf, string place)
    {
        const string Reason = "in one of the bends the car has no equilibrium up to where an axle gives up";
        if (figures.LimitG is null && toldOf is not { LimitG: null }) yield return UnknownResponse.Create(place + "/track/limitG", Reason, "/bends");
        if (figures.Front.LimitG is null && toldOf is not { Front.LimitG: null }) yield return UnknownResponse.Create(place + "/track/frontLimitG", Reason, "/bends");
        if (figures.Rear.LimitG is null && toldOf is not { Rear.LimitG: null }) yield return UnknownResponse.Create(place + "/track/rearLimitG", Reason, "/bends");
    }

    private static UnknownResponse Damping(CarAxle at, string place)
    {
        var name = CorneringWords.Name(at);
        return UnknownResponse.Create($"{place}/road/{name}DampingRatio", $"needs bumpNsPerM and reboundNsPerM of the {name} damper", $"/vehicle/{name}/damper");
    }
}

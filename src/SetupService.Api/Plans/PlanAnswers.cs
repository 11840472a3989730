using SetupService.Api.Http.Shared;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Planning;
using SetupService.Domain.Wear.Diagnosis.Advice;

namespace SetupService.Api.Plans;

/// <summary>Puts down a plan with all it rests on.</summary>
internal static class PlanAnswers
{
    private const double ToPct = 100;

    /// <summary>The answer.</summary>
    public static PlanAnswer Create(PlannedCar planned)
    {
        var (result, plan, parts, units) = (planned.Result, planned.Case, planned.Changes.Parts, planned.Units);
        var words = new PlanWords(plan, parts, result, units);
        var share = plan.Use.TrackShare;
        return new PlanAnswer
        {
            Summary = words.Summary(planned.Certainty),
            Recommended = result.Recommended is { } best ? Recommended(best) : null,
            Before = Figures(result.Given),
            Packages = [.. result.Packages.Select(Package)],
            FurtherCount = result.FurtherCount,
            Rejected = [.. result.RejectedParts.SelectMany(RejectedPart), .. result.RejectedPackages.Select(one => Rejection(Ids(one.Package), one.Rejected[0]))],
            FurtherRejectedCount = result.FurtherRejectedCount,
            ByBudget = [.. result.ByBudget.Select(one => new PlanByBudgetResponse { Amount = one.FromCost, Parts = Ids(one.Package.Package), DeliversPct = Told(ToPct * result.Choice.Delivered(one.Package.Figures, share)) })],
            ByTrackShare = [.. result.ByTrackShare.Select(one => new PlanByTrackShareResponse { FromPct = ToPct * one.From, ToPct = ToPct * one.To, Parts = Ids(one.Package.Package) })],
            TrackSharePct = ToPct * share,
            Searched = new() { PackageCount = planned.PackageCount, IsExact = true },
            Next = NextCalls.AfterPlan(result.Packages.Any(one => one.Fit is { Checked.Count: > 0 })),
            Unknown = [.. PlanGaps.Find(planned)],
            Method = "plan",
            Edition = Edition.Current,
            Assumptions = [.. Assumptions(planned.Prepared)],
            Cautions = CautionResponse.From([.. Worn(planned.Prepared).Where(one => !PlanCautions.For(parts).Any(other => other.Code == one.Code)), .. PlanCautions.For(parts), .. plan.Given.Stated.SuspensionCautions(units)]),
        };

        PlanRecommendationResponse Recommended(JudgedPackage one)
        {
            var (text, settings) = words.FirstStep(one);
            return new()
            {
                Parts = Ids(one.Package),
                Reason = words.Reason(one),
                FirstStep = new() { Text = text, Settings = [.. settings.Select(setting => Setting(setting with { ToDeg = setting.FirstDeg }))] },
                StaysFirstPct = planned.Certainty is { Rivals: > 0, IsDrawn: true } certainty ? ToPct * certainty.Share : null,
                DrawnInputs = planned.Certainty is { } drawn ? [.. drawn.Inputs] : [],
            };
        }

        PlanPackageResponse Package(JudgedPackage one) => new()
        {
            Parts = Ids(one.Package),
            IsRecommended = one == result.Recommended,
            Cost = new()
            {
                Amount = one.Package.Cost.Total,
                Currency = planned.Inputs.Currency,
                LabourHours = one.Package.Cost.LabourHours,
                SavedHours = one.Package.Cost.SavedHours,
                Alignment = one.Package.Cost.Alignment,
            },
            Settings = [.. one.Evaluated.Settings.Select(Setting)],
            After = Figures(one.Figures),
            Change = Change(one.Figures, result.Given),
            Goals = [.. result.Choice.Shares(one.Figures).Select((moved, i) => new PlanGoalShareResponse { Goal = result.Choice.Goals[i].Goal, SharePct = Told(ToPct * moved) })],
            DeliversPct = Told(ToPct * result.Choice.Delivered(one.Figures, share)),
            Checks = [.. (one.Fit?.Checked ?? []).Select(axle => new PlanCheckResponse { Axle = axle.Axle, Verdict = axle.Sheet.Verdict, DecidedBy = axle.Sheet.DecidedBy.ToArray() })],
            Doubts = [.. one.Doubts.Select(doubt => Rejection(Ids(one.Package), doubt))],
            WhileApart = [.. WhileApart(one.Package)],
            Text = words.Describe(one),
        };

        // Wear parts that the package's parts name, or that name them.
        IEnumerable<PlanWhileApartResponse> WhileApart(PartPackage package)
        {
            for (var i = 0; i < parts.Count; i++)
            {
                if (package.Has(i) || parts[i].ChangeNumber >= 0) continue;
                var saved = package.Places().Sum(place => PackageSearch.SharedHours(parts, place, i));
                if (saved <= 0) continue;
                var rate = planned.Request.LabourPerHour?.Amount ?? 0;
                yield return new() { Part = parts[i].Id, Amount = parts[i].Price + (rate * Math.Max(0, parts[i].LabourHours - saved)), SavedHours = saved };
            }
        }

        IEnumerable<PlanRejectionResponse> RejectedPart(RejectedPart one) => one.Reasons.Count == 0
            ? [Rejection([parts[one.Part].Id], new(RejectionCode.OverBudget, $"With what it needs it costs more than the budget of {plan.Money(plan.Limits.Budget ?? 0)}."))]
            : one.Reasons.Select(reason => Rejection([parts[one.Part].Id], reason));

        string[] Ids(PartPackage package) => [.. package.Places().Select(place => parts[place].Id)];
    }

    /// <summary>Why something is rejected or not recommended.</summary>
    public static PlanRejectionResponse Rejection(string[] parts, PackageReason reason) => new() { Parts = parts, Code = reason.Code, Reason = reason.Text };

    /// <summary>A camber that is set.</summary>
    public static PlanSettingResponse Setting(CamberSetting one) => new()
    {
        Axle = one.Axle,
        CamberDeg = one.ToDeg,
        ChangeDeg = one.ChangeDeg,
        StatedCamberDeg = one.StatedDeg,
        FlatCamberDeg = one.FlatDeg,
        IsShortOfFlat = one.IsShort,
    };

    private static PlanFiguresResponse Figures(PackageFigures one) => new()
    {
        Track = new()
        {
            LimitG = one.LimitG,
            FrontLimitG = one.Front.LimitG,
            RearLimitG = one.Rear.LimitG,
            FrontInclinationDeg = Told(one.Front.MeanInclinationDeg),
            RearInclinationDeg = Told(one.Rear.MeanInclinationDeg),
            OffFlatDeg = Told(one.OffFlatDeg),
        },
        Road = new()
        {
            FrontRideFrequencyHz = one.Front.RideFrequencyHz,
            RearRideFrequencyHz = one.Rear.RideFrequencyHz,
            FrontDampingRatio = one.Front.DampingRatio,
            RearDampingRatio = one.Rear.DampingRatio,
            FrontRideHeightChangeMm = Told(one.Front.HeightMm),
            RearRideHeightChangeMm = Told(one.Rear.HeightMm),
            FrontCamberDeg = Told(one.Front.CamberDeg),
            RearCamberDeg = Told(one.Rear.CamberDeg),
            InnerShoulderWearRatio = one.InnerShoulderWearRatio,
            DryBias = one.DryBias,
            NoiseSteps = one.NoiseSteps,
        },
        TreadLifeFactor = one.TreadLifeFactor,
    };

    private static PlanFiguresResponse Change(PackageFigures after, PackageFigures before) => new()
    {
        Track = new()
        {
            LimitG = Told(after.LimitG - before.LimitG),
            FrontLimitG = Told(after.Front.LimitG - before.Front.LimitG),
            RearLimitG = Told(after.Rear.LimitG - before.Rear.LimitG),
            FrontInclinationDeg = Told(after.Front.MeanInclinationDeg - before.Front.MeanInclinationDeg),
            RearInclinationDeg = Told(after.Rear.MeanInclinationDeg - before.Rear.MeanInclinationDeg),
            OffFlatDeg = Told(after.OffFlatDeg - before.OffFlatDeg),
        },
        Road = new()
        {
            FrontRideFrequencyHz = Told(after.Front.RideFrequencyHz - before.Front.RideFrequencyHz),
            RearRideFrequencyHz = Told(after.Rear.RideFrequencyHz - before.Rear.RideFrequencyHz),
            FrontDampingRatio = Told(after.Front.DampingRatio - before.Front.DampingRatio),
            RearDampingRatio = Told(after.Rear.DampingRatio - before.Rear.DampingRatio),
            FrontRideHeightChangeMm = Told(after.Front.HeightMm - before.Front.HeightMm),
            RearRideHeightChangeMm = Told(after.Rear.HeightMm - before.Rear.HeightMm),
            FrontCamberDeg = Told(after.Front.CamberDeg - before.Front.CamberDeg),
            RearCamberDeg = Told(after.Rear.CamberDeg - before.Rear.CamberDeg),
            InnerShoulderWearRatio = Told(after.InnerShoulderWearRatio - before.InnerShoulderWearRatio),
            DryBias = after.DryBias - before.DryBias,
            NoiseSteps = Told(after.NoiseSteps - before.NoiseSteps),
        },
        TreadLifeFactor = Told(after.TreadLifeFactor - before.TreadLifeFactor),
    };

    // What is left of a solver's rounding is nothing.
    private static double Told(double value) => Math.Abs(value) < LeastTold ? 0 : value;

    private static double? Told(double? value) => value is { } known ? Told(known) : null;

    private const double LeastTold = 1e-6;

    /// <summary>What can hurt somebody at the tyres of today comes first.</summary>
    public static IEnumerable<Caution> Worn(PreparedPlan plan) => plan.Wear is { } wear
        ? WearDiagnosisCautions.Build(wear.Conditions, WearAdvice.Create(wear.Study, wear.Conditions, plan.Units), plan.Units)
        : UnusableTyres.Overloaded(plan.Inputs.Vehicle, plan.Units) is { } overloaded ? [overloaded] : [];

    /// <summary>What a plan takes although nobody gave it.</summary>
    public static IEnumerable<AssumptionResponse> Assumptions(PreparedPlan planned)
    {
        const string Practice = "common practice, no source";
        var (request, plan) = (planned.Request, planned.Case);
        var reading = plan.Scale.Apply(plan.Given.Reading);
        foreach (var one in reading.Assumed) yield return AssumptionResponse.From(one.ToAssumption()) with { Plausible = new PlausibleResponse { Lower = one.Lower, Upper = one.Upper } };
        foreach (var one in CorneringAssumptions.Build(reading, plan.Scale)) yield return AssumptionResponse.From(one);
        if (request.Goals is not { Length: > 0 }) yield return Assumption("/goals", null, "grip, wear and comfort alike", "judgement", "What is wanted was not given.");
        if (request.Use.LapsPerDay is null && plan.Use.TrackDays > 0) yield return Assumption("/use/lapsPerDay", plan.Use.LapsPerDay, null, Practice, "Laps a day weigh the track against the road.");
        if (request.Use.LapKm is null && plan.Use.TrackDays > 0) yield return Assumption("/use/lapKm", plan.Use.LapKm, null, "judgement", "The length of a lap weighs the track against the road.");
        if (PlanMapper.Bends(request).IsTurnAssumed) yield return Assumption("/bends", null, "left", Practice, "Bends that do not say their direction are taken as left ones; it matters only where the car differs from side to side.");
        if (request.Limits?.ArchesUntouched is null) yield return Assumption("/limits/archesUntouched", null, "true", Practice, "A tyre that touches the arches does not fit.");
        if (plan.IsCamberEndedByRoad) yield return Assumption("/limits/mostNegativeCamberDeg", plan.MostCamberDeg, null, Practice, "On a car for the road camber is set no further: beyond it the inner shoulder wears out unseen.");
        if (plan.Goals.Any(goal => goal.Goal == PlanGoal.Wear) && planned.Before.TreadLifeFactor is null)
            yield return Assumption("/goals", null, "wear by how flat the treads stand", "judgement", "No treads tell tread life, so the goal wear counts by how much flatter the outer treads stand in the bends.");
        foreach (var (place, pointer) in PlanGaps.Untold(planned))
        {
            var asLoud = OfferedPart.HasJoint(planned.Changes.Parts[place].Kind) ? "as loud as a metal joint" : FormattableString.Invariant($"{PackageNoise.UntoldSteps * PackageNoise.StepDb:0} dB louder than the tyres fitted now");
            yield return Assumption(pointer, null, asLoud, "judgement", $"How loud '{planned.Changes.Parts[place].Id}' makes the car was not told, and nothing told is not taken for silence.");
        }

        foreach (var (one, other, member) in planned.Changes.Apart)
            yield return Assumption(FormattableString.Invariant($"/parts/{one}/excludes"), null, planned.Changes.Parts[other].Id, "the request", $"Both parts set {member} to different values, so they are not fitted together.");
    }

    private static AssumptionResponse Assumption(string input, double? value, string? text, string source, string reason) => new() { Input = input, Value = value, Text = text, Source = source, Reason = reason };
}

using Microsoft.AspNetCore.Http.HttpResults;
using SetupService.Api.Fitment.Check;
using SetupService.Api.Http;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Pages;
using SetupService.Api.Http.Problems;
using SetupService.Api.Http.Queries;
using SetupService.Api.Http.Work;
using SetupService.Api.Wear;
using SetupService.Domain.Answers;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Planning;
using SetupService.Domain.Planning.Sheets;
using SetupService.Domain.Suspension;

namespace SetupService.Api.Plans.Sheets;

/// <summary>The calls that make the workshop's sheets of a package.</summary>
internal static class SheetsEndpoint
{
    public static void MapSheets(this RouteGroupBuilder group)
    {
        group.MapPost("/plans/sheets", Sheets)
            .WithWork()
            .WithQuery(QueryParameters.Units)
            .WithExample("plan-sheets")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("planSheets")
            .WithSummary("How is the package fitted, set and proven?")
            .WithDescription("Work order, alignment sheet, pressures, fit, tyre record and test plan of the parts chosen. Takes the body of the plan and what is chosen; torques are the caller's own or 'maker's figure'.");
        group.MapPost("/plans/sheets/page", Page)
            .WithWork()
            .WithQuery(QueryParameters.Units)
            .WithExample("plan-sheets")
            .WithProblems(ProblemTypes.NotComputable)
            .WithName("planSheetsPage")
            .WithSummary("The sheets as a page to print")
            .WithDescription("The sheets as one HTML page with the fit drawings and boxes to fill in. No script, nothing fetched; prints on A4 and Letter.");
    }

    private static Results<Answer<PlanSheetsAnswer>, Problem> Sheets(
        Body<PlanSheetsRequest> body, JsonContract contract, QueryReader query, TimeProvider clock, RequestWork work)
    {
        var problem = SheetedPlan.Compute(body, contract, query.Units, clock, work, out var plan);
        return plan is not null ? new Answer<PlanSheetsAnswer>(SheetsAnswers.Create(plan)) : problem!;
    }

    private static Results<PageAnswer, Problem> Page(
        Body<PlanSheetsRequest> body, JsonContract contract, QueryReader query, TimeProvider clock, RequestWork work)
    {
        var problem = SheetedPlan.Compute(body, contract, query.Units, clock, work, out var plan);
        return plan is not null ? new PageAnswer(SheetPage.Write(plan), SheetStyle.Page.Policy) : problem!;
    }
}

/// <summary>A package with all its sheets are made of.</summary>
internal sealed record SheetedPlan
{
    public required PlanSheetsRequest Request { get; init; }

    public required PreparedPlan Plan { get; init; }

    public required JudgedPackage Package { get; init; }

    public required WorkCase Work { get; init; }

    /// <summary>The plan, where its recommendation was taken; null where the caller chose.</summary>
    public required PlannedCar? Planned { get; init; }

    /// <summary>The day of the readings.</summary>
    public required DateOnly Today { get; init; }

    public UnitSystem Units => Plan.Units;

    /// <summary>Works the package out; null with the problem where there is none.</summary>
    public static Problem? Compute(
        Body<PlanSheetsRequest> body, JsonContract contract, UnitSystem units, TimeProvider clock, RequestWork work, out SheetedPlan? sheeted)
    {
        sheeted = null;
        if (body.Value is not { } request) return body.Problem!;
        if (!SheetsMapper.Map(request).TryGet(out var inputs, out var refusal)) return body.Refuse(refusal);
        var stated = contract.Changing(request.Vehicle, "/vehicle");
        if (!PartChanges.Read(request.Parts, inputs.Parts, stated).TryGet(out var changes, out refusal)) return body.Refuse(refusal);
        PreparedPlan? prepared;
        PlannedCar? planned = null;
        JudgedPackage package;
        if (request.Chosen is { } chosen)
        {
            if (!SheetsMapper.Choose(chosen, changes.Parts, PlanMapper.Prices(request)).TryGet(out var parts, out refusal)) return body.Refuse(refusal);
            if (PreparedPlan.Compute(request, inputs, changes, stated, units, clock, work, out prepared) is { } unready) return unready;
            package = prepared!.Judge(prepared.Packages.Evaluate([parts], isChosen: parts.Count > 0)[0]);
            work.Cancellation.ThrowIfCancellationRequested();
            if (SheetProblems.Against(package) is { } refused) return refused;
        }
        else
        {
            if (PlannedCar.Compute(request, inputs, changes, stated, units, clock, work, out planned) is { } unplanned) return unplanned;
            if (planned!.Result.Recommended is not { } best) return SheetProblems.NoneRecommended();
            (prepared, package) = (planned.Prepared, best);
        }

        var fitted = SheetPart.List(changes.Parts, package.Package, changes.Members);
        sheeted = new()
        {
            Request = request,
            Plan = prepared,
            Package = package,
            Work = new(fitted, Layout(inputs.Vehicle.Front.Suspension), Layout(inputs.Vehicle.Rear.Suspension), AlignmentSheet.IsNeeded(package, fitted), SheetsMapper.Torques(request)),
            Planned = planned,
            Today = request.Wear?.ReadOn is { } day ? TyreReadingMapper.Day(day)!.Value : DateOnly.FromDateTime(clock.GetUtcNow().Date),
        };
        return null;

        // Readings do not tell how the corner is built.
        static SuspensionLayout? Layout(SuspensionModel model) => model.Layout is SuspensionLayout.Measured ? null : model.Layout;
    }

    /// <summary>The checks of the wheels and tyres the package puts on.</summary>
    public IEnumerable<(AxleFit Axle, CheckedFitting Check)> Fits() => (Package.Fit?.Checked ?? []).Select(axle => (axle, new CheckedFitting(new(axle.Car, axle.Candidate, axle.Sheet))));
}

/// <summary>The 422s of the sheets.</summary>
internal static class SheetProblems
{
    /// <summary>No package may be recommended.</summary>
    public static Problem NoneRecommended() => Problem.NotComputable(
        "No sheets are made: none of the packages can be recommended; the plan lists what each has against it. Name what is chosen all the same.",
        [Fault.At("/chosen", FaultCodes.Required, "nothing is recommended, so chosen must name the parts.")]);

    /// <summary>Why no sheet is made for a package; null where one is.</summary>
    public static Problem? Against(JudgedPackage package)
    {
        string[] reasons = [.. package.Rejected.Select(one => one.Text)];
        if (reasons.Length == 0) return null;
        var code = package.Evaluated is { Failure: CorneringFailure.WorkSpent } ? FaultCodes.Unreachable : FaultCodes.Inconsistent;
        return Problem.NotComputable($"No sheets are made for this package: {string.Join(' ', reasons)}", [.. reasons.Select(reason => Fault.At("/chosen", code, reason))]);
    }
}

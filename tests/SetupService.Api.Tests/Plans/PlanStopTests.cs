using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using SetupService.Api.Host;
using SetupService.Api.Http.Documents;
using SetupService.Api.Http.Work;
using SetupService.Api.Plans;
using SetupService.Domain.Answers;
using SetupService.Domain.Numerics;
using SetupService.Domain.Planning;
using static SetupService.Api.Tests.Plans.PlanBodies;

namespace SetupService.Api.Tests.Plans;

/// <summary>A plan whose caller has gone stops by itself, wherever it is: told by the steps it still takes, not by a clock.</summary>
public sealed class PlanStopTests(WebApplicationFactory<JsonContract> factory) : IClassFixture<WebApplicationFactory<JsonContract>>
{
    // Steps are drawn in portions of so many by each thread.
    private const long PortionSteps = 4096;

    private static readonly PlanRequest Request = JsonSerializer.Deserialize(Body().ToJsonString(), ContractJsonContext.Default.PlanRequest)!;

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.3)]
    [InlineData(0.7)]
    public async Task No_thread_of_a_plan_goes_on(double share)
    {
        using var whole = Work(default);
        Assert.NotNull(Plan(whole));
        var total = whole.StepsTaken;
        using var gone = new CancellationTokenSource();
        using var work = Work(gone.Token);
        var run = Task.Run(() => Plan(work));
        while (work.StepsTaken < share * total && !run.IsCompleted) await Task.Yield();
        await gone.CancelAsync();
        var taken = work.StepsTaken;

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => run);
        Assert.True(total > 20 * PortionSteps, $"{total} steps are too few to tell");
        Assert.InRange(work.StepsTaken - taken, 0, PortionSteps * (Environment.ProcessorCount + 1));
    }

    // One thread, each step counted: how sure the order is, after everything else.
    [Theory]
    [InlineData(10)]
    [InlineData(1000)]
    [InlineData(5000)]
    public async Task A_thread_that_was_told_to_stop_asks_for_a_handful_of_steps(int after)
    {
        using var whole = Work(default);
        var planned = Plan(whole)!;
        using var gone = new CancellationTokenSource();
        var budget = new WorkBudget(WorkBudget.GenerousSteps, gone.Token);
        var evaluator = new PackageEvaluator(planned.Case, new WorkBudget(WorkBudget.GenerousSteps));
        var given = evaluator.Given().Figures!;
        var run = Task.Run(() => OrderCertainty.Compute(planned.Case, evaluator.TreadsSay, planned.Result.Choice, given, [planned.Result.Recommended!, .. planned.Result.Rivals], budget));
        while (budget.StepsTaken < after && !run.IsCompleted) await Task.Yield();
        await gone.CancelAsync();
        var taken = budget.StepsTaken;

        Assert.Null(await run);
        Assert.InRange(budget.StepsTaken - taken, 0, 32);
    }

    private PlannedCar? Plan(RequestWork work)
    {
        Assert.True(PlanMapper.Map(Request).TryGet(out var inputs, out _));
        var stated = factory.Services.GetRequiredService<JsonContract>().Changing(Request.Vehicle, "/vehicle");
        Assert.True(PartChanges.Read(Request.Parts, inputs.Parts, stated).TryGet(out var changes, out _));
        PlannedCar.Compute(Request, inputs, changes, stated, UnitSystem.Metric, TimeProvider.System, work, out var planned);
        return planned;
    }

    private static RequestWork Work(CancellationToken gone)
    {
        var work = new RequestWork();
        work.Start(new WorkSettings { DeadlineSeconds = 600 }, TimeProvider.System, gone);
        return work;
    }

    // The demo car with six parts free of each other.
    private static JsonObject Body()
    {
        var body = Demo().WithParts(
            Part("mounts", "topMount", 100, """{"front":{"adjustable":{"camberDeg":{"from":-3.2}}}}"""),
            Part("front-bar", "antiRollBar", 100, """{"front":{"antiRollBar":{"rollRateNmPerDeg":360}}}"""),
            Part("rear-bar", "antiRollBar", 100, """{"rear":{"antiRollBar":{"rollRateNmPerDeg":140}}}"""),
            Part("front-springs", "spring", 100, """{"front":{"spring":{"rateNPerMm":30}}}"""),
            Part("rear-springs", "spring", 100, """{"rear":{"spring":{"rateNPerMm":50}}}"""),
            Part("arms", "arm", 100, """{"front":{"compliance":{"camberDegPerKn":0.09}}}"""));
        body["limits"] = null;
        return body;
    }
}

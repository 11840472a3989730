using System.Diagnostics.Metrics;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Http;

/// <summary>What the service counts of its own work, beside what the framework counts of requests. Costs next to nothing where nobody listens.</summary>
internal static class ServiceMeter
{
    /// <summary>The meter's name.</summary>
    public const string Name = "SetupService";

    /// <summary>The name of the count of lines.</summary>
    public const string LinesName = "setup.batch.lines";

    private static readonly Meter Meter = new(Name);

    private static readonly Counter<long> Lines = Meter.CreateCounter<long>(LinesName, description: "Lines of batches answered, bad ones included.");
    private static readonly Counter<long> Verdicts = Meter.CreateCounter<long>("setup.fitment.verdicts", description: "Fitment verdicts, by verdict.");
    private static readonly Counter<long> Steps = Meter.CreateCounter<long>("setup.solver.steps", description: "Steps of solvers taken, by route.");
    private static readonly Counter<long> Refusals = Meter.CreateCounter<long>("setup.refusals", description: "Requests refused, by the type of problem and the code of its first fault.");

    /// <summary>Counts lines of a batch.</summary>
    public static void CountLines(long lines)
    {
        if (lines > 0)
            Lines.Add(lines);
    }

    /// <summary>Counts verdicts of one kind.</summary>
    public static void CountVerdicts(string verdict, long count)
    {
        if (count > 0 && Verdicts.Enabled)
            Verdicts.Add(count, new KeyValuePair<string, object?>("verdict", verdict));
    }

    /// <summary>Counts the steps of a request.</summary>
    public static void CountSteps(HttpContext context, long steps)
    {
        if (steps > 0 && Steps.Enabled)
            Steps.Add(steps, new KeyValuePair<string, object?>("route", RouteOf(context)));
    }

    /// <summary>Counts a refusal.</summary>
    public static void CountRefusal(Problem problem)
    {
        if (Refusals.Enabled)
            Refusals.Add(1, new("type", problem.Type[(problem.Type.LastIndexOf('/') + 1)..]), new("code", problem.Errors.Count > 0 ? problem.Errors[0].Code : "none"));
    }

    /// <summary>The route of a request; a word where it has none, so that no caller can make up routes.</summary>
    public static string RouteOf(HttpContext context) => (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText ?? "none";
}

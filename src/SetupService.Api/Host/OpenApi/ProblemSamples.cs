using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Http;
using SetupService.Api.Http.Faults;
using SetupService.Api.Http.Problems;

namespace SetupService.Api.Host.OpenApi;

/// <summary>An example of each kind of problem, made by the code that makes the real ones.</summary>
internal static class ProblemSamples
{
    private const string RequestId = "0af7651916cd43dd8448eb211c80319c";

    public static JsonNode From(ProblemType type, CapSettings caps)
    {
        var sample = type == ProblemTypes.InvalidRequest ? Problem.Invalid(new Refusal(InBody()).And(new Refusal(InQuery())))
            : type == ProblemTypes.TooLarge ? BodyHeaders.TooLarge(caps)
            : Problem.Create(type);
        return JsonSerializer.SerializeToNode(sample with { RequestId = RequestId }, ProblemJsonContext.Default.Problem)!;
    }

    private static Fault InBody() =>
        Fault.At(
            "/candidate/wheel/rimWidthIn",
            FaultCodes.OutOfRange,
            RangeText.Message("rimWidthIn", "21", 3, 16, "in"),
            new FaultLimits { Minimum = 3, Maximum = 16, Unit = "in" });

    private static Fault InQuery() =>
        Fault.ForParameter("unit", FaultCodes.UnknownParameter, "The call has no query parameter “unit”; units may be meant. Known: units.");
}

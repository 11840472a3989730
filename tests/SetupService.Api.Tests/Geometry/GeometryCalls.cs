using System.Text.Json;
using SetupService.Api.Http.Problems;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Http;

namespace SetupService.Api.Tests.Geometry;

/// <summary>The calls on a suspension with points, and what their tests read of their answers.</summary>
internal static class GeometryCalls
{
    public const string Sweep = "/v1/geometry/travel-sweep";
    public const string Adjustment = "/v1/geometry/adjustment";

    public static TheoryData<string> All() => [Sweep, Adjustment];

    /// <summary>The problem of a request that is well-formed but not computable.</summary>
    public static async Task<JsonElement> NotComputableOf(this HttpClient client, string path, string body)
    {
        using var response = await client.PostAsync(path, body);
        return await Problems.Read(response, ProblemTypes.NotComputable);
    }

    /// <summary>A number of an answer, found by its members' names.</summary>
    public static double Number(this JsonElement answer, params ReadOnlySpan<string> path)
    {
        foreach (var name in path)
            answer = answer.GetProperty(name);
        return answer.GetDouble();
    }

    /// <summary>How far an adjuster is adjusted, mm.</summary>
    public static double AmountOf(this JsonElement answer, string adjuster) =>
        answer.GetProperty("adjustments").EnumerateArray().Single(one => one.GetProperty("adjuster").GetString() == adjuster).GetProperty("amountMm").GetDouble();

    /// <summary>The only fault of a refusal.</summary>
    public static JsonElement OnlyFault(this JsonElement problem) => Assert.Single(problem.GetProperty("errors").EnumerateArray());

    public static string Message(this JsonElement fault) => fault.GetProperty("message").GetString()!;

    public static void Near(double expected, double actual, double within, string what) =>
        Assert.True(Math.Abs(expected - actual) <= within, $"{what} is {actual:R}, wanted {expected:R} within {within}");
}

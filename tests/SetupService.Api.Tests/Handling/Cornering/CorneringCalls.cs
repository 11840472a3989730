using System.Text.Json;
using System.Text.Json.Nodes;
using SetupService.Api.Tests.Contract;
using SetupService.Api.Tests.Fitment;
using SetupService.Api.Tests.Vehicles;

namespace SetupService.Api.Tests.Handling.Cornering;

/// <summary>Requests of the calls on turns, and what their tests read of the answers.</summary>
internal static class CorneringCalls
{
    public const string Turn = "/v1/handling/cornering";
    public const string Sweep = "/v1/handling/cornering-sweep";

    public static readonly string[] Wheels = ["frontLeft", "frontRight", "rearLeft", "rearRight"];

    private static readonly string[] Contributions = ["static", "kinematic", "roll", "steer", "compliance"];

    public static TheoryData<string> Both() => [Turn, Sweep];

    /// <summary>The example's car: struts with points in front, no points behind.</summary>
    public static JsonObject Example(double lateralG = 0.7) =>
        JsonNode.Parse(File.ReadAllText(ContractFile.Path("examples/cornering.request.json")))!.AsObject().With("/lateralG", lateralG);

    /// <summary>A car without points and alike on both sides.</summary>
    public static JsonObject Plain(double lateralG = 0.7)
    {
        var body = Example(lateralG).Without("/vehicle/front/suspension");
        return body.With("/vehicle/front/rollCentreHeightMm", 60).With("/vehicle/front/spring/motionRatio", 0.95);
    }

    /// <summary>The demo car with every member there is, struts with points at both ends.</summary>
    public static JsonObject Whole(double lateralG = 0.7) =>
        Requests.Object($$"""{ "vehicle": {{DemoCar.Car}}, "lateralG": {{lateralG}}, "turn": "left", "cornerRadiusM": 60 }""");

    public static JsonObject Swept(JsonObject body, double fromG, double toG, double stepG) =>
        body.With("/lateralG", new JsonObject { ["from"] = fromG, ["to"] = toG, ["step"] = stepG });

    /// <summary>A sound request of either call.</summary>
    public static JsonObject Of(string path) => path == Turn ? Example() : Swept(Example(), 0, 0.9, 0.3);

    public static JsonElement Wheel(this JsonElement row, string wheel) => row.GetProperty("wheels").GetProperty(wheel);

    public static double SumOfContributions(this JsonElement wheel) => Contributions.Sum(name => wheel.GetProperty("contributions").GetProperty(name).GetDouble());

    public static IEnumerable<JsonElement> Assumed(this JsonElement answer, string input) =>
        answer.GetProperty("assumptions").EnumerateArray().Where(one => one.GetProperty("input").GetString() == input);

    public static string[] Codes(this JsonElement answer) =>
        [.. answer.GetProperty("cautions").EnumerateArray().Select(one => one.GetProperty("code").GetString()!)];
}

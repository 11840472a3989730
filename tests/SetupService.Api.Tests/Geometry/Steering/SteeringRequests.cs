using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;

namespace SetupService.Api.Tests.Geometry.Steering;

/// <summary>Requests of the calls on steering and alignment, all of the demo car.</summary>
internal static class SteeringRequests
{
    public const string AxisPath = "/v1/geometry/steering-axis";
    public const string SweepPath = "/v1/geometry/steer-sweep";
    public const string ReadingsPath = "/v1/geometry/caster-from-readings";
    public const string AlignmentPath = "/v1/geometry/alignment";

    public static JsonObject Axis() => Requests.Object(
        """
        { "lower": { "xMm": 8, "yMm": 716, "zMm": 178 }, "upper": { "xMm": -67, "yMm": 561, "zMm": 843 },
          "wheelCentre": { "xMm": 0, "yMm": 751, "zMm": 305 }, "loadedRadiusMm": 302, "camberDeg": -0.7, "toeDeg": 0.08 }
        """);

    public static JsonObject Sweep() => Requests.Object(
        """
        { "casterDeg": 6.4, "steeringAxisInclinationDeg": 13.1, "camberDeg": -0.7, "toeDeg": 0.08, "steerDeg": { "from": -30, "to": 30, "step": 5 },
          "loadedRadiusMm": 302, "spindleOffsetMm": 64.6, "wheelCentreTrailMm": -6.3, "side": "left" }
        """);

    public static JsonObject Readings() => Requests.Object(
        """
        { "side": "left", "gaugeErrorDeg": 0.1, "readings": [ { "steerDeg": -20, "camberDeg": -2.1 }, { "steerDeg": -10, "camberDeg": -1.6 },
          { "steerDeg": 0, "camberDeg": -0.7 }, { "steerDeg": 10, "camberDeg": 0.65 }, { "steerDeg": 20, "camberDeg": 2.35 } ] }
        """);

    public static JsonObject Alignment() => Requests.Object(
        """
        { "vehicle": {
            "front": { "trackMm": 1510, "alignment": { "camberDeg": -0.7, "casterDeg": 6.4, "toeDeg": 0.08, "steeringAxisInclinationDeg": 13.1,
                       "right": { "camberDeg": -0.8, "casterDeg": 6.2, "toeDeg": 0.06, "steeringAxisInclinationDeg": 13.0 } } },
            "rear": { "alignment": { "camberDeg": -1.1, "toeDeg": 0.16, "casterDeg": 1, "steeringAxisInclinationDeg": 5,
                      "right": { "camberDeg": -1.0, "toeDeg": 0.06, "casterDeg": 1, "steeringAxisInclinationDeg": 5 } } } },
          "setbackMm": 3, "measuringDiameterMm": 450 }
        """);

    public static JsonObject Of(string path) => path switch
    {
        AxisPath => Axis(),
        SweepPath => Sweep(),
        ReadingsPath => Readings(),
        _ => Alignment(),
    };

    public static JsonArray Of(IEnumerable<(double SteerDeg, double CamberDeg)> readings) =>
        [.. readings.Select(one => (JsonNode)new JsonObject { ["steerDeg"] = one.SteerDeg, ["camberDeg"] = one.CamberDeg })];
}

using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;

namespace SetupService.Api.Tests.Geometry;

/// <summary>
/// One corner of each kind, of our own invention. The strut and the wishbone are ST1 and DW1 of
/// Domain.Tests/TestData/kinematics_cases.json, solved there by two independent methods; the other three are FL1, SA1 and TB1 of
/// Domain.Tests/Oracle.
/// </summary>
internal static class Corners
{
    private const string Strut =
        """
        { "kind": "macPhersonStrut", "points": {
          "lowerArmFront": { "xMm": 15, "yMm": 380, "zMm": 190 }, "lowerArmRear": { "xMm": -310, "yMm": 390, "zMm": 195 },
          "lowerBallJoint": { "xMm": 5, "yMm": 720, "zMm": 175 }, "strutTop": { "xMm": -35, "yMm": 565, "zMm": 840 },
          "strutLower": { "xMm": -5, "yMm": 630, "zMm": 400 }, "tieRodInner": { "xMm": -150, "yMm": 330, "zMm": 235 },
          "tieRodOuter": { "xMm": -140, "yMm": 695, "zMm": 225 }, "wheelCentre": { "xMm": 0, "yMm": 750, "zMm": 305 } } }
        """;

    private const string Wishbone =
        """
        { "points": {
          "lowerArmFront": { "xMm": 150, "yMm": 390, "zMm": 190 }, "lowerArmRear": { "xMm": -180, "yMm": 400, "zMm": 180 },
          "lowerBallJoint": { "xMm": 10, "yMm": 715, "zMm": 180 }, "upperArmFront": { "xMm": 90, "yMm": 480, "zMm": 455 },
          "upperArmRear": { "xMm": -130, "yMm": 490, "zMm": 440 }, "upperBallJoint": { "xMm": -18, "yMm": 690, "zMm": 480 },
          "tieRodInner": { "xMm": -125, "yMm": 370, "zMm": 208 }, "tieRodOuter": { "xMm": -130, "yMm": 695, "zMm": 205 },
          "wheelCentre": { "xMm": 0, "yMm": 760, "zMm": 310 },
          "springChassis": { "xMm": -10, "yMm": 520, "zMm": 560 }, "springMoving": { "xMm": 0, "yMm": 600, "zMm": 195 }, "springOn": "lowerArm" },
          "kind": "doubleWishbone" }
        """;

    private const string FiveLink =
        """
        { "kind": "fiveLink", "points": { "wheelCentre": { "xMm": 0, "yMm": 755, "zMm": 312 }, "links": [
          { "chassis": { "xMm": 155, "yMm": 452, "zMm": 438 }, "upright": { "xMm": 32, "yMm": 655, "zMm": 452 } },
          { "chassis": { "xMm": -95, "yMm": 428, "zMm": 430 }, "upright": { "xMm": -22, "yMm": 658, "zMm": 462 } },
          { "chassis": { "xMm": 285, "yMm": 478, "zMm": 222 }, "upright": { "xMm": 48, "yMm": 684, "zMm": 203 } },
          { "chassis": { "xMm": -48, "yMm": 302, "zMm": 206 }, "upright": { "xMm": -14, "yMm": 694, "zMm": 196 } },
          { "chassis": { "xMm": -172, "yMm": 338, "zMm": 268 }, "upright": { "xMm": -136, "yMm": 682, "zMm": 270 } } ] } }
        """;

    private const string Arm =
        """
        { "kind": "semiTrailingArm", "points": { "pivotInner": { "xMm": 310, "yMm": 255, "zMm": 315 },
          "pivotOuter": { "xMm": 395, "yMm": 590, "zMm": 300 }, "wheelCentre": { "xMm": 0, "yMm": 742, "zMm": 308 } } }
        """;

    private const string Beam =
        """
        { "kind": "twistBeam", "points": { "pivotLeft": { "xMm": 430, "yMm": 560, "zMm": 335 },
          "beamShearCentre": { "xMm": 245, "yMm": 0, "zMm": 318 }, "wheelCentre": { "xMm": 0, "yMm": 735, "zMm": 306 } } }
        """;

    public static IReadOnlyList<string> Kinds { get; } = ["macPhersonStrut", "doubleWishbone", "fiveLink", "semiTrailingArm", "twistBeam"];

    public static TheoryData<string> AllKinds() => [.. Kinds];

    /// <summary>A car whose front corner is of a kind, and the axle, as every call on a suspension begins.</summary>
    public static JsonObject Of(string kind) => kind switch
    {
        "macPhersonStrut" => Corner(Strut, -0.75, 0, 305),
        "doubleWishbone" => Corner(Wishbone, -0.5, 0.05, 310),
        "fiveLink" => Corner(FiveLink, -1, 0.15, 305),
        "semiTrailingArm" => Corner(Arm, -1.2, 0.1, 300),
        _ => Corner(Beam, -1.4, 0.15, 300),
    };

    /// <summary>The same request about the rear axle, with the same corner.</summary>
    public static JsonObject AtRear(this JsonObject body)
    {
        var vehicle = body["vehicle"]!.AsObject();
        var corner = vehicle["front"]!;
        vehicle.Remove("front");
        vehicle["rear"] = corner;
        body["axle"] = "rear";
        return body;
    }

    /// <summary>A point as JSON.</summary>
    public static JsonNode Point(double xMm, double yMm, double zMm) => new JsonObject { ["xMm"] = xMm, ["yMm"] = yMm, ["zMm"] = zMm };

    private static JsonObject Corner(string suspension, double camberDeg, double toeDeg, double loadedRadiusMm) => new()
    {
        ["vehicle"] = new JsonObject
        {
            ["front"] = new JsonObject
            {
                ["suspension"] = Requests.Object(suspension),
                ["alignment"] = new JsonObject { ["camberDeg"] = camberDeg, ["toeDeg"] = toeDeg },
                ["loadedRadiusMm"] = loadedRadiusMm,
            },
        },
        ["axle"] = "front",
    };
}

namespace SetupService.Api.Tests.Vehicles;

/// <summary>The demo car as a caller would send it: our own invention, with every kind of member filled in.</summary>
internal static class DemoCar
{
    public const string Strut =
        """
        { "points": {
            "lowerArmFront": { "xMm": 180, "yMm": 350, "zMm": 190 }, "lowerArmRear": { "xMm": -170, "yMm": 355, "zMm": 195 },
            "lowerBallJoint": { "xMm": 5, "yMm": 700, "zMm": 180 }, "strutTop": { "xMm": -35, "yMm": 580, "zMm": 790 },
            "strutLower": { "xMm": -8, "yMm": 655, "zMm": 330 }, "tieRodInner": { "xMm": -120, "yMm": 330, "zMm": 240 },
            "tieRodOuter": { "xMm": -130, "yMm": 690, "zMm": 235 }, "wheelCentre": { "xMm": 0, "yMm": 740, "zMm": 305 } },
          "kind": "macPhersonStrut" }
        """;

    public const string Axle =
        $$"""
        {
          "trackMm": 1510, "unsprungMassKg": 38, "maximumAxleLoadKg": 870, "minimumLoadIndex": 87,
          "wheel": { "rimDiameterIn": 17, "rimWidthIn": 7.5, "offsetMm": 45, "spacerMm": 0, "massKg": 9.6, "boltCircle": "5x108",
                     "centreBoreMm": 63.4, "loadRatingKg": 650, "fastenerSeat": "cone60", "padThicknessMm": 14,
                     "innerProfile": [ { "fromMountingFaceMm": 20, "radiusMm": 178 } ] },
          "tyre": { "marking": "225/45R17 91W", "massKg": 9.9, "pressureKpa": 230, "verticalRateNPerMm": 210, "corneringStiffnessNPerDeg": 1050 },
          "hub": { "boltCircle": "5x108", "centreBoreMm": 63.4, "fastenerThread": "M14x1.5", "fastenerKind": "bolt", "fastenerLengthMm": 28,
                   "fastenerSeat": "cone60", "minimumRimDiameterIn": 16, "caliperProfile": [ { "fromHubFaceMm": 18, "radiusMm": 165 } ] },
          "clearance": { "inboardMm": 14, "outboardMm": 18, "radialMm": 12, "inboardAtFullLockMm": 11, "springSeatMm": 9, "measuredAt": "worstTravel", "uncertaintyMm": 1 },
          "alignment": { "camberDeg": -0.7, "casterDeg": 6.4, "toeDeg": 0.08, "steeringAxisInclinationDeg": 13.1,
                         "right": { "camberDeg": -0.8, "casterDeg": 6.2, "toeDeg": 0.08 } },
          "suspension": {{Strut}},
          "spring": { "rateNPerMm": 27, "motionRatio": 0.94, "freeLengthMm": 340, "solidLengthMm": 120, "installedLengthMm": 215 },
          "damper": { "bumpNsPerM": 1500, "reboundNsPerM": 3200, "motionRatio": 0.94 },
          "bumpStop": { "rateNPerMm": 90, "lengthMm": 45 },
          "antiRollBar": { "rollRateNmPerDeg": 310 },
          "compliance": { "camberDegPerKn": 0.12, "toeDegPerKn": 0.03 },
          "rollCentreHeightMm": 55, "bumpTravelMm": 68, "reboundTravelMm": 85
        }
        """;

    public const string Car =
        $$"""
        {
          "label": "Aldermoor Tarn, road trim", "drivenAxle": "rear", "wheelbaseMm": 2570, "centreOfGravityHeightMm": 505,
          "frontAxleLoadKg": 690, "rearAxleLoadKg": 640,
          "cornerWeightsKg": { "frontLeft": 345, "frontRight": 345, "rearLeft": 320, "rearRight": 320 },
          "topSpeedKmh": 228, "brakeShareFrontPct": 66, "steeringRatio": 14.2,
          "front": {{Axle}}, "rear": {{Axle}}
        }
        """;

    /// <summary>A car of which only the front axle's suspension is told.</summary>
    public static string WithSuspension(string suspension) => $$"""{ "front": { "suspension": {{suspension}} } }""";

    /// <summary>A car of which only the front wheel is told.</summary>
    public static string WithWheel(string members) =>
        $$"""{ "front": { "wheel": { "rimDiameterIn": 17, "rimWidthIn": 7.5, "offsetMm": 45{{(members.Length == 0 ? "" : ", " + members)}} } } }""";
}

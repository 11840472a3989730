using System.Text.Json;
using SetupService.Domain.Handling.Cars;
using SetupService.Domain.Handling.Cornering;
using SetupService.Domain.Suspension;
using SetupService.Domain.Suspension.Steering;
using SetupService.Domain.Vehicles;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>The cars and turns of handling_oracle.json, which a second program worked (handling_equilibrium.py).</summary>
internal static class HandlingCases
{
    private static readonly Lazy<JsonElement> Cases = new(() =>
        JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "TestData", "handling_oracle.json"))).RootElement);

    public static IEnumerable<JsonElement> Of(string part) => Cases.Value.GetProperty(part).EnumerateArray();

    public static JsonElement Named(string part, string name) => Of(part).Single(one => one.GetProperty("name").GetString() == name);

    public static TheoryData<string, string> Names(params string[] parts)
    {
        TheoryData<string, string> names = [];
        foreach (var part in parts)
        {
            foreach (var one in Of(part)) names.Add(part, one.GetProperty("name").GetString()!);
        }

        return names;
    }

    public static TurnDirection Turn(JsonElement one) => one.GetProperty("turn").GetString() == "left" ? TurnDirection.Left : TurnDirection.Right;

    public static HandlingCar Car(JsonElement one)
    {
        var vehicle = one.GetProperty("vehicle");
        return new HandlingCar
        {
            WheelbaseMm = vehicle.GetProperty("wheelbaseMm").GetDouble(),
            CentreOfGravityHeightMm = vehicle.GetProperty("centreOfGravityHeightMm").GetDouble(),
            Front = Axle(vehicle, one.GetProperty("stated"), CarAxle.Front),
            Rear = Axle(vehicle, one.GetProperty("stated"), CarAxle.Rear),
        };
    }

    private static HandlingAxle Axle(JsonElement vehicle, JsonElement stated, CarAxle at)
    {
        var name = at == CarAxle.Front ? "front" : "rear";
        var axle = vehicle.GetProperty(name);
        var alignment = axle.GetProperty("alignment");
        var right = alignment.TryGetProperty("right", out var differs) ? differs : alignment;
        var isDrawn = axle.TryGetProperty("suspension", out var points);
        var made = new HandlingAxle
        {
            Suspension = isDrawn ? SuspensionModel.From(OracleSuspension.Of(points)) : SuspensionModel.FromFigures,
            LeftLoadN = Load("Left"),
            RightLoadN = Load("Right"),
            TrackMm = Number(axle, "trackMm") ?? 0,
            UnsprungMassKg = axle.GetProperty("unsprungMassKg").GetDouble(),
            LoadedRadiusMm = stated.GetProperty(name).GetProperty("loadedRadiusMm").GetDouble(),
            TyreRateNPerMm = axle.GetProperty("tyre").GetProperty("verticalRateNPerMm").GetDouble(),
            TyreNominalLoadN = stated.GetProperty(name).GetProperty("tyreNominalLoadN").GetDouble(),
            TyreFriction = stated.GetProperty(name).GetProperty("tyreFriction").GetDouble(),
            CorneringStiffnessNPerDeg = Number(axle.GetProperty("tyre"), "corneringStiffnessNPerDeg"),
            SpringRateNPerMm = axle.GetProperty("spring").GetProperty("rateNPerMm").GetDouble(),
            MotionRatio = Number(axle.GetProperty("spring"), "motionRatio") ?? 1,
            DamperMotionRatio = Inner("damper", "motionRatio") ?? 1,
            BarRollRateNmPerDeg = Inner("antiRollBar", "rollRateNmPerDeg") ?? 0,
            RollCentreHeightMm = Number(axle, "rollCentreHeightMm") ?? 0,
            SwingArmMm = Number(stated.GetProperty(name), "swingArmMm") ?? 1e9,
            BumpTravelMm = Number(axle, "bumpTravelMm"),
            ReboundTravelMm = Number(axle, "reboundTravelMm"),
            StopRateNPerMm = Inner("bumpStop", "rateNPerMm") ?? 60,
            StopLengthMm = Inner("bumpStop", "lengthMm") ?? 45,
            LeftCamberDeg = Angle("camberDeg", alignment),
            RightCamberDeg = Angle("camberDeg", right),
            LeftToeDeg = Angle("toeDeg", alignment),
            RightToeDeg = Angle("toeDeg", right),
            LeftCasterDeg = Angle("casterDeg", alignment),
            RightCasterDeg = Angle("casterDeg", right),
            SteeringAxisInclinationDeg = Angle("steeringAxisInclinationDeg", alignment),
            CamberComplianceDegPerKn = Inner("compliance", "camberDegPerKn") ?? 0,
            ToeComplianceDegPerKn = Inner("compliance", "toeDegPerKn") ?? 0,
        };
        return isDrawn ? made with { TrackMm = HalfTrack(made, WheelSide.Left) + HalfTrack(made, WheelSide.Right) } : made;

        double Load(string side) => HandlingCar.StandardGravity * (vehicle.TryGetProperty("cornerWeightsKg", out var weights)
            ? weights.GetProperty(name + side).GetDouble()
            : vehicle.GetProperty(name + "AxleLoadKg").GetDouble() / 2);

        double? Inner(string part, string member) => axle.TryGetProperty(part, out var inner) ? Number(inner, member) : null;

        double Angle(string member, JsonElement side) => Number(side, member) ?? Number(alignment, member) ?? 0;

        double HalfTrack(HandlingAxle drawn, WheelSide side)
        {
            var motion = drawn.Suspension.MotionOf(drawn.SetupOf(at, side))!;
            var state = motion.Origin;
            Assert.True(motion.TryAt(0, 0, ref state, out var wheel));
            return wheel.HalfTrackMm;
        }
    }

    private static double? Number(JsonElement parent, string member) => parent.TryGetProperty(member, out var value) ? value.GetDouble() : null;
}

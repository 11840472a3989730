using System.Text.Json;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Tests.Oracle;

/// <summary>Builds the domain's suspension from a request's points.</summary>
internal static class OracleSuspension
{
    public static Hardpoints Of(JsonElement suspension)
    {
        Hardpoints drawn = suspension.GetProperty("kind").GetString() switch
        {
            "macPhersonStrut" => Strut(suspension),
            "doubleWishbone" => new DoubleWishbone
            {
                LowerArm = Arm(suspension, "lower"),
                UpperArm = Arm(suspension, "upper"),
                TieRod = TieRod(suspension),
                WheelCentre = WheelCentre(suspension),
            },
            "fiveLink" => new FiveLink
            {
                Links = [.. suspension.GetProperty("links").EnumerateArray().Select(link => new Link(Point(link, "chassis"), Point(link, "upright")))],
                WheelCentre = WheelCentre(suspension),
            },
            "semiTrailingArm" => TrailingArm.About(Point(suspension, "pivotInner"), Point(suspension, "pivotOuter"), WheelCentre(suspension)),
            "twistBeam" => new TwistBeam
            {
                PivotLeft = Point(suspension, "pivotLeft"),
                BeamShearCentre = Point(suspension, "beamShearCentre"),
                WheelCentre = WheelCentre(suspension),
            },
            var kind => throw new InvalidOperationException($"No reader for the kind {kind}."),
        };
        return drawn with { Spring = Line(suspension, "spring"), Damper = Line(suspension, "damper") };
    }

    public static Vector3 Point(JsonElement parent, string name)
    {
        var point = parent.GetProperty(name);
        return new(point.GetProperty("xMm").GetDouble(), point.GetProperty("yMm").GetDouble(), point.GetProperty("zMm").GetDouble());
    }

    private static MacPhersonStrut Strut(JsonElement suspension)
    {
        var (top, lower) = (Point(suspension, "strutTop"), Point(suspension, "strutLower"));
        return new()
        {
            LowerArm = Arm(suspension, "lower"),
            StrutTop = top,
            StrutLower = lower,
            StrutAxis = (top - lower).Unit(),
            TieRod = TieRod(suspension),
            WheelCentre = WheelCentre(suspension),
        };
    }

    private static ControlArm Arm(JsonElement suspension, string name) =>
        new(Point(suspension, name + "ArmFront"), Point(suspension, name + "ArmRear"), Point(suspension, name + "BallJoint"));

    private static Link TieRod(JsonElement suspension) => new(Point(suspension, "tieRodInner"), Point(suspension, "tieRodOuter"));

    private static Vector3 WheelCentre(JsonElement suspension) => Point(suspension, "wheelCentre");

    private static SpringLine? Line(JsonElement suspension, string name) => OracleCar.Part(suspension, name + "Chassis") is null
        ? null
        : new(Point(suspension, name + "Chassis"), Point(suspension, name + "Moving"), OracleCar.Word<SuspensionMember>(suspension, name + "On")!.Value);
}

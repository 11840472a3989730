using System.Text.Json;
using SetupService.Domain.Numerics;
using SetupService.Domain.Suspension.Kinematics;
using SetupService.Domain.Suspension.Points;

namespace SetupService.Domain.Tests.Suspension;

/// <summary>
/// Corners of our own invention, each solved by two independent methods of another making (nine point coordinates by least squares;
/// translation and rotation vector by Newton), agreeing to 1e-13 mm: TestData/kinematics_cases.json.
/// </summary>
internal static class KinematicsCases
{
    private static readonly JsonElement Root = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "TestData", "kinematics_cases.json"))).RootElement;

    public static IEnumerable<string> Ids => Corners.Select(corner => corner.GetProperty("id").GetString()!);

    private static IEnumerable<JsonElement> Corners => Root.GetProperty("synthetic_cases").EnumerateArray();

    public static JsonElement Case(string id) => Corners.Single(corner => corner.GetProperty("id").GetString() == id);

    public static IEnumerable<JsonElement> Rows(string id) =>
        from name in new[] { "travel_sweep", "rack_sweep", "combined" }
        where Case(id).TryGetProperty(name, out _)
        from row in Case(id).GetProperty(name).EnumerateArray()
        select row;

    public static IEnumerable<JsonElement> Adjustments(string id) =>
        Root.GetProperty("adjustments").EnumerateArray().Where(one => one.GetProperty("case").GetString() == id);

    public static IEnumerable<JsonElement> RollRows(string id) =>
        Root.GetProperty("roll_tables").EnumerateArray().Single(one => one.GetProperty("case").GetString() == id).GetProperty("rows").EnumerateArray();

    public static CornerSetting Setting(string id)
    {
        var corner = Case(id);
        return new CornerSetting
        {
            Suspension = id == "ST1" ? Strut(corner) : Wishbone(corner),
            CamberDeg = corner.GetProperty("static_camber").GetDouble(),
            ToeDeg = corner.GetProperty("static_toe_in").GetDouble(),
            LoadedRadiusMm = corner.GetProperty("loaded_radius").GetDouble(),
        };
    }

    private static MacPhersonStrut Strut(JsonElement corner)
    {
        var top = Point(corner, "strut_top");
        var lower = Point(corner, "strut_lower_axis_point");
        return new MacPhersonStrut
        {
            LowerArm = Arm(corner, "lower"),
            StrutTop = top,
            StrutLower = lower,
            StrutAxis = (top - lower).Unit(),
            TieRod = Rod(corner),
            WheelCentre = Vector(corner.GetProperty("wheel_centre")),
        };
    }

    private static DoubleWishbone Wishbone(JsonElement corner) => new()
    {
        LowerArm = Arm(corner, "lower"),
        UpperArm = Arm(corner, "upper"),
        TieRod = Rod(corner),
        WheelCentre = Vector(corner.GetProperty("wheel_centre")),
        Spring = corner.GetProperty("hardpoints").TryGetProperty("spring_top", out var top)
            ? new SpringLine(Vector(top), Point(corner, "spring_foot_on_lower_arm"), SuspensionMember.LowerArm)
            : null,
    };

    private static ControlArm Arm(JsonElement corner, string name) => new(
        Point(corner, name + "_arm_front"), Point(corner, name + "_arm_rear"), Point(corner, name + "_ball_joint"));

    private static Link Rod(JsonElement corner) => new(Point(corner, "tie_rod_inner"), Point(corner, "tie_rod_outer"));

    private static Vector3 Point(JsonElement corner, string name) => Vector(corner.GetProperty("hardpoints").GetProperty(name));

    private static Vector3 Vector(JsonElement numbers) => new(numbers[0].GetDouble(), numbers[1].GetDouble(), numbers[2].GetDouble());
}

using System.Text.Json.Nodes;
using SetupService.Api.Tests.Fitment;

namespace SetupService.Api.Tests.Geometry;

/// <summary>Requests of the calls on a suspension; <see cref="Requests.With"/> changes one place of them.</summary>
internal static class GeometryRequests
{
    public const string Strut = "macPhersonStrut";
    public const string Wishbone = "doubleWishbone";
    public const string FiveLink = "fiveLink";
    public const string Arm = "semiTrailingArm";
    public const string Beam = "twistBeam";

    public static JsonObject Sweep(string kind = Strut, double fromMm = -60, double toMm = 60, double stepMm = 10) =>
        Corners.Of(kind).With("/travelMm", Range(fromMm, toMm, stepMm));

    public static JsonObject Move(double inboardMm, double rearwardMm = 0) => Corners.Of(Strut).With("/adjustments", Moved(inboardMm, rearwardMm));

    /// <summary>A top mount moved.</summary>
    public static JsonArray Moved(double inboardMm, double rearwardMm) =>
    [
        new JsonObject { ["adjuster"] = "strutTopInboard", ["amountMm"] = inboardMm },
        new JsonObject { ["adjuster"] = "strutTopRearward", ["amountMm"] = rearwardMm },
    ];

    /// <summary>Angles wanted of a top mount: camber by the way inboard, caster by the way rearward.</summary>
    public static JsonObject TopMountFor(double? camberDeg = null, double? casterDeg = null) => AdjustedFor(
        Strut, camberDeg, casterDeg,
        [.. new[] { (camberDeg, "strutTopInboard"), (casterDeg, "strutTopRearward") }.Where(one => one.Item1 is not null).Select(one => $$"""{ "adjuster": "{{one.Item2}}" }""")]);

    public static JsonObject Adjusted(string kind, params string[] adjustments) => Corners.Of(kind).With("/adjustments", List(adjustments));

    public static JsonObject AdjustedFor(string kind, double? camberDeg, double? casterDeg, params string[] adjusters) =>
        Corners.Of(kind).With("/target", Target(camberDeg, casterDeg)).With("/adjusters", List(adjusters));

    /// <summary>A sound request of a call.</summary>
    public static JsonObject Of(string path) => path switch
    {
        GeometryCalls.Sweep => Sweep(),
        _ => Adjusted(Strut, Lowered),
    };

    /// <summary>The body 20 mm lower.</summary>
    public const string Lowered = """{ "adjuster": "rideHeight", "amountMm": -20 }""";

    public static JsonNode Range(double from, double to, double step) => new JsonObject { ["from"] = from, ["to"] = to, ["step"] = step };

    private static JsonArray List(string[] elements) => [.. elements.Select(element => JsonNode.Parse(element))];

    private static JsonObject Target(double? camberDeg, double? casterDeg)
    {
        JsonObject target = [];
        if (camberDeg is { } camber)
            target["camberDeg"] = camber;
        if (casterDeg is { } caster)
            target["casterDeg"] = caster;
        return target;
    }
}
